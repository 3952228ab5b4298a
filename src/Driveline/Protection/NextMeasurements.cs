using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>What to measure next, by value per effort; each thing once, with every part or device it is about.</summary>
/// <remarks>
/// First a hub to be freed, for nothing protects before; then what an owner can do, in the order of <see cref="MeasurementEffort"/>;
/// then what
/// takes instruments; then what only a maker can say. Among equals: what leaves a question without any answer, what stands in the way
/// of the
/// question with the fewest doubts, a danger, and among bands that overlap the widest. A machine that is as specified is asked for
/// nothing that its owner cannot do.
/// </remarks>
internal static class NextMeasurements
{
    private static readonly Finding SpecifiedNotKnown = Finding.Of(ProtectionFindings.SpecifiedNotKnown, Severity.Note).BarringNothing()
        .WithSettledBy(Measurements.ManualSpecification);

    private static readonly Finding WithoutBreak = Finding.Of(ProtectionFindings.HistoryIncomplete, Severity.Note).Barring(Bars.Quiet)
        .WithSettledBy(Measurements.HoursWithoutBreak);

    public static IReadOnlyList<Measurement> Of(ProtectionVerdict verdict)
    {
        IReadOnlyList<Doubt> doubts = verdict.Doubts;
        int onGuards = 0;
        int onQuiet = 0;
        var asked = new List<Doubt>();
        for (int k = 0; k < doubts.Count; k++)
        {
            onGuards += doubts[k].OnGuards ? 1 : 0;
            onQuiet += doubts[k].OnQuiet ? 1 : 0;
            Add(doubts[k], asked);
        }

        bool guardsFirst = verdict.Guards != Answer.Yes && (verdict.Quiet == Answer.Yes || onGuards <= onQuiet);
        bool isOwners = verdict.Headline == Headline.AsSpecified;

        Sort(asked, (first, second) => Compare(first, second, guardsFirst));
        AddAsSpecified(verdict, asked);
        AddHours(verdict, asked);
        List<Measurement> all = EachOnce(asked);
        if (isOwners)
        {
            all.RemoveAll(m => m.Place is MeasurementPlace.Workshop or MeasurementPlace.Maker);
        }

        Sort(all, (first, second) => MeasurementEffort.Of(first.Code).Rank.CompareTo(MeasurementEffort.Of(second.Code).Rank));
        return all.AsReadOnly();
    }

    // In place; what is alike keeps its order. There are seldom more than ten.
    private static void Sort<T>(List<T> items, Comparison<T> compare)
    {
        for (int k = 1; k < items.Count; k++)
        {
            T item = items[k];
            int at = k;
            for (; at > 0 && compare(items[at - 1], item) > 0; at--)
            {
                items[at] = items[at - 1];
            }

            items[at] = item;
        }
    }

    private static void Add(Doubt doubt, List<Doubt> asked)
    {
        if (doubt.Finding.SettledBy is not null)
        {
            asked.Add(doubt);
        }
    }

    // The more useful first.
    private static int Compare(Doubt first, Doubt second, bool guardsFirst)
    {
        int order = second.LeavesUnknown.CompareTo(first.LeavesUnknown);
        order = order != 0 ? order : (second.OnGuards && second.OnQuiet).CompareTo(first.OnGuards && first.OnQuiet);
        order = order != 0 ? order : IsOnFirst(second).CompareTo(IsOnFirst(first));
        order = order != 0 ? order : first.Finding.Severity.CompareTo(second.Finding.Severity);
        return order != 0 ? order : second.Width.CompareTo(first.Width);

        bool IsOnFirst(Doubt doubt) => guardsFirst ? doubt.OnGuards : doubt.OnQuiet;
    }

    private static List<Measurement> EachOnce(List<Doubt> asked)
    {
        var all = new List<Measurement>();
        var same = new List<Doubt>();
        for (int k = 0; k < asked.Count; k++)
        {
            string code = asked[k].Finding.SettledBy!;
            if (all.Exists(m => m.Code == code))
            {
                continue;
            }

            same.Clear();
            for (int j = k; j < asked.Count; j++)
            {
                if (asked[j].Finding.SettledBy == code)
                {
                    same.Add(asked[j]);
                }
            }

            all.Add(Together(same));
        }

        return all;
    }

    private static Measurement Together(List<Doubt> same)
    {
        var subjects = new List<string>();
        Bars bars = Bars.Nothing;
        bool isAsSpecified = false;
        foreach (Doubt doubt in same)
        {
            bars |= doubt.Finding.Bars;
            isAsSpecified |= doubt.IsAsSpecified;
            if (doubt.Subject is { } subject && !subjects.Contains(subject))
            {
                subjects.Add(subject);
            }
        }

        return new Measurement(same[0].Finding.SettledBy!, subjects.AsReadOnly(), same[0].Finding.Code, bars, isAsSpecified);
    }

    // What nobody has looked at yet, and what the manual names where nobody has told.
    private static void AddAsSpecified(ProtectionVerdict verdict, List<Doubt> asked)
    {
        if (verdict.Question.Specified is null)
        {
            asked.Add(Doubt.OfSpecified(SpecifiedNotKnown, null));
        }
        else
        {
            for (int k = 0; k < verdict.Comparisons.Count; k++)
            {
                if (verdict.Comparisons[k].Specified is null)
                {
                    asked.Add(Doubt.OfSpecified(SpecifiedNotKnown, verdict.Comparisons[k].Device!.Name));
                }
            }
        }

        foreach (Finding open in verdict.AsSpecified.Open)
        {
            Add(Doubt.OfSpecified(open, open.Parameter("name")?.Text), asked);
        }
    }

    // Hours without a break settle quiet, and cost a look into the diary.
    private static void AddHours(ProtectionVerdict verdict, List<Doubt> asked)
    {
        if (verdict is { Quiet: Answer.NotKnown or Answer.Maybe, Devices.Count: > 0 }
            && verdict.Question is { History: null, TripsInNormalWork: not true })
        {
            asked.Add(new Doubt(WithoutBreak, null));
        }
    }
}
