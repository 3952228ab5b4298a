using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Choosing;

namespace Driveline.Tests.Cases;

public class CaseChoiceTests
{
    [Fact]
    public void TermsOf_CaseThatSaysNothing_TakesTheUsualStockAndTheHoleAsItIs()
    {
        ChoiceTerms terms = CaseChoice.TermsOf(CaseReaderTests.ReadGood(Sample.BrushCutter));
        Assert.Same(StockList.Usual, terms.Stock);
        Assert.Null(terms.Holes.Present);
        Assert.Empty(terms.Holes.Redrilled);
        Assert.Null(terms.Device);
    }

    [Fact]
    public void TermsOf_StockAndHoles_AreTaken()
    {
        CaseFile file = CaseReaderTests.ReadGood(Sample.BrushCutter
            .Replace("\"thread\": \"1/2-13 UNC\", \"grade\": \"SAE 2\", \"layout\"",
                "\"thread\": \"1/2-13 UNC\", \"grade\": \"SAE 2\", \"holeDiameter\": \"13.1 mm\", \"permittedHole\": \"3/8 in\", "
                    + "\"layout\"", StringComparison.Ordinal)
            .Replace("\"partsComplete\"", "\"stock\": \"1/2-13 UNC, SAE 5, 0.8; 3/8-16 UNC, SAE 5\", \"partsComplete\"",
                StringComparison.Ordinal));
        ChoiceTerms terms = CaseChoice.TermsOf(file);
        Assert.Equal(["1/2-13 UNC SAE 5", "3/8-16 UNC SAE 5"], terms.Stock.Items.Select(i => i.Name));
        Assert.Equal(0.8, terms.Stock.Items[0].Price);
        Assert.Equal(13.1, terms.Holes.Present!.Value.Millimeters, 1e-9);
        Assert.Equal(9.525, Assert.Single(terms.Holes.Redrilled).Millimeters, 1e-9);
    }

    [Fact]
    public void TermsOf_NamedBoltInABranch_TakesItsHole()
    {
        CaseFile file = CaseReaderTests.ReadGood("""
            { "driveline": [
              { "shearBolt": { "name": "main bolt", "thread": "M10", "grade": "8.8", "layout": "tangential", "radius": "50 mm",
                "holeDiameter": "11 mm" } },
              { "branch": "auger", "powerShare": 0.3, "driveline": [
                { "shearBolt": { "name": "auger bolt", "thread": "M8", "grade": "8.8", "layout": "tangential", "radius": "50 mm",
                  "holeDiameter": "9 mm" } } ] } ] }
            """);
        Assert.Equal(11, CaseChoice.TermsOf(file).Holes.Present!.Value.Millimeters, 1e-9);
        Assert.Equal(9, CaseChoice.TermsOf(file, "auger bolt").Holes.Present!.Value.Millimeters, 1e-9);
        Assert.Null(CaseChoice.TermsOf(file, "no such bolt").Holes.Present);
    }

    [Fact]
    public void SettingsOf_KnownCase_GivesAWindowAroundTheBestAndItsTurns()
    {
        ClutchChoice choice = Assert.Single(DemoCases.Settings("dunmarsh-clutch-never-slipped"));
        Assert.Equal("slip clutch", choice.Place.Name);
        Assert.True(choice.Window!.Holds(choice.Best!.Torque));
        Assert.InRange(choice.Window.Lowest.WorkMargin!.Value, 1, 1.0001);

        // hand: run in, the linings bear 7 bar at their inner edge: F = 700 kPa × 2π × 50 mm × 32.5 mm = 7147 N, over 8 × 150 N/mm 5.956 mm
        Assert.True(choice.Window.Highest.GuardMargin > 1);
        Assert.Equal(40 - 5.956, choice.Window.Highest.SpringLength.Millimeters, 0.05);

        // hand: 40 mm free less turns of 1.5 mm
        Assert.Equal(40, choice.Best.SpringLength.Millimeters + (1.5 * choice.NutTurns(choice.Best)!.Value), 1e-9);

        // the manual's 650 N·m lies inside
        Assert.DoesNotContain(choice.Findings, f => f.Code == ChoosingFindings.SettingNotTheManuals);
    }

    [Theory]
    [InlineData("dunmarsh-clutch-rusted", ChoosingFindings.SettingNeedsFreeClutch)]
    [InlineData("wickerby-clutch-oiled", ChoosingFindings.MendOiled)]
    [InlineData("wickerby-clutch-too-hot", ChoosingFindings.MendTooHot)]
    [InlineData("wickerby-clutch-coil-bound", ChoosingFindings.MendSolid)]
    [InlineData("thornbeck-bolt-right", null)]
    public void SettingsOf_StuckOrNoClutch_OffersNone(string name, string? code)
    {
        IReadOnlyList<ClutchChoice> choices = DemoCases.Settings(name);
        Assert.All(choices, c => Assert.True(c is { Window: null, Best: null }));
        Assert.Equal(code, choices.SingleOrDefault()?.Findings[0].Code);
    }

    [Fact]
    public void SettingsOf_AnyDemo_PressesNoLiningAboveItsLimit() => Assert.All(
        DemoCases.Names.SelectMany(n => DemoCases.Settings(n)).Where(c => c.Window is not null),
        c => Assert.All(
            new[] { c.Window!.Lowest, c.Window.Highest, c.Best! },
            p => Assert.DoesNotContain(p.Slip.Findings, f => f.Code == Driveline.Clutches.ClutchFindings.FacingPressureHigh)));

    [Fact]
    public void SettingsOf_SeveralClutches_AreInOrderEachInItsPlace()
    {
        CaseFile file = CaseReaderTests.ReadGood("""
            { "driveline": [
              { "slipClutch": { "name": "main clutch", "threadPitch": "1.5 mm" } },
              { "branch": "auger", "powerShare": 0.3, "driveline": [ { "slipClutch": { "name": "auger clutch" } } ] },
              { "slipClutch": { "name": "rear clutch" } } ] }
            """);
        IReadOnlyList<ClutchChoice> choices = CaseChoice.SettingsOf(file);
        Assert.Equal(["main clutch", "auger clutch", "rear clutch"], choices.Select(c => c.Place.Name));
        Assert.Equal([true, false, false], choices.Select(c => c.ThreadPitch is not null));
        Assert.All(choices, c => Assert.Equal(ChoosingFindings.SettingNeedsClutch, c.Findings[0].Code));
        Assert.All(choices, c => Assert.Equal(c.Place.Name, c.Findings[0].Parameter("name")!.Text));
    }

    [Theory]
    [InlineData("{ \"shaft\": \"a\" }", false)]
    [InlineData("{ \"cutOut\": { \"kind\": \"cam\" } }", false)]
    [InlineData("{ \"shearBolt\": { \"thread\": \"M8\" } }", true)]
    [InlineData("{ \"slipClutch\": { \"faces\": 2 } }", true)]
    [InlineData("{ \"branch\": \"b\", \"powerShare\": 0.3, \"driveline\": [ { \"slipClutch\": { \"faces\": 2 } } ] }", true)]
    public void HasAnyToChoose_BoltOrClutchAnywhere(string element, bool expected) =>
        Assert.Equal(expected, CaseChoice.HasAnyToChoose(CaseReaderTests.ReadGood("{ \"driveline\": [ " + element + " ] }")));

    [Theory]
    [InlineData("9.8 mm", true, "a caliper may read 2 % too little")]
    [InlineData("9.79 mm", false, "an M10 does not go through")]
    public void Read_HoleNarrowerThanItsBolt_IsAContradiction(string hole, bool isRead, string reason)
    {
        Assert.NotEmpty(reason);
        string json = "{ \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10\", \"holeDiameter\": \"" + hole + "\" } } ] }";
        if (isRead)
        {
            CaseReaderTests.ReadGood(json);
            return;
        }

        CaseError error = CaseReaderTests.ReadOneError(json);
        Assert.Equal("driveline[0].shearBolt.holeDiameter", error.Path);
        Assert.Equal(CaseErrorKind.Contradiction, error.Kind);
    }

    [Theory]
    [InlineData("M10", "a thread, a grade")]
    [InlineData("M10, 8.8, cheap", "cheap")]
    [InlineData("M10, 8.8; M10, 8.8", "twice")]
    public void Read_BadStock_IsRefusedAtItsPath(string stock, string words)
    {
        CaseError error = CaseReaderTests.ReadOneError("{ \"stock\": \"" + stock + "\" }");
        Assert.Equal("stock", error.Path);
        Assert.Contains(words, error.ToString(), StringComparison.Ordinal);
    }
}
