using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>Where the hitch point, the tail wheel, the rotor and the blades lie on a deck. Immutable.</summary>
internal sealed class DeckGeometry
{
    private DeckGeometry(double hitchToTailM, double hitchToRotorM, double bladesBelowM, double bladeSpanM)
    {
        HitchToTailM = hitchToTailM;
        HitchToRotorM = hitchToRotorM;
        BladesBelowM = bladesBelowM;
        BladeSpanM = bladeSpanM;
    }

    /// <summary>Distance along the deck from the hitch point to the tail-wheel point.</summary>
    public Length HitchToTail => Length.FromMeters(HitchToTailM);

    /// <summary>Distance along the deck from the hitch point to the rotor's axis.</summary>
    public Length HitchToRotor => Length.FromMeters(HitchToRotorM);

    /// <summary>How far the blade plane lies below the line through the two deck points.</summary>
    public Length BladesBelow => Length.FromMeters(BladesBelowM);

    /// <summary>Diameter of the circle the blade tips run on.</summary>
    public Length BladeSpan => Length.FromMeters(BladeSpanM);

    internal double HitchToTailM { get; }

    internal double HitchToRotorM { get; }

    internal double BladesBelowM { get; }

    internal double BladeSpanM { get; }

    /// <summary>The geometry of a deck.</summary>
    /// <param name="hitchToTail">Hitch point to tail-wheel point, along the deck; above 0.</param>
    /// <param name="hitchToRotor">Hitch point to rotor axis, along the deck; above 0.</param>
    /// <param name="bladesBelow">Blade plane below the line through the two points; 0 or more.</param>
    /// <param name="bladeSpan">Diameter of the tip circle; 0.3 to 5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static DeckGeometry Of(Length hitchToTail, Length hitchToRotor, Length bladesBelow, Length bladeSpan) => new(
        Guard.Positive(Si.Meters(hitchToTail), "Distance from hitch to tail wheel", "m", nameof(hitchToTail)),
        Guard.Positive(Si.Meters(hitchToRotor), "Distance from hitch to rotor", "m", nameof(hitchToRotor)),
        Guard.NotNegative(Si.Meters(bladesBelow), "Drop of the blade plane", "m", nameof(bladesBelow)),
        Guard.Within(Si.Meters(bladeSpan), 0.3, 5, "Blade span", "m", nameof(bladeSpan)));
}
