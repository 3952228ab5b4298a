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
    public static bool Any(ProtectionVerdict verdict) =>
        verdict.Parts.Any(p => p is { Margin: < 1, Part.Limit: { IsAssumed: false, IsRating: false }, RestsOnEfficiency: false }
            && p.Acts.IsBounded)
        || (verdict.Question.Work is { IsAssumed: false, Torque.IsBounded: true } && verdict.WorkMargin < 1 && !verdict.IsQuietByExperience)
        || verdict.Doubts.Any(d => IsWrong(d.Finding))
        || verdict.Question.Notes.Concat(verdict.Devices.SelectMany(d => d.Device.Findings))
            .Any(f => f.Severity == Severity.Danger && IsWrong(f))
        || StandingRules.DefectsOf(verdict).Any();

    private static bool IsWrong(Finding finding) => !OfMargins.Contains(finding.Code) && !MissingFacts.Is(finding);
}
