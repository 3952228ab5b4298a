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
    private bool isOpen;

    private ProtectionQuestion(DrivelineChain chain) => Chain = chain;

    /// <summary>The driveline.</summary>
    public DrivelineChain Chain { get; private set; }

    /// <summary>The kind of machine.</summary>
    public MachineKind Machine { get; private set; }

    /// <summary>True when somebody states that every part of the driveline is in the chain.</summary>
    public bool PartsComplete { get; private set; }

    /// <summary>Peaks of normal work; null when not known.</summary>
    public WorkPeak? Work { get; private set; }

    /// <summary>Mean torque of normal work at the PTO, for comparison with what the engine can give; null when not known.</summary>
    public TorqueBand? SteadyMean { get; private set; }

    /// <summary>
    /// Highest torque the engine holds at the PTO before it stalls; null when not known. It
    /// protects nothing.
    /// </summary>
    public TorqueBand? EngineHighest { get; private set; }

    /// <summary>What is known of engaging the PTO.</summary>
    public Engagement Engagement { get; private set; } = Engagement.NotKnown;

    /// <summary>
    /// True when the device is seen to act in normal work, false when somebody says that it never has; null when nobody says.
    /// </summary>
    public bool? TripsInNormalWork { get; private set; }

    /// <summary>How often the protection acted in so many hours; null when nobody has counted.</summary>
    public BreakHistory? History { get; private set; }

    /// <summary>
    /// The device the machine's manual specifies, for the first place of which it specifies any; null when not known. See
    /// <see cref="SpecifiedFor"/>.
    /// </summary>
    public ProtectiveDevice? Specified { get; private set; }

    /// <summary>How often a work peak comes, per hour; null when not known.</summary>
    public double? PeaksPerHour { get; private set; }

    /// <summary>
    /// What else was found while the question was put together, such as a steep joint; shown with the verdict, which has no Yes to a
    /// question that one of them bars.
    /// </summary>
    public IReadOnlyList<Finding> Notes { get; private set; } = [];

    /// <summary>Defects that somebody has seen; each forbids work whatever the numbers say.</summary>
    public IReadOnlyList<SeenDefect> Defects { get; private set; } = [];

    /// <summary>True when somebody has looked over tube, gearbox and blades and found no damage; false when nobody has said so.</summary>
    public bool IsLookedOver { get; private set; }

    /// <summary>True when something is known of what the manual specifies; else nothing can be as specified.</summary>
    internal bool IsAnySpecified => Specified is not null;

    /// <summary>Where the facts are stated; names the causes of findings.</summary>
    internal StatedPlaces Places { get; private set; } = StatedPlaces.None;

    /// <summary>A question about a chain of which nothing else is known yet.</summary>
    public static ProtectionQuestion About(DrivelineChain chain) => new(Guard.NotNull(chain, nameof(chain)));

    /// <summary>
    /// The same question about another chain. What was experienced with the first is no evidence for it: no history, and nobody has seen
    /// it stay quiet.
    /// </summary>
    public ProtectionQuestion WithChain(DrivelineChain chain) => Changed(Guard.NotNull(chain, nameof(chain)), static (q, value) =>
    {
        q.Chain = value;
        q.History = null;
        q.TripsInNormalWork = q.TripsInNormalWork == true ? true : null;
    });

    /// <summary>The same question with the kind of machine.</summary>
    public ProtectionQuestion WithMachine(MachineKind machine) => Changed(machine, static (q, value) => q.Machine = value);

    /// <summary>The same question with a statement whether every part is listed.</summary>
    public ProtectionQuestion WithPartsComplete(bool complete) => Changed(complete, static (q, value) => q.PartsComplete = value);

    /// <summary>The same question with the peaks of normal work.</summary>
    public ProtectionQuestion WithWork(WorkPeak? work) => Changed(work, static (q, value) => q.Work = value);

    /// <summary>The same question with the mean torque of normal work at the PTO.</summary>
    public ProtectionQuestion WithSteadyMean(TorqueBand? mean) => Changed(mean, static (q, value) => q.SteadyMean = value);

    /// <summary>The same question with the highest torque the engine holds at the PTO before it stalls.</summary>
    public ProtectionQuestion WithEngineHighest(TorqueBand? highest) => Changed(highest, static (q, value) => q.EngineHighest = value);

    /// <summary>The same question with what is known of engaging the PTO.</summary>
    public ProtectionQuestion WithEngagement(Engagement engagement) =>
        Changed(Guard.NotNull(engagement, nameof(engagement)), static (q, value) => q.Engagement = value);

    /// <summary>The same question with an observation whether the device acts in normal work; null for none.</summary>
    public ProtectionQuestion WithTripsInNormalWork(bool? observed) => Changed(observed, static (q, value) => q.TripsInNormalWork = value);

    /// <summary>The same question with how often the protection acted in so many hours; null when nobody has counted.</summary>
    public ProtectionQuestion WithHistory(BreakHistory? history) => Changed(history, static (q, value) => q.History = value);

    /// <summary>The same question with the rate of work peaks, per hour; 0 or more, null when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is negative or not finite.</exception>
    public ProtectionQuestion WithPeaksPerHour(double? peaksPerHour)
    {
        double? known = peaksPerHour is { } rate ? Guard.NotNegative(rate, "Peaks per hour", "1/h", nameof(peaksPerHour)) : null;
        return Changed(known, static (q, value) => q.PeaksPerHour = value);
    }

    /// <summary>The same question with findings to show beside the verdict.</summary>
    public ProtectionQuestion WithNotes(IReadOnlyList<Finding> notes) =>
        Changed(Guard.NotNull(notes, nameof(notes)), static (q, value) => q.Notes = value.Count == 0 ? [] : [.. value]);

    /// <summary>The same question with the defects that somebody has seen.</summary>
    public ProtectionQuestion WithDefects(IReadOnlyList<SeenDefect> defects) =>
        Changed(Guard.NotNull(defects, nameof(defects)), static (q, value) => q.Defects = value.Count == 0 ? [] : [.. value]);

    /// <summary>The same question with a statement whether somebody has looked over tube, gearbox and blades and found no damage.</summary>
    public ProtectionQuestion WithLookedOver(bool isLookedOver) => Changed(isLookedOver, static (q, value) => q.IsLookedOver = value);

    /// <summary>The same question of a like case, of which only chain, work and places differ; what was experienced holds for it.</summary>
    /// <param name="chain">Its chain.</param>
    /// <param name="work">Its peaks of work.</param>
    /// <param name="mean">Its mean torque of work.</param>
    /// <param name="places">Where its facts are stated.</param>
    /// <param name="specified">One for each device at most; handed over.</param>
    internal ProtectionQuestion Like(
        DrivelineChain chain, WorkPeak? work, TorqueBand? mean, StatedPlaces places, IReadOnlyList<ProtectiveDevice?> specified)
    {
        var like = (ProtectionQuestion)MemberwiseClone();
        like.Chain = chain;
        like.Work = work;
        like.SteadyMean = mean;
        like.Places = places;
        like.specifiedInOrder = specified;
        like.Specified = null;
        for (int k = specified.Count - 1; k >= 0; k--)
        {
            like.Specified = specified[k] ?? like.Specified;
        }

        return like;
    }

    /// <summary>The same question with the places where its facts are stated.</summary>
    internal ProtectionQuestion WithPlaces(StatedPlaces places) =>
        Changed(Guard.NotNull(places, nameof(places)), static (q, value) => q.Places = value);

    /// <summary>
    /// The same question with the one device the manual specifies, for the first device of its kind, or else the first of the chain.
    /// </summary>
    public ProtectionQuestion WithSpecified(ProtectiveDevice? specified) => Changed(specified, static (q, value) =>
    {
        q.Specified = value;
        q.specifiedInOrder = [];
    });

    /// <summary>
    /// The same question with the device the manual specifies for each device, in order from the tractor; null where it is not known.
    /// </summary>
    /// <exception cref="ArgumentException">There are more of them than devices.</exception>
    public ProtectionQuestion WithSpecifiedInOrder(IReadOnlyList<ProtectiveDevice?> specified)
    {
        int devices = Chain.Devices.Count;
        return Guard.NotNull(specified, nameof(specified)).Count <= devices
            ? Changed(specified, static (q, value) =>
            {
                q.Specified = value.FirstOrDefault(s => s is not null);
                q.specifiedInOrder = [.. value];
            })
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

    /// <summary>The same question, changed in place until it is closed; for its one maker.</summary>
    internal ProtectionQuestion Open()
    {
        var open = (ProtectionQuestion)MemberwiseClone();
        open.isOpen = true;
        return open;
    }

    internal ProtectionQuestion Closed()
    {
        isOpen = false;
        return this;
    }

    // The change captures nothing, so that it is made once.
    private ProtectionQuestion Changed<T>(T value, Action<ProtectionQuestion, T> change)
    {
        ProtectionQuestion changed = isOpen ? this : (ProtectionQuestion)MemberwiseClone();
        change(changed, value);
        return changed;
    }
}
