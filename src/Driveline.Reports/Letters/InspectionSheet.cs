using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>Sheet B: what to look at after a hit.</summary>
internal static class InspectionSheet
{
    public static void Add(InspectionList? list, Phrase phrase, List<ReportBlock> blocks)
    {
        if (list is null)
        {
            return;
        }

        blocks.Add(ReportBlock.Sheet(phrase.Of("letter.sheetB")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code("letter.inspect.tractor")
            .With("text", list.Tractor is { } tractor ? phrase.Of(tractor) : phrase.Of("letter.inspect.tractor.notKnown")))));
        if (list.PartLoads.Count > 0)
        {
            blocks.Add(ReportBlock.Bullets(list.PartLoads.Select(l => NumbersSheet.Noticed(l, phrase)).Distinct()));
        }

        blocks.Add(ReportBlock.Steps(list.Before.Select(s => phrase.Of(s.Code))
            .Concat(list.Items.Select(i => phrase.Of(i.Code) + " " + phrase.Of(i.StopCode)))));
    }
}
