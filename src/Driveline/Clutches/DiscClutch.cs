using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>A disc slip clutch: ring-shaped faces, a facing, springs, and the length the springs are set to.</summary>
/// <remarks>
/// Count rubbing face pairs, not lining plates: with n1 driving and n2 driven discs there are n1 + n2 - 1.
/// Immutable; a With… method gives a changed copy. Friction on bolts, guides and splines is neglected, which
/// overstates the clamp on the far faces a little.
/// </remarks>
public sealed class DiscClutch
{
    private DiscClutch(
        double outerM, double innerM, int faces, Facing facing, SpringPack springs, LengthBand? springLength, LengthBand? wearLimit)
    {
        OuterM = outerM;
        InnerM = innerM;
        Faces = faces;
        Facing = facing;
        Springs = springs;
        SpringLength = springLength;
        WearLimitPerFace = wearLimit;
    }

    /// <summary>Outer radius of the friction face, Ro.</summary>
    public Length OuterRadius => Length.FromMeters(OuterM);

    /// <summary>Inner radius of the friction face, Ri.</summary>
    public Length InnerRadius => Length.FromMeters(InnerM);

    /// <summary>Rubbing face pairs, N.</summary>
    public int Faces { get; }

    /// <summary>The facing.</summary>
    public Facing Facing { get; }

    /// <summary>The springs.</summary>
    public SpringPack Springs { get; }

    /// <summary>Length the springs were set to; null when not known.</summary>
    public LengthBand? SpringLength { get; }

    /// <summary>Wear of one lining at which the machine's manual replaces it; null when not known.</summary>
    public LengthBand? WearLimitPerFace { get; }

    /// <summary>Area of one face.</summary>
    public Area FaceArea => Area.FromSquareMeters(DiscClutchKernel.AreaM2(OuterM, InnerM));

    internal double OuterM { get; }

    internal double InnerM { get; }

    /// <summary>A disc clutch whose spring length is not known yet.</summary>
    /// <param name="outerDiameter">Outer diameter of the face; above the inner, at most 2 m.</param>
    /// <param name="innerDiameter">Inner diameter of the face; above 0.</param>
    /// <param name="faces">Rubbing face pairs; 1 to 40.</param>
    /// <param name="facing">The facing.</param>
    /// <param name="springs">The springs.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure or the count is out of its range.</exception>
    public static DiscClutch Of(Length outerDiameter, Length innerDiameter, int faces, Facing facing, SpringPack springs)
    {
        double inner = Guard.Positive(Si.Meters(innerDiameter), "Inner diameter of the friction face", "m", nameof(innerDiameter));
        double outer = Si.Meters(outerDiameter);
        if (!(outer > inner && outer <= 2))
        {
            throw Guard.OutOfRange(
                "Outer diameter of the friction face",
                FormattableString.Invariant($"above the inner diameter of {inner:G6} m and at most 2 m"),
                outer,
                "m",
                nameof(outerDiameter));
        }

        return new DiscClutch(
            outer / 2,
            inner / 2,
            Guard.Within(faces, 1, 40, "Number of friction faces", nameof(faces)),
            Guard.NotNull(facing, nameof(facing)),
            Guard.NotNull(springs, nameof(springs)),
            null,
            null);
    }

    /// <summary>Rubbing face pairs of driving and driven discs: n1 + n2 - 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number of discs is not from 1 to 40.</exception>
    /// <example>5 driving and 4 driven: 8.</example>
    public static int FacesOf(int drivingDiscs, int drivenDiscs) =>
        Guard.Within(drivingDiscs, 1, 40, "Driving discs", nameof(drivingDiscs))
            + Guard.Within(drivenDiscs, 1, 40, "Driven discs", nameof(drivenDiscs)) - 1;

    /// <summary>The same clutch with its springs set to a length.</summary>
    /// <param name="length">Length of the springs as set; low end above 0, bounded. Longer than free or shorter than solid is
    /// accepted: it is what someone measured, and the result says what it means.</param>
    /// <exception cref="ArgumentException">The band is unbounded.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The low end is not above 0.</exception>
    public DiscClutch WithSpringLength(LengthBand length)
    {
        Guard.NotNull(length, nameof(length));
        if (!length.IsBounded)
        {
            throw new ArgumentException("A spring length must have a high end; got an unbounded one.", nameof(length));
        }

        Guard.Positive(length.SiBand.Low, "Spring length", "m", nameof(length));
        return new DiscClutch(OuterM, InnerM, Faces, Facing, Springs, length, WearLimitPerFace);
    }

    /// <summary>The same clutch with its springs set to a length, give or take a reading error.</summary>
    /// <param name="length">Length of the springs as set; above the tolerance.</param>
    /// <param name="tolerance">Reading error either way; 0 or more. A steel rule gives about 0.4 mm (1/64 in).</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above the tolerance, or the tolerance is below 0.</exception>
    public DiscClutch WithSpringLength(Length length, Length tolerance)
    {
        double m = Guard.Positive(Si.Meters(length), "Spring length", "m", nameof(length));
        double plus = Guard.NotNegative(Si.Meters(tolerance), "Tolerance of the spring length", "m", nameof(tolerance));
        Guard.Positive(m - plus, "Spring length less its tolerance", "m", nameof(tolerance));
        return WithSpringLength(LengthBand.OfSi(new Band(m - plus, m, m + plus), BandBasis.Of(Basis.Given("spring length measured"))));
    }

    /// <summary>The same clutch with every nut turned down from finger-tight, where the springs are at their free length.</summary>
    /// <param name="turns">Turns from finger-tight; 0 or more.</param>
    /// <param name="pitch">Pitch of the bolt thread; above 0, at most 10 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range, or the turns leave no length.</exception>
    /// <example>Free length 50 mm, 4 turns of 1.5 mm pitch: 44 mm.</example>
    public DiscClutch WithNutTurns(double turns, Length pitch)
    {
        double p = Guard.Positive(Si.Meters(pitch), "Pitch of the bolt thread", "m", nameof(pitch));
        Guard.Within(p, 0, 0.01, "Pitch of the bolt thread", "m", nameof(pitch));
        double down = Guard.NotNegative(turns, "Turns of the nut", string.Empty, nameof(turns)) * p;
        if (TurnsProblem(Springs, turns, p) is { } problem)
        {
            throw new ArgumentOutOfRangeException(nameof(turns), problem);
        }

        double length = Springs.FreeM - down;
        return WithSpringLength(LengthBand.OfSi(Band.Exactly(length), BandBasis.Of(Basis.Given("nut turns counted"))));
    }

    /// <summary>Why so many turns of the nut cannot be; null when they can.</summary>
    internal static string? TurnsProblem(SpringPack springs, double turns, double pitchM) => turns * pitchM < springs.FreeM
        ? null
        : FormattableString.Invariant($"Turns of the nut must be fewer than {springs.FreeM / pitchM:G3}: so many press springs ")
            + FormattableString.Invariant($"of {springs.FreeM * 1000:G4} mm to nothing; got {turns}.");

    /// <summary>The same clutch with other springs.</summary>
    public DiscClutch WithSprings(SpringPack springs) =>
        new(OuterM, InnerM, Faces, Facing, Guard.NotNull(springs, nameof(springs)), SpringLength, WearLimitPerFace);

    /// <summary>The same clutch with another facing.</summary>
    public DiscClutch WithFacing(Facing facing) =>
        new(OuterM, InnerM, Faces, Guard.NotNull(facing, nameof(facing)), Springs, SpringLength, WearLimitPerFace);

    /// <summary>The same clutch with its friction as the last slip test measured it at the present spring length.</summary>
    /// <remarks>
    /// μ = T / (N · F · r), with the clamp F of the springs at their stated length: set to the measured torque, the springs come back to
    /// that
    /// length. The whole facing is scaled, by state of the faces, and keeps the spread of the reading. Unchanged without a reading or a
    /// spring
    /// length, with an unknown facing, with springs loose or solid, and where the springs were tightened after the reading.
    /// </remarks>
    /// <param name="condition">Its condition, with the test and the state of the faces.</param>
    public DiscClutch CalibratedBy(ClutchCondition condition) =>
        SlipTorqueRules.ScaleOf(this, Guard.NotNull(condition, nameof(condition))) is { } scale
            && condition.LastSlipTest!.Running is { } read
            ? WithFacing(Facing.Measured(scale, read))
            : this;

    /// <summary>The same clutch with the wear per lining at which the machine's manual replaces it.</summary>
    /// <exception cref="ArgumentException">The limit is unbounded.</exception>
    public DiscClutch WithWearLimitPerFace(LengthBand limit) => Guard.NotNull(limit, nameof(limit)).IsBounded
        ? new DiscClutch(OuterM, InnerM, Faces, Facing, Springs, SpringLength, limit)
        : throw new ArgumentException("A wear limit must have a high end; got an unbounded one.", nameof(limit));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant(
        $"disc clutch {OuterM * 2000:G4}/{InnerM * 2000:G4} mm, {Faces} faces, {Facing.Name}");
}
