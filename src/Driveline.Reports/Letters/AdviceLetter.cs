using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>
/// The answer to an owner's letter, once for every form it is printed in: one page to act on, the cautions, then the sheets that apply.
/// </summary>
internal static class AdviceLetter
{
    public static IReadOnlyList<ReportBlock> Of(OwnerAdvice advice, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        LetterOpening.Add(advice.Head, phrase, blocks);
        LetterPage.Add(advice, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(advice.Cautions.Select(c => phrase.Of(c.Code))));
        LetterOpening.Close(advice.Head, phrase, blocks);
        BoltSheet.Add(advice.BoltChange, phrase, blocks);
        InspectionSheet.Add(advice.Inspection, phrase, blocks);
        ClutchSheet.Add(advice, phrase, blocks);
        NumbersSheet.Add(advice, phrase, blocks);
        return blocks;
    }
}
