using Driveline.Chains;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Everything a check is told: the chain, the work, and what is known about the list of parts. Immutable.</summary>
/// <remarks>What is left out is not known; nothing is assumed in its place that could look safe.</remarks>
public sealed class ProtectionQuestion
{
    private ProtectionQuestion(DrivelineChain chain) => Chain = chain;

    private ProtectionQuestion(ProtectionQuestion other)
    {
        Chain = other.Chain;
        Machine = other.Machine;
        PartsComplete = other.PartsComplete;
        Work = other.Work;
        Engagement = other.Engagement;
        TripsInNormalWork = other.TripsInNormalWork;
        Specified = other.Specified;
    }

    /// <summary>The driveline.</summary>
    public DrivelineChain Chain { get; private init; }

    /// <summary>The kind of machine.</summary>
    public MachineKind Machine { get; private init; }

    /// <summary>True when somebody states that every part of the driveline is in the chain.</summary>
    public bool PartsComplete { get; private init; }

    /// <summary>Peaks of normal work; null when not known.</summary>
    public WorkPeak? Work { get; private init; }

    /// <summary>What is known of engaging the PTO.</summary>
    public Engagement Engagement { get; private init; } = Engagement.NotKnown;

    /// <summary>True when the device is seen to act in normal work.</summary>
    public bool TripsInNormalWork { get; private init; }

    /// <summary>The device the machine's manual specifies for the place of the first device of the chain; null when not known.</summary>
    public ProtectiveDevice? Specified { get; private init; }

    /// <summary>A question about a chain of which nothing else is known yet.</summary>
    public static ProtectionQuestion About(DrivelineChain chain) => new(Guard.NotNull(chain, nameof(chain)));

    /// <summary>The same question about another chain.</summary>
    public ProtectionQuestion WithChain(DrivelineChain chain) => new(this) { Chain = Guard.NotNull(chain, nameof(chain)) };

    /// <summary>The same question with the kind of machine.</summary>
    public ProtectionQuestion WithMachine(MachineKind machine) => new(this) { Machine = machine };

    /// <summary>The same question with a statement whether every part is listed.</summary>
    public ProtectionQuestion WithPartsComplete(bool complete) => new(this) { PartsComplete = complete };

    /// <summary>The same question with the peaks of normal work.</summary>
    public ProtectionQuestion WithWork(WorkPeak? work) => new(this) { Work = work };

    /// <summary>The same question with what is known of engaging the PTO.</summary>
    public ProtectionQuestion WithEngagement(Engagement engagement) =>
        new(this) { Engagement = Guard.NotNull(engagement, nameof(engagement)) };

    /// <summary>The same question with an observation whether the device acts in normal work.</summary>
    public ProtectionQuestion WithTripsInNormalWork(bool observed) => new(this) { TripsInNormalWork = observed };

    /// <summary>The same question with the device the manual specifies.</summary>
    public ProtectionQuestion WithSpecified(ProtectiveDevice? specified) => new(this) { Specified = specified };
}
