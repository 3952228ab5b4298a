using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.ShearBolts;
using Driveline.Tests.Cases;
using Driveline.Tests.Protection;

namespace Driveline.Tests.Choosing;

public class BoltChoiceTests
{
    [Fact]
    public void For_RightBolt_RanksItFirst()
    {
        BoltChoice choice = Of("thornbeck-bolt-right");
        Assert.Equal(["3/8-16 UNC SAE 5", "3/8-16 UNC SAE 2", "3/8-16 UNC SAE 8"], choice.Choices.Select(c => c.Item.Name));
        Assert.Same(choice.Choices[0], choice.Best);
        Assert.True(choice.Best!.IsFitted);

        // hand: smallest body 0.360 in, 65.67 mm² × 0.6 × 120 ksi × 2 planes × 15.875 mm = 1035 N·m, over a work peak of 650 N·m
        Assert.Equal(1035, choice.Best.Trip!.Low.NewtonMeters, 1.0);
        Assert.Equal(1.592, choice.Best.WorkMargin!.Value, 0.002);
        // the tube, 1900 N·m at least, and the shaft at its hole are near
        Assert.Equal(1900 / choice.Best.Trip.High!.Value.NewtonMeters, choice.Best.GuardMargin!.Value, 0.01);
    }

    [Fact]
    public void For_RightBolt_SaysWhatEachOtherGradeIs()
    {
        BoltChoice choice = Of("thornbeck-bolt-right");
        Assert.Equal([false, false, true], choice.Choices.Select(c => c.IsStrongerThanFitted!.Value));
        Assert.Equal([false, false, true], choice.Choices.Select(c => c.IsStrongerThanSpecified!.Value));
        Assert.Equal([false, false, true], choice.Choices.Select(c => c.Cautions.Contains(ChoosingCautions.OnlyTheManual)));
        Assert.Equal(["SAE 2", "SAE 8"],
            choice.Best!.GradeSteps.Select(s => s.Grade.Replace("3/8-16 UNC ", string.Empty, StringComparison.Ordinal)));
    }

    [Fact]
    public void For_NoKnownLimit_OffersNothing()
    {
        BoltChoice choice = Of("ashby-lane-facts-missing");
        Assert.Empty(choice.Choices);
        Assert.Null(choice.Best);
        Assert.Equal(ChoosingFindings.LimitsNotKnown, choice.Findings[0].Code);
        Assert.Equal(Severity.Danger, choice.Findings[0].Severity);
        Assert.NotEmpty(choice.Cautions);
    }

    [Fact]
    public void For_KnownBoltButNoLimit_OffersNotEvenTheFitted()
    {
        ProtectionQuestion question = Bench.Question(2000, 300)
            .WithChain(DrivelineChain.Of(Part.Shaft("drive tube"), Bench.Bolt("M8", "8.8", 50), Part.Gearbox("gearbox", 1.5)));
        BoltChoice choice = BoltChoice.For(question);
        Assert.Empty(choice.Choices);
        Assert.Equal(ChoosingFindings.LimitsNotKnown, choice.Findings[0].Code);
    }

    [Fact]
    public void For_OnePartWithoutLimit_OffersNothingStronger()
    {
        BoltChoice all = BoltChoice.For(Bench.Question(3000, 300));
        Assert.Contains(all.Choices, c => c.IsStrongerThanFitted == true);
        ProtectionQuestion less = Bench.Question(3000, 300).WithChain(DrivelineChain.Of(
            Thornbeck.Stub, Part.Shaft("drive tube"), Bench.Bolt("M8", "8.8", 50), Thornbeck.Gearbox, Thornbeck.Blades));
        BoltChoice choice = BoltChoice.For(less);
        Assert.Contains(choice.Choices, c => c.Item.Name == Bench.Fitted && c.IsFitted);
        Assert.All(choice.Choices, c => Assert.False(c.IsStrongerThanFitted == true || c.IsStrongerThanSpecified == true));
        Assert.All(choice.Choices, c => Assert.DoesNotContain(c.GradeSteps, s => s.IsStronger));
        Finding withheld = Assert.Single(choice.Findings, f => f.Code == ChoosingFindings.StrongerWithheldByPart);
        Assert.Equal("drive tube", withheld.Parameter("name")!.Text);
        Assert.Equal(all.Choices.Count - choice.Choices.Count, withheld.Value("count"));
    }

    [Fact]
    public void For_PartsNotComplete_OffersNothingStronger()
    {
        BoltChoice choice = BoltChoice.For(Bench.Question(3000, 300).WithPartsComplete(false));
        Assert.NotEmpty(choice.Choices);
        Assert.All(choice.Choices, c => Assert.NotEqual(true, c.IsStrongerThanFitted));
        Assert.Contains(ChoosingFindings.StrongerWithheldByList, Bench.Codes(choice));
    }

    [Fact]
    public void For_UnmarkedBoltAndUnknownLimit_OffersNothing()
    {
        // Nobody knows what an unmarked bolt holds at most, so nothing is known to be no stronger.
        ShearBoltDevice unmarked = ShearBoltDevice.Of(
            "shear bolt",
                Bench.Beside(ShearBolt.Of(ScrewThread.Parse("M8"), FastenerMaterial.UnmarkedMetricBolt).With(PlaneThrough.Shank), 50));
        Assert.Empty(BoltChoice.For(Bench.Question(unmarked, 3000, 300).WithPartsComplete(false)).Choices);
        Assert.NotEmpty(BoltChoice.For(Bench.Question(unmarked, 3000, 300)).Choices);
    }

    [Fact]
    public void For_SeizedHub_FreesItFirstAndOffersNothingStronger()
    {
        BoltChoice choice = Of("thornbeck-seized-hub");
        // the weaker first: neither guards
        Assert.Equal(["3/8-16 UNC SAE 2", "3/8-16 UNC SAE 5"], choice.Choices.Select(c => c.Item.Name));
        Assert.All(choice.Choices, c => Assert.Equal(0, c.GuardMargin));
        Assert.All(choice.Choices, c => Assert.DoesNotContain(c.GradeSteps, s => s.IsStronger));
        Assert.Null(choice.Best);
        string[] codes = Bench.Codes(choice);
        Assert.Contains(ChoosingFindings.StrongerWithheldByTrip, codes);
        Assert.Contains(ChoosingFindings.NothingGuards, codes);
        Assert.Contains(ChoosingFindings.ChangeHub, codes);
        Assert.DoesNotContain(
            codes, c => c is ChoosingFindings.ChangeRadius or ChoosingFindings.ChangePart or ChoosingFindings.ChangePower);
    }

    [Fact]
    public void For_OtherThanTheManuals_PutsItBackFirst()
    {
        Finding strong = Assert.Single(Of("thornbeck-too-strong").Findings, f => f.Code == ChoosingFindings.SpecifiedFirst);
        Assert.Equal(Severity.Danger, strong.Severity);
        Assert.Contains("SAE 2", strong.Parameter("bolt")!.Text, StringComparison.Ordinal);
        Assert.Equal(
            Severity.Warning, Assert.Single(Of("thornbeck-too-soft").Findings, f => f.Code == ChoosingFindings.SpecifiedFirst).Severity);
        Assert.DoesNotContain(ChoosingFindings.SpecifiedFirst, Bench.Codes(Of("thornbeck-bolt-right")));
    }

    [Fact]
    public void For_WorkNotKnown_RanksByTheGuardAlone()
    {
        BoltChoice choice = BoltChoice.For(Bench.Question(2000, 300).WithWork(null));
        Assert.Contains(ChoosingFindings.RankedByGuardAlone, Bench.Codes(choice));
        Assert.Null(choice.Best);
        Assert.Equal(choice.Choices.Select(c => c.GuardMargin).OrderByDescending(m => m), choice.Choices.Select(c => c.GuardMargin));
        Assert.All(choice.Choices, c => Assert.Null(c.PassProbability));
        Assert.All(choice.Choices, c => Assert.Null(c.TripsPerHour));
        Assert.All(choice.Choices, c => Assert.Contains(ChoosingCautions.MayActInWork, c.Cautions));
    }

    [Fact]
    public void For_EmptyStock_SaysThatNothingFitsTheHole()
    {
        BoltChoice choice = BoltChoice.For(Bench.Question(2000, 300), ChoiceTerms.Default.WithStock(StockList.Of()));
        Assert.Empty(choice.Choices);
        Assert.Equal(0.008, Assert.Single(choice.Findings, f => f.Code == ChoosingFindings.NoneInHole).Value("diameter"), 1e-12);
    }

    [Fact]
    public void For_NamedDevice_ChoosesForThatOne()
    {
        ShearBoltDevice second = ShearBoltDevice.Of("rear bolt", Bench.Joint("M6", "8.8", 50));
        ProtectionQuestion question = Bench.Question(3000, 200).WithChain(DrivelineChain.Of(
            Thornbeck.Stub, Bench.Bolt("M8", "8.8", 50), Thornbeck.Gearbox, second, Thornbeck.Blades));
        BoltChoice rear = BoltChoice.For(question, ChoiceTerms.Default.WithDevice("rear bolt"));
        Assert.Same(second, rear.Place);
        Assert.Null(rear.Specified);   // the manual's bolt belongs to the first place
        Assert.All(rear.Choices, c => Assert.Contains(ChoosingCautions.OnlyTheManual, c.Cautions));
        Assert.Equal("shear bolt", BoltChoice.For(question).Place!.Name);
        ArgumentException refused = Assert.Throws<ArgumentException>(
            () => BoltChoice.For(question, ChoiceTerms.Default.WithDevice("front")));
        Assert.Contains("shear bolt, rear bolt", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void For_TripsSeenInWork_CountAgainstEveryBoltThatIsNoStronger()
    {
        BoltChoice choice = BoltChoice.For(Bench.Question(3000, 300).WithTripsInNormalWork(true));
        Assert.All(choice.Choices.Where(c => c.IsStrongerThanFitted != true), c => Assert.Equal(Answer.No, c.Verdict.Quiet));
        Assert.Contains(choice.Choices, c => c.IsStrongerThanFitted == true && c.Verdict.Quiet != Answer.No);
    }

    [Fact]
    public void TripsPerHour_RisesWithTheRateOfPeaks()
    {
        RankedBolt Soft(double rate) =>
            BoltChoice.For(Bench.Question(3000, 900).WithPeaksPerHour(rate)).Choices.First(c => c.Item.Name == Bench.Fitted);
        Assert.True(Soft(1).TripsPerHour < Soft(10).TripsPerHour);
        Assert.True(Soft(10).TripsPerHour < Soft(100).TripsPerHour);
        Assert.True(Soft(1).TripsPerHour >= 0.001 / 100);
        Assert.Null(BoltChoice.For(Bench.Question(3000, 900).WithPeaksPerHour(null)).Choices[0].TripsPerHour);
    }

    [Fact]
    public void PassProbability_IsNoMoreThanEitherJobAlone()
    {
        BoltChoice choice = Of("thornbeck-too-strong");
        Assert.All(choice.Choices, c =>
        {
            Assert.True(c.PassProbability!.Value <= 1 - c.DamagedFirst!.Value + 1e-12);
            Assert.True(c.PassProbability.Value <= 1 - c.OnePeakTrips!.Value + 1e-12);
            Assert.InRange(c.PassProbability.Value, 0, 1);
        });
    }

    private static BoltChoice Of(string demo) => BoltChoice.For(DemoCases.Verdict(demo).Question);
}
