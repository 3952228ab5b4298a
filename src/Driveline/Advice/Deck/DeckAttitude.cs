using Driveline.Findings;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>How the deck of a rotary cutter stands: its pitch, its lowest blade tip, and whether the blades reach ground.</summary>
/// <remarks>
/// Pitch θ from the two blade tips, θ = asin((h_front − h_rear) / span), nose up positive. Heights are measured on level ground,
/// standing still with the key out. The machine's manual decides which attitude is right; practice is in <see cref="DeckPractice"/>.
/// Immutable.
/// </remarks>
internal sealed class DeckAttitude
{
    private IReadOnlyList<Finding>? findings;
    private readonly double frontM;
    private readonly double rearM;
    private readonly double spanM;

    private DeckAttitude(double frontM, double rearM, double spanM, Basis basis)
    {
        this.frontM = frontM;
        this.rearM = rearM;
        this.spanM = spanM;
        Basis = basis;
    }

    /// <summary>Where the heights come from.</summary>
    public Basis Basis { get; }

    /// <summary>Height of the blade tip when it points forward.</summary>
    public Length FrontTip => Length.FromMeters(frontM);

    /// <summary>Height of the blade tip when it points rearward.</summary>
    public Length RearTip => Length.FromMeters(rearM);

    /// <summary>Diameter of the circle the blade tips run on.</summary>
    public Length BladeSpan => Length.FromMeters(spanM);

    /// <summary>Pitch of the deck; nose up is positive.</summary>
    public Angle Pitch => Angle.FromRadians(PitchRad);

    /// <summary>How much the front tip is lower than the rear one; negative when it is higher.</summary>
    public Length FrontBelowRear => Length.FromMeters(rearM - frontM);

    /// <summary>Height of the lower of the two tips.</summary>
    public Length LowestTip => Length.FromMeters(LowestM);

    /// <summary>What a caller must notice on smooth ground.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= [.. DeckFindings.OfAttitude(this)];

    internal double PitchRad => Math.Asin((frontM - rearM) / spanM);

    internal double LowestM => Math.Min(frontM, rearM);

    internal double FrontM => frontM;

    internal double RearM => rearM;

    /// <summary>From the heights of the blade tips, measured with one blade pointing forward and then rearward.</summary>
    /// <param name="front">Height of the front tip; 0 to 1 m.</param>
    /// <param name="rear">Height of the rear tip; 0 to 1 m.</param>
    /// <param name="bladeSpan">Diameter of the tip circle; 0.3 to 5 m and more than the difference of the heights.</param>
    /// <param name="basis">Where the measurements come from.</param>
    /// <example>Front 60 mm, rear 90 mm, span 1.5 m: pitch −1.146°.</example>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static DeckAttitude FromBladeTips(Length front, Length rear, Length bladeSpan, Basis basis)
    {
        double frontM = Guard.Within(Si.Meters(front), 0, 1, "Height of the front blade tip", "m", nameof(front));
        double rearM = Guard.Within(Si.Meters(rear), 0, 1, "Height of the rear blade tip", "m", nameof(rear));
        double spanM = Guard.Within(Si.Meters(bladeSpan), 0.3, 5, "Blade span", "m", nameof(bladeSpan));
        return Math.Abs(frontM - rearM) < spanM
            ? new DeckAttitude(frontM, rearM, spanM, Guard.NotNull(basis, nameof(basis)))
            : throw Guard.OutOfRange("Difference of the tip heights", FormattableString.Invariant($"below the blade span of {spanM:G4} m"),
                frontM - rearM, "m", nameof(front));
    }

    /// <summary>From the heights at the hitch and at the tail wheel, for a deck whose blades cannot be reached safely to measure.</summary>
    /// <remarks>
    /// The two deck points lie on a line parallel to the blade plane, a stated drop above it:
    /// θ = asin((h_hitch − h_tail) / d), height of a tip = h_hitch − x sin θ − drop · cos θ at distance x behind the hitch point.
    /// </remarks>
    /// <param name="hitch">Height of the deck point at the lower hitch pins; 0 to 2 m.</param>
    /// <param name="tail">Height of the deck point at the tail wheel; 0 to 2 m.</param>
    /// <param name="geometry">Where those points, the rotor and the blades lie on the deck.</param>
    /// <param name="basis">Where the measurements come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or a blade tip would lie below the ground.</exception>
    public static DeckAttitude FromHitchAndTailWheel(Length hitch, Length tail, DeckGeometry geometry, Basis basis)
    {
        double hitchM = Guard.Within(Si.Meters(hitch), 0, 2, "Height at the hitch", "m", nameof(hitch));
        double tailM = Guard.Within(Si.Meters(tail), 0, 2, "Height at the tail wheel", "m", nameof(tail));
        Guard.NotNull(geometry, nameof(geometry));
        return HitchProblem(hitchM, tailM, geometry) is { } problem
            ? throw new ArgumentOutOfRangeException(nameof(hitch), problem)
            : OfHitch(hitchM, tailM, geometry, Guard.NotNull(basis, nameof(basis)));
    }

    /// <summary>Why heights at hitch and tail wheel give no attitude; null when they do.</summary>
    internal static string? HitchProblem(double hitchM, double tailM, DeckGeometry geometry)
    {
        if (!(Math.Abs(hitchM - tailM) < geometry.HitchToTailM))
        {
            string range = FormattableString.Invariant($"below the distance of {geometry.HitchToTailM:G4} m between the two points");
            return Guard.RangeText("Difference of the heights", range, hitchM - tailM, "m");
        }

        double lowest = OfHitch(hitchM, tailM, geometry, Basis.Given("measured")).LowestM;
        return lowest >= 0 ? null
            : Guard.RangeText("Height of a blade tip from these measurements",
                "0 m or more (a tip in the ground is measured with the deck raised)", lowest, "m");
    }

    /// <summary>Do the blades reach into the ground where its bumps rise this far above the line its wheels follow?</summary>
    /// <remarks>
    /// Yes: even the lowest bumps reach the lower tip. No: even the highest stay below it. Unbounded bumps never give a No.
    /// </remarks>
    /// <param name="bumps">Height of the bumps above the wheel line; low, expected and highest.</param>
    public Answer ReachesGround(LengthBand bumps)
    {
        Guard.NotNull(bumps, nameof(bumps));
        return LowestM <= bumps.SiBand.Low ? Answer.Yes
            : LowestM > bumps.SiBand.High ? Answer.No
            : bumps.HasExpected ? Answer.Maybe
            : Answer.NotKnown;
    }

    /// <summary>What a caller must notice over ground of that roughness.</summary>
    /// <param name="bumps">Height of the bumps above the wheel line; low, expected and highest.</param>
    public IReadOnlyList<Finding> FindingsOver(LengthBand bumps) =>
        [.. DeckFindings.OfAttitude(this), .. DeckFindings.OfGround(this, bumps)];

    /// <summary>How far the tail-wheel point sinks when the deck is turned about its hitch pins to another attitude.</summary>
    /// <remarks>Set the tail wheel up by as much, or raise the lift arms; d (sin θ' − sin θ), negative when it rises.</remarks>
    /// <param name="frontBelowRear">How much lower the front tip shall be than the rear one; negative for a higher front.</param>
    /// <param name="hitchToTail">Distance from the lower hitch pins to the tail wheel; above 0.</param>
    public Length TailWheelDropFor(Length frontBelowRear, Length hitchToTail)
    {
        double distance = Guard.Positive(Si.Meters(hitchToTail), "Distance from hitch to tail wheel", "m", nameof(hitchToTail));
        return Length.FromMeters(distance * (Math.Sin(PitchForRad(frontBelowRear)) - Math.Sin(PitchRad)));
    }

    internal double PitchForRad(Length frontBelowRear)
    {
        double difference = Si.Meters(frontBelowRear);
        return Math.Abs(difference) < spanM
            ? Math.Asin(-difference / spanM)
            : throw Guard.OutOfRange("Wanted difference of the tip heights",
                FormattableString.Invariant($"below the blade span of {spanM:G4} m"), difference, "m", nameof(frontBelowRear));
    }

    private static DeckAttitude OfHitch(double hitchM, double tailM, DeckGeometry geometry, Basis basis)
    {
        double sine = (hitchM - tailM) / geometry.HitchToTailM;
        double half = geometry.BladeSpanM / 2;
        double below = geometry.BladesBelowM * Math.Sqrt(1 - (sine * sine));
        double front = hitchM - ((geometry.HitchToRotorM - half) * sine) - below;
        double rear = hitchM - ((geometry.HitchToRotorM + half) * sine) - below;
        return new DeckAttitude(front, rear, geometry.BladeSpanM, basis);
    }

    /// <inheritdoc/>
    public override string ToString() =>
        FormattableString.Invariant($"front {frontM * 1000:F0} mm, rear {rearM * 1000:F0} mm, pitch {PitchRad / Si.Degree:F2}°");
}
