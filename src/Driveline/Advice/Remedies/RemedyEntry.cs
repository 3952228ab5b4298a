using Driveline.Findings;

namespace Driveline.Advice;

/// <summary>A line of the remedies catalogue.</summary>
internal sealed class RemedyEntry
{
    public RemedyEntry(string code, int order, double? minutes, RemedySpending spending, MarginEffect onWork, MarginEffect onGuard,
        Caution caution, params Cause[] causes)
    {
        Code = code;
        Order = order;
        Minutes = minutes;
        Spending = spending;
        OnWork = onWork;
        OnGuard = onGuard;
        Caution = caution;
        Causes = causes;
    }

    public string Code { get; }

    public int Order { get; }

    public double? Minutes { get; }

    public RemedySpending Spending { get; }

    public MarginEffect OnWork { get; }

    public MarginEffect OnGuard { get; }

    public Caution Caution { get; }

    public Cause[] Causes { get; }

    /// <summary>True for something to do otherwise from now on, at no price in money or protection.</summary>
    public bool IsFreeHabit => Spending == RemedySpending.Nothing && OnGuard == MarginEffect.Unchanged;
}
