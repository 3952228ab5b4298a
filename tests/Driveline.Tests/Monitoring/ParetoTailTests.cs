using Driveline.Monitoring;
using Driveline.Tests.Clutches;
using FsCheck.Xunit;

namespace Driveline.Tests.Monitoring;

[Properties(Arbitrary = [typeof(Shares)])]
public class ParetoTailTests
{
    // 0, 1, … 40: a₀ = 20, a₁ = (41 - 2)/6 = 6.5, a₀ - 2·a₁ = 7; -ξ = 20/7 - 2 = 6/7, σ = 2 · 20 · 6.5 / 7 = 37.142857.
    // Once in 100: 37.142857/0.857143 · (1 - 100^-0.857143) = 43.3333 · (1 - 0.0193072) = 42.4967.
    [Fact]
    public void Fit_EvenlySpacedExcesses_Worked()
    {
        ParetoTail tail = Fit([.. Enumerable.Range(0, 41).Select(j => (double)j)]);
        Close.Absolute(-6 / 7.0, tail.Shape, 1e-12, "hand");
        Close.Absolute(260 / 7.0, tail.Scale, 1e-12, "hand");
        Close.Absolute(42.4967, tail.ExcessOnceIn(100), 1e-3, "hand");
    }

    // The quantiles of a tail of shape ξ and scale 10, evenly spread, give it back.
    [Theory]
    [InlineData(-0.3)]
    [InlineData(0)]
    [InlineData(0.2)]
    public void Fit_ExactQuantiles_GivesShapeAndScaleBack(double shape)
    {
        const int Count = 4000;
        ParetoTail tail = Fit([.. Enumerable.Range(0, Count).Select(j => Quantile((j + 0.5) / Count, shape, 10))]);
        Close.Absolute(shape, tail.Shape, 0.01, "the distribution the quantiles are of");
        Close.Relative(10, tail.Scale, 0.01, "the distribution the quantiles are of");
    }

    // The covariance is that of the article: the interval holds the true value about as often as it says, less often with few peaks.
    [Theory]
    [InlineData(200, -0.2, 0.92)]
    [InlineData(200, 0.2, 0.92)]
    [InlineData(45, -0.2, 0.85)]
    [InlineData(45, 0.2, 0.85)]
    public void Interval_OfManyRecords_HoldsTheTrueValue(int peaks, double shape, double atLeast)
    {
        var random = new Random(11);
        double once = 4.0 * peaks;
        double truth = Quantile(1 - (1 / once), shape, 1);
        int held = 0, records = 0;
        for (int k = 0; k < 800; k++)
        {
            int count = Enumerable.Range(0, 4 * peaks).Count(_ => random.Next(4) == 0);
            if (!ParetoTail.TryFit([.. Enumerable.Range(0, count).Select(_ => Quantile(random.NextDouble(), shape, 1))],
                out ParetoTail? tail))
            {
                continue;
            }

            tail!.IntervalOnceIn(4.0 * count, out double low, out double high);
            records++;
            held += low <= truth && truth <= high ? 1 : 0;
        }

        Assert.True(records > 500);
        Assert.True(held >= atLeast * records && held <= 0.985 * records, $"held {held} of {records}");
    }

    [Law]
    public void Fit_OtherUnit_ScalesTheScale(int seed, Share power)
    {
        double factor = Math.Pow(2, power.Count(-8, 8));
        var random = new Random(seed);
        double[] excesses = [.. Enumerable.Range(0, 50).Select(_ => Quantile(random.NextDouble(), 0.1, 7))];
        ParetoTail one = Fit(excesses), other = Fit([.. excesses.Select(e => e * factor)]);
        Close.Relative(one.Shape, other.Shape, 1e-9, "law: the shape has no unit");
        Close.Relative(one.Scale * factor, other.Scale, 1e-9, "law: the scale has the unit of the excesses");
    }

    [Law]
    public void Excess_OfMorePeaks_IsHigher(int seed, Share first, Share second)
    {
        var random = new Random(seed);
        ParetoTail tail = Fit([.. Enumerable.Range(0, 40).Select(_ => Quantile(random.NextDouble(), 0, 7))]);
        double few = 1 + first.Log(0.01, 1e6), more = few * second.Log(1, 1e3);
        Assert.True(tail.ExcessOnceIn(more) >= tail.ExcessOnceIn(few));
    }

    [Fact]
    public void Fit_TooFewOrAllAlike_IsNone()
    {
        Assert.False(ParetoTail.TryFit([.. Enumerable.Range(0, ParetoTail.LeastPeaks - 1).Select(j => (double)j)], out _));
        Assert.True(ParetoTail.TryFit([.. Enumerable.Range(0, ParetoTail.LeastPeaks).Select(j => (double)j)], out _));
        Assert.False(ParetoTail.TryFit([.. Enumerable.Repeat(5.0, 100)], out _));
        Assert.False(ParetoTail.TryFit(new double[100], out _));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Fit_BadExcess_IsRefused(double bad) => Assert.Throws<ArgumentOutOfRangeException>(() => ParetoTail.TryFit([bad], out _));

    private static ParetoTail Fit(double[] excesses)
    {
        Assert.True(ParetoTail.TryFit(excesses, out ParetoTail? tail));
        return tail!;
    }

    private static double Quantile(double p, double shape, double scale) =>
        shape == 0 ? -scale * Math.Log(1 - p) : scale / shape * (Math.Pow(1 - p, -shape) - 1);
}
