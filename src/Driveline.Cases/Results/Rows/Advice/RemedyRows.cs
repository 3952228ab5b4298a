using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>A remedy with its price in protection.</summary>
internal static class RemedyRows
{
    public static readonly ShapeOf<Remedy> Shape = new ShapeOf<Remedy>("remedy", "A remedy with its price in protection.")
        .Text("code", r => r.Code, "Stable code.")
        .Words("text", (r, texts, units) => texts.Of(r.Code, units), "It in words.")
        .Margin("workMargin", r => r.WorkMargin, "Work margin after it.")
        .Margin("guardMargin", r => r.GuardMargin, "Guard margin after it.")
        .Choice("onWorkMargin", r => r.OnWorkMargin, "What it does to the work margin.")
        .Choice("onGuardMargin", r => r.OnGuardMargin, "What it does to the guard margin.")
        .MaybeFlag("stillFails", r => r.StillFails,
            "True when a margin stays below 1 after it, or an answer stays No; null when not known.")
        .Number("mustHoldNm", r => r.MustHold?.NewtonMeters, "What a protection must hold at the PTO: the highest torque of normal work.")
        .Number("mustActBelowNm", r => r.MustActBelow?.NewtonMeters,
            "Below what it must act at the PTO: the least torque that damages the weakest part.")
        .Number("minutes", r => r.Minutes, "Minutes it takes.")
        .Number("costLow", r => r.Cost?.SiBand.Low, "Least cost, in the case's currency.")
        .Number("costHigh", r => r.Cost?.SiBand.High, "Most cost, in the case's currency.")
        .Object("caution", r => r.Caution, CautionRows.Shape, "The caution that belongs to it; show it.");
}
