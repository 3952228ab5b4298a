using System.Diagnostics.CodeAnalysis;
using System.IO.Pipelines;
using Driveline.Advice;
using Driveline.Cases.Questions;
using Driveline.Choosing;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Torsion;

namespace Driveline.Cases;

/// <summary>
/// One case and everything it answers, each computed once, when it is first asked for; or everything that is wrong with it.
/// </summary>
/// <remarks>
/// The answers are methods, since they work: some simulate for half a second, and each has a twin that can be stopped. What was
/// computed once is kept. Safe for several threads; a stopped computation leaves nothing behind. Reading never simulates.
/// The answers do not depend on the order in which they are asked for.
/// </remarks>
/// <example>
/// <code>
/// CaseAssessment asked = CaseAssessment.Of(json);
/// if (!asked.IsGood) return asked.ErrorsByPath();
/// return VerdictWords.Of(asked.Verdict(), Language.Spanish).Headline;
/// </code>
/// </example>
public sealed class CaseAssessment
{
    private readonly MappedCase? mapped;
    private readonly SimulationLimits limits;
    private readonly ProtectionPolicy policy;
    private readonly TransientWorkspaces? memory;
    private readonly Once<CaseQuestion> question = new();
    private readonly Once<ProtectionVerdict> verdict = new();
    private Once<CaseSimulation>? engagement;
    private Once<CaseSimulation>? strike;
    private Once<CaseSimulation>? bare;
    private Once<BoltChoice>? choice;
    private Once<IReadOnlyList<ClutchChoice>>? settings;
    private Once<OwnerAdvice>? advice;

    private CaseAssessment(
        MappedCase? mapped, IReadOnlyList<CaseError> errors, SimulationLimits limits, ProtectionPolicy policy,
        TransientWorkspaces? memory)
    {
        this.memory = memory;
        this.policy = policy;
        this.mapped = mapped;
        this.limits = limits;
        Errors = errors;
        File = errors.Count == 0 ? mapped?.File : null;
    }

    /// <summary>The case; null when anything is wrong with it.</summary>
    public CaseFile? File { get; }

    /// <summary>All that is wrong: what cannot be read, then the facts that contradict each other; empty when it can be answered.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>True when nothing is wrong, so that every question has an answer.</summary>
    [MemberNotNullWhen(true, nameof(File))]
    public bool IsGood => File is not null;

    /// <summary>Reads and maps a case from JSON text.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static CaseAssessment Of(string json) => Of(CaseReader.Read(json));

    /// <summary>Reads and maps a case from UTF-8 JSON; a byte-order mark is skipped.</summary>
    public static CaseAssessment Of(ReadOnlySpan<byte> utf8) => Of(CaseReader.Read(utf8));

    /// <summary>Maps a case that was read or made.</summary>
    /// <exception cref="ArgumentNullException">The case is null.</exception>
    public static CaseAssessment Of(CaseFile file) => Of(MappedCase.Of(file), SimulationLimits.Usual);

    /// <summary>Maps what was read; what could not be read stays in <see cref="Errors"/>.</summary>
    /// <exception cref="ArgumentNullException">The result is null.</exception>
    public static CaseAssessment Of(CaseReadResult read)
    {
        Guard.NotNull(read, nameof(read));
        return read.IsRead ? Of(read.Case) : new CaseAssessment(null, read.Errors, SimulationLimits.Usual, ProtectionPolicy.Default, null);
    }

    /// <summary>Reads and maps a case from a stream, such as the body of a web request; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<CaseAssessment> ReadAsync(Stream stream, CancellationToken stop) =>
        Of(await CaseReader.ReadAsync(stream, stop).ConfigureAwait(false));

    /// <summary>Reads and maps a case from a pipe; the pipe is not completed.</summary>
    /// <exception cref="ArgumentNullException">The pipe is null.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<CaseAssessment> ReadAsync(PipeReader pipe, CancellationToken stop) =>
        Of(await CaseReader.ReadAsync(pipe, stop).ConfigureAwait(false));

    /// <summary>The same case with other limits for what it simulates, for each answer; nothing is computed yet.</summary>
    /// <exception cref="ArgumentNullException">The limits are null.</exception>
    public CaseAssessment WithLimits(SimulationLimits most) => new(mapped, Errors, Guard.NotNull(most, nameof(most)), policy, null);

    /// <summary>The same case judged by another policy, with its margins and cautions; nothing is computed yet.</summary>
    /// <exception cref="ArgumentNullException">The policy is null.</exception>
    public CaseAssessment WithPolicy(ProtectionPolicy judgedBy) =>
        new(mapped, Errors, limits, Guard.NotNull(judgedBy, nameof(judgedBy)), null);

    /// <summary>The messages by path, as web APIs answer them; the file as a whole has the path "".</summary>
    public IDictionary<string, string[]> ErrorsByPath() => CaseError.ByPath(Errors);

    /// <summary>The verdict.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public ProtectionVerdict Verdict() => Verdict(CancellationToken.None);

    /// <summary>The verdict, until it is stopped.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public ProtectionVerdict Verdict(CancellationToken stop) =>
        verdict.Get(static (c, s) => ProtectionCheck.Run(c.Asked(s).Question!, c.policy), this, stop);

    /// <summary>The slip clutches, in order from the tractor; empty when there are none.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public IReadOnlyList<CaseClutch> Clutches() => Good.Clutches;

    /// <summary>The simulated strike of the case, or its engagement when it states no strike.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public CaseSimulation Simulation() => Simulation(CancellationToken.None);

    /// <summary>The same, until it is stopped.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public CaseSimulation Simulation(CancellationToken stop) =>
        Simulation(Happened, stop);

    /// <summary>The simulation of one event, until it is stopped. What the case leaves out is named in it.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public CaseSimulation Simulation(SimulatedEvent happened, CancellationToken stop) =>
        (happened == SimulatedEvent.Strike ? Once<CaseSimulation>.In(ref strike) : Once<CaseSimulation>.In(ref engagement))
            .Get(s => Simulated(happened, s), stop);

    /// <summary>The terms on which its first shear bolt may be chosen: stock, holes and bolt as the case states them.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public ChoiceTerms Terms() => CaseChoice.TermsOf(Good.File).WithPolicy(policy);

    /// <summary>The terms for the shear bolt of a name.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public ChoiceTerms Terms(string device) => CaseChoice.TermsOf(Good.File, Guard.NotNull(device, nameof(device))).WithPolicy(policy);

    /// <summary>The choice of a bolt on the terms of the case.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public BoltChoice Choice() => Choice(CancellationToken.None);

    /// <summary>The same, until it is stopped.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BoltChoice Choice(CancellationToken stop) => Once<BoltChoice>.In(ref choice).Get(s => Choice(Terms(), s), stop);

    /// <summary>The choice of a bolt on other terms, such as another stock; it is not kept.</summary>
    /// <exception cref="ArgumentException">The terms name a shear bolt that the case does not have.</exception>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BoltChoice Choice(ChoiceTerms terms, CancellationToken stop) => BoltChoice.For(Asked(stop).Question!, terms, stop);

    /// <summary>The settings of every slip clutch, in order from the tractor; empty when there is none.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public IReadOnlyList<ClutchChoice> Settings() => Settings(CancellationToken.None);

    /// <summary>The same, until it is stopped.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public IReadOnlyList<ClutchChoice> Settings(CancellationToken stop) =>
        Once<IReadOnlyList<ClutchChoice>>.In(ref settings).Get(s => CaseChoice.SettingsOf(Asked(s).Question!, policy, s), stop);

    /// <summary>True when the case has a shear bolt or a slip clutch, however little is known of it.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public bool HasAnyToChoose() => CaseChoice.HasAnyToChoose(Good.File);

    /// <summary>The advice on the case's complaint.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    public OwnerAdvice Advice() => Advice(CancellationToken.None);

    /// <summary>The same, until it is stopped.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public OwnerAdvice Advice(CancellationToken stop) => Once<OwnerAdvice>.In(ref advice).Get(Advised, stop);

    /// <summary>Maps a case that shares what it can with one mapped before, and runs in memory of its thread.</summary>
    internal static CaseAssessment Of(CaseFile file, SharedMapping? known, TransientWorkspaces memory)
    {
        MappedCase mapped = MappedCase.Of(file, known);
        return new CaseAssessment(mapped, mapped.Errors, SimulationLimits.Usual, ProtectionPolicy.Default, memory);
    }

    /// <summary>The two runs of <see cref="Simulation(CancellationToken)"/> alone; null when there is nothing to simulate.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    internal SimulationRuns? Runs(CancellationToken stop)
    {
        Once<CaseSimulation>? whole = Happened == SimulatedEvent.Strike ? strike : engagement;
        return (whole?.Known ?? bare?.Known ?? Once<CaseSimulation>.In(ref bare).Get(static (c, s) => c.Bare(s), this, stop)).Runs;
    }

    /// <summary>The driveline.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    internal Chains.DrivelineChain Chain => Good.Chain!;

    /// <summary>What other cases with the same facts but the varied ones may share with it.</summary>
    /// <exception cref="InvalidOperationException">Something is wrong with the case.</exception>
    internal SharedMapping Share(IEnumerable<Members.Member> varied) => new(Good, varied);

    private MappedCase Good => mapped is not null && IsGood ? mapped
        : throw new InvalidOperationException("Something is wrong with the case: " + Errors[0]);

    private SimulatedEvent Happened => Good.File.IsStated("strike") ? SimulatedEvent.Strike : SimulatedEvent.Engagement;

    private WorkMeter Meter(long done, CancellationToken stop) =>
        memory is null ? new WorkMeter(limits, done, stop) : new WorkMeter(limits, done, memory, stop);

    private static CaseAssessment Of(MappedCase mapped, SimulationLimits limits) =>
        new(mapped, mapped.Errors, limits, ProtectionPolicy.Default, null);

    private CaseQuestion Asked(CancellationToken stop) =>
        question.Get(static (c, s) => CaseQuestion.Of(c.Good, c.Meter(0, s)), this, stop);

    private CaseSimulation Bare(CancellationToken stop)
    {
        CaseSimulation run = CaseSimulation.Of(Good, Happened, Meter(0, stop));
        _ = run.Runs;
        return run;
    }

    private CaseSimulation Simulated(SimulatedEvent happened, CancellationToken stop)
    {
        CaseSimulation run = CaseSimulation.Of(Good, happened, Meter(0, stop));
        _ = run.Check;
        _ = run.Span;
        return run;
    }

    private OwnerAdvice Advised(CancellationToken stop)
    {
        CaseQuestion asked = Asked(stop);
        return CaseAdvice.Of(Good, asked, Verdict(stop), Meter(asked.SimulationWork, stop)).Advice!;
    }
}
