using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Protection;

public class InterferenceTests
{
    private static readonly Basis Stated = Basis.Given("the test");

    [Theory]
    [InlineData(1000, 1000, 1, "a tie counts as reached: the worse outcome in both uses")]
    [InlineData(999.9, 1000, 0, "just below")]
    [InlineData(1000.1, 1000, 1, "just above")]
    public void Points_CompareAsNumbersDo(double load, double strength, double expected, string why) =>
        Assert.True(Interference.Of(Exactly(load), Exactly(strength)).Value.Equals(expected), why);

    [Fact]
    public void UniformLoadAndStrength_WorkedCase_Matches()
    {
        // λ = 0 makes bands uniform. Load on [0, 2], strength on [1, 3]: P(L ≥ S) = ½ · (1/2)² · ... area of the triangle
        // L from 1 to 2, S from 1 to L: ∫(L − 1) dL = 1/2 of 4 equally likely unit squares = 1/8.
        BandShape uniform = BandShape.Default.WithWeight(0);
        BandDistribution load = BandDistribution.Of(RatioBand.Between(0, 1, 2, Stated), uniform);
        BandDistribution strength = BandDistribution.Of(RatioBand.Between(1, 2, 3, Stated), uniform);
        Assert.Equal(0.125, Interference.Of(load, strength).Value, 12);
    }

    [Fact]
    public void SharesWithoutBound_Count()
    {
        BandDistribution trip = BandDistribution.Of(RatioBand.OfSi(new Band(10, 10, double.PositiveInfinity), BandBasis.Of(Stated)));
        Assert.Equal(0.25, Interference.Of(trip, Exactly(20)).Value, 12);   // an unbounded trip never saves a part of 20
        Assert.Equal(0.75, Interference.Of(Exactly(20), trip).Value, 12);   // a load of 20 trips only the bounded share
    }

    [Theory]
    [InlineData(700, 850, 1000, 900, 1100, 1500, 7)]
    [InlineData(500, 800, 1200, 700, 900, 1000, 11)]
    [InlineData(100, 900, 1000, 800, 850, 2000, 13)]
    public void Bands_QuadratureAgreesWithSampling(double l1, double l2, double l3, double s1, double s2, double s3, int seed)
    {
        var intervals = new BandBasis(Stated, Stated, Stated, BandEnd.Interval95, BandEnd.Interval95);
        BandDistribution load = BandDistribution.Of(RatioBand.Between(l1, l2, l3, intervals));
        BandDistribution strength = BandDistribution.Of(RatioBand.Between(s1, s2, s3, Stated));
        double p = Interference.Of(load, strength).Value;
        var random = new Random(seed);
        const int Count = 20_000;
        int reached = 0;
        for (int k = 0; k < Count; k++)
        {
            reached += load.Quantile(Inner(random)) >= strength.Quantile(Inner(random)) ? 1 : 0;
        }

        // Five standard errors of the sampled share, plus one count.
        double tolerance = (5 * Math.Sqrt(p * (1 - p) / Count)) + (1.0 / Count);
        Assert.InRange((double)reached / Count, p - tolerance, p + tolerance);
        Assert.InRange(p, 0.0001, 0.9);
    }

    [Fact]
    public void RepeatedPeaksOnOneSpecimen_TripLessThanIndependentOnes()
    {
        BandDistribution load = BandDistribution.Of(RatioBand.Between(700, 850, 1000, Stated));
        BandDistribution strength = BandDistribution.Of(RatioBand.Between(900, 1100, 1500, Stated));
        double one = Interference.Of(load, strength).Value;
        double shared = Interference.Of(load, strength, 1000).Value;
        Assert.InRange(shared, one, 0.5 * (1 - Math.Pow(1 - one, 1000)));
        // Never more than the share of specimens weaker than the highest peak, 1000.
        Assert.True(shared <= strength.Cdf(1000));
        Assert.Equal(strength.Cdf(1000), Interference.Of(load, strength, 10_000_000_000_000).Value, 4);
        Assert.Equal(0, Interference.Of(load, strength, 0).Value);
    }

    [Fact]
    public void RepeatedPeaks_AgreeWithSampling()
    {
        BandDistribution load = BandDistribution.Of(RatioBand.Between(700, 850, 1000, Stated));
        BandDistribution strength = BandDistribution.Of(RatioBand.Between(800, 950, 1200, Stated));
        var random = new Random(3);
        const int Count = 10_000;
        int reached = 0;
        for (int k = 0; k < Count; k++)
        {
            double s = strength.Quantile(Inner(random));
            // The highest of 20 peaks has the distribution F²⁰: sampled by F⁻¹(u^(1/20)).
            reached += load.Quantile(Math.Pow(Inner(random), 1.0 / 20)) >= s ? 1 : 0;
        }

        double p = Interference.Of(load, strength, 20).Value;
        double tolerance = 5 * Math.Sqrt(p * (1 - p) / Count);
        Assert.InRange((double)reached / Count, p - tolerance, p + tolerance);
    }

    [Theory]
    [InlineData(0.0004, "< 0.001")]
    [InlineData(0, "< 0.001")]
    [InlineData(0.001, "0.001")]
    [InlineData(0.25, "0.25")]
    [InlineData(1, "> 0.999")]
    public void Probability_Shown_IsNeverZeroOrOne(double value, string expected) =>
        Assert.Equal(expected, Probability.Of(value, Stated).ToString());

    [Fact]
    public void DesignFactor_TooWideAScatter_SaysSo()
    {
        // z(0.001) = 3.090: at C_S = 0.33 the product exceeds 1 and no ratio is enough.
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => NormalInterference.DesignFactor(0.1, 0.33, 0.001));
        Assert.Contains("below 0.3236", error.Message, StringComparison.Ordinal);
    }

    private static BandDistribution Exactly(double value) => BandDistribution.Of(RatioBand.Exactly(value, Stated));

    private static double Inner(Random random) => Math.Min(1 - 1e-12, Math.Max(1e-12, random.NextDouble()));
}
