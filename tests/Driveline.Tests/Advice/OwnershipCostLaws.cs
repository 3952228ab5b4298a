using Driveline.Advice;
using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Advice;

public class OwnershipCostLaws
{
    private static readonly Basis Stated = Basis.Given("the test");

    [Law(MaxTest = 150)]
    public void Cost_RaisingAnyOneInput_NeverLowersIt(int seed, byte which)
    {
        int raised = which % 12;
        double[] plain = Inputs(seed, -1);
        double[] more = Inputs(seed, raised);
        CostEstimate before = Cost(plain);
        CostEstimate after = Cost(more);
        Assert.True(after.Expected > before.Expected, "input " + raised);
        Assert.True(after.High >= before.High, "input " + raised);
        Assert.True(before.Low <= before.Expected && before.Expected <= before.High);
    }

    // Every input is above 0, so that each one has to show in the cost. The failure share stays below 1.
    private static double[] Inputs(int seed, int raised)
    {
        var random = new Random(seed);
        var values = new double[12];
        for (int k = 0; k < values.Length; k++)
        {
            double value = Math.Exp((random.NextDouble() * 4) - 1);
            values[k] = k == 10 ? Math.Min(0.4, value / 50) : value;
            values[k] *= k == raised ? 1.5 : 1;
        }

        return values;
    }

    private static CostEstimate Cost(double[] v)
    {
        OwnershipTerms terms = OwnershipTerms.Of("EUR", 7, 0.04).WithHourOfWork(Money(v[0])).WithHourOfDowntime(Money(v[1]));
        OwnershipOption option = OwnershipOption.Of("any", OptionKind.OtherBolt)
            .WithOutlay(Money(v[2]))
            .WithBreaks(Ratio(v[3]), Money(v[4]), Ratio(v[5]))
            .WithYearlyService(Money(v[6]), Ratio(v[7]))
            .WithFacings(Money(v[8]), Ratio(v[9]))
            .WithOverloads(Ratio(v[11]), RatioBand.Exactly(v[10], Stated), Money(100))
            .WithSlipCare(SlipCare.Sometimes, StorageClimate.Dry);
        return OwnershipCost.Of(option, terms).Total;
    }

    private static MoneyBand Money(double value) => MoneyBand.Between(value * 0.8, value, value * 1.3, Stated);

    private static RatioBand Ratio(double value) => RatioBand.Between(value * 0.8, value, value * 1.3, Stated);
}
