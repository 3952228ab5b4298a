using System.Globalization;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the parts of a case.</summary>
internal static class CaseChecks
{
    /// <summary>The place of a torque when none is stated.</summary>
    public const string Pto = "pto";

    private const string Day = "yyyy-MM-dd";

    public static void Across(CaseObject facts, CaseWalk walk)
    {
        IReadOnlyList<CaseObject> elements = CaseElements.All(facts.Get(CaseFileMembers.Driveline));
        if (facts.Get(CaseFileMembers.PartsComplete) == true && !facts.IsStated(CaseFileMembers.Driveline))
        {
            walk.Contradiction(facts, CaseFileMembers.PartsComplete, "The parts cannot be complete when no driveline is stated.");
        }

        if (facts.Get(CaseFileMembers.Date) is { } today)
        {
            foreach (DateTime trip in Days(elements, ElementMembers.ShearBolt, ShearBoltMembers.LastTrip).Where(d => d > today))
            {
                string received = trip.ToString(Day, CultureInfo.InvariantCulture);
                walk.Contradiction(facts, CaseFileMembers.Date, "The last trip " + received + " lies after the date of the case.");
            }

            Until(facts, walk, today, "day the hub was last tried", Days(elements, ElementMembers.ShearBolt, ShearBoltMembers.HubSeen));
            Until(facts, walk, today, "last slip test", Days(elements, ElementMembers.SlipClutch, SlipClutchMembers.LastSlipTest));
            Until(facts, walk, today, "end of the last storage", Days(elements, ElementMembers.SlipClutch, SlipClutchMembers.LastStorage));
            Until(facts, walk, today, "end of the last storage", Days(elements, ElementMembers.CutOut, CutOutMembers.LastStorage));
            Until(facts, walk, today, "last trip of the cut-out clutch", Days(elements, ElementMembers.CutOut, CutOutMembers.LastTrip));
        }

        SpecifiedChecks.AtRoot(facts, walk, elements);
        Place(walk, elements, facts.Get(CaseFileMembers.Work), WorkMembers.At, Pto);
        Place(walk, elements, facts.Get(CaseFileMembers.Strike), StrikeMembers.At, null);
    }

    public static void AcrossWork(CaseObject facts, CaseWalk walk)
    {
        TorqueBand? peak = facts.Get(WorkMembers.SteadyPeak);
        TorqueBand? mean = facts.Get(WorkMembers.SteadyMean);
        if (peak is not null && mean is not null && mean.SiBand.Low > peak.SiBand.High)
        {
            walk.Contradiction(facts, WorkMembers.SteadyMean, "The mean torque " + mean + " must not be above the peak " + peak + ".");
        }
    }

    /// <summary>Overloads that fail to be caught need a bounded share.</summary>
    public static void AcrossOption(CaseObject facts, CaseWalk walk)
    {
        if (facts.IsStated(CostOptionMembers.OverloadsPerYear))
        {
            MemberChecks.Bounded(facts, walk, CostOptionMembers.FailsToProtect);
        }
    }

    /// <summary>The first element too many is an error; it and those after it are not read.</summary>
    public static bool Admits(long offset, CaseWalk walk)
    {
        walk.Elements++;
        if (walk.Elements == ElementMembers.MostInAll + 1)
        {
            string permitted = FormattableString.Invariant(
                $"at most {ElementMembers.MostInAll} elements in all, those of branches included");
            walk.Error(CaseErrorKind.OutOfRange, offset, "A driveline may have " + permitted + "; this is one too many.", permitted, null,
                null);
        }

        return walk.Elements <= ElementMembers.MostInAll;
    }

    /// <summary>The shares of the branches of one list must leave something or nothing, never less.</summary>
    public static void Shares(CaseList list, long offset, CaseWalk walk)
    {
        double least = 0;
        for (int k = 0; k < list.Count; k++)
        {
            least += list[k].Get(ElementMembers.PowerShare)?.Low ?? 0;
        }

        if (least > 1 + 1e-9)
        {
            walk.Error(
                CaseErrorKind.Contradiction,
                offset,
                FormattableString.Invariant($"The power shares of the branches here add to {least:G4}; together they may take at most 1."));
        }
    }

    private static IEnumerable<DateTime> Days(IEnumerable<CaseObject> elements, ObjectMember device, DateMember day) =>
        elements.Select(e => e.Get(device)?.Get(day)).OfType<DateTime>();

    /// <summary>Nothing that is told can have happened after the day for which the case is stated.</summary>
    private static void Until(CaseObject facts, CaseWalk walk, DateTime today, string what, IEnumerable<DateTime> days)
    {
        foreach (DateTime day in days.Where(d => d > today))
        {
            string received = day.ToString(Day, CultureInfo.InvariantCulture);
            string permitted = "a day up to the date of the case, " + today.ToString(Day, CultureInfo.InvariantCulture);
            walk.Contradiction(facts, CaseFileMembers.Date, "The " + what + " must be " + permitted + "; got " + received + ".", permitted,
                received, null);
        }
    }

    private static void Place(CaseWalk walk, IReadOnlyList<CaseObject> elements, CaseObject? owner, TextMember place, string? also)
    {
        string? at = owner?.Get(place);
        if (at is null || at == also)
        {
            return;
        }

        string[] names = [.. elements.Select(CaseElements.NameOf).OfType<string>()];
        int named = names.Count(n => n == at);
        if (named == 1)
        {
            return;
        }

        string known = string.Join(", ", new[] { also }.OfType<string>().Concat(names).Distinct());
        walk.Contradiction(
            owner!,
            place,
            "\"" + CaseWalk.Shown(at) + "\" is the name of " + (named == 0 ? "no element" : "more than one element")
                + " of the driveline; known are " + CaseWalk.Shown(known) + ".",
            known,
            CaseWalk.Shown(at),
            NearestName.Of(at, names));
    }
}
