using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>How a standing follows from what is seen and from the verdict.</summary>
internal static class StandingRules
{
    // Where one of these is known, that the numbers give no protection either is no news.
    private static readonly SeenDefect[] WithoutProtection =
        [SeenDefect.NoDevice, SeenDefect.HubSeized, SeenDefect.ClutchStuck, SeenDefect.ClutchSolid];

    /// <summary>The standing of a machine of which the verdict is known, or not.</summary>
    /// <param name="verdict">The verdict; null when there is none.</param>
    /// <param name="seen">Defects seen and where that is told, beside those that the verdict's question and devices tell.</param>
    /// <param name="cares">More reasons for care.</param>
    /// <param name="stops">More reasons to stop.</param>
    public static Standing Of(
        ProtectionVerdict? verdict, IReadOnlyList<(SeenDefect Defect, string Path)> seen, IReadOnlyList<string> cares,
        params Finding[] stops)
    {
        List<(SeenDefect Defect, ProtectiveDevice? Device)> found = verdict is null ? [] : DefectsOf(verdict);
        SeenDefect[] defects = found.Count + seen.Count == 0 ? []
            : [.. found.Select(d => d.Defect).Concat(seen.Select(s => s.Defect)).Distinct().OrderBy(d => d)];
        var forbidding = new List<StandingReason>();
        foreach (SeenDefect defect in defects)
        {
            string[] places = Places(verdict, defect, found.Find(f => f.Defect == defect).Device, seen);
            forbidding.Add(new StandingReason(Finding.Of(CodeOf(defect), Severity.Danger).WithBecause(places)));
        }

        foreach (Finding stop in stops)
        {
            if (stop.Code != StandingFindings.LikelyUnprotected || !defects.Any(d => WithoutProtection.Contains(d)))
            {
                forbidding.Add(new StandingReason(stop));
            }
        }

        if (verdict is not null)
        {
            AddByNumbers(verdict, defects, forbidding);
        }

        if (forbidding.Count > 0)
        {
            return new Standing(StandingState.Stop, forbidding.AsReadOnly());
        }

        bool isKnown = verdict is { Guards: not Answer.NotKnown } or { Headline: Headline.AsSpecified };
        var careful = new List<StandingReason>();
        AddCare(StandingFindings.GuardsNotKnown, !isKnown, careful);
        if (verdict is not null)
        {
            AddCares(verdict, careful);
        }

        foreach (string care in cares)
        {
            AddCare(care, true, careful);
        }

        return new Standing(
            !isKnown ? StandingState.NotKnown : careful.Count > 0 ? StandingState.WithCare : StandingState.GoOn, careful.AsReadOnly());
    }

    // Each once.
    private static void AddCare(string code, bool holds, List<StandingReason> careful)
    {
        if (holds && !careful.Exists(r => r.Why.Code == code))
        {
            careful.Add(new StandingReason(Finding.Of(code, Severity.Warning)));
        }
    }

    // Rests on the device too, which its words do not name.
    private static Finding Named(ProtectionVerdict verdict, string code, ProtectiveDevice? device)
    {
        Finding finding = Finding.Of(code, Severity.Danger);
        ProtectionQuestion question = verdict.Question;
        return device is null ? finding : question.Places.NameDevice(question.Chain, question.Chain.IndexOf(device), finding);
    }

    private static string[] Places(
        ProtectionVerdict? verdict, SeenDefect defect, ProtectiveDevice? device, IReadOnlyList<(SeenDefect Defect, string Path)> seen)
    {
        string[] known = verdict?.Question.Places.OfDefect(defect, verdict.Question.Chain, device) ?? [];
        return known.Length > 0 ? known : [.. seen.Where(s => s.Defect == defect).Select(s => s.Path)];
    }

    internal static string CodeOf(SeenDefect defect) => defect switch
    {
        SeenDefect.ClutchSmokes => StandingFindings.ClutchSmokes,
        SeenDefect.NoDevice => StandingFindings.NoDevice,
        SeenDefect.HubSeized => StandingFindings.HubSeized,
        SeenDefect.HubStiff => StandingFindings.HubStiff,
        SeenDefect.ClutchStuck => StandingFindings.ClutchStuck,
        SeenDefect.ClutchSolid => StandingFindings.ClutchSolid,
        SeenDefect.ClutchOverheats => StandingFindings.ClutchOverheats,
        SeenDefect.TubeTwisted => StandingFindings.TubeTwisted,
        SeenDefect.GearboxBroken => StandingFindings.GearboxBroken,
        SeenDefect.BladesBent => StandingFindings.BladesBent,
        _ => throw new ArgumentOutOfRangeException(nameof(defect)),
    };

    /// <summary>Every defect that the question names or a device shows, with that device.</summary>
    internal static List<(SeenDefect Defect, ProtectiveDevice? Device)> DefectsOf(ProtectionVerdict verdict)
    {
        var found = new List<(SeenDefect Defect, ProtectiveDevice? Device)>();
        for (int k = 0; k < verdict.Question.Defects.Count; k++)
        {
            found.Add((verdict.Question.Defects[k], null));
        }

        if (verdict.Devices.Count == 0 && verdict.Question.PartsComplete)
        {
            found.Add((SeenDefect.NoDevice, null));
        }

        foreach (DeviceCheck check in verdict.AllDevices)
        {
            IReadOnlyList<Finding> own = check.Device.Findings;
            for (int k = 0; k < own.Count; k++)
            {
                if (ShownBy(own[k].Code) is { } defect)
                {
                    found.Add((defect, check.Device));
                }
            }
        }

        return found;
    }

    private static SeenDefect? ShownBy(string code) => code switch
    {
        ShearBoltFindings.HubSeized => SeenDefect.HubSeized,
        ShearBoltFindings.HubStiff => SeenDefect.HubStiff,
        ClutchFindings.Stuck => SeenDefect.ClutchStuck,
        ClutchFindings.SpringsSolid or ClutchFindings.ShorterThanSolid => SeenDefect.ClutchSolid,
        DeviceFindings.SlipsTooHot => SeenDefect.ClutchOverheats,
        _ => null,
    };

    private static void AddByNumbers(ProtectionVerdict verdict, SeenDefect[] defects, List<StandingReason> forbidding)
    {
        if (verdict.Headline == Headline.NoSettingFits && verdict.WeakestPart is { } weakest)
        {
            Add(Finding.Of(StandingFindings.WorkTooHeavy, Severity.Danger).With("name", weakest.Part.Name));
        }

        if (verdict.Guards == Answer.No && !defects.Any(d => WithoutProtection.Contains(d))
            && FirstToGo(verdict) is { } part)
        {
            Add(Named(verdict, StandingFindings.DoesNotProtect, part.GuardedBy).With("name", part.Part.Name));
        }

        if (verdict.Guards != Answer.Yes && verdict.FittedAgainstSpecified.Answer == FittedComparison.Stronger)
        {
            Add(Named(verdict, StandingFindings.FittedStronger, verdict.FittedAgainstSpecified.Device));
        }

        if (VerdictCautions.TurnsInTheOpen(verdict.Question.Machine)
            && Array.Find(verdict.AllDevices, d => Has(d.Device.Findings, ShearBoltFindings.BoltStandsProud)) is { } proud)
        {
            Add(Named(verdict, StandingFindings.BoltStandsProud, proud.Device));
        }

        void Add(Finding finding) => forbidding.Add(new StandingReason(verdict.Question.Places.Name(verdict.Question.Chain, finding)));
    }

    private static bool Has(IReadOnlyList<Finding> findings, string code)
    {
        for (int k = 0; k < findings.Count; k++)
        {
            if (findings[k].Code == code)
            {
                return true;
            }
        }

        return false;
    }

    // The weakest of those that go before the protection: an owner looks for the damage there.
    private static PartCheck? FirstToGo(ProtectionVerdict verdict) =>
        verdict.WeakestPart is { Guards: Answer.No } weakest ? weakest : verdict.Parts.FirstOrDefault(p => p.Guards == Answer.No);

    private static void AddCares(ProtectionVerdict verdict, List<StandingReason> careful)
    {
        bool isAsSpecified = verdict.Headline == Headline.AsSpecified;
        AddCare(StandingFindings.MayNotProtect, verdict.Guards == Answer.Maybe && !isAsSpecified, careful);
        AddCare(verdict.Quiet == Answer.No ? StandingFindings.ActsInWork : StandingFindings.MayActInWork,
            verdict.Quiet != Answer.Yes && !isAsSpecified, careful);
        FittedComparison fitted = verdict.FittedAgainstSpecified.Answer;
        AddCare(StandingFindings.FittedStronger, fitted == FittedComparison.Stronger, careful);
        bool isManualKnown = verdict.Comparisons.Count > 0;
        for (int k = 0; k < verdict.Comparisons.Count; k++)
        {
            isManualKnown &= verdict.Comparisons[k].Specified is not null;
        }

        AddCare(isManualKnown ? StandingFindings.FittedNotKnown : StandingFindings.SpecifiedNotKnown,
            fitted == FittedComparison.NotKnown && verdict.AsSpecified.Answer != Answer.Yes, careful);
        bool hasDanger = false;
        for (int k = 0; k < verdict.Findings.Count && !hasDanger; k++)
        {
            hasDanger = verdict.Findings[k] is { Severity: Severity.Danger, Code: not ProtectionFindings.FittedStronger };
        }

        AddCare(StandingFindings.Dangers, hasDanger, careful);
        AddCare(StandingFindings.NotLookedOver, !verdict.Question.IsLookedOver, careful);
    }
}
