using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>Whether the machine may be used as it is.</summary>
internal static class StandingRows
{
    public static readonly ShapeOf<Standing> Shape = new ShapeOf<Standing>(
            "standing", "Whether the machine may be used as it is, and what lifts what forbids it.")
        .Choice("state", s => s.State, "The state.")
        .MaybeWords("reason", (s, texts, units) => First(s) is { } first ? texts.Of(first.Why, units) : null, "The first reason in words.")
        .MaybeWords("liftedBy", (s, texts, _) => First(s) is { } first ? texts.Of(first.LiftCode) : null, "What lifts it, in words.")
        .List("reasons", s => s.Reasons, new ShapeOf<StandingReason>("standingReason", "Why the machine stands so.")
            .Text("code", r => r.Why.Code, "Stable code.")
            .Choice("severity", r => r.Why.Severity, "How much it matters, worst first.")
            .Words("text", (r, texts, units) => texts.Of(r.Why, units), "It in words.")
            .Texts("because", r => r.Why.AllBecause, "Paths of the facts of the case that it rests on.")
            .List("parameters", r => r.Why.AllParameters, ParameterRows.Shape, "Its values.")
            .Object("lift", r => r.LiftCode, CodeRows.Shape, "What lifts it."), "Why, worst first.");

    private static StandingReason? First(Standing standing) => standing.Reasons.Count > 0 ? standing.Reasons[0] : null;
}
