using Driveline.Advice;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>The page of the letter: may the machine be used, what to do, what we think, what to tell us.</summary>
internal static class LetterPage
{
    private const int MostSteps = 3;
    private const int MostCares = 2;

    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        AddStanding(advice.Standing, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("letter.do")));
        blocks.Add(ReportBlock.Numbered(Steps(advice, phrase)));
        blocks.Add(ReportBlock.Heading(phrase.Of("letter.think")));
        blocks.Add(ReportBlock.Paragraph(string.Join(" ", Thoughts(advice.Diagnosis, phrase))));
        blocks.Add(ReportBlock.Heading(phrase.Of("letter.tell")));
        blocks.Add(ReportBlock.Paragraph(Question(advice.Diagnosis.Next, phrase)));
    }

    // Every reason to stop stands on the page; of what only asks for care, the most urgent. That something is wrong the letter itself says.
    private static void AddStanding(Standing standing, Phrase phrase, List<ReportBlock> blocks)
    {
        StandingReason[] own = [.. standing.Reasons.Where(r => r.Why.Code != StandingFindings.Complaint)];
        StandingReason[] shown = standing.State == StandingState.Stop ? [.. own.Where(r => r.Why.Severity == Severity.Danger)] : own;
        shown = shown.Length == 0 ? own : shown;
        shown = standing.State == StandingState.Stop ? shown : [.. shown.Take(MostCares)];
        string code = "standing." + standing.State;
        string[] reasons = [.. shown.Select(r => phrase.Of(r.Why) + " " + phrase.Of(r.LiftCode))];
        if (reasons.Length < 2)
        {
            blocks.Add(ReportBlock.Lead(string.Join(" ", reasons.Prepend(phrase.Of(code))), LeadTones.Of(standing.State)));
            return;
        }

        blocks.Add(ReportBlock.Lead(phrase.Of(code + ".several"), LeadTones.Of(standing.State)));
        blocks.Add(ReportBlock.Bullets(reasons));
    }

    private static IEnumerable<string> Steps(OwnerAdvice advice, Phrase phrase)
    {
        var steps = new List<string>();
        if (advice.Inspection is not null)
        {
            steps.Add(phrase.Of("letter.do.inspect"));
        }

        if (!advice.Diagnosis.IsEnoughKnown)
        {
            steps.Add(phrase.Of("letter.do.nothingYet"));
            Remedy[] free = [.. advice.Remedies.Where(IsFreeHabit).Take(1)];
            return steps.Concat(free.Select(r => RemedySentences.Short(r, advice.Currency, phrase)));
        }

        if (advice.Remedies.Count == 0)
        {
            steps.Add(phrase.Of("letter.remedies.none"));
        }

        // The cure of the likeliest cause first, then habits, then money.
        Cause likeliest = advice.Diagnosis.Causes[0].Cause;
        IEnumerable<Remedy> ordered = advice.Remedies.OrderBy(r => r.Cures(likeliest) && r.Code != Remedies.StrongerBolt ? 0 : 1);
        steps.AddRange(ordered.Take(MostSteps).Select(r => RemedySentences.Short(r, advice.Currency, phrase)));
        if (advice.BoltChange is not null)
        {
            steps.Add(phrase.Of("letter.do.sheetA"));
        }

        if (ClutchSheet.Applies(advice))
        {
            steps.Add(phrase.Of("letter.do.sheetC"));
        }

        if (advice.Remedies.Count > MostSteps)
        {
            steps.Add(phrase.Of("letter.do.more"));
        }

        return steps;
    }

    private static bool IsFreeHabit(Remedy remedy) =>
        remedy is { Order: 1, OnGuardMargin: MarginEffect.Unchanged, Cost: { High: 0 } } && remedy.Code != "remedy.leaveAsIs";

    private static IEnumerable<string> Thoughts(Diagnosis diagnosis, Phrase phrase)
    {
        yield return CauseSentences.InWords(diagnosis, phrase);
        foreach (string reason in CauseSentences.MainReasons(diagnosis, phrase))
        {
            yield return reason;
        }

        yield return phrase.Of("letter.think.guess");
    }

    private static string Question(NextCheck? next, Phrase phrase)
    {
        if (next is null)
        {
            return phrase.Of("letter.next.none");
        }

        string ask = phrase.Of(next.Question.TextCode);
        return next.Question.Place == CheckPlace.Desk ? ask + " " + phrase.Of("letter.tell.desk")
            : ask + " " + phrase.Of(Phrase.Code("letter.tell.minutes").With("minutes", QuantityKind.Count, next.Question.Minutes));
    }
}
