using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Choosing;

/// <summary>What a choice of settings reports, worst first.</summary>
internal static class SettingFindings
{
    /// <summary>What must be known before any setting can be offered; empty when all is.</summary>
    public static IReadOnlyList<Finding> Missing(ProtectionVerdict verdict, ProtectiveDevice place, ClutchCondition told)
    {
        var missing = new List<Finding>(ToMend(place, told));
        if (told.KnownStuck)
        {
            missing.Add(Finding.Of(ChoosingFindings.SettingNeedsFreeClutch, Severity.Danger));
        }

        if (!LimitKnowledge.IsAnyKnown(verdict))
        {
            missing.Add(Finding.Of(ChoosingFindings.LimitsNotKnown, Severity.Danger));
        }
        else if (!LimitKnowledge.IsComplete(verdict))
        {
            missing.Add(LimitKnowledge.FirstUnknownPart(verdict) is { } unknown
                ? Finding.Of(ChoosingFindings.SettingNeedsPart, Severity.Danger).With("name", unknown)
                : Finding.Of(ChoosingFindings.SettingNeedsList, Severity.Danger));
        }

        if (verdict.WorkPeak is not { IsBounded: true })
        {
            missing.Add(Finding.Of(ChoosingFindings.SettingNeedsWork, Severity.Danger));
        }

        missing.AddRange(verdict.Findings.Where(f => f.Code == ProtectionFindings.GearboxRatioNotKnown));
        return missing;
    }

    /// <summary>The torque that the manual states for a clutch in its place; null when it states none with an expected value.</summary>
    public static TorqueBand? Manuals(ProtectionQuestion question, ProtectiveDevice place) =>
        Specified(question, place)?.InGoodOrder is { HasExpected: true } named ? named : null;

    public static IReadOnlyList<Finding> Answer(ClutchSearch search, ClutchPoint best, ClutchWindow? window)
    {
        var findings = new List<Finding>();
        if (window is null)
        {
            NoSettingFindings.Add(search, best, findings);
        }
        else
        {
            findings.Add(Finding.Of(ChoosingFindings.SlipAfterSetting, Severity.Danger));
            bool isManuals = Manuals(search.Question, search.Place) is { } named
                && named.SiBand.Expected >= window.Lowest.TorqueNm && named.SiBand.Expected <= window.Highest.TorqueNm;
            if (!isManuals)
            {
                findings.Add(Finding.Of(ChoosingFindings.SettingNotTheManuals, Severity.Warning));
            }
        }

        findings.AddRange(best.Slip.Findings.Where(f => f.Code is not ClutchFindings.SpringLengthNotKnown));
        return [.. findings.OrderBy(f => f.Severity)];
    }

    // While one of these stands, a tighter spring hides the fault and may burn the clutch.
    private static IEnumerable<Finding> ToMend(ProtectiveDevice place, ClutchCondition told)
    {
        if (told.Surface is SurfaceState.Oiled or SurfaceState.Glazed)
        {
            yield return Finding.Of(
                told.Surface == SurfaceState.Oiled ? ChoosingFindings.MendOiled : ChoosingFindings.MendGlazed, Severity.Danger);
        }

        if (place.Findings.Any(f => f.Code == DeviceFindings.SlipsTooHot))
        {
            yield return Finding.Of(ChoosingFindings.MendTooHot, Severity.Danger);
        }

        if (place.Findings.Any(
            f => f.Code is ClutchFindings.SpringsSolid or ClutchFindings.SpringsMayBeSolid or ClutchFindings.ShorterThanSolid))
        {
            yield return Finding.Of(ChoosingFindings.MendSolid, Severity.Danger);
        }
    }

    private static ProtectiveDevice? Specified(ProtectionQuestion question, ProtectiveDevice place) =>
        question.SpecifiedFor(place) is { Kind: DeviceKind.SlipClutch } named ? named : null;
}
