using System.Globalization;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>
/// A probability with its basis. It is never shown as 0 or 1: below 0.001 the shape of the tails decides, and nobody knows it.
/// </summary>
public sealed class Probability
{
    /// <summary>Below this, and above one less this, only the bound is shown.</summary>
    public const double Floor = 0.001;

    internal Probability(double value, Basis basis)
    {
        Value = Math.Min(1, Math.Max(0, value));
        Basis = basis;
    }

    /// <summary>The number as computed, 0 to 1. Show <see cref="ToString"/> or heed <see cref="IsBelowFloor"/>.</summary>
    public double Value { get; }

    /// <summary>The weakest basis of what it was computed from.</summary>
    public Basis Basis { get; }

    /// <summary>True when the number is below 0.001: rare, and no more can be said.</summary>
    public bool IsBelowFloor => Value < Floor;

    /// <summary>True when the number is above 0.999: nearly sure, and no more can be said.</summary>
    public bool IsAboveCeiling => Value > 1 - Floor;

    /// <summary>A stated probability.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not from 0 to 1.</exception>
    public static Probability Of(double value, Basis basis) =>
        new(Guard.Within(value, 0, 1, "Probability", string.Empty, nameof(value)), Guard.NotNull(basis, nameof(basis)));

    /// <summary>"&lt; 0.001", "&gt; 0.999", or three significant digits, invariant culture.</summary>
    public override string ToString() => IsBelowFloor ? "< 0.001" : IsAboveCeiling ? "> 0.999"
        : Value.ToString("G3", CultureInfo.InvariantCulture);
}
