using Driveline.Advice;
using Driveline.Protection;

namespace Driveline.Reports.Letters;

/// <summary>Which of the remedies a letter names: three on its page at most, all that apply on Sheet D.</summary>
internal static class LetterRemedies
{
    private const int MostSteps = 3;
    public const string LeaveAsIs = "remedy.leaveAsIs";

    // These say that nothing needs to change; beside a stop that contradicts it.
    private static readonly string[] Calm = [LeaveAsIs, "remedy.acceptTrips"];

    /// <summary>True where the owner has told of no trouble: then no cause of it is sought.</summary>
    public static bool IsNothingTold(OwnerAdvice advice) => advice.Diagnosis.Complaint.Symptom == Symptom.NotKnown;

    /// <summary>True where a cause of the trouble is known well enough to act on it.</summary>
    public static bool IsCauseKnown(OwnerAdvice advice) => advice.Diagnosis.IsEnoughKnown && !IsNothingTold(advice);

    /// <summary>True when the remedy mends a fault that somebody has seen.</summary>
    public static bool CuresSeen(Remedy remedy, OwnerAdvice advice) =>
        advice.Diagnosis.Causes.Any(c => c.IsSeen && remedy.Cures(c.Cause));

    /// <summary>Those of the page: before a cause is known what mends a seen fault, and a free habit.</summary>
    public static IReadOnlyList<Remedy> OnPage(OwnerAdvice advice)
    {
        Remedy[] fitting = [.. Fitting(advice)];

        // The manual's bolt has the manual's length.
        Remedy[] own = [.. fitting.Where(r => r.Code != Remedies.ShankInPlane || fitting.All(o => o.Code != Remedies.SpecifiedBolt))];
        return IsCauseKnown(advice) ? [.. own.Take(MostSteps)]
            : [.. own.Where(r => CuresSeen(r, advice)).Take(MostSteps - 1)
                .Concat(own.Where(r => r.IsFreeHabit && r.Code != LeaveAsIs).Take(1)).Distinct()];
    }

    /// <summary>Those of Sheet D.</summary>
    public static IReadOnlyList<Remedy> All(OwnerAdvice advice) => IsNothingTold(advice) ? OnPage(advice) : [.. Fitting(advice)];

    private static IEnumerable<Remedy> Fitting(OwnerAdvice advice) =>
        advice.Remedies.Where(r => advice.Standing.State != StandingState.Stop || !Calm.Contains(r.Code));
}
