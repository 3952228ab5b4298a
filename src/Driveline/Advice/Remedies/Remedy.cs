using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Advice;

/// <summary>
/// Something to do about a cause, with what it does to both margins. Remedies come in order: habits first, a stronger bolt last.
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
    /// Its place in the order: 1 habits, 2 attitude and work, 3 holes, hub and driveline, 4 clutch, 5 the specified part, 9 a stronger
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

    /// <summary>What it costs in the caller's currency; null when not known, as long as nobody has priced an hour.</summary>
    public MoneyBand? Cost { get; }

    /// <summary>The caution that stands beside it.</summary>
    public Caution Caution => entry.Caution;

    /// <summary>True when it is done about that cause.</summary>
    public bool Cures(Cause cause) => entry.Causes.Contains(cause);

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
