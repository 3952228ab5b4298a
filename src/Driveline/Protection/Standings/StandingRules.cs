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
        (SeenDefect Defect, ProtectiveDevice? Device)[] found = [.. verdict is null ? [] : DefectsOf(verdict)];
        SeenDefect[] defects = [.. found.Select(d => d.Defect).Concat(seen.Select(s => s.Defect)).Distinct().OrderBy(d => d)];
        Finding[] forbidding =
        [
            .. defects.Select(d => Finding.Of(CodeOf(d), Severity.Danger)
                .WithBecause(Places(verdict, d, Array.Find(found, f => f.Defect == d).Device, seen))),
            .. stops.Where(f => f.Code != StandingFindings.LikelyUnprotected || !defects.Any(d => WithoutProtection.Contains(d))),
            .. verdict is null ? [] : ByNumbers(verdict, defects).Select(f => verdict.Question.Places.Name(verdict.Question.Chain, f)),
        ];
        if (forbidding.Length > 0)
        {
            return Standing(StandingState.Stop, forbidding);
        }

        bool isKnown = verdict is { Guards: not Answer.NotKnown } or { Headline: Headline.AsSpecified };
        string[] unknown = isKnown ? [] : [StandingFindings.GuardsNotKnown];
        string[] careful = [.. unknown, .. verdict is null ? [] : Cares(verdict), .. cares];
        return Standing(
            !isKnown ? StandingState.NotKnown : careful.Length > 0 ? StandingState.WithCare : StandingState.GoOn,
            [.. careful.Distinct().Select(c => Finding.Of(c, Severity.Warning))]);
    }

    private static Standing Standing(StandingState state, Finding[] reasons) => new(state, [.. reasons.Select(r => new StandingReason(r))]);

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
    internal static IEnumerable<(SeenDefect Defect, ProtectiveDevice? Device)> DefectsOf(ProtectionVerdict verdict)
    {
        foreach (SeenDefect defect in verdict.Question.Defects)
        {
            yield return (defect, null);
        }

        if (verdict.Devices.Count == 0 && verdict.Question.PartsComplete)
        {
            yield return (SeenDefect.NoDevice, null);
        }

        foreach (ProtectiveDevice device in verdict.Question.Chain.Devices)
        {
            foreach (Finding finding in device.Findings)
            {
                switch (finding.Code)
                {
                    case ShearBoltFindings.HubSeized:
                        yield return (SeenDefect.HubSeized, device);
                        break;
                    case ShearBoltFindings.HubStiff:
                        yield return (SeenDefect.HubStiff, device);
                        break;
                    case ClutchFindings.Stuck:
                        yield return (SeenDefect.ClutchStuck, device);
                        break;
                    case ClutchFindings.SpringsSolid:
                    case ClutchFindings.ShorterThanSolid:
                        yield return (SeenDefect.ClutchSolid, device);
                        break;
                    case DeviceFindings.SlipsTooHot:
                        yield return (SeenDefect.ClutchOverheats, device);
                        break;
                }
            }
        }
    }

    private static IEnumerable<Finding> ByNumbers(ProtectionVerdict verdict, SeenDefect[] defects)
    {
        if (verdict.Headline == Headline.NoSettingFits && verdict.WeakestPart is { } weakest)
        {
            yield return Finding.Of(StandingFindings.WorkTooHeavy, Severity.Danger).With("name", weakest.Part.Name);
        }

        if (verdict.Guards == Answer.No && !defects.Any(d => WithoutProtection.Contains(d))
            && verdict.Parts.FirstOrDefault(p => p.Guards == Answer.No) is { } part)
        {
            yield return Named(verdict, StandingFindings.DoesNotProtect, part.GuardedBy).With("name", part.Part.Name);
        }

        if (verdict.Guards != Answer.Yes && verdict.FittedAgainstSpecified.Answer == FittedComparison.Stronger)
        {
            yield return Named(verdict, StandingFindings.FittedStronger, verdict.FittedAgainstSpecified.Device);
        }
    }

    private static IEnumerable<string> Cares(ProtectionVerdict verdict)
    {
        bool isAsSpecified = verdict.Headline == Headline.AsSpecified;
        if (verdict.Guards == Answer.Maybe && !isAsSpecified)
        {
            yield return StandingFindings.MayNotProtect;
        }

        if (verdict.Quiet != Answer.Yes && !isAsSpecified)
        {
            yield return verdict.Quiet == Answer.No ? StandingFindings.ActsInWork : StandingFindings.MayActInWork;
        }

        FittedComparison fitted = verdict.FittedAgainstSpecified.Answer;
        if (fitted == FittedComparison.Stronger || (fitted == FittedComparison.NotKnown && verdict.AsSpecified.Answer != Answer.Yes))
        {
            yield return fitted == FittedComparison.Stronger ? StandingFindings.FittedStronger : StandingFindings.SpecifiedNotKnown;
        }

        if (verdict.Findings.Any(f => f.Severity == Severity.Danger && f.Code != ProtectionFindings.FittedStronger))
        {
            yield return StandingFindings.Dangers;
        }

        if (!verdict.Question.IsLookedOver)
        {
            yield return StandingFindings.NotLookedOver;
        }
    }
}
