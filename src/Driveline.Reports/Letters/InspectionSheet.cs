using Driveline.Advice;
using Driveline.Findings;
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
            .With("text", list.Tractor is { } tractor && tractor.Code != InspectionList.LoadNotKnown
                ? phrase.Of(tractor) : phrase.Of("letter.inspect.tractor.notKnown")))));
        string[] loads = [.. Loads(list.PartLoads, phrase).Distinct()];
        if (loads.Length > 0)
        {
            blocks.Add(ReportBlock.Bullets(loads));
        }

        blocks.Add(ReportBlock.Steps(list.Before.Select(s => phrase.Of(s.Code))
            .Concat(list.Items.Select(i => phrase.Of(i.Code) + " " + phrase.Of(i.StopCode)))));
    }

    // That nobody can say is said once, of all such parts together.
    private static IEnumerable<string> Loads(IReadOnlyList<Finding> loads, Phrase phrase)
    {
        string[] notKnown =
            [.. loads.Where(l => l.Code == InspectionList.LoadNotKnown).Select(l => phrase.Name(l.Parameter("name")?.Text))];
        if (notKnown.Length > 1)
        {
            yield return phrase.Of("severity." + Severity.Warning) + ": "
                + phrase.Of(Phrase.Code("letter.inspect.notKnown").With("names", string.Join(", ", notKnown)));
        }

        Finding[] known = [.. loads.Where(l => notKnown.Length < 2 || l.Code != InspectionList.LoadNotKnown)];
        foreach (string sentence in FindingSentences.Of(known, phrase))
        {
            yield return sentence;
        }
    }
}
