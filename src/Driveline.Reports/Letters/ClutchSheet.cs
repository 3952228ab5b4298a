using Driveline.Advice;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>Sheet C: testing and setting the clutch; taken apart first where it is stuck.</summary>
internal static class ClutchSheet
{
    private static readonly string[] Setting =
        [Remedies.SlipAndReset, Remedies.SetSpringsAsManual, Remedies.LoosenSpringsToManual, Remedies.RightSprings];

    public static bool Applies(OwnerAdvice advice) => advice.Remedies.Any(r => Setting.Contains(r.Code));

    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        if (!Applies(advice))
        {
            return;
        }

        blocks.Add(ReportBlock.Sheet(phrase.Of("letter.sheetC")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of(MayBeStuck(advice) ? "letter.sheetC.stuck" : "letter.sheetC.test")));
        AddSteps(MayBeStuck(advice) ? ServiceProcedure.YearlyCheck : ServiceProcedure.ScribeLineTest, phrase, blocks);
        AddSteps(ServiceProcedure.LeverSetting, phrase, blocks);
    }

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
