using System.Globalization;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the parts of a case.</summary>
internal static class CaseChecks
{
    /// <summary>The place of a torque when none is stated.</summary>
    public const string Pto = "pto";

    public static void Across(CaseDraft draft, CaseWalk walk)
    {
        FactList<DrivelineElement> driveline = draft.Reference<FactList<DrivelineElement>>(CaseFileMembers.Driveline) ?? FactList<DrivelineElement>.Empty;
        DrivelineElement[] elements = All(driveline).ToArray();
        if (draft.Value<bool>(CaseFileMembers.PartsComplete) == true && !draft.IsStated(CaseFileMembers.Driveline))
        {
            ElementChecks.Contradiction(walk, draft, CaseFileMembers.PartsComplete, "The parts cannot be complete when no driveline is stated.");
        }

        foreach (DateTime trip in elements.Select(e => e.ShearBolt?.LastTrip).OfType<DateTime>())
        {
            if (trip > draft.Value<DateTime>(CaseFileMembers.Date))
            {
                ElementChecks.Contradiction(
                    walk,
                    draft,
                    CaseFileMembers.Date,
                    "The last trip " + trip.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + " lies after the date of the case.");
            }
        }

        if (draft.Value<DateTime>(CaseFileMembers.Date) is { } today)
        {
            Until(draft, walk, today, "last slip test", elements.Select(e => e.SlipClutch?.LastSlipTest));
            Until(draft, walk, today, "end of the last storage", elements.Select(e => e.SlipClutch?.LastStorage ?? e.CutOut?.LastStorage));
            Until(draft, walk, today, "last trip of the cut-out clutch", elements.Select(e => e.CutOut?.LastTrip));
        }

        SpecifiedChecks.AtRoot(draft, walk, elements);
        Place(draft, walk, elements, CaseFileMembers.Work, WorkMembers.At, draft.Reference<WorkFacts>(CaseFileMembers.Work)?.At, Pto);
        Place(draft, walk, elements, CaseFileMembers.Strike, StrikeMembers.At, draft.Reference<StrikeFacts>(CaseFileMembers.Strike)?.At, null);
    }

    public static void AcrossWork(CaseDraft draft, CaseWalk walk)
    {
        var peak = draft.Reference<Quantities.TorqueBand>(WorkMembers.SteadyPeak);
        var mean = draft.Reference<Quantities.TorqueBand>(WorkMembers.SteadyMean);
        if (peak is not null && mean is not null && mean.SiBand.Low > peak.SiBand.High)
        {
            ElementChecks.Contradiction(walk, draft, WorkMembers.SteadyMean, "The mean torque " + mean + " must not be above the peak " + peak + ".");
        }
    }

    /// <summary>The shares of the branches of one list must leave something or nothing, never less.</summary>
    public static void Shares(IEnumerable<DrivelineElement> list, long offset, CaseWalk walk)
    {
        double least = list.Sum(e => e.PowerShare?.Low ?? 0);
        if (least > 1 + 1e-9)
        {
            walk.Error(
                CaseErrorKind.Contradiction,
                offset,
                FormattableString.Invariant($"The power shares of the branches here add to {least:G4}; together they may take at most 1."));
        }
    }

    /// <summary>Nothing that is told can have happened after the day for which the case is stated.</summary>
    private static void Until(CaseDraft draft, CaseWalk walk, DateTime today, string what, IEnumerable<DateTime?> days)
    {
        foreach (DateTime day in days.OfType<DateTime>().Where(d => d > today))
        {
            string received = day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            string permitted = "a day up to the date of the case, " + today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            walk.Enter(CaseFileMembers.Date.Name);
            walk.Error(
                CaseErrorKind.Contradiction, draft.OffsetOf(CaseFileMembers.Date), "The " + what + " must be " + permitted + "; got " + received + ".", permitted, received, null);
            walk.Leave();
        }
    }

    private static void Place(CaseDraft draft, CaseWalk walk, DrivelineElement[] elements, Member owner, Member place, string? at, string? also)
    {
        int named = elements.Count(e => e.Name == at);
        if (at is null || at == also || named == 1)
        {
            return;
        }

        string names = string.Join(", ", new[] { also }.OfType<string>().Concat(elements.Select(e => e.Name).OfType<string>()).Distinct());
        walk.Enter(owner.Name);
        walk.Enter(place.Name);
        walk.Error(
            CaseErrorKind.Contradiction,
            draft.OffsetOf(owner),
            "\"" + CaseWalk.Shown(at) + "\" is the name of " + (named == 0 ? "no element" : "more than one element") + " of the driveline; known are " + CaseWalk.Shown(names) + ".",
            names,
            CaseWalk.Shown(at),
            NearestName.Of(at, elements.Select(e => e.Name).OfType<string>()));
        walk.Leave();
        walk.Leave();
    }

    private static IEnumerable<DrivelineElement> All(IEnumerable<DrivelineElement> list) =>
        list.SelectMany(e => new[] { e }.Concat(All(e.Driveline)));
}
