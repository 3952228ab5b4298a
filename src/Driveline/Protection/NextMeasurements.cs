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
    public static IReadOnlyList<Measurement> Of(ProtectionVerdict verdict)
    {
        IReadOnlyList<Doubt> doubts = verdict.Doubts;
        int onGuards = doubts.Count(d => d.OnGuards);
        int onQuiet = doubts.Count(d => d.OnQuiet);
        bool guardsFirst = verdict.Guards != Answer.Yes && (verdict.Quiet == Answer.Yes || onGuards <= onQuiet);
        bool isOwners = verdict.Headline == Headline.AsSpecified;

        IEnumerable<Doubt> ranked = doubts
            .Where(d => d.Finding.SettledBy is not null)
            .OrderByDescending(d => d.LeavesUnknown)
            .ThenByDescending(d => d.OnGuards && d.OnQuiet)
            .ThenByDescending(d => guardsFirst ? d.OnGuards : d.OnQuiet)
            .ThenBy(d => d.Finding.Severity)
            .ThenByDescending(d => d.Width);
        return
        [
            .. ranked.Concat(AsSpecified(verdict)).Concat(Hours(verdict))
                .GroupBy(d => d.Finding.SettledBy!)
                .Select(Together)
                .Where(m => !isOwners || m.Place is not (MeasurementPlace.Workshop or MeasurementPlace.Maker))
                .OrderBy(m => MeasurementEffort.Of(m.Code).Rank),
        ];
    }

    private static Measurement Together(IGrouping<string, Doubt> same) => new(
        same.Key,
        [.. same.Select(d => d.Subject).OfType<string>().Distinct()],
        same.First().Finding.Code,
        same.Aggregate(Bars.Nothing, (bars, d) => bars | d.Finding.Bars),
        same.Any(d => d.IsAsSpecified));

    // What nobody has looked at yet, and what the manual names where nobody has told.
    private static IEnumerable<Doubt> AsSpecified(ProtectionVerdict verdict)
    {
        Finding notKnown = Finding.Of(ProtectionFindings.SpecifiedNotKnown, Severity.Note).BarringNothing()
            .WithSettledBy(Measurements.ManualSpecification);
        IEnumerable<Doubt> manual = verdict.Question.Specified is null
            ? [Doubt.OfSpecified(notKnown, null)]
            : verdict.Comparisons.Where(c => c.Specified is null).Select(c => Doubt.OfSpecified(notKnown, c.Device!.Name));
        return manual.Concat(verdict.AsSpecified.Open.Where(f => f.SettledBy is not null)
            .Select(f => Doubt.OfSpecified(f, f.Parameter("name")?.Text)));
    }

    // Hours without a break settle quiet, and cost a look into the diary.
    private static IEnumerable<Doubt> Hours(ProtectionVerdict verdict) =>
        verdict is { Quiet: Answer.NotKnown or Answer.Maybe, Question: { History: null, TripsInNormalWork: not true }, Devices.Count: > 0 }
            ? [new Doubt(Finding.Of(ProtectionFindings.HistoryIncomplete, Severity.Note).Barring(Bars.Quiet)
                .WithSettledBy(Measurements.HoursWithoutBreak), null)]
            : [];
}
