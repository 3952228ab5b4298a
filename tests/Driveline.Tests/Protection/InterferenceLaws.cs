using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Protection;

public class InterferenceLaws
{
    [Law(MaxTest = 60)]
    public void LoadOverStrength_AndStrengthOverLoad_AddToOne(int seed)
    {
        var random = new Random(seed);
        BandDistribution a = Any(random);
        BandDistribution b = Any(random);
        Assert.Equal(1, Interference.Of(a, b).Value + Interference.Of(b, a).Value, 1e-7);
    }

    [Law(MaxTest = 60)]
    public void StrongerStrength_NeverRaisesTheProbability(int seed, byte percent)
    {
        var random = new Random(seed);
        BandDistribution load = Any(random);
        double[] ends = Ends(random);
        double factor = 1 + (percent / 100.0);
        Assert.True(
            Interference.Of(load, Of(ends, factor)).Value <= Interference.Of(load, Of(ends, 1)).Value + 1e-9);
    }

    [Law(MaxTest = 60)]
    public void Quantile_IsTheInverseOfCdf_AndSurvivalItsComplement(int seed, byte k)
    {
        BandDistribution band = Any(new Random(seed));
        double p = (k + 0.5) / 256;
        double x = band.Quantile(p);
        Assert.Equal(p, band.Cdf(x), 1e-9);
        Assert.Equal(1, band.Cdf(x) + band.Survival(x), 1e-12);
    }

    [Law(MaxTest = 40)]
    public void FirstToAct_ProbabilitiesAddToOne(int seed)
    {
        var random = new Random(seed);
        FirstToAct first = FirstToAct.Among(Any(random), Any(random), Any(random));
        Assert.Equal(1, first.Devices.Sum(d => d.Value) + first.None.Value, 1e-7);
    }

    [Law(MaxTest = 40)]
    public void MorePeaks_NeverLowerTheProbability(int seed)
    {
        var random = new Random(seed);
        BandDistribution load = Any(random);
        BandDistribution strength = Any(random);
        double few = Interference.Of(load, strength, 5).Value;
        double many = Interference.Of(load, strength, 50).Value;
        Assert.True(many >= few - 1e-12);
        Assert.True(few <= 1 - Math.Pow(1 - Interference.Of(load, strength).Value, 5) + 1e-9);
    }

    private static BandDistribution Any(Random random) => Of(Ends(random), 1, random.Next(2) == 0);

    private static double[] Ends(Random random)
    {
        double low = 1000 * Math.Exp((random.NextDouble() - 0.5) * 0.8);
        double expected = low * (1.01 + (random.NextDouble() * 0.3));
        return [low, expected, expected * (1.01 + (random.NextDouble() * 0.3))];
    }

    private static BandDistribution Of(double[] ends, double factor, bool isInterval = false)
    {
        Basis stated = Basis.Given("the test");
        BandEnd end = isInterval ? BandEnd.Interval95 : BandEnd.Limit;
        return BandDistribution.Of(RatioBand.Between(
            ends[0] * factor, ends[1] * factor, ends[2] * factor, new BandBasis(stated, stated, stated, end, end)));
    }
}
