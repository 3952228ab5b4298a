using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.ShearBolts;
using Driveline.Tests.Protection;
using UnitsNet;

namespace Driveline.Tests.Choosing;

public class BoltChoiceLaws
{
    private static readonly string[] Threads = ["M6", "M8", "M10", "M12"];

    private static readonly string[] Grades = ["4.6", "8.8", "10.9"];

    // A stock that fits a 9 mm hole, so that every random choice has several bolts.
    private static readonly ChoiceTerms Terms = ChoiceTerms.Default
        .WithStock(Bench.Stock("M6, 4.6", "M6, 8.8", "M8, 4.6", "M8, 8.8", "M8, 10.9", "M8, 12.9", "5/16-18 UNC, SAE 2",
            "5/16-18 UNC, SAE 5", "5/16-18 UNC, SAE 8", "M10, 8.8"))
        .WithHoles(BoltHoles.AsFitted.WithPresent(Length.FromMillimeters(9)).WithRedrilled(Length.FromMillimeters(6.5))
            .WithRedrilled(Length.FromMillimeters(10.5)));

    [Law(MaxTest = 60)]
    public void Choices_GuardBelowOne_NeverStandsAboveOneThatGuards(int seed)
    {
        IReadOnlyList<RankedBolt> choices = BoltChoice.For(Random(seed), Terms).Choices;
        Assert.Equal(choices.Select(IsStronger).Order(), choices.Select(IsStronger));
        foreach (IGrouping<bool, RankedBolt> block in choices.GroupBy(IsStronger))
        {
            Assert.Equal(block.Select(c => c.Verdict.Guards == Answer.No).Order(), block.Select(c => c.Verdict.Guards == Answer.No));
            Assert.Equal(block.Select(c => c.GuardMargin >= 1).OrderDescending(), block.Select(c => c.GuardMargin >= 1));
        }

        foreach (IEnumerable<RankedBolt> group in choices.GroupBy(
            c => (IsStronger(c), c.Verdict.Guards == Answer.No, c.GuardMargin >= 1, c.Verdict.Quiet == Answer.No)))
        {
            Assert.Equal(group.Select(c => c.WorseMargin).OrderByDescending(m => m ?? -1), group.Select(c => c.WorseMargin));
        }

        static bool IsStronger(RankedBolt bolt) => bolt.IsStrongerThanSpecified == true;
    }

    [Law(MaxTest = 60)]
    public void Choices_StrongerThanTheManuals_CarryItsSentence(int seed)
    {
        BoltChoice choice = BoltChoice.For(Random(seed), Terms);
        Assert.All(choice.Choices,
            c => Assert.Equal(c.IsStrongerThanSpecified != false, c.Cautions.Contains(ChoosingCautions.OnlyTheManual)));
        Assert.All(choice.Choices, c => Assert.Equal(c.Verdict.Guards != Answer.Yes, c.Cautions.Contains(ChoosingCautions.MayNotProtect)));
    }

    [Law(MaxTest = 40)]
    public void Choices_OneFactLess_OfferNothingStrongerAndNothingNew(int seed)
    {
        ProtectionQuestion full = Random(seed);
        string[] names = Names(BoltChoice.For(full, Terms));
        foreach (ProtectionQuestion less in WithOneLimitLess(full))
        {
            BoltChoice choice = BoltChoice.For(less, Terms);
            Assert.Empty(Names(choice).Except(names));
            Assert.All(choice.Choices, c => Assert.Equal(false, c.IsStrongerThanFitted));
            Assert.All(choice.Choices, c => Assert.NotEqual(true, c.IsStrongerThanSpecified));
            Assert.All(choice.Choices, c => Assert.DoesNotContain(c.GradeSteps, s => s.IsStronger));
        }
    }

    [Law(MaxTest = 60)]
    public void Choices_LargerStock_KeepsTheOrderOfTheSmaller(int seed)
    {
        ProtectionQuestion question = Random(seed);
        StockItem[] some = [.. Terms.Stock.Items.Where((_, i) => ((seed >> (i % 16)) & 1) == 0)];
        string[] few = Names(BoltChoice.For(question, Terms.WithStock(StockList.Of(some))));
        Assert.Equal(few, Names(BoltChoice.For(question, Terms)).Where(n => few.Contains(n)));
    }

    [Law(MaxTest = 60)]
    public void Choices_OrderOfTheStock_IsIrrelevant(int seed)
    {
        ProtectionQuestion question = Random(seed);
        Assert.Equal(Names(BoltChoice.For(question, Terms)),
            Names(BoltChoice.For(question, Terms.WithStock(StockList.Of([.. Terms.Stock.Items.Reverse()])))));
    }

    [Law(MaxTest = 60)]
    public void Best_HasRoomOnBothSides(int seed)
    {
        BoltChoice choice = BoltChoice.For(Random(seed), Terms);
        Assert.Equal(
            choice.Choices.FirstOrDefault(c => c is { GuardMargin: > 1, WorkMargin: > 1, IsStrongerThanSpecified: false }), choice.Best);
        Assert.Equal(
            choice.Best is null && choice.Choices.Any(c => c.LeavesRoom || c.GuardMargin == 0 || c.IsStrongerThanSpecified != true),
            Bench.Codes(choice)
                .Any(c => c is ChoosingFindings.NothingFits or ChoosingFindings.NothingGuards or ChoosingFindings.RoomNeedsConsent));
    }

    [Fact]
    public void RandomQuestions_ReachEveryKindOfChoice()
    {
        // The laws above would prove nothing over questions that always fit or never do.
        BoltChoice[] choices = [.. Enumerable.Range(1, 60).Select(seed => BoltChoice.For(Random(seed), Terms))];
        Assert.Contains(choices, c => c.Best is not null);
        Assert.Contains(choices, c => c.Best is null && c.Choices.Count > 0);
        Assert.Contains(choices, c => c.Choices.Any(b => b.GuardMargin >= 1) && c.Choices.Any(b => b.GuardMargin < 1));
        Assert.Contains(choices, c => c.Choices.Any(b => b.IsStrongerThanSpecified == true));
        Assert.Contains(choices, c => c.Findings.Any(f => f.Code == ChoosingFindings.StrongerWithheldByTrip));
    }

    private static string[] Names(BoltChoice choice) => [.. choice.Choices.Select(c => c.Item.Name)];

    private static ProtectionQuestion Random(int seed)
    {
        var random = new Random(seed);
        double Around(double middle) => middle * Math.Exp((random.NextDouble() - 0.5) * 2);
        ShearBoltJoint joint = Bench.Joint(
            Threads[random.Next(Threads.Length)], Grades[random.Next(Grades.Length)], 20 + (60 * random.NextDouble()));
        joint = random.Next(5) == 0 ? joint.WithHub(HubState.NotKnown) : joint;
        ProtectionQuestion question = Bench.Question(ShearBoltDevice.Of("shear bolt", joint), Around(1800), Around(700));
        return random.Next(3) == 0 ? question.WithSpecified(null)
            : question.WithSpecified(
                Bench.Bolt(Threads[random.Next(Threads.Length)], Grades[random.Next(Grades.Length)], joint.Radius.Millimeters));
    }

    private static IEnumerable<ProtectionQuestion> WithOneLimitLess(ProtectionQuestion full)
    {
        ProtectiveDevice device = full.Chain.Devices[0];
        Element tube = full.Chain.Elements[1];
        yield return full.WithPartsComplete(false);
        yield return full.WithMachine(MachineKind.NotKnown);
        yield return full.WithChain(
            DrivelineChain.Of(Thornbeck.Stub, Part.Shaft("drive tube"), device, Thornbeck.Gearbox, Thornbeck.Blades));
        yield return full.WithChain(
            DrivelineChain.Of(Thornbeck.Stub, tube, device, Part.Gearbox("gearbox", 1.5).WithEfficiency(0.96), Thornbeck.Blades));
        yield return full.WithChain(
            DrivelineChain.Of(Part.Of(PartKind.PtoStub, "PTO stub"), tube, device, Thornbeck.Gearbox, Thornbeck.Blades));
    }
}
