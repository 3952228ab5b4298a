using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Pto;

namespace Driveline.Cases.Questions;

/// <summary>
/// The engagement or the strike that a case file asks to be simulated, with its check. What the case leaves out is named, never made up.
/// </summary>
public sealed class CaseSimulation
{
    private IReadOnlyList<Finding>? findings;
    private IReadOnlyList<Caution>? cautions;
    private readonly CaseFile file;
    private readonly WorkMeter meter;
    private readonly Once<SimulationRuns> runs = new();
    private readonly Once<SimulationCheck> check = new();
    private readonly Once<FoundSpan> span = new();

    private CaseSimulation(
        SimulatedEvent happened,
        CaseFile file,
        DrivelineChain? chain,
        DrivelineSimulation? simulation,
        WorkMeter meter,
        IReadOnlyList<Finding> missing,
        IReadOnlyList<CaseError> errors)
    {
        Event = happened;
        Chain = chain;
        Simulation = simulation;
        Machine = CaseQuestion.MachineOf(file);
        this.file = file;
        this.meter = meter;
        Missing = missing;
        Errors = errors;
    }

    /// <summary>What is simulated.</summary>
    public SimulatedEvent Event { get; }

    /// <summary>The kind of machine.</summary>
    public MachineKind Machine { get; }

    /// <summary>The cautions that go with it, whatever it finds.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??= Check?.Cautions ?? SimulationCheck.CautionsFor(Machine);

    /// <summary>The driveline; null when the facts contradict each other.</summary>
    public DrivelineChain? Chain { get; }

    /// <summary>What is simulated; null when not even that is known, or the facts contradict each other.</summary>
    public DrivelineSimulation? Simulation { get; }

    /// <summary>The runs with and without protection alone; null when there is no simulation.</summary>
    internal SimulationRuns? Runs => Simulation is null ? null
        : runs.Get(static (c, _) => new SimulationRuns(c.Simulation!, c.meter), this, CancellationToken.None);

    /// <summary>The runs with and without protection, and what they say; null when there is no simulation.</summary>
    public SimulationCheck? Check => Simulation is null ? null
        : check.Get(static (c, _) => SimulationCheck.Of(c.Runs!).WithMachine(c.Machine), this, CancellationToken.None);

    /// <summary>
    /// What usual values in place of missing facts give; null when no fact is missing, or one has no usual value. It decides nothing.
    /// </summary>
    public SimulationSpan? Span => Simulation is null ? null
        : span.Get(
            static (c, _) => new FoundSpan(SimulationSpan.Of(c.Simulation!, Usual(c.file), c.meter)), this, CancellationToken.None).Span;

    /// <summary>True when there are torques to show: of what is stated, or a span of usual values.</summary>
    public bool IsAnswered => (Check?.With ?? Check?.Without) is not null || Simulation is { Strike.MissesDriveline: true }
        || Span is not null;

    /// <summary>Facts without which nobody can say what to simulate.</summary>
    public IReadOnlyList<Finding> Missing { get; }

    /// <summary>Facts that contradict each other; empty when there are none.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>Everything a caller must notice, worst first.</summary>
    public IReadOnlyList<Finding> Findings => findings
        ??= [.. Missing.Concat(Span?.Findings ?? Check?.Findings ?? []).OrderBy(f => f.Severity)];

    /// <summary>The strike of a case, or its engagement when it states no strike, within the usual limits.</summary>
    internal static CaseSimulation Of(CaseFile file) => Of(file, SimulationLimits.Usual);

    /// <summary>The strike of a case, or its engagement when it states no strike, within limits.</summary>
    internal static CaseSimulation Of(CaseFile file, SimulationLimits limits) =>
        (file ?? throw new ArgumentNullException(nameof(file))).Facts.Get(CaseFileMembers.Strike) is null ? Engagement(file, limits)
            : Strike(file, limits);

    /// <summary>Engaging the PTO clutch, within the usual limits.</summary>
    internal static CaseSimulation Engagement(CaseFile file) => Engagement(file, SimulationLimits.Usual);

    /// <summary>Engaging the PTO clutch, within limits.</summary>
    internal static CaseSimulation Engagement(CaseFile file, SimulationLimits limits) =>
        Of(file, SimulatedEvent.Engagement, new WorkMeter(limits));

    /// <summary>The strike that the case states, within the usual limits.</summary>
    internal static CaseSimulation Strike(CaseFile file) => Strike(file, SimulationLimits.Usual);

    /// <summary>The strike that the case states, within limits.</summary>
    internal static CaseSimulation Strike(CaseFile file, SimulationLimits limits) => Of(file, SimulatedEvent.Strike, new WorkMeter(limits));

    internal static CaseSimulation Of(CaseFile file, SimulatedEvent happened, WorkMeter meter) =>
        Of(MappedCase.Of(file), happened, meter);

    internal static CaseSimulation Of(MappedCase mapped, SimulatedEvent happened, WorkMeter meter)
    {
        IReadOnlyList<Finding> missing = [];
        DrivelineSimulation? simulation = mapped is { Chain: not null, Errors.Count: 0 } ? Simulate(mapped, happened, out missing) : null;
        return new CaseSimulation(
            happened, mapped.File, mapped.Errors.Count == 0 ? mapped.Chain : null, simulation, meter, missing, mapped.Errors);
    }

    private static UsualMachine Usual(CaseFile file)
    {
        UsualMachine usual = UsualMachine.Of(CaseQuestion.MachineOf(file));
        usual = file.Facts.Get(CaseFileMembers.Implement)?.Get(ImplementMembers.Width) is { } width ? usual.WithWidth(width) : usual;
        usual = file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoPower) is { } power ? usual.WithPtoPower(power) : usual;
        JointSeries? joint = file.Facts.Get(CaseFileMembers.Driveline)
            .Select(e => e.Get(ElementMembers.Cross)).FirstOrDefault(c => c is not null);
        return joint is null ? usual : usual.WithJoint(joint);
    }

    private static DrivelineSimulation? Simulate(MappedCase mapped, SimulatedEvent happened, out IReadOnlyList<Finding> missing)
    {
        CaseFile file = mapped.File;
        DrivelineChain chain = mapped.Chain!;
        bool isStrike = happened == SimulatedEvent.Strike;
        SimulatedStrike? strike = isStrike ? CaseStrike.Of(file.Facts.Get(CaseFileMembers.Strike), chain) : null;
        SimulationDrive? drive = mapped.Shared?.Drive(isStrike) ?? CaseDrive.Of(file, chain, isStrike);
        bool isStrikeMissing = isStrike && strike is null;
        missing = drive is null || isStrikeMissing
            ? [.. Missed(drive is null, SimulationFindings.SpeedNotKnown), .. Missed(isStrikeMissing, SimulationFindings.StrikeNotKnown)]
            : [];
        return drive is null || isStrikeMissing ? null
            : strike is null ? DrivelineSimulation.OfEngagement(chain, drive)
            : DrivelineSimulation.OfStrike(chain, drive, strike);
    }

    private static IEnumerable<Finding> Missed(bool holds, string code) => holds ? [Finding.Of(code, Severity.Warning)] : [];

    private sealed class FoundSpan
    {
        public FoundSpan(SimulationSpan? span) => Span = span;

        public SimulationSpan? Span { get; }
    }
}
