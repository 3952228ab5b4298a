namespace Driveline.Fatigue;

/// <summary>A counted cycle: its range, its mean, and whether it is a full or a half one.</summary>
public readonly struct RainflowCycle : IEquatable<RainflowCycle>
{
    /// <summary>A cycle between two reversals.</summary>
    /// <param name="from">First reversal.</param>
    /// <param name="to">Second reversal.</param>
    /// <param name="count">1 for a full cycle, 0.5 for a half one.</param>
    public RainflowCycle(double from, double to, double count)
    {
        Range = Math.Abs(to - from);
        Mean = (from + to) / 2;
        Count = count;
    }

    /// <summary>Range, from lowest to highest.</summary>
    public double Range { get; }

    /// <summary>Mean.</summary>
    public double Mean { get; }

    /// <summary>1 for a full cycle, 0.5 for a half one.</summary>
    public double Count { get; }

    /// <summary>True when range, mean and count are equal.</summary>
    public static bool operator ==(RainflowCycle left, RainflowCycle right) => left.Equals(right);

    /// <summary>True when range, mean or count differ.</summary>
    public static bool operator !=(RainflowCycle left, RainflowCycle right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(RainflowCycle other) => Range.Equals(other.Range) && Mean.Equals(other.Mean) && Count.Equals(other.Count);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is RainflowCycle other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (Range.GetHashCode() * 397) ^ Mean.GetHashCode();

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Count} × {Range:G6} at {Mean:G6}");
}
