using Driveline.Advice;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>Sheet D: the numbers behind the page: odds with their reasons, margins, deck, costs, grades, what else to notice.</summary>
internal static class NumbersSheet
{
    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Sheet(phrase.Of("letter.sheetD")));
        if (advice.Diagnosis.Complaint.Symptom != Symptom.NotKnown)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of(
                Phrase.Code("letter.complaint").With("text", phrase.Of(AdviceCodes.Of(advice.Diagnosis.Complaint.Symptom))))));
        }

        CauseSentences.Add(advice, phrase, blocks);
        if (!LetterRemedies.IsNothingTold(advice) && CauseSentences.HoldAGuess(advice.Diagnosis))
        {
            AddNext(advice.Diagnosis.Next, phrase, blocks);
        }

        AddVerdict(advice, phrase, blocks);
        RemedySentences.Add(advice, phrase, blocks);
        if (advice.Deck is { } deck)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("letter.deck")));
            blocks.Add(ReportBlock.Bullets(deck.Findings.Select(f => Noticed(CoarseLengths.Of(f, phrase), phrase))));
        }

        CostSentences.Add(advice.Costs, phrase, blocks);
        if (advice.Verdict is { } verdict)
        {
            GradeSentences.AddComparison(verdict, phrase, blocks);
        }

        // A standing that speaks of dangers finds them here; that nothing is told the page says.
        IEnumerable<Finding> dangers = advice.Verdict?.Findings.Where(f => f.Severity == Severity.Danger) ?? [];
        Finding[] rest = [.. dangers.Concat(advice.Findings).Where(f => f.Code != AdviceFindings.NoSymptom
            && advice.Deck?.Findings.Any(d => d.Code == f.Code) != true).Distinct()];
        if (rest.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("report.findings")));
            blocks.Add(ReportBlock.Bullets(FindingSentences.Of(rest, phrase)));
        }

        AddBasis(advice, phrase, blocks);
    }

    public static string Noticed(Finding finding, Phrase phrase) => phrase.Of("severity." + finding.Severity) + ": " + phrase.Of(finding);

    private static void AddNext(NextCheck? next, Phrase phrase, List<ReportBlock> blocks)
    {
        if (next is null)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("letter.next")));
        string place = phrase.Of(AdviceCodes.Of(next.Question.Place));
        string where = next.Question.Place == CheckPlace.Desk ? place
            : phrase.Of(Phrase.Code("letter.next.minutes").With("place", place).With("minutes", QuantityKind.Count, next.Question.Minutes));
        blocks.Add(ReportBlock.Paragraph(phrase.Of(next.Question.TextCode)));
        blocks.Add(ReportBlock.Paragraph(where + " " + phrase.Of(next.Why)));
    }

    private static void AddVerdict(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
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
            .. (IsToSettle(advice, verdict) ? verdict.MeasureNext : []).Take(1).Select(m =>
                phrase.Of(Phrase.Code("report.measure.first").With("text", phrase.Of(m.Code)))),
        ]));
    }

    // Nothing is left to settle where the answers are in, or where a step of the page leads to both.
    private static bool IsToSettle(OwnerAdvice advice, ProtectionVerdict verdict) => verdict.Guards != Answer.No
        && (verdict.Guards != Answer.Yes || verdict.Quiet is not (Answer.Yes or Answer.No))
        && LetterRemedies.OnPage(advice).All(r => r.StillFails != false);

    private static void AddBasis(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Heading(phrase.Of("report.basis")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("letter.basis.table")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("letter.basis." + advice.Basis.Kind)));
        if (advice.ArePricesGuessed)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("letter.basis.prices")));
        }
    }
}
