using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>A helical compression spring of round wire.</summary>
/// <remarks>
/// k = G · d⁴ / (8 · D³ · Na), wire diameter d [m], mean coil diameter D [m], active coils Na [-], shear modulus G [Pa].
/// Active coils and solid length follow from the ends: see <see cref="CoilEnds"/>. A computed rate carries ±10 % (from memory:
/// usual make tolerance); a measured rate or length replaces the computed one.
/// </remarks>
public sealed class CoilSpring
{
    private const double RateTolerance = 0.10;

    private static readonly Basis Formula =
        Basis.Published("Mechanical Engineering Design", "10th ed.", "Example 10-1, p. 519, rate G · d⁴ / (8 · D³ · Na)")
            .ReadVia("a public source file that quotes the page");

    private static readonly Basis Tolerance =
        Basis.CommonPractice("rate of a coiled spring within 10 % of the formula")
            .ReadVia("commercial tolerances on two spring makers' pages");

    private readonly double wireM;
    private readonly double meanDiameterM;

    private CoilSpring(double wireM, double meanDiameterM, Band rate, BandBasis rateBasis, double freeM, double solidM)
    {
        this.wireM = wireM;
        this.meanDiameterM = meanDiameterM;
        RateNPerM = rate;
        RateBasis = rateBasis;
        FreeM = freeM;
        SolidM = solidM;
    }

    /// <summary>Force per deflection, low value.</summary>
    public ForcePerLength LowRate => ForcePerLength.FromNewtonsPerMeter(RateNPerM.Low);

    /// <summary>Force per deflection, expected value.</summary>
    public ForcePerLength Rate => ForcePerLength.FromNewtonsPerMeter(RateNPerM.Expected);

    /// <summary>Force per deflection, high value.</summary>
    public ForcePerLength HighRate => ForcePerLength.FromNewtonsPerMeter(RateNPerM.High);

    /// <summary>Where the rate comes from.</summary>
    public BandBasis RateBasis { get; }

    /// <summary>Length without load.</summary>
    public Length FreeLength => Length.FromMeters(FreeM);

    /// <summary>Length with all coils touching.</summary>
    public Length SolidLength => Length.FromMeters(SolidM);

    internal Band RateNPerM { get; }

    internal double FreeM { get; }

    internal double SolidM { get; }

    /// <summary>A spring from its measures, shear modulus of spring steel (77.2 to 85 GPa, expected 81.4).</summary>
    /// <param name="wire">Wire diameter d; above 0.</param>
    /// <param name="meanDiameter">Mean coil diameter D, outside diameter less d; at least twice d.</param>
    /// <param name="totalCoils">All coils Nt, end coils included; above 2.</param>
    /// <param name="ends">How the ends are made.</param>
    /// <param name="freeLength">Length without load; above the solid length.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is out of its range.</exception>
    public static CoilSpring OfWire(Length wire, Length meanDiameter, double totalCoils, CoilEnds ends, Length freeLength) =>
        Build(wire, meanDiameter, totalCoils, ends, new Band(77.2e9, 81.4e9, 85e9),
            Basis.CommonPractice("shear modulus of spring steel, 77.2 to 85 GPa in textbooks"), freeLength);

    /// <summary>A spring from its measures and a stated shear modulus.</summary>
    /// <param name="wire">Wire diameter d; above 0.</param>
    /// <param name="meanDiameter">Mean coil diameter D, outside diameter less d; at least twice d.</param>
    /// <param name="totalCoils">All coils Nt, end coils included; above 2.</param>
    /// <param name="ends">How the ends are made.</param>
    /// <param name="shearModulus">Shear modulus G; 10 to 150 GPa.</param>
    /// <param name="freeLength">Length without load; above the solid length.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is out of its range.</exception>
    /// <example>d 7 mm, D 42 mm, Nt 10 squared and ground, G 81.37 GPa: 41.2 N/mm, solid at 70 mm.</example>
    public static CoilSpring OfWire(
        Length wire, Length meanDiameter, double totalCoils, CoilEnds ends, Pressure shearModulus, Length freeLength) => Build(
        wire,
        meanDiameter,
        totalCoils,
        ends,
        Band.Exactly(Guard.Within(Si.Pascals(shearModulus), 10e9, 150e9, "Shear modulus", "Pa", nameof(shearModulus))),
        Basis.Given("shear modulus stated"),
        freeLength);

    /// <summary>A spring of measured or stated rate and lengths.</summary>
    /// <param name="rate">Force per deflection; above 0.</param>
    /// <param name="freeLength">Length without load; above the solid length.</param>
    /// <param name="solidLength">Length with all coils touching; above 0.</param>
    /// <param name="basis">Where the rate comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is out of its range.</exception>
    public static CoilSpring OfRate(ForcePerLength rate, Length freeLength, Length solidLength, Basis basis)
    {
        double solid = Guard.Positive(Si.Meters(solidLength), "Solid length", "m", nameof(solidLength));
        return new CoilSpring(
            double.NaN,
            double.NaN,
            Band.Exactly(Guard.Positive(Si.NewtonsPerMeter(rate), "Spring rate", "N/m", nameof(rate))),
            BandBasis.Of(basis),
            Longer(Si.Meters(freeLength), solid, nameof(freeLength)),
            solid);
    }

    /// <summary>The same spring with a measured rate.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or not in order.</exception>
    public CoilSpring WithMeasuredRate(ForcePerLength low, ForcePerLength expected, ForcePerLength high) => new(
        wireM,
        meanDiameterM,
        new Band(
            Guard.Positive(Si.NewtonsPerMeter(low), "Low spring rate", "N/m", nameof(low)),
            Guard.Positive(Si.NewtonsPerMeter(expected), "Expected spring rate", "N/m", nameof(expected)),
            Guard.Positive(Si.NewtonsPerMeter(high), "High spring rate", "N/m", nameof(high))),
        BandBasis.Of(Basis.Given("measured spring rate")),
        FreeM,
        SolidM);

    /// <summary>The same spring with a measured free length; above the solid length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above the solid length.</exception>
    public CoilSpring WithFreeLength(Length freeLength) =>
        new(wireM, meanDiameterM, RateNPerM, RateBasis, Longer(Si.Meters(freeLength), SolidM, nameof(freeLength)), SolidM);

    /// <summary>The same spring with a measured solid length; above 0 and below the free length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0 and below the free length.</exception>
    public CoilSpring WithSolidLength(Length solidLength)
    {
        double solid = Guard.Positive(Si.Meters(solidLength), "Solid length", "m", nameof(solidLength));
        Longer(FreeM, solid, nameof(solidLength));
        return new CoilSpring(wireM, meanDiameterM, RateNPerM, RateBasis, FreeM, solid);
    }

    /// <summary>Shear stress in the wire by Wahl: τ = K · 8 · F · D / (π · d³), K = (4C-1)/(4C-4) + 0.615/C, C = D/d.</summary>
    /// <param name="force">Force on one spring; 0 or more.</param>
    /// <returns>The stress; null when the wire was not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is below 0 or not finite.</exception>
    /// <example>40 N, d 3 mm, D 18 mm: 85.05 MPa.</example>
    public Pressure? ShearStress(Force force)
    {
        double newtons = Guard.NotNegative(Si.Newtons(force), "Spring force", "N", nameof(force));
        var log = default(NoSteps);
        return double.IsNaN(wireM) ? null : Pressure.FromPascals(CoilSpringKernel.ShearStressPa(newtons, wireM, meanDiameterM, ref log));
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant(
        $"coil spring {RateNPerM.Expected / 1000:G4} N/mm, {FreeM * 1000:G4} mm free, {SolidM * 1000:G4} mm solid");

    private static CoilSpring Build(
        Length wire, Length meanDiameter, double totalCoils, CoilEnds ends, Band modulusPa, Basis modulusBasis, Length freeLength)
    {
        double d = Guard.Positive(Si.Meters(wire), "Wire diameter", "m", nameof(wire));
        double mean = Guard.Within(Si.Meters(meanDiameter), 2 * d, 50 * d, "Mean coil diameter", "m", nameof(meanDiameter));
        double nt = Guard.Within(totalCoils, 2.5, 200, "Total coils", string.Empty, nameof(totalCoils));
        double mostActive = CoilSpringKernel.ActiveCoils(nt, ends == CoilEnds.NotKnown ? CoilEnds.Plain : ends);
        double active = CoilSpringKernel.ActiveCoils(nt, ends == CoilEnds.NotKnown ? CoilEnds.Squared : ends);
        Guard.Positive(active, "Active coils", string.Empty, nameof(totalCoils));
        double solid = CoilSpringKernel.SolidLengthM(d, nt, ends);
        var log = default(NoSteps);
        double expected = CoilSpringKernel.RateNPerM(modulusPa.Expected, d, mean, active, ref log);
        Basis basis = Basis.Weakest(Formula, modulusBasis);
        Basis edge = Basis.Weakest(basis, Tolerance);
        return new CoilSpring(
            d,
            mean,
            new Band(
                CoilSpringKernel.RateNPerM(modulusPa.Low, d, mean, mostActive, ref log) * (1 - RateTolerance),
                expected,
                CoilSpringKernel.RateNPerM(modulusPa.High, d, mean, active, ref log) * (1 + RateTolerance)),
            new BandBasis(edge, basis, edge, BandEnd.Interval95, BandEnd.Interval95),
            Longer(Si.Meters(freeLength), solid, nameof(freeLength)),
            solid);
    }

    private static double Longer(double freeM, double solidM, string parameter) => freeM > solidM && Guard.IsFinite(freeM)
        ? freeM
        : throw Guard.OutOfRange(
            "Free length", FormattableString.Invariant($"above the solid length of {solidM:G6} m"), freeM, "m", parameter);
}
