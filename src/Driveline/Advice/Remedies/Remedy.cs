using Driveline.Findings;
using Driveline.Protection;
using UnitsNet;

namespace Driveline.Advice;

/// <summary>
/// Something to do about a cause, with what it does to both margins. Remedies come in order: the cure of the likeliest cause, then free
/// habits, then what takes work and money, a stronger bolt last.
/// </summary>
/// <remarks>
/// Where the remedy changes something the model knows, the check is run again and both margins are its; else a margin is known only when
/// the remedy leaves it alone.
/// </remarks>
public sealed class Remedy
{
    private readonly RemedyEntry entry;
    private readonly ProtectionVerdict? before;

    internal Remedy(RemedyEntry entry, ProtectionVerdict? before)
        : this(entry, before, before is null ? null : RemediedCheck.Of(entry.Code, before), null)
    {
    }

    private Remedy(RemedyEntry entry, ProtectionVerdict? before, ProtectionVerdict? after, MoneyBand? cost)
    {
        this.entry = entry;
        this.before = before;
        After = after;
        Cost = cost ?? RemedyCost.Of(entry.Spending, entry.Minutes, null, null);
    }

    /// <summary>Stable code of its text, e.g. "remedy.engageGently".</summary>
    public string Code => entry.Code;

    /// <summary>
    /// Its kind: 1 habits, 2 attitude and work, 3 holes, hub and driveline, 4 clutch, 5 the specified part, 9 a stronger
    /// bolt.
    /// </summary>
    public int Order => entry.Order;

    /// <summary>Minutes it takes, from memory; null when it is a workshop job or a purchase.</summary>
    public double? Minutes => entry.Minutes;

    /// <summary>The verdict with the remedy done; null when there is no model or the remedy changes nothing it knows.</summary>
    public ProtectionVerdict? After { get; }

    /// <summary>What it does to the work margin: as computed, else as is usual.</summary>
    public MarginEffect OnWorkMargin => After is null ? entry.OnWork : Effect(before?.WorkMargin, After.WorkMargin, entry.OnWork);

    /// <summary>What it does to the guard margin: as computed, else as is usual.</summary>
    public MarginEffect OnGuardMargin => After is null ? entry.OnGuard : Effect(before?.GuardMargin, After.GuardMargin, entry.OnGuard);

    /// <summary>Work margin after it; null when it is not known.</summary>
    public double? WorkMargin => After is not null ? After.WorkMargin : entry.OnWork == MarginEffect.Unchanged ? before?.WorkMargin : null;

    /// <summary>Guard margin after it; null when it is not known.</summary>
    public double? GuardMargin => After is not null ? After.GuardMargin : entry.OnGuard == MarginEffect.Unchanged ? before?.GuardMargin
        : null;

    /// <summary>
    /// True when a margin stays below 1 after it, or the check run again with it still says No; false when it was run again and neither
    /// does; null when nothing is known of that.
    /// </summary>
    public bool? StillFails
    {
        get
        {
            bool fails = GuardMargin is > 0 and < 1 || WorkMargin is > 0 and < 1 || After is { Guards: Answer.No } or { Quiet: Answer.No };
            return fails ? true : After is null ? null : false;
        }
    }

    /// <summary>What a protection must hold at the PTO without acting: the highest torque of normal work; null when not known.</summary>
    public Torque? MustHold => (After ?? before)?.WorkPeak is { IsBounded: true } work ? work.High : null;

    /// <summary>Below what a protection must act at the PTO: the least torque that damages the weakest part; null when not known.</summary>
    public Torque? MustActBelow => (After ?? before)?.WeakestPart?.DamagedAtPto?.Low;

    /// <summary>True when both are known and nothing fits between them.</summary>
    public bool NothingFits => MustHold is { } hold && MustActBelow is { } below && below <= hold;

    /// <summary>What it costs in the caller's currency; null when not known, as long as nobody has priced an hour.</summary>
    public MoneyBand? Cost { get; }

    /// <summary>The caution that stands beside it.</summary>
    public Caution Caution => entry.Caution;

    /// <summary>True when it is done about that cause.</summary>
    public bool Cures(Cause cause) => entry.Causes.Contains(cause);

    /// <summary>True for something to do otherwise from now on, at no price in money or protection.</summary>
    public bool IsFreeHabit => entry.IsFreeHabit;

    // A habit changes loads that no check computes; what is done to a part shows in the check run again.
    internal bool ChangesNothing => After is { } after && before is { } was && !entry.IsFreeHabit && after.Guards == was.Guards
        && after.Quiet == was.Quiet && after.GuardMargin.Equals(was.GuardMargin) && after.WorkMargin.Equals(was.WorkMargin)
        && Equals(after.Trip, was.Trip) && after.AsSpecified.Answer == was.AsSpecified.Answer && after.Standing.State == was.Standing.State;

    /// <inheritdoc/>
    public override string ToString() => Code;

    /// <summary>The same remedy priced.</summary>
    internal Remedy Priced(MoneyBand? hourOfWork, MoneyBand? boltPrice) =>
        new(entry, before, After, RemedyCost.Of(entry.Spending, entry.Minutes, hourOfWork, boltPrice));

    private static MarginEffect Effect(double? before, double? after, MarginEffect usual) => before is not { } was || after is not { } now
        ? usual
        : now > was ? MarginEffect.Raises
        : now < was ? MarginEffect.Lowers
        : MarginEffect.Unchanged;
}
