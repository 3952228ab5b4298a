using Driveline.Choosing;
using UnitsNet;

namespace Driveline.Tests.Choosing;

public class BoltHolesTests
{
    [Theory]
    [InlineData(8.0, true, false, "ISO 273: normal hole 9 mm")]
    [InlineData(9.0, true, false, "ISO 273: normal hole 9 mm")]
    [InlineData(9.1, true, true, "wider than 9 mm, no wider than 10 mm")]
    [InlineData(10.0, true, true, "ISO 273: loose hole 10 mm")]
    [InlineData(10.1, false, false, "wider than 10 mm")]
    [InlineData(7.9, true, false, "a caliper in a worn hole reads no finer than 0.1 mm")]
    [InlineData(7.8, false, false, "an M8 does not go through")]
    public void Present_AsMeasured_DecidesWhetherAnM8Fits(double holeMm, bool fits, bool isLoose, string source)
    {
        Assert.NotEmpty(source);
        BoltChoice choice = Choose(BoltHoles.AsFitted.WithPresent(Length.FromMillimeters(holeMm)), "M8, 8.8");
        Assert.Equal(fits && !isLoose, choice.Choices.Count == 1);
        Assert.Equal(!fits, Bench.Codes(choice).Contains(ChoosingFindings.NoneInHole));
        string[] reasons = fits && !isLoose ? [] : [isLoose ? ChoosingFindings.LeftOutLoose : ChoosingFindings.LeftOutHole];
        Assert.Equal(reasons, choice.LeftOut.Select(l => l.Reason.Code));
        if (fits && !isLoose)
        {
            Assert.Equal(holeMm, choice.Choices[0].HoleDiameter.Millimeters, 1e-9);
            Assert.False(choice.Choices[0].NeedsRedrilling);
        }
    }

    [Theory]
    [InlineData("M6, 8.8", false, "hole for an M8: 9 mm; loose hole of an M6: 7 mm")]
    [InlineData("M8, 10.9", true, "the size it was made for")]
    [InlineData("5/16-18 UNC, SAE 5", false, "7.94 mm; normal hole 0.344 in = 8.74 mm: loose in 9 mm")]
    [InlineData("M10, 8.8", false, "does not go through")]
    public void AsFitted_NotMeasured_IsTheHoleOfTheFittedSize(string item, bool fits, string source)
    {
        Assert.NotEmpty(source);
        Assert.Equal(fits, Choose(BoltHoles.AsFitted, item).Choices.Count == 1);
    }

    [Theory]
    [InlineData(6.5, true)]
    [InlineData(6.6, true)]
    [InlineData(6.7, false)]
    [InlineData(5.9, false)]
    public void Redrilled_PermittedHole_LetsAnotherSizeIn(double permittedMm, bool fits)
    {
        // ISO 273: M6 goes through from 6 mm and is loose above 6.6 mm
        BoltChoice choice = Choose(BoltHoles.AsFitted.WithRedrilled(Length.FromMillimeters(permittedMm)), "M6, 8.8");
        Assert.Equal(fits, choice.Choices.Count == 1);
        if (fits)
        {
            Assert.True(choice.Choices[0].NeedsRedrilling);
            Assert.Contains(ChoosingCautions.RedrillOnlyWithMaker, choice.Choices[0].Cautions);
            Assert.Equal(permittedMm, choice.Choices[0].HoleDiameter.Millimeters, 1e-9);
        }
    }

    [Fact]
    public void Redrilled_SeveralFit_TakesTheClosest()
    {
        BoltHoles holes = BoltHoles.AsFitted.WithRedrilled(Length.FromMillimeters(7)).WithRedrilled(Length.FromMillimeters(6.4));
        Assert.Equal(6.4, Choose(holes, "M6, 8.8").Choices[0].HoleDiameter.Millimeters, 1e-9);
        Assert.Equal([7.0, 6.4], holes.Redrilled.Select(h => Math.Round(h.Millimeters, 9)));
    }

    [Fact]
    public void AsFitted_ManualNamesAThickerBolt_LetsThatOneIn()
    {
        // An M8 is in the hole of the M10 that the manual names: an M10 goes through.
        BoltChoice choice = BoltChoice.For(
            Bench.Question(3000, 300).WithSpecified(Bench.Bolt("M10", "8.8", 50)),
                ChoiceTerms.Default.WithStock(Bench.Stock("M10, 8.8", "M8, 8.8")));
        Assert.Equal(["M10 ISO 8.8"], choice.Choices.Select(c => c.Item.Name));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void With_NoDiameter_IsRefused(double mm)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltHoles.AsFitted.WithPresent(Length.FromMillimeters(mm)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltHoles.AsFitted.WithRedrilled(Length.FromMillimeters(mm)));
    }

    private static BoltChoice Choose(BoltHoles holes, params string[] stock) =>
        BoltChoice.For(Bench.Question(3000, 300), ChoiceTerms.Default.WithStock(Bench.Stock(stock)).WithHoles(holes));
}
