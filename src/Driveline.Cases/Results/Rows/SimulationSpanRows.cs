using Driveline.Chains;
using Driveline.Loads;

namespace Driveline.Cases.Results;

/// <summary>What usual values in place of missing facts give.</summary>
internal static class SimulationSpanRows
{
    private static readonly ShapeOf<SupposedFact> Supposed = new ShapeOf<SupposedFact>(
            "supposed", "A usual value in place of a fact that nobody stated.")
        .Choice("quantity", f => f.Quantity, "What it stands for.")
        .MaybeText("name", f => f.Name, "Name of its part; null for what belongs to the tractor or the work.")
        .Flag("isPartSupposed", f => f.IsPartSupposed, "True when nobody named the part itself.")
        .Number("low", f => f.Low, "Lowest usual value.")
        .Number("expected", f => f.Expected, "Expected value.")
        .Number("high", f => f.High, "Highest usual value.")
        .Text("unit", f => f.Unit, "Unit of the three; empty for a ratio.")
        .Object("basis", f => f.Basis, BasisRows.Shape, "Where they come from.");

    private static readonly ShapeOf<SpannedLoad> Load = new ShapeOf<SpannedLoad>(
            "spannedTorque", "The highest torques that a part or device carried in all runs, at its own place.")
        .Text("name", l => l.Element.Name, "Name.")
        .Flag("isDevice", l => l.Element is ProtectiveDevice, "True for a protective device.")
        .Band("withProtectionNm", l => l.WithProtection, "With the devices as fitted.")
        .Band("withoutProtectionNm", l => l.WithoutProtection, "When no device can act.")
        .Band("damagedAtNm", l => l.DamagedAt, "Torque that damages it.");

    public static readonly ShapeOf<SimulationSpan> Shape = new ShapeOf<SimulationSpan>(
            "span", "Runs with usual values in place of facts, at their corners. It decides nothing.")
        .Whole("runs", s => s.Runs, "How many runs.")
        .Number("runsThatTrip", s => s.RunsThatTrip, "In how many of them a device as fitted acts; null when not known.")
        .List("supposed", s => s.Supposed, Supposed, "Every usual value that stands in place of a fact.")
        .List("peakTorqueNm", s => s.Loads, Load, "What each part and device carried, in order from the tractor.");
}
