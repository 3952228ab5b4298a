using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>The protection question that a case file asks. What the case leaves out stays not known.</summary>
public sealed class CaseQuestion
{
    private CaseQuestion(ProtectionQuestion? question, IReadOnlyList<CaseError> errors)
    {
        Question = question;
        Errors = errors;
    }

    /// <summary>The question; null when the facts contradict each other.</summary>
    public ProtectionQuestion? Question { get; }

    /// <summary>Facts that contradict each other; empty when there is a question.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>Work of the simulations that the case asks for; 0 when it asks for none.</summary>
    public long SimulationWork { get; private init; }

    /// <summary>The strike as it was simulated for the question; null when it was not.</summary>
    internal CaseSimulation? Strike { get; private init; }

    /// <summary>The question of a case; what it asks to be simulated runs within the usual limits.</summary>
    public static CaseQuestion Of(CaseFile file) => Of(file, SimulationLimits.Usual);

    /// <summary>The question of a case; all that it asks to be simulated runs within limits together.</summary>
    /// <remarks>What the limits cut off stays not known, and a finding says so.</remarks>
    /// <exception cref="ArgumentNullException">The case or the limits are missing.</exception>
    public static CaseQuestion Of(CaseFile file, SimulationLimits limits) => Of(file, new WorkMeter(limits));

    internal static CaseQuestion Of(CaseFile file, WorkMeter meter)
    {
        if (file is null)
        {
            throw new ArgumentNullException(nameof(file));
        }

        var errors = new List<CaseError>();
        DrivelineChain? chain = CaseChain.Of(file, errors);
        if (chain is null || errors.Count > 0)
        {
            return new CaseQuestion(null, errors);
        }

        CaseObject? work = file.Facts.Get(CaseFileMembers.Work);
        IReadOnlyList<ProtectiveDevice?> specified = CaseSpecified.InOrder(file, chain, errors);
        if (errors.Count > 0)
        {
            return new CaseQuestion(null, errors);
        }

        CaseObject? complaint = file.Facts.Get(CaseFileMembers.Complaint);
        IReadOnlyList<Fact> told = ComplaintMembers.FactsOf(complaint);
        var notes = new List<Finding>(CaseNotes.Of(file));
        Engagement engagement = CaseEngagement.Simulated(file, notes, meter, out CaseSimulation? strike);
        return new CaseQuestion(
            ProtectionQuestion.About(chain)
                .WithMachine(MachineOf(file))
                .WithPartsComplete(file.Facts.Get(CaseFileMembers.PartsComplete) ?? false)
                .WithWork(Work(file))
                .WithEngagement(engagement)
                .WithSteadyMean(work?.Get(WorkMembers.SteadyMean))
                .WithEngineHighest(EngineHighest(file))
                .WithTripsInNormalWork(IsSeenToTrip(file))
                .WithSpecifiedInOrder(specified)
                .WithPeaksPerHour(work?.Get(WorkMembers.PeaksPerHour))
                .WithDefects(SeenDefects.Of(complaint?.Get(ComplaintMembers.Symptom) ?? Symptom.NotKnown, told))
                .WithLookedOver(complaint is not null && SeenDefects.AreRuledOut(told, MachineOf(file)))
                .WithNotes(notes),
            errors)
        {
            SimulationWork = meter.Done,
            Strike = strike,
        };
    }

    internal static MachineKind MachineOf(CaseFile file) => file.Facts.Get(CaseFileMembers.Implement)?.Get(ImplementMembers.Kind)
        ?? MachineKind.NotKnown;

    /// <summary>Steady peaks as stated; else from the mean torque or the mean power with a peak factor, stated or usual.</summary>
    internal static WorkPeak? Work(CaseFile file)
    {
        MachineKind machine = MachineOf(file);
        CaseObject? work = file.Facts.Get(CaseFileMembers.Work);
        if (work?.Get(WorkMembers.SteadyPeak) is { } peaks)
        {
            return WorkPeak.Stated(peaks);
        }

        if (work?.Get(WorkMembers.SteadyMean) is { } mean)
        {
            return work.Get(WorkMembers.PeakFactor) is { } factor ? WorkPeak.FromMean(mean, factor) : WorkPeak.FromMean(mean, machine);
        }

        if (work?.Get(WorkMembers.MeanPower) is { } power
            && file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoSpeed) is { } speed)
        {
            return work.Get(WorkMembers.PeakFactor) is { } factor ? WorkPeak.FromPower(power, speed, factor)
                : WorkPeak.FromPower(power, speed, machine);
        }

        return null;
    }

    private static bool IsSeenToTrip(CaseFile file)
    {
        CaseObject? complaint = file.Facts.Get(CaseFileMembers.Complaint);
        return file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.TripsInNormalWork)
            ?? (complaint?.Get(ComplaintMembers.Symptom) == Symptom.BreaksOften
                && OwnerFacts.When.Working.Equals(ComplaintMembers.FactOf(complaint, "when")));
    }

    private static TorqueBand? EngineHighest(CaseFile file) =>
        file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.EngineTorqueLine)?.Get(EngineTorqueLineMembers.Highest) is { } most
            ? TorqueBand.Exactly(most, Basis.Given("highest torque of the engine as stated"))
            : null;
}
