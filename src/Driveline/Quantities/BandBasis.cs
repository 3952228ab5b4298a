using Driveline.Provenance;

namespace Driveline.Quantities;

/// <summary>Where the three values of a band come from, and what its two ends mean.</summary>
public sealed class BandBasis : IEquatable<BandBasis>
{
    /// <summary>A basis for each value and a meaning for each end.</summary>
    internal BandBasis(Basis low, Basis expected, Basis high, BandEnd lowEnd, BandEnd highEnd)
    {
        Low = Guard.NotNull(low, nameof(low));
        Expected = Guard.NotNull(expected, nameof(expected));
        High = Guard.NotNull(high, nameof(high));
        LowEnd = lowEnd;
        HighEnd = highEnd;
    }

    /// <summary>Basis of the low value.</summary>
    public Basis Low { get; }

    /// <summary>Basis of the expected value.</summary>
    public Basis Expected { get; }

    /// <summary>Basis of the high value.</summary>
    public Basis High { get; }

    /// <summary>What the low end means.</summary>
    internal BandEnd LowEnd { get; }

    /// <summary>What the high end means.</summary>
    internal BandEnd HighEnd { get; }

    /// <summary>The weakest of the three.</summary>
    public Basis Weakest => Basis.Weakest(Basis.Weakest(Low, Expected), High);

    /// <summary>One basis for all three values, both ends limits.</summary>
    public static BandBasis Of(Basis basis) => new(basis, basis, basis, BandEnd.Limit, BandEnd.Limit);

    /// <summary>The basis of a value computed from two bands: the weaker of each pair; an end is a limit only if both are.</summary>
    internal static BandBasis Combine(BandBasis first, BandBasis second)
    {
        Guard.NotNull(first, nameof(first));
        Guard.NotNull(second, nameof(second));
        return new BandBasis(
            Basis.Weakest(first.Low, second.Low),
            Basis.Weakest(first.Expected, second.Expected),
            Basis.Weakest(first.High, second.High),
            first.LowEnd < second.LowEnd ? first.LowEnd : second.LowEnd,
            first.HighEnd < second.HighEnd ? first.HighEnd : second.HighEnd);
    }

    /// <summary>The basis of a value computed from this band and an exact number of another basis.</summary>
    internal BandBasis With(Basis other)
    {
        Basis low = Basis.Weakest(Low, other);
        Basis expected = Basis.Weakest(Expected, other);
        Basis high = Basis.Weakest(High, other);
        BandEnd lowEnd = LowEnd < BandEnd.Limit ? LowEnd : BandEnd.Limit;
        BandEnd highEnd = HighEnd < BandEnd.Limit ? HighEnd : BandEnd.Limit;
        bool isSame = ReferenceEquals(low, Low) && ReferenceEquals(expected, Expected) && ReferenceEquals(high, High)
            && lowEnd == LowEnd && highEnd == HighEnd;
        return isSame ? this : new BandBasis(low, expected, high, lowEnd, highEnd);
    }

    /// <inheritdoc/>
    public bool Equals(BandBasis? other) =>
        other is not null && Low.Equals(other.Low) && Expected.Equals(other.Expected) && High.Equals(other.High)
        && LowEnd == other.LowEnd && HighEnd == other.HighEnd;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BandBasis);

    /// <inheritdoc/>
    public override int GetHashCode() => (Low.GetHashCode() * 397) ^ High.GetHashCode();

    /// <inheritdoc/>
    public override string ToString() => Weakest.ToString();
}
