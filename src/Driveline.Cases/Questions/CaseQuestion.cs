using Driveline.Cases.Members;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Cases.Questions;

/// <summary>The protection question that a case file asks. What the case leaves out stays not known.</summary>
internal sealed class CaseQuestion
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
    public CaseSimulation? Strike { get; private init; }

    /// <summary>The question of a case; what it asks to be simulated runs within the usual limits.</summary>
    public static CaseQuestion Of(CaseFile file) => Of(file, SimulationLimits.Usual);

    /// <summary>The question of a case; all that it asks to be simulated runs within limits together.</summary>
    /// <remarks>What the limits cut off stays not known, and a finding says so.</remarks>
    /// <exception cref="ArgumentNullException">The case or the limits are missing.</exception>
    public static CaseQuestion Of(CaseFile file, SimulationLimits limits) => Of(file, new WorkMeter(limits));

    public static CaseQuestion Of(CaseFile file, WorkMeter meter) => Of(MappedCase.Of(file), meter);

    public static CaseQuestion Of(MappedCase mapped, WorkMeter meter)
    {
        if (mapped.Stated is not { } stated)
        {
            return new CaseQuestion(null, mapped.Errors);
        }

        if (mapped.Shared?.Notes is { Count: 0 } && stated.Notes.Count == 0 && !CaseEngagement.IsSimulated(mapped.File))
        {
            return new CaseQuestion(stated, mapped.Errors);
        }

        var notes = new List<Finding>(mapped.Shared?.Notes ?? CaseNotes.Of(mapped.File));
        Engagement engagement = CaseEngagement.Simulated(mapped, notes, meter, out CaseSimulation? strike);
        return new CaseQuestion(stated.Open().WithEngagement(engagement).WithNotes(notes).Closed(), mapped.Errors)
        {
            SimulationWork = meter.Done,
            Strike = strike,
        };
    }

    public static MachineKind MachineOf(CaseFile file) => file.Facts.Get(CaseFileMembers.Implement)?.Get(ImplementMembers.Kind)
        ?? MachineKind.NotKnown;
}
