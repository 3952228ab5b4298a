namespace Driveline.Protection;

/// <summary>What to measure next, most useful first.</summary>
/// <remarks>
/// First a hub to be freed, for nothing protects before; then what leaves a question without any answer; then what stands in the way of the question with the fewest obstacles
/// (one measurement may settle it); what is a danger before a doubt; among bands that overlap, the widest band first.
/// </remarks>
internal static class NextMeasurements
{
    public static IReadOnlyList<Measurement> Of(ProtectionVerdict verdict)
    {
        IReadOnlyList<Obstacle> obstacles = verdict.Obstacles;
        int onGuards = obstacles.Count(o => o.OnGuards);
        int onQuiet = obstacles.Count(o => o.OnQuiet);
        bool guardsFirst = verdict.Guards != Answer.Yes && (verdict.Quiet == Answer.Yes || onGuards <= onQuiet);

        IEnumerable<Measurement> ranked = obstacles
            .Where(o => o.Measurement is not null)
            .OrderByDescending(o => o.Measurement == Measurements.FreeHub)
            .ThenByDescending(o => o.LeavesUnknown)
            .ThenByDescending(o => o.OnGuards && o.OnQuiet)
            .ThenByDescending(o => guardsFirst ? o.OnGuards : o.OnQuiet)
            .ThenBy(o => o.Finding.Severity)
            .ThenByDescending(o => o.Width)
            .Select(o => new Measurement(o.Measurement!, o.Subject, o.Finding.Code));
        IEnumerable<Measurement> specification = verdict.Question.Specified is null
            ? [new Measurement(Measurements.ManualSpecification, null, ProtectionFindings.SpecifiedNotKnown)]
            : verdict.Comparisons.Where(c => c.Specified is null)
                .Select(c => new Measurement(Measurements.ManualSpecification, c.Device!.Name, ProtectionFindings.SpecifiedNotKnown));
        return [.. ranked.Concat(specification).GroupBy(m => (m.Code, m.Subject)).Select(g => g.First())];
    }
}
