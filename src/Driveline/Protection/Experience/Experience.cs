using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>What hours of work say of quiet, beside the numbers. It never speaks of guards.</summary>
internal static class Experience
{
    /// <summary>The answer of the numbers as experience changes it.</summary>
    /// <remarks>
    /// Breaks so rare that even their upper bound is within the policy are a Yes when nothing has changed, in a window that something
    /// opened;
    /// against a No of the numbers they are a Maybe, and a defect that bars quiet keeps them from a Yes. Breaks whose lower bound is above
    /// the policy bar a Yes. That nothing acted in work, without hours, makes a Maybe of what is not known, and no more.
    /// </remarks>
    public static Answer Judge(ProtectionVerdict verdict, Answer byNumbers)
    {
        ProtectionQuestion question = verdict.Question;
        if (verdict.Devices.Count == 0 || question.TripsInNormalWork == true)
        {
            return byNumbers;
        }

        BreakHistory? history = question.History is { IsChanged: not true } told ? told : null;
        bool isSeenQuiet = question.TripsInNormalWork == false || history is { Breaks: 0, BreaksAtEngagement: null or 0 };
        Answer answer = byNumbers == Answer.NotKnown && isSeenQuiet ? Answer.Maybe : byNumbers;
        return history is null ? answer
            : IsOften(history, verdict.Policy) && answer == Answer.Yes ? Answer.Maybe
            : !IsEnough(history, verdict.Policy) ? answer
            : answer == Answer.No || HasDefect(verdict) ? Answer.Maybe
            : Answer.Yes;
    }

    /// <summary>What there is to say of the history; what bars quiet is among the doubts.</summary>
    public static IEnumerable<Finding> Findings(ProtectionVerdict verdict)
    {
        if (verdict.Question.History is not { } history || verdict.Devices.Count == 0)
        {
            yield break;
        }

        if (history.IsChanged == true)
        {
            yield return With(Finding.Of(ProtectionFindings.HistoryChanged, Severity.Note), history);
        }
        else if (verdict.IsQuietByExperience)
        {
            yield return With(Finding.Of(ProtectionFindings.QuietByExperience, Severity.Note), history)
                .With("between", QuantityKind.Number, 1 / history.BreaksPerHourAtMost);
        }
        else if (!IsRareEnough(history, verdict.Policy))
        {
            if (verdict.Quiet != Answer.Yes && !IsOften(history, verdict.Policy))
            {
                yield return With(Finding.Of(ProtectionFindings.HistoryTooShort, Severity.Note), history)
                    .With("needed", QuantityKind.Number, NeededHours(history, verdict.Policy))
                    .With("between", QuantityKind.Number, verdict.Policy.HoursPerBreak);
            }
        }
        else if (!IsEnough(history, verdict.Policy) && verdict.Quiet != Answer.Yes)
        {
            yield return With(Finding.Of(ProtectionFindings.HistoryIncomplete, Severity.Note), history);
        }
    }

    /// <summary>What the history has against a quiet Yes.</summary>
    public static IEnumerable<Doubt> Doubts(ProtectionVerdict verdict)
    {
        if (verdict.Question.History is not { IsChanged: not true } history || verdict.Devices.Count == 0)
        {
            yield break;
        }

        if (verdict.QuietByNumbers == Answer.No && IsEnough(history, verdict.Policy) && verdict.Question.TripsInNormalWork != true)
        {
            yield return Barring(With(Finding.Of(ProtectionFindings.ExperienceAgainstNumbers, Severity.Warning), history));
        }

        if (IsOften(history, verdict.Policy))
        {
            int breaks = Math.Max(history.Breaks, history.BreaksAtEngagement ?? 0);
            yield return Barring(Finding.Of(
                    history.Breaks == breaks ? ProtectionFindings.BreaksOften
                        : ProtectionFindings.BreaksOftenAtEngagement, Severity.Warning)
                .With("breaks", QuantityKind.Count, breaks)
                .With("hours", QuantityKind.Number, history.Hours));
        }
    }

    /// <summary>A finding without its bar on quiet, where experience has settled that question.</summary>
    public static Finding Settled(Finding finding, ProtectionVerdict verdict) =>
        verdict.IsQuietByExperience && finding.IsBarring(Bars.Quiet) ? finding.Barring(finding.Bars & ~Bars.Quiet) : finding;

    private static bool IsEnough(BreakHistory history, ProtectionPolicy policy) =>
        history is { IsChanged: false, From: not HistoryStart.NotKnown } && IsRareEnough(history, policy);

    private static bool IsRareEnough(BreakHistory history, ProtectionPolicy policy) =>
        Math.Max(history.BreaksPerHourAtMost, history.EngagementBreaksPerHourAtMost) * policy.HoursPerBreak <= 1;

    private static bool IsOften(BreakHistory history, ProtectionPolicy policy) =>
        PoissonRate.LeastMean(Math.Max(history.Breaks, history.BreaksAtEngagement ?? 0)) * policy.HoursPerBreak > history.Hours;

    // Hours in all that would be enough if nothing acts from now on.
    private static double NeededHours(BreakHistory history, ProtectionPolicy policy) =>
        PoissonRate.MostMean(Math.Max(history.Breaks, history.BreaksAtEngagement ?? 0)) * policy.HoursPerBreak;

    // A defect that somebody can see or compute outlasts the hours in which it has not mattered yet.
    private static bool HasDefect(ProtectionVerdict verdict) =>
        verdict.Question.Notes.Any(IsDefect)
            || verdict.Devices.Any(d => d.Device.QuietBars.Any(IsDefect)
                || (d.Work is { } work && d.Device.BarsUnder(work.High).Any(IsDefect)));

    private static bool IsDefect(Finding finding) => finding.IsBarring(Bars.Quiet) && !MissingFacts.Is(finding);

    private static Finding With(Finding finding, BreakHistory history) => finding
        .With("breaks", QuantityKind.Count, history.Breaks + (history.BreaksAtEngagement ?? 0))
        .With("hours", QuantityKind.Number, history.Hours);

    private static Doubt Barring(Finding finding) =>
        new(finding.Barring(Bars.Quiet).WithSettledBy(Measurements.WorkPeak), null);
}
