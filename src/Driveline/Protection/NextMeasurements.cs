using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>What to measure next, most useful first.</summary>
/// <remarks>
/// First a hub to be freed, for nothing protects before; then what leaves a question without any answer; then what stands in the way of the
/// question with the fewest doubts
/// (one measurement may settle it); what is a danger before a doubt; among bands that overlap, the widest band first.
/// </remarks>
internal static class NextMeasurements
{
    public static IReadOnlyList<Measurement> Of(ProtectionVerdict verdict)
    {
        IReadOnlyList<Doubt> doubts = verdict.Doubts;
        int onGuards = doubts.Count(d => d.OnGuards);
        int onQuiet = doubts.Count(d => d.OnQuiet);
        bool guardsFirst = verdict.Guards != Answer.Yes && (verdict.Quiet == Answer.Yes || onGuards <= onQuiet);

        IEnumerable<Measurement> ranked = doubts
            .Where(d => d.Finding.SettledBy is not null)
            .OrderByDescending(d => d.Finding.SettledBy == Measurements.FreeHub)
            .ThenByDescending(d => d.LeavesUnknown)
            .ThenByDescending(d => d.OnGuards && d.OnQuiet)
            .ThenByDescending(d => guardsFirst ? d.OnGuards : d.OnQuiet)
            .ThenBy(d => d.Finding.Severity)
            .ThenByDescending(d => d.Width)
            .Select(d => new Measurement(d.Finding.SettledBy!, d.Subject, d.Finding.Code));
        IEnumerable<Measurement> specification = verdict.Question.Specified is null
            ? [new Measurement(Measurements.ManualSpecification, null, ProtectionFindings.SpecifiedNotKnown)]
            : verdict.Comparisons.Where(c => c.Specified is null)
                .Select(c => new Measurement(Measurements.ManualSpecification, c.Device!.Name, ProtectionFindings.SpecifiedNotKnown));
        return [.. ranked.Concat(specification).GroupBy(m => (m.Code, m.Subject)).Select(g => g.First())];
    }
}
