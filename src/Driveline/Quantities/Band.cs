using System.Runtime.CompilerServices;

namespace Driveline.Quantities;

/// <summary>Low, expected and high value of one quantity in SI; expected and high may be unbounded (+∞).</summary>
internal readonly struct Band : IEquatable<Band>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Band(double low, double expected, double high)
    {
        if (!(low >= 0 && low <= expected && expected <= high && low < double.PositiveInfinity))
        {
            Refuse(low, expected, high);
        }

        Low = low;
        Expected = expected;
        High = high;
    }

    public double Low { get; }

    public double Expected { get; }

    public double High { get; }

    public bool HasExpected => !double.IsPositiveInfinity(Expected);

    public bool IsBounded => !double.IsPositiveInfinity(High);

    public static Band Exactly(double value) => new(value, value, value);

    /// <summary>One value from outside; 0 or more and finite.</summary>
    public static Band Stated(double value, string unit) => Exactly(Guard.NotNegative(value, "Value", unit, nameof(value)));

    /// <summary>Three values from outside; each 0 or more and finite.</summary>
    public static Band Stated(double low, double expected, double high, string unit) => new(
        Guard.NotNegative(low, "Low value", unit, nameof(low)),
        Guard.NotNegative(expected, "Expected value", unit, nameof(expected)),
        Guard.NotNegative(high, "High value", unit, nameof(high)));

    /// <summary>A low value from outside, 0 or more and finite; expected and high unbounded.</summary>
    public static Band StatedAtLeast(double low, string unit) =>
        new(Guard.NotNegative(low, "Low value", unit, nameof(low)), double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>The band of the smaller of two quantities, end by end: the first of two devices to act.</summary>
    public static Band Min(Band a, Band b) =>
        new(Math.Min(a.Low, b.Low), Math.Min(a.Expected, b.Expected), Math.Min(a.High, b.High));

    /// <summary>The band of the larger of two quantities, end by end.</summary>
    public static Band Max(Band a, Band b) =>
        new(Math.Max(a.Low, b.Low), Math.Max(a.Expected, b.Expected), Math.Max(a.High, b.High));

    public static Band operator +(Band a, Band b) => new(a.Low + b.Low, a.Expected + b.Expected, a.High + b.High);

    /// <summary>One of the three values; +∞ when it has no bound.</summary>
    public double At(BandPoint point) => point switch
    {
        BandPoint.Low => Low,
        BandPoint.High => High,
        _ => Expected,
    };

    /// <summary>Every end times a positive factor.</summary>
    public Band Times(double factor) => new(Low * factor, Times(Expected, factor), Times(High, factor));

    /// <summary>The product of two independent positive quantities, end by end.</summary>
    public Band Times(Band factor) => new(Low * factor.Low, Times(Expected, factor.Expected), Times(High, factor.High));

    /// <summary>
    /// The quotient of two independent positive quantities: low over high, high over low; a divisor of 0 gives unbounded.
    /// </summary>
    /// <exception cref="InvalidOperationException">The divisor has no expected value.</exception>
    public Band Over(Band divisor) => !divisor.HasExpected
        ? throw new InvalidOperationException("A band cannot be divided by one without an expected value.")
        : new(divisor.IsBounded ? Finite(Quotient(Low, divisor.High)) : 0, Quotient(Expected, divisor.Expected),
            Quotient(High, divisor.Low));

    public bool Equals(Band other) => Low.Equals(other.Low) && Expected.Equals(other.Expected) && High.Equals(other.High);

    public override bool Equals(object? obj) => obj is Band other && Equals(other);

    public override int GetHashCode() => (((Low.GetHashCode() * 397) ^ Expected.GetHashCode()) * 397) ^ High.GetHashCode();

    public override string ToString() => FormattableString.Invariant($"[{Low:G6}, {Expected:G6}, {High:G6}]");

    // 0 × ∞ is 0 here: a band scaled by an exact zero vanishes.
    private static double Times(double value, double factor) => factor == 0 || value == 0 ? 0 : value * factor;

    // 0 ÷ 0 leaves nothing assured.
    private static double Finite(double low) => Guard.IsFinite(low) ? low : 0;

    private static double Quotient(double value, double divisor) =>
        value == 0 ? 0 : divisor == 0 ? double.PositiveInfinity : value / divisor;

    private static void Refuse(double low, double expected, double high) => throw new ArgumentOutOfRangeException(
        nameof(low),
        FormattableString.Invariant(
            $"A band must satisfy 0 ≤ low ≤ expected ≤ high with a finite low; got {low:G6}, {expected:G6}, {high:G6}."));
}
