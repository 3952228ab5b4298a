using Driveline.Advice;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>The page of the letter: may the machine be used, what to do, what we think, what to tell us.</summary>
internal static class LetterPage
{
    private const int MostDangers = 2;

    public static void Add(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        AddStanding(advice, phrase, blocks);
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

    // "Until this is settled" must name all of it; that something is wrong the letter itself says.
    private static void AddStanding(OwnerAdvice advice, Phrase phrase, List<ReportBlock> blocks)
    {
        string code = "standing." + advice.Standing.State;
        string[] reasons = [.. advice.Standing.Reasons.Where(r => r.Why.Code != StandingFindings.Complaint)
            .SelectMany(r => Said(r, advice, phrase))];
        if (reasons.Length < 2)
        {
            blocks.Add(ReportBlock.Lead(string.Join(" ", reasons.Prepend(phrase.Of(code))), LeadTones.Of(advice.Standing.State)));
            return;
        }

        blocks.Add(ReportBlock.Lead(phrase.Of(code + ".several"), LeadTones.Of(advice.Standing.State)));
        blocks.Add(ReportBlock.Bullets(reasons));
    }

    // A danger is said, not announced, where there is room for it.
    private static IEnumerable<string> Said(StandingReason reason, OwnerAdvice advice, Phrase phrase)
    {
        if (reason.Why.Code == StandingFindings.Dangers)
        {
            Finding[] dangers = [.. (advice.Verdict?.Findings ?? []).Where(f => f.Severity == Severity.Danger)];
            IReadOnlyList<string> said = FindingSentences.Of(dangers, phrase);
            return said.Count is > 0 and <= MostDangers ? said : [phrase.Of("letter.standing.dangers")];
        }

        string lift = reason.Why.Code == StandingFindings.GuardsNotKnown && advice.Verdict is null
            ? "letter.standing.guardsNotKnown" : reason.LiftCode;
        return [phrase.Of(reason.Why) + " " + phrase.Of(lift)];
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

        IReadOnlyList<Remedy> remedies = LetterRemedies.OnPage(advice);
        bool isKnown = LetterRemedies.IsCauseKnown(advice);
        if (!isStop && (remedies.Count == 0 || !(isKnown || remedies.Any(r => LetterRemedies.CuresSeen(r, advice)))))
        {
            yield return phrase.Of(isKnown ? "letter.remedies.none"
                : !LetterRemedies.IsNothingTold(advice) || advice.Inspection is not null ? "letter.do.nothingYet"
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

        if (advice.BoltChange is not null)
        {
            yield return phrase.Of("letter.do.sheetA");
        }

        if (ClutchSheet.Applies(advice))
        {
            yield return phrase.Of(ClutchSheet.StepCode(advice));
        }

        if (LetterRemedies.All(advice).Count > remedies.Count)
        {
            yield return phrase.Of("letter.do.more");
        }
    }

    // Beside a stop whose reason is known, to call the cause unknown would contradict it.
    private static IEnumerable<string> Thoughts(OwnerAdvice advice, Phrase phrase)
    {
        Diagnosis diagnosis = advice.Diagnosis;
        bool isNothingTold = LetterRemedies.IsNothingTold(advice);
        bool isStop = advice.Standing.State == StandingState.Stop;
        if (isNothingTold || (isStop && !LetterRemedies.IsCauseKnown(advice)))
        {
            LikelyCause? seen = diagnosis.Causes.FirstOrDefault(c => c.IsSeen);
            if (seen is not null)
            {
                yield return CauseSentences.Seen(seen, phrase);
            }

            if (seen is null || isNothingTold)
            {
                yield return phrase.Of(seen is not null ? "letter.think.noSymptom.other"
                    : isStop ? "letter.think.stop" : "letter.think.noSymptom");
            }

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

    private static string Question(OwnerAdvice advice, Phrase phrase)
    {
        NextCheck? next = advice.Diagnosis.Next;
        if (LetterRemedies.IsNothingTold(advice))
        {
            return phrase.Of("letter.tell.symptom");
        }

        if (next is null || !CauseSentences.HoldAGuess(advice.Diagnosis))
        {
            // A cause that is plain needs no question; whether it protects then may still be open.
            return phrase.Of(advice.Verdict is null ? "letter.tell.machine" : "letter.next.none");
        }

        string ask = phrase.Of(next.Question.TextCode);
        return next.Question.Place == CheckPlace.Desk ? ask + " " + phrase.Of("letter.tell.desk")
            : ask + " " + phrase.Of(Phrase.Code("letter.tell.minutes").With("minutes", QuantityKind.Count, next.Question.Minutes));
    }
}
