using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Fasteners;
using Driveline.Protection;
using Driveline.ShearBolts;
using Driveline.Tests.Cases;
using UnitsNet;

namespace Driveline.Tests.Choosing;

/// <summary>The manual's bolt comes first, and nothing stronger is ever shown as the better one.</summary>
public class ManualsBoltTests
{
    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Choices_AnyDemo_NothingStrongerStandsAboveWhatIsNot(string name)
    {
        BoltChoice choice = Of(name);
        Assert.Equal(choice.Choices.Select(c => c.IsStrongerThanSpecified == true).Order(),
            choice.Choices.Select(c => c.IsStrongerThanSpecified == true));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Choices_AnyDemo_NoBoltThatDoesNotProtectStandsAboveOneThatMay(string name)
    {
        foreach (IGrouping<bool, RankedBolt> block in Of(name).Choices.GroupBy(c => c.IsStrongerThanSpecified == true))
        {
            Assert.Equal(block.Select(c => c.Verdict.Guards == Answer.No).Order(), block.Select(c => c.Verdict.Guards == Answer.No));
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Best_AnyDemo_LeavesRoomAndIsNoStrongerThanSpecified(string name)
    {
        if (Of(name).Best is { } best)
        {
            Assert.True(best.LeavesRoom);
            Assert.False(best.IsLoose);
            Assert.Equal(false, best.IsStrongerThanSpecified);
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void LeftOut_AnyDemo_WithTheRankingIsTheStock(string name)
    {
        BoltChoice choice = Of(name);
        if (choice.Place is not null)
        {
            Assert.Equal(choice.Terms.Stock.Items.Count, choice.Choices.Count + choice.LeftOut.Count);
            Assert.All(choice.Choices, c => Assert.False(c.IsLoose));
            Assert.All(choice.LeftOut, l => Assert.DoesNotContain(choice.Choices, c => ReferenceEquals(c.Item, l.Item)));
        }
    }

    [Fact]
    public void For_FittedCutThroughItsThread_AHigherGradeThanTheManualsIsStronger()
    {
        // The manual's SAE 5 is cut through the shank, what is fitted through the thread: SAE 8 in that thread holds less than SAE 5 in
        // its shank, and is a stronger bolt all the same.
        BoltChoice choice = Of("thornbeck-too-soft");
        RankedBolt strong = choice.Choices.Single(c => SaeJ429.Grade8.Equals(c.Grade));
        Assert.Equal(true, strong.IsStrongerThanSpecified);
        Assert.Contains(ChoosingCautions.OnlyTheManual, strong.Cautions);
        Assert.Same(strong, choice.Choices[^1]);
        Assert.Equal("3/8-16 UNC SAE 5", choice.Manuals!.Item.Name);
        Assert.False(choice.Manuals.IsFitted);
    }

    [Theory]
    [InlineData("M10, 8.8", true, "thicker, same grade")]
    [InlineData("M8, 10.9", true, "same size, higher grade")]
    [InlineData("M8, 8.8", false, "the manual's own")]
    [InlineData("M8, 4.6", false, "same size, lower grade")]
    [InlineData("5/16-18 UNC, SAE 5", false, "7.94 mm and 120 ksi = 827 MPa for 8 mm and 800 MPa: stands for it")]
    public void IsStrongerThanSpecified_ManualsCutThroughShankFittedThroughThread_ComparesLikeWithLike(
        string item, bool isStronger, string why)
    {
        Assert.NotEmpty(why);
        ShearBoltJoint threaded = Bench.Beside(ShearBolt.Of(ScrewThread.Parse("M8"), BoltGrade.Parse("8.8")).With(PlaneThrough.Thread), 50);
        BoltChoice choice = BoltChoice.For(
            Bench.Question(ShearBoltDevice.Of("shear bolt", threaded), 3000, 300),
            ChoiceTerms.Default.WithStock(Bench.Stock(item))
                .WithHoles(BoltHoles.AsFitted.WithPresent(Length.FromMillimeters(8.5)).WithRedrilled(Length.FromMillimeters(10.5))));
        Assert.Equal(isStronger, Assert.Single(choice.Choices).IsStrongerThanSpecified);
    }

    [Fact]
    public void For_StockWithoutTheManualsBolt_ShowsItAllTheSameAndSaysSo()
    {
        BoltChoice choice = BoltChoice.For(Bench.Question(3000, 300), ChoiceTerms.Default.WithStock(Bench.Stock("M8, 4.6", "M8, 10.9")));
        Assert.Equal(Bench.Fitted, choice.Manuals!.Item.Name);
        Assert.Equal(false, choice.IsManualsInStock);
        Assert.Equal(Bench.Fitted, choice.Findings.Single(f => f.Code == ChoosingFindings.ManualsNotInStock).Parameter("bolt")!.Text);
        Assert.Equal(["M8 ISO 4.6", "M8 ISO 10.9"], choice.Choices.Select(c => c.Item.Name));
    }

    [Fact]
    public void For_ManualNotStated_SaysSoAndNamesNoBest()
    {
        BoltChoice choice = BoltChoice.For(Bench.Question(3000, 300).WithSpecified(null));
        Assert.Null(choice.Manuals);
        Assert.Null(choice.IsManualsInStock);
        Assert.Null(choice.Best);
        Assert.Contains(ChoosingFindings.ManualsNotStated, Bench.Codes(choice));
        Assert.Contains(choice.Choices, c => c.LeavesRoom);
        Assert.Contains(ChoosingFindings.RoomNeedsConsent, Bench.Codes(choice));
    }

    [Fact]
    public void For_StrongerBoltThatDoesNotProtect_StandsBelowTheManuals()
    {
        // A cutter whose manual names the soft bolt it has, and a metric 8.8 with the better of the worse margins.
        BoltChoice choice = BoltChoice.For(
            Bench.Question(Bench.Bolt("1/2-13 UNC", "SAE 2", 15.875), 700, 200).WithSpecified(Bench.Bolt("1/2-13 UNC", "SAE 2", 15.875)),
            ChoiceTerms.Default.WithStock(Bench.Stock("1/2-13 UNC, SAE 2", "1/2-13 UNC, SAE 5", "1/2-13 UNC, SAE 8")));
        Assert.Equal("1/2-13 UNC SAE 2", choice.Choices[0].Item.Name);
        Assert.True(choice.Choices[0].IsSpecified);
        Assert.Equal([false, true, true], choice.Choices.Select(c => c.IsStrongerThanSpecified == true));
    }

    [Fact]
    public void For_BoltLooseInItsHole_IsLeftOutWithTheReason()
    {
        // ISO 273: the normal hole of an M8 is 9 mm, its loose one 10 mm
        BoltChoice choice = BoltChoice.For(
            Bench.Question(3000, 300),
            ChoiceTerms.Default.WithStock(Bench.Stock("M8, 8.8", "M6, 8.8"))
                .WithHoles(BoltHoles.AsFitted.WithPresent(Length.FromMillimeters(9.5))));
        Assert.Empty(choice.Choices);
        Assert.Equal([ChoosingFindings.LeftOutLoose, ChoosingFindings.LeftOutHole], choice.LeftOut.Select(l => l.Reason.Code));
        Assert.Equal(9.5, choice.LeftOut[0].Reason.Value("diameter") * 1000, 1e-9);
        Assert.Equal(9, choice.LeftOut[0].Reason.Value("normal") * 1000, 1e-9);
        Assert.True(choice.Manuals!.IsLoose);
        Assert.Contains(ChoosingCautions.LooseInHole, choice.Manuals.Cautions);
    }

    [Fact]
    public void NeighbourGrades_ManualsTwoGradesAway_HoldItsRow()
    {
        // Fitted SAE 8, the manual's SAE 2: the next grade is SAE 5 only.
        IReadOnlyList<NeighbourGrade> grades = DemoCases.Verdict("thornbeck-too-strong").NeighbourGrades;
        NeighbourGrade manuals = Assert.Single(grades, g => g.IsSpecified);
        Assert.Contains("SAE 2", manuals.Grade, StringComparison.Ordinal);
        Assert.False(manuals.IsStronger);
        Assert.True(grades.Count > 1);
    }

    private static BoltChoice Of(string demo) => DemoCases.ChoiceInItsTerms(demo);
}
