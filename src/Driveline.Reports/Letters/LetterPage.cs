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

    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        AddStanding(advice.Standing, phrase, blocks);
        LetterOpening.AddOwnWords(advice.Head, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("letter.do")));
        blocks.Add(ReportBlock.Steps(Steps(advice, phrase)));
        if (CostSentences.InBrief(advice.Costs, phrase) is { } money)
        {
            blocks.Add(ReportBlock.Paragraph(money));
        }

        IReadOnlyList<OwnerAnswer> answers = advice.Answers;
        if (answers.Count > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("letter.asked")));
            blocks.Add(ReportBlock.Bullets(answers.Select(a => phrase.Of(AdviceCodes.Of(a.Ask)) + " " + phrase.Of(a.Answer))));
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("letter.think")));
        blocks.Add(ReportBlock.Paragraph(string.Join(" ", Thoughts(advice, phrase))));
        blocks.Add(ReportBlock.Heading(phrase.Of("letter.tell")));
        blocks.Add(ReportBlock.Paragraph(Question(advice, phrase)));
        if (advice.Standing.State != StandingState.Stop && advice.Verdict is { Guards: not Answer.Yes, MeasureNext.Count: > 0 } verdict)
        {
            blocks.Add(ReportBlock.Paragraph(
                phrase.Of(Phrase.Code("letter.tell.measure").With("text", phrase.Of(verdict.MeasureNext[0].Code)))));
        }
    }

    // "Until this is settled" must name all of it. Beside a stop its lesser reasons wait on Sheet D; that something is wrong
    // the letter itself says.
    private static void AddStanding(Standing standing, Phrase phrase, List<ReportBlock> blocks)
    {
        StandingReason[] own = [.. standing.Reasons.Where(r => r.Why.Code != StandingFindings.Complaint)];
        StandingReason[] stops = [.. own.Where(r => r.Why.Severity == Severity.Danger)];
        StandingReason[] shown = standing.State == StandingState.Stop && stops.Length > 0 ? stops : own;
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
        bool isStop = advice.Standing.State == StandingState.Stop;
        if (isStop)
        {
            yield return phrase.Of("letter.do.stop");
        }

        if (advice.Inspection is not null)
        {
            yield return phrase.Of("letter.do.inspect");
        }

        Remedy[] remedies = [.. Chosen(advice)];
        if (!isStop && (remedies.Length == 0 || !(advice.Diagnosis.IsEnoughKnown || remedies.Any(r => CuresSeen(r, advice)))))
        {
            yield return phrase.Of(advice.Diagnosis.IsEnoughKnown ? "letter.remedies.none"
                : !IsNothingTold(advice) || advice.Inspection is not null ? "letter.do.nothingYet"
                : advice.Standing.State == StandingState.GoOn ? "letter.do.noSymptom"
                : "letter.do.noSymptom.withCare");
        }

        // What would do is said only where none of the steps does it.
        Remedy? failing = remedies.Any(r => r.StillFails == false) ? null : remedies.FirstOrDefault(r => r.StillFails == true);
        foreach (Remedy remedy in remedies)
        {
            string step = RemedySentences.Short(remedy, advice, phrase);
            yield return remedy == failing && RemedySentences.Needed(remedy, phrase) is { } needed ? step + " " + needed : step;
        }

        if (advice.BoltChange is not null && (isStop || advice.Diagnosis.IsEnoughKnown))
        {
            yield return phrase.Of("letter.do.sheetA");
        }

        if (ClutchSheet.Applies(advice))
        {
            yield return phrase.Of("letter.do.sheetC");
        }

        if (advice.Remedies.Count > remedies.Length)
        {
            yield return phrase.Of("letter.do.more");
        }
    }

    // Before a cause is known what mends a seen fault, and a free habit.
    private static IEnumerable<Remedy> Chosen(OwnerAdvice advice) => advice.Diagnosis.IsEnoughKnown ? advice.Remedies.Take(MostSteps)
        : advice.Remedies.Where(r => CuresSeen(r, advice)).Take(MostSteps - 1)
            .Concat(advice.Remedies.Where(r => r.IsFreeHabit && r.Code != "remedy.leaveAsIs").Take(1)).Distinct();

    private static bool CuresSeen(Remedy remedy, OwnerAdvice advice) =>
        advice.Diagnosis.Causes.Any(c => c.IsSeen && remedy.Cures(c.Cause));

    // Beside a stop whose reason is known, to call the cause unknown would contradict it.
    private static IEnumerable<string> Thoughts(OwnerAdvice advice, Phrase phrase)
    {
        Diagnosis diagnosis = advice.Diagnosis;
        if (advice.Standing.State == StandingState.Stop && !diagnosis.IsEnoughKnown)
        {
            yield return phrase.Of("letter.think.stop");
            yield break;
        }

        if (IsNothingTold(advice))
        {
            LikelyCause? seen = diagnosis.Causes.FirstOrDefault(c => c.IsSeen);
            if (seen is not null)
            {
                yield return CauseSentences.Seen(seen, phrase);
            }

            yield return phrase.Of(seen is null ? "letter.think.noSymptom" : "letter.think.noSymptom.other");
            yield break;
        }

        yield return CauseSentences.InWords(diagnosis, phrase);
        foreach (string reason in CauseSentences.MainReasons(diagnosis, phrase))
        {
            yield return reason;
        }

        if (CauseSentences.HoldAGuess(diagnosis))
        {
            yield return phrase.Of("letter.think.guess");
        }
    }

    private static bool IsNothingTold(OwnerAdvice advice) =>
        advice.Diagnosis is { IsEnoughKnown: false, Complaint.Symptom: Symptom.NotKnown };

    private static string Question(OwnerAdvice advice, Phrase phrase)
    {
        NextCheck? next = advice.Diagnosis.Next;
        if (IsNothingTold(advice))
        {
            return phrase.Of("letter.tell.symptom");
        }

        if (next is null)
        {
            return phrase.Of("letter.next.none");
        }

        string ask = phrase.Of(next.Question.TextCode);
        return next.Question.Place == CheckPlace.Desk ? ask + " " + phrase.Of("letter.tell.desk")
            : ask + " " + phrase.Of(Phrase.Code("letter.tell.minutes").With("minutes", QuantityKind.Count, next.Question.Minutes));
    }
}
