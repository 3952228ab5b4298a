using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Fasteners;
using Driveline.Protection;
using Driveline.ShearBolts;
using Driveline.Tests.Cases;
using UnitsNet;

namespace Driveline.Tests.Choosing;

/// <summary>Pins and rods of a stock stand in the ranking beside bolts, or are left out with the reason.</summary>
public class StockPinTests
{
    private const string Head = "sku,designation,grade\n";

    [Fact]
    public void Pin_OfTheStock_HasTheVerdictOfAMachineWithThatPin()
    {
        RankedBolt pin = Of("P,pin 8 x 60,2024-T4", 3000).Choices.Single(c => c.Item.Sku == "P");
        ShearBolt same = ShearBolt.Pin(Length.FromMillimeters(8), FastenerMaterial.Parse("2024-T4", ScrewThread.Parse("M8")));
        ProtectionVerdict fitted = ProtectionCheck.Run(Bench.Question(ShearBoltDevice.Of("shear bolt", Bench.Beside(same, 50)), 3000, 300));
        Assert.Equal(fitted.GuardMargin, pin.GuardMargin);
        Assert.Equal(fitted.WorkMargin, pin.WorkMargin);
        Assert.Equal((fitted.Guards, fitted.Quiet), (pin.Verdict.Guards, pin.Verdict.Quiet));

        // Lowest: 0.9 of 68 ksi (468.8 MPa) is 421.9 MPa, · 0.55 · π/4 · 8² mm² · 50 mm = 583.2 N·m.
        Assert.Equal(583.2, pin.Trip!.Low.NewtonMeters, 0.5);
    }

    [Theory]
    [InlineData("P,pin 8 x 60,1018")]          // a lowest strength only
    [InlineData("P,ISO 8752 8 x 40,")]
    [InlineData("P,M8 x 40,2024 aluminium bolt")]
    public void Pin_WithoutAnUpperEnd_IsNeverOffered(string row)
    {
        BoltChoice choice = BoltChoice.For(
            Bench.Question(3000, 300), ChoiceTerms.Default.WithStock(StockFile.Parse(Head + row + "\nB,M8,8.8").List)
                .WithHoles(BoltHoles.AsFitted.WithPresent(Length.FromMillimeters(8.05))));
        Assert.DoesNotContain(choice.Choices, c => c.Item.Sku == "P");
        LeftOut left = Assert.Single(choice.LeftOut, l => l.Item.Sku == "P");
        Assert.Equal(ChoosingFindings.LeftOutNoUpperEnd, left.Reason.Code);
    }

    [Theory]
    [InlineData("P,ISO 8752 8 x 40,", 8.2, ChoosingFindings.LeftOutLoose)]      // its spring holds it in a hole of 8 mm alone
    [InlineData("P,pin 6 x 40,6061-T6", 8.2, ChoosingFindings.LeftOutHole)]     // coarse hole of M6: 7 mm
    [InlineData("P,pin 8.5 x 40,6061-T6", 8.2, ChoosingFindings.LeftOutHole)]   // thicker than the hole
    [InlineData("P,pin 8 x 40,6061-T6", 9.5, ChoosingFindings.LeftOutLoose)]    // medium hole of M8: 9 mm
    public void Pin_ThatDoesNotSitInTheHole_IsLeftOut(string row, double holeMm, string code)
    {
        ChoiceTerms terms = ChoiceTerms.Default.WithStock(StockFile.Parse(Head + row).List)
            .WithHoles(BoltHoles.AsFitted.WithPresent(Length.FromMillimeters(holeMm)));
        BoltChoice choice = BoltChoice.For(Bench.Question(3000, 300), terms);
        Assert.Empty(choice.Choices);
        Assert.Equal(code, Assert.Single(choice.LeftOut).Reason.Code);
    }

    [Fact]
    public void Pin_ThatTheManualNames_StandsApartAndIsTheFittedOne()
    {
        ProtectionQuestion question = DemoCases.Verdict("saltmere-spreader-pin").Question;
        BoltChoice choice = BoltChoice.For(
            question, ChoiceTerms.Default.WithStock(StockFile.Parse(Head + "P,pin 8 x 50,HRC 28\nQ,pin 8 x 50,6061-T6").List));
        Assert.Equal("P", choice.Manuals!.Item.Sku);
        Assert.True(choice.IsManualsInStock);
        Assert.True(choice.Manuals is { IsFitted: true, IsSpecified: true, IsStrongerThanSpecified: false });
        Assert.False(choice.Choices.Single(c => c.Item.Sku == "Q").IsSpecified);
        Assert.Null(BoltChoice.For(question).IsManualsInStock);      // usual shops are listed by their bolts
    }

    [Fact]
    public void Pin_OfAText_IsReadBesideBolts()
    {
        StockList list = StockList.Parse("3/8 rod, 6061-T6, 0.80; M10, 8.8");
        Assert.Equal(["pin 3/8 in 6061-T6 aluminium rod", "M10 ISO 8.8"], list.Items.Select(i => i.Name));
        Assert.Equal(0.8, list.Items[0].Price);
    }

    [Fact]
    public void Special_WithANeck_IsNoStock() => Assert.Throws<ArgumentException>(() => StockItem.Of(
        ShearBolt.Of(ScrewThread.Parse("M8"), BoltGrade.Parse("8.8")).With(PlaneThrough.Neck)));

    private static BoltChoice Of(string row, double tubeNm) => BoltChoice.For(
        Bench.Question(tubeNm, 300), ChoiceTerms.Default.WithStock(StockFile.Parse(Head + row + "\nB,M8,8.8").List));
}
