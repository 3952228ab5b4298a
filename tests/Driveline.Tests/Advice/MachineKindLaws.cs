using System.Text.RegularExpressions;
using Driveline.Advice;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Wording;

namespace Driveline.Tests.Advice;

/// <summary>No machine gets another kind's questions, causes, remedies, inspection or cautions.</summary>
public class MachineKindLaws
{
    private const string OfCutters = @"blades?|deck|pan|scalps?|mow(er|s)?|stumps?|swath|growth|cutters?"
        + "|cuchillas?|desbrozadora|tocones|vegetación";
    private const string OfBalers = @"bales?|balers?|knotters?|plungers?|needles?|empacadora|anudador|agujas?";
    private const string OfAugers = @"augers?|flighting|impeller|tines?|sinf[ií]n(es)?|ahoyador";

    public static TheoryData<MachineKind> Kinds =>
        [.. Enum.GetValues<MachineKind>().Where(k => k is not (MachineKind.NotKnown or MachineKind.Other))];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Advice_OfAKindOfMachine_SpeaksOfNoOther(MachineKind kind)
    {
        bool isCutter = kind is MachineKind.RotaryCutter or MachineKind.FlailMower;
        bool isBaler = kind is MachineKind.RoundBaler or MachineKind.SmallSquareBaler;
        bool isAuger = kind is MachineKind.PostHoleAuger or MachineKind.AugerWagon or MachineKind.SnowBlower or MachineKind.FeedMixer;
        string foreign = string.Join("|", new[]
        {
            isCutter ? null : OfCutters, isBaler ? null : OfBalers, isAuger || kind == MachineKind.RotaryTiller ? null : OfAugers,
        }.OfType<string>());
        foreach (string code in Enum.GetValues<Symptom>().SelectMany(s => CodesOf(s, kind)).Distinct())
        {
            Assert.DoesNotMatch(new Regex(@"\b(" + foreign + @")\b", RegexOptions.IgnoreCase), Texts.English.Of(code));
            Assert.DoesNotMatch(new Regex(@"\b(" + foreign + @")\b", RegexOptions.IgnoreCase), Texts.In(Language.Spanish).Of(code));
        }
    }

    [Theory]
    [InlineData(MachineKind.RoundBaler, false)]
    [InlineData(MachineKind.FeedMixer, false)]
    [InlineData(MachineKind.RotaryTiller, true)]
    [InlineData(MachineKind.RotaryCutter, true)]
    public void Inspection_OfADrawnMachine_LeavesLiftArmsOut(MachineKind kind, bool hasLiftArms)
    {
        InspectionList list = OwnerAdvice.On(Complaint.Of(Symptom.NothingGaveAtStrike).WithMachine(kind), kind).Inspection!;
        Assert.Equal(hasLiftArms, list.Items.Any(i => i.Code == "inspect.liftArms"));
        Assert.Contains(list.Items, i => i.Code == "inspect.hitchPins");
        Assert.Contains(list.Items, i => i.Code == (kind == MachineKind.RotaryCutter ? "inspect.blades" : "inspect.rotor"));
    }

    [Theory]
    [InlineData("none")]
    [InlineData("cutOut")]
    public void Cause_OfADeviceThatIsNotThere_HasNoChance(string device)
    {
        Diagnosis diagnosis = Diagnosis.Of(Complaint.Of(Symptom.NothingGaveAtStrike).With(Fact.Of("device", device)));
        Assert.Equal(0, diagnosis.ProbabilityOf(Cause.HubSeized).Value);
        Assert.Equal(0, diagnosis.ProbabilityOf(Cause.ClutchStuck).Value);
        Assert.Equal(0, diagnosis.ProbabilityOf(Cause.OilLeak).Value);
        Assert.Equal(0, diagnosis.ProbabilityOf(Cause.WrongHole).Value);
    }

    // Whatever is asked on the way, each question answered in turn by each of its answers.
    private static IEnumerable<string> CodesOf(Symptom symptom, MachineKind kind)
    {
        for (int way = 0; way < 4; way++)
        {
            Complaint complaint = Complaint.Of(symptom).WithMachine(kind);
            for (int step = 0; step < 25; step++)
            {
                OwnerAdvice advice = OwnerAdvice.On(complaint, kind);
                foreach (string code in CodesOf(advice))
                {
                    yield return code;
                }

                if (advice.Diagnosis.Next is not { Question: { } question })
                {
                    break;
                }

                yield return question.TextCode;
                Fact answer = Fact.Of(question.Code, question.Answers[(way + step) % question.Answers.Count]);
                yield return answer.Code;
                complaint = complaint.With(answer);
            }
        }
    }

    private static IEnumerable<string> CodesOf(OwnerAdvice advice) =>
    [
        .. advice.Diagnosis.Causes.Where(c => c.Probability.Value > 0)
            .SelectMany(c => new[] { AdviceCodes.Of(c.Cause), "cause." + AdviceCodes.InBrief(c.Cause) }),
        .. advice.Remedies.Select(r => r.Code),
        .. advice.Inspection?.Items.SelectMany(i => new[] { i.Code, i.Code + ".stop" }) ?? [],
        .. advice.BoltChange?.Steps.Select(s => s.Code) ?? [],
        .. advice.Cautions.Select(c => c.Code),
        .. SimulationCheck.CautionsFor(advice.Machine).Select(c => c.Code),
    ];
}
