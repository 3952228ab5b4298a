using Driveline.Advice;
using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Advice;

public class OwnershipCostTests
{
    private static readonly Basis Stated = Basis.Given("the test");
    private static readonly OwnershipTerms Terms = OwnershipTerms.Of("USD", 3, 0.05).WithHourOfWork(Money(30))
        .WithHourOfDowntime(Money(20));

    [Fact]
    public void Bolt_WorkedCase_Matches()
    {
        // 12 breaks × (3 + 30/60 × (30 + 20)) = 12 × 28 = 336 a year; annuity at 5 % over 3 years
        // 0.952381 + 0.907029 + 0.863838 = 2.723248: 915.01.
        OwnershipOption bolt = OwnershipOption.Of("same bolt", OptionKind.SameBolt).WithBreaks(Ratio(12), Money(3), Ratio(30));
        Assert.Equal(915.011, OwnershipCost.Of(bolt, Terms).Total.Expected!.Value, 3);
    }

    [Fact]
    public void Clutch_NeverSlipped_CarriesTheDamageOfAStuckOne()
    {
        // 550 now; 2 overloads a year × 800 × stuck (0.25, 0.4375, 0.578125), discounted:
        // 1600 × (0.25 × 0.952381 + 0.4375 × 0.907029 + 0.578125 × 0.863838) = 1600 × 1.134327 = 1814.92.
        OwnershipCost cost = OwnershipCost.Of(Clutch(SlipCare.Never), Terms);
        Assert.Equal(550 + 1814.92, cost.Total.Expected!.Value, 1);
        Assert.Equal(0.578125, cost.StuckInLastYear!.Value, 9);
        Assert.Equal(BasisKind.FromMemory, cost.Total.Basis.Kind);
        Assert.True(OwnershipCost.Of(Clutch(SlipCare.EveryYear), Terms).Total.Expected < cost.Total.Expected);
    }

    [Fact]
    public void HabitNotKnown_CostsAsMuchAsNever() =>
        Assert.Equal(
            OwnershipCost.Of(Clutch(SlipCare.Never), Terms).Total.Expected,
            OwnershipCost.Of(Clutch(SlipCare.NotKnown), Terms).Total.Expected);

    [Fact]
    public void BreakEven_WorkedCase_Matches()
    {
        // A break costs 28 × 2.723248 = 76.2509 over the years. A clutch at 550 with no other cost: 550 / 76.2509 = 7.213 breaks a year.
        OwnershipCost bolt = OwnershipCost.Of(
            OwnershipOption.Of("bolt", OptionKind.SameBolt).WithBreaks(Ratio(12), Money(3), Ratio(30)), Terms);
        OwnershipCost clutch = OwnershipCost.Of(OwnershipOption.Of("clutch", OptionKind.Clutch).WithOutlay(Money(550)), Terms);
        Assert.Equal(7.2130, bolt.BreakEvenBreaksPerYear(clutch)!.Value, 4);
        Assert.Null(clutch.BreakEvenBreaksPerYear(bolt));      // a clutch has no cost per break
        OwnershipCost free = OwnershipCost.Of(OwnershipOption.Of("gift", OptionKind.TradeIn), Terms);
        Assert.Equal(0, bolt.BreakEvenBreaksPerYear(free));
    }

    [Fact]
    public void BreakEven_AtThatNumberOfBreaks_CostsTheSame()
    {
        OwnershipOption bolt = OwnershipOption.Of("bolt", OptionKind.SameBolt)
            .WithBreaks(Ratio(1), Money(3), BoltAccess.ThroughShaftAtGearbox);
        OwnershipCost clutch = OwnershipCost.Of(Clutch(SlipCare.EveryYear), Terms);
        double breaks = OwnershipCost.Of(bolt, Terms).BreakEvenBreaksPerYear(clutch)!.Value;
        OwnershipCost at = OwnershipCost.Of(bolt.WithBreaks(Ratio(breaks), Money(3), BoltAccess.ThroughShaftAtGearbox), Terms);
        Assert.Equal(clutch.Total.Expected!.Value, at.Total.Expected!.Value, 6);
    }

    [Fact]
    public void UnknownPrice_LeavesTheCostOpen()
    {
        OwnershipOption option = OwnershipOption.Of("kit", OptionKind.Clutch).WithOutlay(MoneyBand.AtLeast(400, Stated));
        CostEstimate total = OwnershipCost.Of(option, Terms).Total;
        Assert.Equal(400, total.Low);
        Assert.Null(total.Expected);
        Assert.Null(total.High);
        Assert.Equal("kit", OwnershipCost.Ranked(Terms, option, Clutch(SlipCare.Never))[1].Option.Name);
    }

    [Fact]
    public void TradeIn_ProceedsMayExceedTheOutlay()
    {
        OwnershipOption option = OwnershipOption.Of("sell", OptionKind.TradeIn).WithOutlay(Money(1000))
            .WithProceeds(MoneyBand.Between(900, 1200, 1500, Stated));
        CostEstimate total = OwnershipCost.Of(option, Terms).Total;
        Assert.Equal(-500, total.Low);
        Assert.Equal(-200, total.Expected);
        Assert.Equal(100, total.High);
    }

    [Theory]
    [InlineData(0, 1.01)]
    [InlineData(0, -0.01)]
    public void Share_OutOfRange_IsRefused(double low, double high) => Assert.Throws<ArgumentOutOfRangeException>(() =>
        OwnershipOption.Of("x", OptionKind.SameBolt)
            .WithOverloads(Ratio(1), RatioBand.Between(low, Math.Max(low, high), high, Stated), Money(1)));

    [Fact]
    public void ThroughShaft_TakesLongerThanYoke() =>
        Assert.True(ChangeTime.Minutes(BoltAccess.ThroughShaftAtGearbox).Low >= ChangeTime.Minutes(BoltAccess.YokeInReach).High);

    private static OwnershipOption Clutch(SlipCare care) => OwnershipOption.Of("clutch", OptionKind.Clutch)
        .WithOutlay(Money(550)).WithOverloads(Ratio(2), Ratio(0), Money(800)).WithSlipCare(care, StorageClimate.Moist);

    private static MoneyBand Money(double amount) => MoneyBand.Exactly(amount, Stated);

    private static RatioBand Ratio(double value) => RatioBand.Exactly(value, Stated);
}
