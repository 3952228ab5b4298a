using System.Text.Json;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Tests.Cases;

public class CaseAdviceTests
{
    private const string NothingGave = "{ \"symptom\": \"nothingGaveAtStrike\" }";

    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [InlineData("larkfield-soft-bolts", Cause.GradeTooSoft, "grade 2 where the manual names 5, 25 a year; engagement and deck add to it")]
    [InlineData("larkfield-oak-root", Cause.ClutchStuck, "outdoors for years, never slipped, and the rotor stopped dead")]
    [InlineData("larkfield-soft-root", Cause.StrikeTooSoft,
        "at most 600 N·m against a bolt that breaks far above: numbers say the blow was below trip")]
    [InlineData("fenwick-twisted-tube", Cause.GradeTooStrong, "LP33: grade 5 for grade 2, the tube went first")]
    [InlineData("cold-beck-snow-blower", Cause.WorkJams, "stones jam a snow blower: the bolt does its job")]
    [InlineData("orchard-row-shaking-mower", Cause.RotorUnbalanced, "a bent blade shakes")]
    [InlineData("orchard-row-electric-switch", Cause.AbruptEngagement, "a switch that snaps in")]
    [InlineData("hay-bottom-smoking-clutch", Cause.Overload, "clutch in order, heavy growth, fast")]
    [InlineData("saltmere-oval-holes", Cause.LooseHoles, "oval holes and a bent stub")]
    [InlineData("thornbeck-seized-hub", Cause.HubSeized, "the hub does not turn with the bolt out")]
    [InlineData("thornbeck-too-soft", Cause.GradeTooSoft, "grade 2 where the manual names 5, in steady work")]
    [InlineData("dunmarsh-clutch-rusted", Cause.ClutchStuck, "did not slip when tested, stood moist")]
    [InlineData("wickerby-clutch-coil-bound", Cause.ClutchCoilBound, "the spring length stated is the solid length")]
    [InlineData("ravensmoor-rusted-clutch-rock", Cause.ClutchStuck,
        "did not slip when tested, and a rock that should have slipped it did not")]
    [InlineData("ravensmoor-soft-branch", Cause.StrikeTooSoft, "the simulated blow stays below the weakest bolt")]
    public void Demo_TopCause_IsTheOneAMechanicWouldName(string name, Cause expected, string why)
    {
        Diagnosis diagnosis = GoodAdvice.Of(name).Diagnosis;
        Assert.True(diagnosis.Causes[0].Cause == expected, why + "; got " + string.Join(", ", diagnosis.Causes.Take(4)));
    }

    [Theory]
    [InlineData("hay-bottom-silent-clutch", "slipCheck lastTrip", "when was it last slipped?")]
    [InlineData("ashby-lane-facts-missing", "when engagementManner growth", "three facts name no cause: when does it break?")]
    public void Demo_TooLittleKnown_SaysWhatToCheckFirst(string name, string sensible, string why)
    {
        OwnerAdvice advice = GoodAdvice.Of(name);
        Assert.False(advice.Diagnosis.IsEnoughKnown);
        Assert.True(sensible.Split(' ').Contains(advice.Diagnosis.Next!.Question.Code), why + "; got " + advice.Diagnosis.Next);
        Assert.Contains("We cannot name the cause yet.", AdviceText.Of(advice), StringComparison.Ordinal);
    }

    [Fact]
    public void LetterA_Remedies_CureTheCauseThenTheHabitAndKeepTheGuardMargin()
    {
        OwnerAdvice advice = GoodAdvice.Of("larkfield-soft-bolts");
        Assert.Equal(
            new HashSet<Cause> { Cause.GradeTooSoft, Cause.AbruptEngagement, Cause.DeckNoseDown },
            advice.Diagnosis.Causes.Where(c => c.IsSeen || c.Probability.Value > 0.12).Select(c => c.Cause).ToHashSet());
        Remedy specified = advice.Remedies.Single(r => r.Code == Remedies.SpecifiedBolt);
        Assert.True(specified.GuardMargin >= 1, "guard margin " + specified.GuardMargin);
        Assert.True(specified.WorkMargin >= 1, "work margin " + specified.WorkMargin);
        Assert.True(advice.Remedies[0].Cures(advice.Diagnosis.Causes[0].Cause));
        Assert.True(advice.Remedies.TakeWhile(r => r.Code != Remedies.EngageGently).Count() <= 1);
        Assert.DoesNotContain(advice.Remedies, r => r.Code == Remedies.StrongerBolt);
        Assert.Contains(advice.Findings, f => f.Code == DeckFindings.NoseDown);
        Assert.Contains(advice.Findings, f => f.Code == AdviceFindings.ClutchLikelyStuck);
        Assert.Equal(3, advice.Costs.Count);
    }

    [Fact]
    public void OiledClutch_OfTheCase_IsAFaultSeen() =>
        Assert.True(GoodAdvice.Of("wickerby-clutch-oiled").Diagnosis.Causes.Single(c => c.Cause == Cause.ClutchOiled).IsSeen);

    [Fact]
    public void SimulatedStrike_NothingGave_SaysWhatEachPartCarriedWithoutProtection()
    {
        InspectionList inspection = GoodAdvice.Of("ravensmoor-rusted-clutch-rock").Inspection!;
        SimulationCheck simulated = DemoCases.Simulation("ravensmoor-rusted-clutch-rock").Check!;
        foreach (SimulatedLoad load in simulated.Loads.Where(l => l.DamagedAt is not null))
        {
            Finding said = inspection.PartLoads.Single(f => f.Parameter("name")!.Text == load.Element.Name);
            Assert.NotEqual(Answer.No, load.DamagedWithout);
            Assert.Equal(load.DamagedWithout == Answer.NotKnown ? InspectionList.SimulatedNotBounded
                : InspectionList.SimulatedMayHaveReached, said.Code);
            Assert.Equal(load.WithoutProtection!.Value.NewtonMeters, said.Parameter("peak")!.Value, 1e-9);
        }

        Assert.Contains(simulated.Loads, l => l.DamagedAt is not null && l.DamagedWithout != Answer.No);
    }

    [Fact]
    public void SimulatedStrike_BesideTheDriveline_PutsNothingOnIt()
    {
        InspectionList inspection = GoodAdvice.Of("ravensmoor-pan-on-stump").Inspection!;
        Assert.All(inspection.PartLoads, l => Assert.Equal(InspectionList.BlowBesideDriveline, l.Code));
        Assert.False(inspection.Items[0].IsReachedThroughDriveline);
    }

    [Fact]
    public void SimulatedStrike_StatedPeakBeside_GivesWayToIt()
    {
        CaseFile file = DemoCases.Read("ravensmoor-rusted-clutch-rock");
        OwnerAdvice advice = GoodAdvice.Of(file.With("complaint.strikePeak", "\"700 N.m\"").Case!);
        Assert.Equal(700, advice.Inspection!.Tractor!.Parameter("atMost")!.Value, 1e-9);
    }

    [Fact]
    public void StrikePeak_BelowEveryLimit_SaysWhatThePartsCarried()
    {
        OwnerAdvice advice = GoodAdvice.Of("larkfield-soft-root");
        Assert.Equal(InspectionList.StrikeBelowDamage, advice.Inspection!.Tractor!.Code);
        Assert.Equal(600, advice.Inspection.Tractor.Parameter("atMost")!.Value, 6);          // at the PTO itself
        Assert.Equal(2600, advice.Inspection.Tractor.Parameter("damagedLow")!.Value, 6);
        Finding gearbox = advice.Inspection.PartLoads.Single(l => l.Parameter("name")!.Text == "main gearbox");
        Assert.Equal(600, gearbox.Parameter("atMost")!.Value, 6);                            // a torque is stated at the element's input
    }

    [Fact]
    public void ClutchRemedies_StuckClutch_HaveTheMarginsOfTheManualsSetting()
    {
        // hand: the manual's 600 to 700 N·m; 0.7 of it left when hot or damp, against 380 N·m of work; it breaks away at 1.4 times at most,
        // against a tube that stands 1500 N·m: 420 / 380 and 1500 / 980
        CaseFile file = DemoCases.Read("dunmarsh-clutch-rusted");
        OwnerAdvice advice = GoodAdvice.Of(file.With("complaint", NothingGave).Case!);
        foreach (string code in new[] { Remedies.SlipAndReset, Remedies.LoosenSpringsToManual })
        {
            Remedy remedy = advice.Remedies.Single(r => r.Code == code);
            Assert.Equal(420.0 / 380, remedy.WorkMargin!.Value, 1e-9);
            Assert.Equal(1500.0 / 980, remedy.GuardMargin!.Value, 1e-9);
            Assert.Equal(MarginEffect.Raises, remedy.OnGuardMargin);
        }

        // without the manual's torque nobody knows to what to set it; freed, it slips as its springs are set
        OwnerAdvice unnamed = GoodAdvice.Of(file.With("specified", null).Case!.With("complaint", NothingGave).Case!);
        Assert.Null(unnamed.Remedies.Single(r => r.Code == Remedies.LoosenSpringsToManual).GuardMargin);
        Assert.True(unnamed.Remedies.Single(r => r.Code == Remedies.SlipAndReset).GuardMargin > 1);
    }

    [Fact]
    public void ClutchRemedies_NoClutchInTheCase_HaveNoMargins()
    {
        OwnerAdvice advice = GoodAdvice.Of("hay-bottom-silent-clutch");
        Remedy? remedy = advice.Remedies.FirstOrDefault(r => r.Code is Remedies.SlipAndReset or Remedies.LoosenSpringsToManual);
        Assert.NotNull(remedy);
        Assert.Null(remedy.WorkMargin);
        Assert.Null(remedy.GuardMargin);
    }

    [Fact]
    public void GuardMargin_OfAClutchWithoutAMaximum_IsSaidToBeUnknown()
    {
        OwnerAdvice advice = GoodAdvice.Of("dunmarsh-clutch-never-slipped");
        Assert.Equal(0, advice.Remedies[0].GuardMargin);
        string text = Line(AdviceText.Of(advice, ReportOptions.Default));
        Assert.DoesNotContain("Guard margin after it: 0.00", text, StringComparison.Ordinal);
        Assert.Contains("we don't know how much the protection can hold at most", text, StringComparison.Ordinal);
    }

    [Fact]
    public void AnswerThatTheCaseContradicts_IsRefused()
    {
        CaseFile file = DemoCases.Read("thornbeck-seized-hub");
        CaseAdvice advice = CaseAdvice.Of(file.With("complaint.hubTurns", "\"freely\"").Case!);
        Assert.Null(advice.Advice);
        Assert.Equal("complaint.hubTurns", advice.Errors.Single().Path);
        Assert.True(advice.Errors.Single().Line > 1);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void AnyDemo_TextAndJson_HoldEveryCautionAndNoCode(string name)
    {
        OwnerAdvice advice = GoodAdvice.Of(name);
        foreach (Language language in Languages.All)
        {
            string text = Line(AdviceText.Of(advice, ReportOptions.Default.WithLanguage(language)));
            Assert.Contains(string.Join(" - ", advice.Cautions.Select(c => Texts.In(language).Of(c.Code))), text, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"\b(letter|advice|cause|remedy|fact|ask|place|inspect|model|boltChange)\.[A-Za-z]|[{}]", text);
        }

        // Those of a device that the machine has not are none of its owner's business.
        Caution[] ofADevice = [Caution.HotClutch, Caution.HotClutchDryGrass, Caution.SupportHalfShafts];
        Assert.Superset(Caution.Always.Except(ofADevice).ToHashSet(), advice.Cautions.ToHashSet());
        JsonElement json = Json(advice);
        Assert.Equal(advice.Cautions.Select(c => c.Code),
            json.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()!));
        Assert.Equal(1, json.GetProperty("causes").EnumerateArray().Sum(c => c.GetProperty("probability").GetDouble()), 9);
        foreach (JsonElement remedy in json.GetProperty("remedies").EnumerateArray())
        {
            Assert.All(new[] { "code", "text", "workMargin", "guardMargin", "costLow", "costHigh", "caution" },
                m => Assert.True(remedy.TryGetProperty(m, out _), m));
        }

        if (json.GetProperty("nextCheck") is { ValueKind: JsonValueKind.Object } next)
        {
            Assert.All(new[] { "code", "text", "why", "effort", "danger" }, m => Assert.True(next.TryGetProperty(m, out _), m));
        }
    }

    private static string Line(string text) => string.Join(" ", text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static JsonElement Json(OwnerAdvice advice)
    {
        using var stream = new MemoryStream();
        AdviceJson.Of(advice).Write(stream);
        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }
}
