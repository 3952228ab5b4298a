using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Protection;

public class BandDistributionTests
{
    private static readonly Basis Stated = Basis.Given("the test");
    private static readonly BandBasis Intervals = new(Stated, Stated, Stated, BandEnd.Interval95, BandEnd.Interval95);

    [Fact]
    public void LimitEnds_NothingLiesBeyond()
    {
        BandDistribution pert = BandDistribution.Of(RatioBand.Between(1, 2, 4, Stated));
        Assert.Equal(0, pert.Cdf(1));
        Assert.Equal(1, pert.Cdf(4));
        Assert.Equal(0, pert.Survival(4));
    }

    [Fact]
    public void IntervalEnds_TwoAndAHalfPercentLieBeyondEach()
    {
        BandDistribution band = BandDistribution.Of(RatioBand.Between(10, 12, 16, Intervals));
        Assert.Equal(0.025, band.Cdf(10), 12);
        Assert.Equal(0.025, band.Survival(16), 12);
        Assert.Equal(0, band.Cdf(0), 12);
        Assert.Equal(10, band.Quantile(0.025), 9);
        Assert.Equal(16, band.Quantile(0.975), 9);
        Assert.Equal(0.001, band.Survival(band.Quantile(0.999)), 12);
        Assert.Equal(0.001, band.Cdf(band.Quantile(0.001)), 12);
        // Excess beyond 16 is exponential with mean 0.192779 · (16 − 12) = 0.771: e⁻¹ of 2.5 % lies beyond 16.771.
        Assert.Equal(0.025 * Math.Exp(-1), band.Survival(16 + (4 * 0.192779)), 9);
    }

    [Fact]
    public void IntervalLowAtZero_HasNoTailBelowZero()
    {
        BandDistribution band = BandDistribution.Of(RatioBand.Between(0, 1, 2, Intervals));
        Assert.Equal(0, band.Cdf(0), 12);
        Assert.Equal(0.025, band.Survival(2), 12);
    }

    [Fact]
    public void Unbounded_TheStatedShareIsAtInfinity()
    {
        QuantityBand band = RatioBand.OfSi(new Band(10, 12, double.PositiveInfinity), BandBasis.Of(Stated));
        BandDistribution quarter = BandDistribution.Of(band);
        Assert.Equal(0.25, quarter.UnboundedShare);
        Assert.Equal(0.25, quarter.Survival(1e12), 12);
        Assert.Null(quarter.Mean);
        Assert.Equal(BasisKind.FromMemory, quarter.Basis.Kind);
        Assert.Equal(double.PositiveInfinity, quarter.Quantile(0.76));
        Assert.Equal(0.4, BandDistribution.Of(band, BandShape.Default.WithUnboundedShare(0.4)).Survival(1e12), 12);
    }

    [Fact]
    public void WithoutExpected_HasNoDistribution()
    {
        RatioBand band = RatioBand.AtLeast(10, Stated);
        Assert.Null(BandDistribution.TryOf(band));
        Assert.Throws<InvalidOperationException>(() => BandDistribution.Of(band));
    }

    [Fact]
    public void OneValue_IsAPoint()
    {
        BandDistribution point = BandDistribution.Of(RatioBand.Exactly(5, Stated));
        Assert.Equal(0, point.Cdf(4.999));
        Assert.Equal(1, point.Cdf(5));
        Assert.Equal(5, point.Quantile(0.3));
        Assert.Equal(5, point.Mean);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void Quantile_OutOfRange_NamesRangeAndValue(double p)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => BandDistribution.Of(RatioBand.Exactly(5, Stated)).Quantile(p));
        Assert.Contains("above 0 and below 1", error.Message, StringComparison.Ordinal);
    }
}
