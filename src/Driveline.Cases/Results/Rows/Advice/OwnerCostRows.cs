using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>What the owner's options cost.</summary>
internal static class OwnerCostRows
{
    private static readonly ShapeOf<CostEstimate> Estimate = new ShapeOf<CostEstimate>("estimate", "An amount in the case's currency.")
        .Number("low", e => e.Low, "Lowest.")
        .Number("expected", e => e.Expected, "Expected.")
        .Number("high", e => e.High, "Highest.")
        .Object("basis", e => e.Basis, BasisRows.Shape, "Where it comes from.");

    public static readonly ShapeOf<IReadOnlyList<OwnershipCost>> Shape = new ShapeOf<IReadOnlyList<OwnershipCost>>(
            "cost", "What the owner's options cost, cheapest expected first.")
        .Text("currency", c => c[0].Terms.Currency, "The currency.")
        .Number("years", c => c[0].Terms.Years, "Years counted.")
        .Number("discountRate", c => c[0].Terms.DiscountRate, "Rate at which later years count less.")
        .List("options", c => c, (all, cost) => new OwnerOption(all, cost), Option(), "The options.");

    private static ShapeOf<OwnerOption> Option() => new ShapeOf<OwnerOption>("option", "One way to go on.")
        .Text("name", o => o.Cost.Option.Name, "Name.")
        .Choice("kind", o => o.Cost.Option.Kind, "What it is.")
        .Object("total", o => o.Cost.Total, Estimate, "Its cost over all years.")
        .Number("stuckInLastYear", o => o.Cost.StuckInLastYear?.Value, "Chance that it is stuck in the last year.")
        .Flag("isLikelyStuck", o => o.Cost.IsLikelyStuck, "True when it protects nothing in the end; do not compare it.")
        .List("breakEven", o => o.Others, (o, other) => new OwnerOption(o.All, o.Cost, other), new ShapeOf<OwnerOption>(
                "breakEven", "The breaks a year at which another option becomes cheaper.")
            .Text("against", o => o.Other!.Option.Name, "Name of the other.")
            .Number("breaksPerYear", o => o.Cost.BreakEvenBreaksPerYear(o.Other!), "Expected.")
            .Number("fewestBreaksPerYear", o => o.Cost.FewestBreakEvenBreaksPerYear(o.Other!), "Fewest."), "Against each other option.");
}
