using Driveline.Advice;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>Sheet C: testing and setting the clutch; taken apart first where it is stuck.</summary>
internal static class ClutchSheet
{
    // From this chance on the clutch is not to be relied on before a test.
    private const double MayStick = 0.1;

    private static readonly string[] Setting =
    [
        Remedies.SlipAndReset, Remedies.SetSpringsAsManual, Remedies.LoosenSpringsToManual, Remedies.RightSprings,
    ];

    private static readonly string[] Linings = ["remedy.renewFacings", "remedy.mendLeak", "remedy.runIn"];

    public static bool Applies(OwnerAdvice advice) => IsHot(advice)
        || advice.Remedies.Any(r => Setting.Contains(r.Code)) || LetterRemedies.OnPage(advice).Any(r => Linings.Contains(r.Code));

    /// <summary>The step of the page that sends to this sheet.</summary>
    public static string StepCode(OwnerAdvice advice) => IsTakenApart(advice) ? "letter.do.sheetC.apart"
        : advice.Diagnosis.Causes.Any(c => c.Cause == Cause.ClutchStuck && c.Probability.Value >= MayStick) ? "letter.do.sheetC.test"
        : "letter.do.sheetC";

    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        if (!Applies(advice))
        {
            return;
        }

        blocks.Add(ReportBlock.Sheet(phrase.Of("letter.sheetC")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of(MayBeStuck(advice) ? "letter.sheetC.stuck"
            : IsTakenApart(advice) ? "letter.sheetC.apart" : "letter.sheetC.test")));
        AddSteps(IsTakenApart(advice) ? ServiceProcedure.YearlyCheck : ServiceProcedure.ScribeLineTest, phrase, blocks);
        AddSteps(ServiceProcedure.LeverSetting, phrase, blocks);
    }

    private static bool IsTakenApart(OwnerAdvice advice) =>
        MayBeStuck(advice) || IsHot(advice) || LetterRemedies.OnPage(advice).Any(r => Linings.Contains(r.Code));

    private static bool IsHot(OwnerAdvice advice) =>
        advice.Standing.Has(StandingFindings.ClutchSmokes) || advice.Standing.Has(StandingFindings.ClutchOverheats);

    // A clutch that is known to be stuck or solid gets no slip test: the blades would turn.
    private static bool MayBeStuck(OwnerAdvice advice) =>
        advice.Verdict?.Question.Chain.Devices.Any(d => d is SlipClutchDevice { IsStuck: true }) == true
        || advice.Diagnosis.Causes.Any(c => c.IsSeen && c.Cause is Cause.ClutchStuck or Cause.ClutchCoilBound);

    private static void AddSteps(ServiceProcedure procedure, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Paragraph(phrase.Of(procedure.Code)));
        blocks.Add(ReportBlock.Steps(procedure.Steps.Select(s => phrase.Of(s.Words))));
    }
}
