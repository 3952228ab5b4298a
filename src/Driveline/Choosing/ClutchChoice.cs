using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Choosing;

/// <summary>To which slip torques the springs of a given clutch may be set so that it guards every part and stays quiet, or that none exists.</summary>
/// <remarks>
/// Quiet: the running torque, low, stays above the highest work peak. Guards: the breakaway torque, high, stays below the damage
/// torque, low, of every part. The springs are set with a rule read within 0.4 mm, and the clutch is slipped at that setting: before
/// that its breakaway has no upper end. Faces and run-in are as told. Where any limit is not known, or the clutch is stuck, no setting is offered.
/// The machine's manual decides: its spring length comes before any computed one.
/// </remarks>
public sealed class ClutchChoice
{
    private ClutchChoice(ProtectionQuestion question, DiscClutch clutch, ProtectionPolicy policy, ClutchWindow? window, ClutchPoint? best, IReadOnlyList<Finding> findings)
    {
        Question = question;
        Clutch = clutch;
        Policy = policy;
        Window = window;
        Best = best;
        Findings = findings;
    }

    /// <summary>The question it answers.</summary>
    public ProtectionQuestion Question { get; }

    /// <summary>The clutch.</summary>
    public DiscClutch Clutch { get; }

    /// <summary>How strict the check is.</summary>
    public ProtectionPolicy Policy { get; }

    /// <summary>The settings that guard and stay quiet; null when there is none.</summary>
    public ClutchWindow? Window { get; }

    /// <summary>The setting at which the worse of the two margins is greatest, inside the window or not; null when a margin is not known.</summary>
    public ClutchPoint? Best { get; }

    /// <summary>What a caller must notice, worst first, and what would help when no setting fits.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Codes of the cautions that go with every setting.</summary>
    public IReadOnlyList<string> Cautions { get; } = [.. VerdictCautions.Always, ChoosingCautions.OnlyTheManual];

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
    public static ClutchChoice For(ProtectionQuestion question, ProtectiveDevice place, DiscClutch clutch, ClutchCondition condition, ProtectionPolicy policy)
    {
        Guard.NotNull(question, nameof(question)).Chain.IndexOf(Guard.NotNull(place, nameof(place)));
        Guard.NotNull(clutch, nameof(clutch));
        Guard.NotNull(condition, nameof(condition));
        var search = new ClutchSearch(question, place, clutch, condition, Guard.NotNull(policy, nameof(policy)));
        ProtectionVerdict verdict = search.VerdictAt(search.MostDeflectionM / 2);
        if (SettingFindings.Missing(verdict, condition) is { Count: > 0 } missing)
        {
            return new ClutchChoice(question, clutch, policy, null, null, missing);
        }

        ClutchPoint best = search.Best();
        ClutchWindow? window = search.Window(best);
        return new ClutchChoice(question, clutch, policy, window, best, SettingFindings.Answer(search, best, window));
    }

    /// <inheritdoc/>
    public override string ToString() => Window?.ToString() ?? "no setting fits";
}
