using Driveline.Advice;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>The content of the answer to an owner's letter, once for every form it is printed in. The cautions always come last.</summary>
internal static class AdviceLetter
{
    public static IReadOnlyList<ReportBlock> Of(OwnerAdvice advice, ReportOptions options)
    {
        var phrase = new Phrase(Wording.Texts.In(options.Language), options.Units);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        StandingSentences.Add(advice.Standing, phrase, blocks);
        blocks.Add(ReportBlock.Lead(CauseSentences.Lead(advice.Diagnosis, phrase)));
        if (advice.Diagnosis.Complaint.Symptom != Symptom.NotKnown)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of(
                Phrase.Code("letter.complaint").With("text", phrase.Of(AdviceCodes.Of(advice.Diagnosis.Complaint.Symptom))))));
        }

        // Where no cause stands out, what to look at comes before what it may be.
        if (!advice.Diagnosis.IsEnoughKnown)
        {
            AddNext(advice.Diagnosis.Next, phrase, blocks);
        }

        CauseSentences.Add(advice.Diagnosis, phrase, blocks);
        if (advice.Diagnosis.IsEnoughKnown)
        {
            AddNext(advice.Diagnosis.Next, phrase, blocks);
        }

        AddNumbers(advice, phrase, blocks);
        RemedySentences.Add(advice, phrase, blocks);
        AddInspection(advice.Inspection, phrase, blocks);
        if (advice.Deck is { } deck)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("letter.deck")));
            blocks.Add(ReportBlock.Bullets(deck.Findings.Select(f => Noticed(f, phrase))));
        }

        CostSentences.Add(advice.Costs, phrase, blocks);
        if (advice.Verdict is { } verdict)
        {
            GradeSentences.AddComparison(verdict, phrase, blocks);
        }

        if (advice.BoltChange is { } card)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("letter.change")));
            blocks.Add(ReportBlock.Numbered(card.Steps.Select(s => phrase.Of(s.Code))));
        }

        Finding[] rest = [.. advice.Findings.Where(f => advice.Deck?.Findings.Any(d => d.Code == f.Code) != true)];
        if (rest.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("report.findings")));
            blocks.Add(ReportBlock.Bullets(rest.Select(f => Noticed(f, phrase))));
        }

        AddBasis(advice, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(advice.Cautions.Select(c => phrase.Of(c.Code))));
        return blocks;
    }

    private static void AddNext(NextCheck? next, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("letter.next")));
        if (next is null)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("letter.next.none")));
            return;
        }

        blocks.Add(ReportBlock.Paragraph(phrase.Of(next.Question.TextCode)));
        string place = phrase.Of(AdviceCodes.Of(next.Question.Place));
        string where = next.Question.Place == CheckPlace.Desk ? phrase.Of(Phrase.Code("letter.next.desk").With("place", place))
            : phrase.Of(Phrase.Code("letter.next.minutes").With("place", place).With("minutes", QuantityKind.Count, next.Question.Minutes));
        blocks.Add(ReportBlock.Paragraph(where + " " + phrase.Of(next.Why)));
    }

    private static void AddNumbers(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        if (advice.Verdict is not { } verdict)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("letter.numbers")));
        blocks.Add(ReportBlock.Bullets(
        [
            AnswerSentences.Headline(verdict, phrase),
            phrase.Of("report.guards") + " " + AnswerSentences.Guards(verdict, phrase),
            phrase.Of("report.quiet") + " " + AnswerSentences.Quiet(verdict, phrase),
            .. verdict.MeasureNext.Select(m => phrase.Of(Phrase.Code("report.measure.first").With("text", phrase.Of(m.Code)))).Take(1),
        ]));
    }

    private static void AddInspection(InspectionList? list, Phrase phrase, List<ReportBlock> blocks)
    {
        if (list is null)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("letter.inspect")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code("letter.inspect.tractor")
            .With("text", list.Tractor is { } tractor ? phrase.Of(tractor) : phrase.Of("letter.inspect.tractor.notKnown")))));
        if (list.PartLoads.Count > 0)
        {
            blocks.Add(ReportBlock.Bullets(list.PartLoads.Select(l => Noticed(l, phrase)).Distinct()));
        }

        blocks.Add(ReportBlock.Numbered(list.Before.Select(s => phrase.Of(s.Code))
            .Concat(list.Items.Select(i => phrase.Of(i.Code) + " " + phrase.Of(i.StopCode)))));
    }

    private static void AddBasis(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("report.basis")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("letter.basis.table")));
        Basis basis = advice.Basis;
        blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code("report.basis.weakest")
            .With("kind", phrase.Of("basis." + basis.Kind)).With("document", basis.Document))));
    }

    private static string Noticed(Finding finding, Phrase phrase) => phrase.Of("severity." + finding.Severity) + ": " + phrase.Of(finding);
}
