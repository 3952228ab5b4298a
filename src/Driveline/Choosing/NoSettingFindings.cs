using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Choosing;

/// <summary>Why no setting fits, and what would make one fit: other springs, clean faces, lighter work, a stronger part.</summary>
internal static class NoSettingFindings
{
    public static void Add(ClutchSearch search, ClutchPoint best, List<Finding> findings)
    {
        double work = best.WorkMargin ?? 0;
        double guard = best.GuardMargin ?? 0;
        bool isKnown = work > 0 && guard > 0;
        Finding none = Finding.Of(isKnown ? ChoosingFindings.NoSetting : ChoosingFindings.NoSettingNotKnown, Severity.Warning)
            .With("torque", QuantityKind.Torque, best.TorqueNm);
        findings.Add(isKnown ? none.With("workMargin", QuantityKind.Margin, work).With("guardMargin", QuantityKind.Margin, guard) : none);
        if (AddSprings(search, best, findings) || !isKnown)
        {
            return;
        }

        AddFaces(search, findings);
        AddPower(search, findings);
        AddParts(search, findings);
    }

    // At the highest setting that guards: the work that setting would bear.
    private static void AddPower(ClutchSearch search, List<Finding> findings)
    {
        ClutchPoint guarding = search.At(search.HighestGuardingM());
        if (!(guarding.GuardMargin > search.Policy.MinimumGuardMargin) || !(guarding.WorkMargin > 0))
        {
            return;
        }

        double share = guarding.WorkMargin!.Value / search.Policy.MinimumWorkMargin;
        double workHigh = search.Question.Work!.Torque.SiBand.High;
        findings.Add(Finding.Of(ChoosingFindings.ChangePower, Severity.Note)
            .With("bolt", search.Place.Name)
            .With("place", "setting")
            .With("now", QuantityKind.Torque, workHigh)
            .With("below", QuantityKind.Torque, workHigh * share)
            .With("percent", QuantityKind.Number, share * 100));
    }

    // At the lowest setting that is quiet: what each part would have to stand.
    private static void AddParts(ClutchSearch search, List<Finding> findings)
    {
        double quietM = search.LowestQuietM();
        if (!(search.At(quietM) is { GuardMargin: > 0 } quiet && quiet.WorkMargin > search.Policy.MinimumWorkMargin))
        {
            return;
        }

        foreach (PartCheck part in search.VerdictAt(quietM).Parts.Where(p => p.Margin < search.Policy.MinimumGuardMargin))
        {
            findings.Add(Finding.Of(ChoosingFindings.ChangePart, Severity.Note)
                .With("bolt", search.Place.Name)
                .With("place", "setting")
                .With("name", part.Part.Name)
                .With("now", QuantityKind.Torque, part.Part.Limit!.DamagedAt.SiBand.Low)
                .With("above", QuantityKind.Torque, part.Acts.High * search.Policy.MinimumGuardMargin));
        }
    }

    // The strongest setting still acts in work while the parts would bear more: the springs end too early.
    private static bool AddSprings(ClutchSearch search, ClutchPoint best, List<Finding> findings)
    {
        if (!(best.GuardMargin > search.Policy.MinimumGuardMargin) || !(best.WorkMargin > 0))
        {
            return false;
        }

        double factor = search.Policy.MinimumWorkMargin / best.WorkMargin.Value;
        if (best.GuardMargin.Value / factor <= search.Policy.MinimumGuardMargin)
        {
            return false;
        }

        if (search.IsEndedByLinings)
        {
            findings.Add(Finding.Of(ChoosingFindings.LiningsLimit, Severity.Note)
                .With("facing", search.Clutch.Facing.Name)
                .With("limit", QuantityKind.SurfacePressure, search.Clutch.Facing.Limits.HighPressurePa));
            return true;
        }

        findings.Add(Finding.Of(ChoosingFindings.ChangeSprings, Severity.Note)
            .With("now", QuantityKind.Force, best.Slip.ClampForce!.SiBand.Expected)
            .With("above", QuantityKind.Force, best.Slip.ClampForce.SiBand.Expected * factor));
        return true;
    }

    private static void AddFaces(ClutchSearch search, List<Finding> findings)
    {
        ClutchCondition told = search.Condition;
        if (told.Surface is SurfaceState.Dry or SurfaceState.CleanInWork && told.RunIn == RunInState.RunIn)
        {
            return;
        }

        ClutchCondition good = told.WithSurface(SurfaceState.CleanInWork).WithRunIn(RunInState.RunIn);
        var clean = new ClutchSearch(search.Question, search.Place, search.Clutch, good, search.Policy, search.Stop);
        if (clean.Window(clean.Best()) is { } window)
        {
            findings.Add(Finding.Of(ChoosingFindings.ChangeFaces, Severity.Note)
                .With("low", QuantityKind.Torque, window.Lowest.TorqueNm)
                .With("high", QuantityKind.Torque, window.Highest.TorqueNm));
        }
    }
}
