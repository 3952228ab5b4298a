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
    private readonly Lazy<SimulationRuns?> runs;
    private readonly Lazy<SimulationCheck?> check;
    private readonly Lazy<SimulationSpan?> span;

    private CaseSimulation(
        SimulatedEvent happened,
        UsualMachine usual,
        DrivelineChain? chain,
        DrivelineSimulation? simulation,
        WorkMeter meter,
        IReadOnlyList<Finding> missing,
        IReadOnlyList<CaseError> errors)
    {
        Event = happened;
        Chain = chain;
        Simulation = simulation;
        Machine = usual.Kind;
        runs = new Lazy<SimulationRuns?>(() => simulation is null ? null : new SimulationRuns(simulation, meter));
        check = new Lazy<SimulationCheck?>(() => Runs is null ? null : SimulationCheck.Of(Runs).WithMachine(Machine));
        span = new Lazy<SimulationSpan?>(() => simulation is null ? null : SimulationSpan.Of(simulation, usual, meter));
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
    internal SimulationRuns? Runs => runs.Value;

    /// <summary>The runs with and without protection, and what they say; null when there is no simulation.</summary>
    public SimulationCheck? Check => check.Value;

    /// <summary>
    /// What usual values in place of missing facts give; null when no fact is missing, or one has no usual value. It decides nothing.
    /// </summary>
    public SimulationSpan? Span => span.Value;

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
        var missing = new List<Finding>();
        DrivelineSimulation? simulation = mapped is { Chain: { } chain, Errors.Count: 0 }
            ? Simulate(mapped.File, chain, happened, missing) : null;
        return new CaseSimulation(
            happened, Usual(mapped.File), mapped.Errors.Count == 0 ? mapped.Chain : null, simulation, meter, missing.AsReadOnly(),
            mapped.Errors);
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

    private static DrivelineSimulation? Simulate(CaseFile file, DrivelineChain chain, SimulatedEvent happened, List<Finding> missing)
    {
        bool isStrike = happened == SimulatedEvent.Strike;
        SimulatedStrike? strike = isStrike ? CaseStrike.Of(file.Facts.Get(CaseFileMembers.Strike), chain) : null;
        SimulationDrive? drive = CaseDrive.Of(file, chain, isStrike);
        Miss(missing, drive is null, SimulationFindings.SpeedNotKnown);
        Miss(missing, isStrike && strike is null, SimulationFindings.StrikeNotKnown);
        return drive is null || (isStrike && strike is null) ? null
            : strike is null ? DrivelineSimulation.OfEngagement(chain, drive)
            : DrivelineSimulation.OfStrike(chain, drive, strike);
    }

    private static void Miss(List<Finding> missing, bool holds, string code)
    {
        if (holds)
        {
            missing.Add(Finding.Of(code, Severity.Warning));
        }
    }
}
