using Driveline.Advice;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Advice;

public class TradePracticeTests
{
    [Fact]
    public void Rows_AreCommonPractice_NeverMore() =>
        Assert.All(TradePractice.All, row => Assert.Equal(BasisKind.CommonPractice, row.Basis.Kind));

    [Fact]
    public void ClutchPremium_AgainstThroughShaftBreaks_WorkedCase_Matches()
    {
        // A through-shaft change of 45 min at 30 an hour plus a bolt of 3 costs 25.5; undiscounted, 550 / 25.5 = 21.57 breaks.
        var stated = Basis.Given("the test");
        OwnershipTerms terms = OwnershipTerms.Of("USD", 1, 0).WithHourOfWork(MoneyBand.Exactly(30, stated));
        MoneyBand premium = MoneyBand.Between(
            TradePractice.ClutchPremiumFrom.Value, 550, TradePractice.ClutchPremiumTo.Value, TradePractice.ClutchPremiumFrom.Basis);
        OwnershipCost bolt = OwnershipCost.Of(
            OwnershipOption.Of("bolt", OptionKind.SameBolt)
                .WithBreaks(RatioBand.Exactly(1, stated), MoneyBand.Exactly(3, stated), BoltAccess.ThroughShaftAtGearbox), terms);
        OwnershipCost clutch = OwnershipCost.Of(OwnershipOption.Of("clutch", OptionKind.Clutch).WithOutlay(premium), terms);
        Assert.Equal(21.5686, bolt.BreakEvenBreaksPerYear(clutch)!.Value, 4);
        // Fewest: the dearest change, 120 min at 30 plus 3 = 63, against the cheapest premium: 500 / 63 = 7.94.
        Assert.Equal(7.9365, bolt.FewestBreakEvenBreaksPerYear(clutch)!.Value, 4);
    }
}
