using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>
/// To which slip torques the springs of a given clutch may be set so that it guards every part and stays quiet, or that none exists.
/// </summary>
/// <remarks>
/// Quiet: the running torque, low, stays above the highest work peak. Guards: the breakaway torque, high, stays below the damage
/// torque, low, of every part. The springs are set with a rule read within 0.4 mm, and the clutch is slipped at that setting: before
/// that its breakaway has no upper end. Faces and run-in are as told. No setting presses the linings above their limit, where that is
/// known. Where any part's limit is not known, or the clutch is stuck, solid, oiled, glazed or too hot, no setting is offered.
/// The machine's manual decides: its spring length comes before any computed one.
/// </remarks>
public sealed class ClutchChoice
{
    private IReadOnlyList<Caution>? cautions;
    private readonly double pitchM = double.NaN;

    private ClutchChoice(
        ProtectionQuestion question, ProtectiveDevice place, DiscClutch? clutch, ProtectionPolicy policy, ClutchWindow? window,
            ClutchPoint? best, IReadOnlyList<Finding> findings)
    {
        Question = question;
        Place = place;
        Clutch = clutch;
        Policy = policy;
        Window = window;
        Best = best;
        Findings = findings;
    }

    private ClutchChoice(ClutchChoice other, double pitchM)
        : this(other.Question, other.Place, other.Clutch, other.Policy, other.Window, other.Best, other.Findings)
    {
        this.pitchM = pitchM;
        Manuals = other.Manuals;
    }

    /// <summary>The question it answers.</summary>
    public ProtectionQuestion Question { get; }

    /// <summary>The device whose place the clutch has.</summary>
    public ProtectiveDevice Place { get; }

    /// <summary>The clutch; null when its faces and springs are not known.</summary>
    public DiscClutch? Clutch { get; }

    /// <summary>Pitch of the thread of the spring bolts; null when not known.</summary>
    public Length? ThreadPitch => double.IsNaN(pitchM) ? null : Length.FromMeters(pitchM);

    /// <summary>How strict the check is.</summary>
    public ProtectionPolicy Policy { get; }

    /// <summary>The settings that guard and stay quiet; null when there is none.</summary>
    public ClutchWindow? Window { get; }

    /// <summary>
    /// The setting at which the worse of the two margins is greatest, inside the window or not; null when a margin is not known.
    /// </summary>
    public ClutchPoint? Best { get; }

    /// <summary>The setting of the torque that the manual states; null when it states none, or no permitted setting has it.</summary>
    public ClutchPoint? Manuals { get; private set; }

    /// <summary>
    /// The torque that the manual states for this clutch, while it slips; null when not stated. Without it no length and no turns are for
    /// an owner.
    /// </summary>
    public TorqueBand? ManualsTorque => SettingFindings.Manuals(Question, Place);

    /// <summary>What a caller must notice, worst first, and what would help when no setting fits.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The cautions that go with every setting.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??=
        [.. VerdictCautions.Of(Question.Machine, Question.Chain, Policy), ChoosingCautions.OnlyTheManualsSetting];

    /// <summary>The settings of a clutch in the place of a device, by the default policy.</summary>
    public static ClutchChoice For(ProtectionQuestion question, ProtectiveDevice place, DiscClutch clutch, ClutchCondition condition) =>
        For(question, place, clutch, condition, ProtectionPolicy.Default);

    /// <summary>The settings of a clutch in the place of a device.</summary>
    /// <param name="question">The driveline.</param>
    /// <param name="place">The device of that driveline whose place the clutch has: itself, or what it is to replace.</param>
    /// <param name="clutch">The clutch; its present spring length does not matter.</param>
    /// <param name="condition">Its faces; wear and earlier slip tests do not count, because the springs are set anew.</param>
    /// <param name="policy">How strict the check is.</param>
    /// <exception cref="ArgumentException">The place is not a device of the driveline.</exception>
    public static ClutchChoice For(
        ProtectionQuestion question, ProtectiveDevice place, DiscClutch clutch, ClutchCondition condition, ProtectionPolicy policy) =>
        For(question, place, clutch, condition, policy, CancellationToken.None);

    /// <summary>The same, until it is stopped: asked before each setting that is tried.</summary>
    /// <param name="question">The driveline.</param>
    /// <param name="place">The device of that driveline whose place the clutch has: itself, or what it is to replace.</param>
    /// <param name="clutch">The clutch; its present spring length does not matter.</param>
    /// <param name="condition">Its faces; wear and earlier slip tests do not count, because the springs are set anew.</param>
    /// <param name="policy">How strict the check is.</param>
    /// <param name="stop">Ends the search.</param>
    /// <exception cref="ArgumentException">The place is not a device of the driveline.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ClutchChoice For(
        ProtectionQuestion question, ProtectiveDevice place, DiscClutch clutch, ClutchCondition condition, ProtectionPolicy policy,
        CancellationToken stop)
    {
        Guard.NotNull(question, nameof(question)).Chain.IndexOf(Guard.NotNull(place, nameof(place)));
        Guard.NotNull(clutch, nameof(clutch));
        Guard.NotNull(condition, nameof(condition));
        var search = new ClutchSearch(question, place, clutch, condition, Guard.NotNull(policy, nameof(policy)), stop);
        ProtectionVerdict verdict = search.VerdictAt(search.MostDeflectionM / 2);
        if (SettingFindings.Missing(verdict, place, condition) is { Count: > 0 } missing)
        {
            return new ClutchChoice(question, place, clutch, policy, null, null, missing);
        }

        ClutchPoint best = search.Best();
        ClutchWindow? window = search.Window(best);
        ClutchPoint? manuals = SettingFindings.Manuals(question, place) is { } named ? search.SetTo(named.SiBand.Expected) : null;
        return new ClutchChoice(
            question, place, clutch, policy, window, best, SettingFindings.Answer(search, best, window))
        { Manuals = manuals };
    }

    /// <summary>
    /// The answer for a clutch whose faces and springs are not known, by the default policy: no setting, and what is missing.
    /// </summary>
    public static ClutchChoice WithoutClutch(ProtectionQuestion question, ProtectiveDevice place, ClutchCondition condition) =>
        WithoutClutch(question, place, condition, ProtectionPolicy.Default);

    /// <summary>The answer for a clutch whose faces and springs are not known: no setting, and what is missing.</summary>
    /// <exception cref="ArgumentException">The place is not a device of the driveline.</exception>
    public static ClutchChoice WithoutClutch(
        ProtectionQuestion question, ProtectiveDevice place, ClutchCondition condition, ProtectionPolicy policy)
    {
        Guard.NotNull(question, nameof(question)).Chain.IndexOf(Guard.NotNull(place, nameof(place)));
        Guard.NotNull(condition, nameof(condition));
        ProtectionVerdict verdict = ProtectionCheck.Run(question, Guard.NotNull(policy, nameof(policy)));
        Finding undescribed = Finding.Of(ChoosingFindings.SettingNeedsClutch, Severity.Danger).With("name", place.Name);
        return new ClutchChoice(
            question, place, null, policy, null, null, [undescribed, .. SettingFindings.Missing(verdict, place, condition)]);
    }

    /// <summary>
    /// The same choice with the pitch of the thread of the spring bolts, so that settings can be told in turns of the nuts.
    /// </summary>
    /// <param name="pitch">Pitch; above 0, at most 10 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pitch is out of its range.</exception>
    public ClutchChoice WithThreadPitch(Length pitch)
    {
        double m = Guard.Positive(Si.Meters(pitch), "Pitch of the bolt thread", "m", nameof(pitch));
        return new ClutchChoice(this, Guard.Within(m, 0, 0.01, "Pitch of the bolt thread", "m", nameof(pitch)));
    }

    /// <summary>Turns of every nut from finger-tight that give a setting of this clutch; null while the pitch is not known.</summary>
    /// <example>50 mm free, set to 47.02 mm, pitch 1.5 mm: 1.99 turns.</example>
    public double? NutTurns(ClutchPoint setting) => double.IsNaN(pitchM) ? null
        : Guard.NotNull(setting, nameof(setting)).DeflectionM / pitchM;

    /// <inheritdoc/>
    public override string ToString() => Window?.ToString() ?? "no setting fits";
}
