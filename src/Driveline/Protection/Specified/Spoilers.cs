using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>What keeps a machine from being headed "as the maker specified", though its devices are the manual's and in order.</summary>
internal static class Spoilers
{
    /// <summary>Findings that say what a margin says; the margin counts, when it rests on no default.</summary>
    private static readonly HashSet<string> OfMargins = new(StringComparer.Ordinal)
    {
        ProtectionFindings.TripAboveLimit,
        ProtectionFindings.TripMayExceedLimit,
        ProtectionFindings.TripBelowWork,
        ProtectionFindings.TripMayFallBelowWork,
    };

    /// <summary>
    /// True when a stated number leaves no margin, something is wrong that is no mere lack of a fact, or a defect was seen.
    /// </summary>
    public static bool Any(ProtectionVerdict verdict)
    {
        bool isAny = verdict.Question.Work is { IsAssumed: false, Torque.IsBounded: true } && verdict.WorkMargin < 1
            && !verdict.IsQuietByExperience;
        foreach (PartCheck part in verdict.AllParts)
        {
            isAny |= part is { Margin: < 1, Part.Limit: { IsAssumed: false, IsRating: false }, RestsOnEfficiency: false }
                && part.Acts.IsBounded;
        }

        isAny = isAny || HasDanger(verdict.Question.Notes);
        foreach (DeviceCheck check in verdict.AllDevices)
        {
            isAny = isAny || HasDanger(check.Device.Findings);
        }

        for (int k = 0; k < verdict.Doubts.Count && !isAny; k++)
        {
            isAny = IsWrong(verdict.Doubts[k].Finding);
        }

        return isAny || StandingRules.DefectsOf(verdict).Count > 0;
    }

    private static bool HasDanger(IReadOnlyList<Finding> findings)
    {
        for (int k = 0; k < findings.Count; k++)
        {
            if (findings[k].Severity == Severity.Danger && IsWrong(findings[k]))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsWrong(Finding finding) => !OfMargins.Contains(finding.Code) && !MissingFacts.Is(finding);
}
