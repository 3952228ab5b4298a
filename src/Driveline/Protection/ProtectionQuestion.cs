using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Everything a check is told: the chain, the work, and what is known about the list of parts. Immutable.</summary>
/// <remarks>What is left out is not known; nothing is assumed in its place that could look safe.</remarks>
public sealed class ProtectionQuestion
{
    private IReadOnlyList<ProtectiveDevice?> specifiedInOrder = [];

    private ProtectionQuestion(DrivelineChain chain) => Chain = chain;

    private ProtectionQuestion(ProtectionQuestion other)
    {
        Chain = other.Chain;
        Machine = other.Machine;
        PartsComplete = other.PartsComplete;
        Work = other.Work;
        Engagement = other.Engagement;
        TripsInNormalWork = other.TripsInNormalWork;
        History = other.History;
        Specified = other.Specified;
        specifiedInOrder = other.specifiedInOrder;
        PeaksPerHour = other.PeaksPerHour;
        Notes = other.Notes;
        Defects = other.Defects;
        IsLookedOver = other.IsLookedOver;
        SteadyMean = other.SteadyMean;
        EngineHighest = other.EngineHighest;
        Places = other.Places;
    }

    /// <summary>The driveline.</summary>
    public DrivelineChain Chain { get; private init; }

    /// <summary>The kind of machine.</summary>
    public MachineKind Machine { get; private init; }

    /// <summary>True when somebody states that every part of the driveline is in the chain.</summary>
    public bool PartsComplete { get; private init; }

    /// <summary>Peaks of normal work; null when not known.</summary>
    public WorkPeak? Work { get; private init; }

    /// <summary>Mean torque of normal work at the PTO, for comparison with what the engine can give; null when not known.</summary>
    public TorqueBand? SteadyMean { get; private init; }

    /// <summary>
    /// Highest torque the engine holds at the PTO before it stalls; null when not known. It
    /// protects nothing.
    /// </summary>
    public TorqueBand? EngineHighest { get; private init; }

    /// <summary>What is known of engaging the PTO.</summary>
    public Engagement Engagement { get; private init; } = Engagement.NotKnown;

    /// <summary>
    /// True when the device is seen to act in normal work, false when somebody says that it never has; null when nobody says.
    /// </summary>
    public bool? TripsInNormalWork { get; private init; }

    /// <summary>How often the protection acted in so many hours; null when nobody has counted.</summary>
    public BreakHistory? History { get; private init; }

    /// <summary>
    /// The device the machine's manual specifies, for the first place of which it specifies any; null when not known. See
    /// <see cref="SpecifiedFor"/>.
    /// </summary>
    public ProtectiveDevice? Specified { get; private init; }

    /// <summary>How often a work peak comes, per hour; null when not known.</summary>
    public double? PeaksPerHour { get; private init; }

    /// <summary>
    /// What else was found while the question was put together, such as a steep joint; shown with the verdict, which has no Yes to a
    /// question that one of them bars.
    /// </summary>
    public IReadOnlyList<Finding> Notes { get; private init; } = [];

    /// <summary>Defects that somebody has seen; each forbids work whatever the numbers say.</summary>
    public IReadOnlyList<SeenDefect> Defects { get; private init; } = [];

    /// <summary>True when somebody has looked over tube, gearbox and blades and found no damage; false when nobody has said so.</summary>
    public bool IsLookedOver { get; private init; }

    /// <summary>True when something is known of what the manual specifies; else nothing can be as specified.</summary>
    internal bool IsAnySpecified => Specified is not null;

    /// <summary>Where the facts are stated; names the causes of findings.</summary>
    internal StatedPlaces Places { get; private init; } = StatedPlaces.None;

    /// <summary>A question about a chain of which nothing else is known yet.</summary>
    public static ProtectionQuestion About(DrivelineChain chain) => new(Guard.NotNull(chain, nameof(chain)));

    /// <summary>
    /// The same question about another chain. What was experienced with the first is no evidence for it: no history, and nobody has seen
    /// it stay quiet.
    /// </summary>
    public ProtectionQuestion WithChain(DrivelineChain chain) => new(this)
    {
        Chain = Guard.NotNull(chain, nameof(chain)),
        History = null,
        TripsInNormalWork = TripsInNormalWork == true ? true : null,
    };

    /// <summary>The same question with the kind of machine.</summary>
    public ProtectionQuestion WithMachine(MachineKind machine) => new(this) { Machine = machine };

    /// <summary>The same question with a statement whether every part is listed.</summary>
    public ProtectionQuestion WithPartsComplete(bool complete) => new(this) { PartsComplete = complete };

    /// <summary>The same question with the peaks of normal work.</summary>
    public ProtectionQuestion WithWork(WorkPeak? work) => new(this) { Work = work };

    /// <summary>The same question with the mean torque of normal work at the PTO.</summary>
    public ProtectionQuestion WithSteadyMean(TorqueBand? mean) => new(this) { SteadyMean = mean };

    /// <summary>The same question with the highest torque the engine holds at the PTO before it stalls.</summary>
    public ProtectionQuestion WithEngineHighest(TorqueBand? highest) => new(this) { EngineHighest = highest };

    /// <summary>The same question with what is known of engaging the PTO.</summary>
    public ProtectionQuestion WithEngagement(Engagement engagement) =>
        new(this) { Engagement = Guard.NotNull(engagement, nameof(engagement)) };

    /// <summary>The same question with an observation whether the device acts in normal work; null for none.</summary>
    public ProtectionQuestion WithTripsInNormalWork(bool? observed) => new(this) { TripsInNormalWork = observed };

    /// <summary>The same question with how often the protection acted in so many hours; null when nobody has counted.</summary>
    public ProtectionQuestion WithHistory(BreakHistory? history) => new(this) { History = history };

    /// <summary>The same question with the rate of work peaks, per hour; 0 or more, null when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative or not finite.</exception>
    public ProtectionQuestion WithPeaksPerHour(double? peaksPerHour) => new(this)
    {
        PeaksPerHour = peaksPerHour is { } rate ? Guard.NotNegative(rate, "Peaks per hour", "1/h", nameof(peaksPerHour)) : null,
    };

    /// <summary>The same question with findings to show beside the verdict.</summary>
    public ProtectionQuestion WithNotes(IReadOnlyList<Finding> notes) => new(this) { Notes = [.. Guard.NotNull(notes, nameof(notes))] };

    /// <summary>The same question with the defects that somebody has seen.</summary>
    public ProtectionQuestion WithDefects(IReadOnlyList<SeenDefect> defects) =>
        new(this) { Defects = [.. Guard.NotNull(defects, nameof(defects))] };

    /// <summary>The same question with a statement whether somebody has looked over tube, gearbox and blades and found no damage.</summary>
    public ProtectionQuestion WithLookedOver(bool isLookedOver) => new(this) { IsLookedOver = isLookedOver };

    /// <summary>The same question of a like case, of which only chain, work and places differ; what was experienced holds for it.</summary>
    internal ProtectionQuestion Like(DrivelineChain chain, WorkPeak? work, TorqueBand? mean, StatedPlaces places) => new(this)
    {
        Chain = chain,
        Work = work,
        SteadyMean = mean,
        Places = places,
    };

    /// <summary>The same question with the places where its facts are stated.</summary>
    internal ProtectionQuestion WithPlaces(StatedPlaces places) => new(this) { Places = Guard.NotNull(places, nameof(places)) };

    /// <summary>
    /// The same question with the one device the manual specifies, for the first device of its kind, or else the first of the chain.
    /// </summary>
    public ProtectionQuestion WithSpecified(ProtectiveDevice? specified) => new(this) { Specified = specified, specifiedInOrder = [] };

    /// <summary>
    /// The same question with the device the manual specifies for each device, in order from the tractor; null where it is not known.
    /// </summary>
    /// <exception cref="ArgumentException">There are more of them than devices.</exception>
    public ProtectionQuestion WithSpecifiedInOrder(IReadOnlyList<ProtectiveDevice?> specified)
    {
        int devices = Chain.Devices.Count;
        return Guard.NotNull(specified, nameof(specified)).Count <= devices
            ? new ProtectionQuestion(this) { Specified = specified.FirstOrDefault(s => s is not null), specifiedInOrder = [.. specified] }
            : throw new ArgumentException(
                FormattableString.Invariant($"There are {devices} devices; got {specified.Count} specified ones."), nameof(specified));
    }

    /// <summary>
    /// What the manual specifies for the place of a device of the chain; null when not known, or the device is not in the chain.
    /// </summary>
    public ProtectiveDevice? SpecifiedFor(ProtectiveDevice fitted)
    {
        IReadOnlyList<ProtectiveDevice> devices = Chain.Devices;
        int place = -1;
        int only = 0;
        for (int k = devices.Count - 1; k >= 0; k--)
        {
            place = ReferenceEquals(devices[k], fitted) ? k : place;
            only = devices[k].Kind == Specified?.Kind ? k : only;
        }

        return place < 0 ? null
            : specifiedInOrder.Count > 0 ? (place < specifiedInOrder.Count ? specifiedInOrder[place] : null)
            : place == only ? Specified
            : null;
    }

    /// <summary>The machine and its driveline.</summary>
    public override string ToString() => Machine + ": " + Chain;
}
