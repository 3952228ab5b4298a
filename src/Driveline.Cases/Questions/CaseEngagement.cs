using Driveline.Cases.Members;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>How the PTO of a case is engaged, and what that puts on the driveline: stated or simulated.</summary>
internal static class CaseEngagement
{
    public static Engagement Of(CaseFile file)
    {
        CaseObject? clutch = file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoClutch);
        CaseObject? facts = file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.Engagement);
        Engagement engagement = Engagement.Through(clutch?.Get(PtoClutchMembers.Kind) ?? PtoClutchKind.NotKnown)
            .WithManner(facts?.Get(EngagementMembers.Manner) ?? EngagementManner.NotKnown);
        engagement = clutch?.Get(PtoClutchMembers.Capacity) is { } capacity ? engagement.WithCapacity(capacity) : engagement;
        return facts?.Get(EngagementMembers.Peak) is { } peak ? engagement.WithPeak(peak) : engagement;
    }

    /// <summary>True when the case asks for peaks to be simulated.</summary>
    public static bool IsSimulated(CaseFile file) => file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.Peaks) == PeaksFrom.Simulated;

    /// <summary>
    /// The same with a simulated peak when the case asks for it and states none; when it lacks a fact, the peak is not known.
    /// </summary>
    /// <param name="mapped">The case.</param>
    /// <param name="notes">Receives what the simulations of the case say; they change no answer by themselves.</param>
    /// <param name="meter">Counts the work of the simulations, and ends them.</param>
    /// <param name="strike">The strike as it was simulated; null when it was not.</param>
    public static Engagement Simulated(MappedCase mapped, List<Finding> notes, WorkMeter meter, out CaseSimulation? strike)
    {
        strike = null;
        CaseFile file = mapped.File;
        Engagement engagement = mapped.Stated?.Engagement ?? Of(file);
        if (!IsSimulated(file))
        {
            return engagement;
        }

        if (file.Facts.Get(CaseFileMembers.Strike) is not null)
        {
            strike = CaseSimulation.Of(mapped, SimulatedEvent.Strike, meter);
            notes.AddRange(strike.Missing.Concat(strike.Check?.Findings ?? []).Select(f => f.BarringNothing()));
        }

        if (engagement.Peak is not null)
        {
            return engagement;
        }

        CaseSimulation run = CaseSimulation.Of(mapped, SimulatedEvent.Engagement, meter);
        notes.AddRange(run.Missing.Select(f => f.BarringNothing()));
        notes.AddRange((run.Simulation?.Missing ?? []).Select(f => f.BarringNothing()));
        notes.AddRange((run.Simulation?.Assumed ?? []).Select(f => f.BarringNothing()));
        TorqueBand? peak = run.Simulation?.EngagementPeak(meter);
        bool isSaid = notes.Exists(f => f.Code == SimulationFindings.TooMuchWork);
        notes.AddRange(isSaid ? [] : meter.Findings);
        TorqueBand? atMost = peak is null ? run.Simulation?.EngagementPeakAtMost(meter) : null;
        return peak is not null ? engagement.WithPeak(peak)
            : atMost is not null ? Engagement.Through(engagement.Clutch).WithManner(engagement.Manner).WithPeakAtMost(atMost)
            : Engagement.Through(engagement.Clutch).WithManner(engagement.Manner);
    }
}
