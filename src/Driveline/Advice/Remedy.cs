namespace Driveline.Advice;

/// <summary>Something to do about a cause, with what it does to both margins. Remedies come in order: habits first, a stronger bolt last.</summary>
public sealed class Remedy
{
    internal Remedy(RemedyEntry entry, double? workMargin, double? guardMargin)
    {
        Code = entry.Code;
        Order = entry.Order;
        Minutes = entry.Minutes;
        OnWorkMargin = entry.OnWork;
        OnGuardMargin = entry.OnGuard;
        Caution = entry.Caution;
        WorkMargin = workMargin;
        GuardMargin = guardMargin;
    }

    /// <summary>Stable code of its text, e.g. "remedy.engageGently".</summary>
    public string Code { get; }

    /// <summary>Its place in the order: 1 habits, 2 attitude and work, 3 holes, hub and driveline, 4 clutch, 5 the specified part, 9 a stronger bolt.</summary>
    public int Order { get; }

    /// <summary>Minutes it takes, from memory; null when it is a workshop job or a purchase.</summary>
    public double? Minutes { get; }

    /// <summary>What it does to the work margin.</summary>
    public MarginEffect OnWorkMargin { get; }

    /// <summary>What it does to the guard margin.</summary>
    public MarginEffect OnGuardMargin { get; }

    /// <summary>Work margin after it; null when it is not known.</summary>
    public double? WorkMargin { get; }

    /// <summary>Guard margin after it; null when it is not known.</summary>
    public double? GuardMargin { get; }

    /// <summary>The caution that stands beside it.</summary>
    public Caution Caution { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
