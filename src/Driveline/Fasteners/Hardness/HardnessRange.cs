using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Permitted hardness, minimum to maximum, on one scale.</summary>
internal sealed class HardnessRange
{
    /// <summary>Permitted hardness from minimum to maximum.</summary>
    /// <exception cref="ArgumentException">The scales differ or the minimum exceeds the maximum.</exception>
    public HardnessRange(Hardness minimum, Hardness maximum)
    {
        Minimum = Guard.NotNull(minimum, nameof(minimum));
        Maximum = Guard.NotNull(maximum, nameof(maximum));
        if (minimum.Scale != maximum.Scale || minimum.Value > maximum.Value)
        {
            throw new ArgumentException(
                "A hardness range needs one scale and minimum ≤ maximum; got " + minimum + " to " + maximum + ".", nameof(maximum));
        }
    }

    /// <summary>Lowest permitted hardness.</summary>
    public Hardness Minimum { get; }

    /// <summary>Highest permitted hardness.</summary>
    public Hardness Maximum { get; }

    /// <summary>The middle of the range, which a maker aims for.</summary>
    public Hardness Middle => Hardness.Of(Minimum.Scale, (Minimum.Value + Maximum.Value) / 2);

    /// <summary>The range, e.g. "HRB 80 to HRB 100".</summary>
    public override string ToString() => Minimum + " to " + Maximum;

    internal static HardnessRange Of(HardnessScale scale, double minimum, double maximum) =>
        new(Hardness.Of(scale, minimum), Hardness.Of(scale, maximum));
}
