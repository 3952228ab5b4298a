using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>Sheet A: changing the bolt, step by step.</summary>
internal static class BoltSheet
{
    public static void Add(BoltChangeCard? card, Phrase phrase, List<ReportBlock> blocks)
    {
        if (card is null)
        {
            return;
        }

        blocks.Add(ReportBlock.Sheet(phrase.Of("letter.sheetA")));
        blocks.Add(ReportBlock.Steps(card.Steps.Select(s => phrase.Of(s.Code))));
    }
}
