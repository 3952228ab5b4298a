using Driveline.Cases.Questions;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>A simulated engagement or strike.</summary>
internal static class SimulationRows
{
    private static readonly ShapeOf<SimulatedSlip> Slip = new ShapeOf<SimulatedSlip>("slip", "What a clutch slipped.")
        .Text("name", s => s.Clutch, "Name of the clutch.")
        .Number("energyJ", s => s.Heat.Joules, "Its heat, J.")
        .Number("angleRad", s => s.Slip.Radians, "How far it slipped, rad.");

    public static readonly ShapeOf<CaseSimulation> Shape = new ShapeOf<CaseSimulation>(
            "simulate", "An engagement or a strike in time, with and without the protection.")
        .Choice("event", r => r.Event, "What is simulated.")
        .MaybeFlag("tripped", r => r.Check?.Tripped, "True when a device as fitted acts.")
        .MaybeText("trippedDevice", r => r.Check?.With?.TrippedDevice?.Name, "Name of that device; null when none acts.")
        .Number("tripTimeS", r => r.Check?.With?.TripTime?.Seconds, "When it acts, s.")
        .Number("throughTimeS", r => r.Check?.Without?.ThroughTime?.Seconds, "When the obstacle was passed without protection, s.")
        .List("peakTorqueNm", LoadsOf, SimulatedLoadRows.Shape, "What each part and device carried, in order from the tractor.")
        .Number("slipEnergyJ", r => r.Check?.With?.SlipEnergy.Joules, "Heat of all slips, J.")
        .Number("slipAngleRad", r => r.Check?.With?.SlipAngle.Radians, "How far all slipped, rad.")
        .List("slips", r => r.Check?.With?.Slips ?? [], Slip, "What each clutch slipped.")
        .Number("energyErrorRelative", r => Worst(r.Check?.With?.EnergyError, r.Check?.Without?.EnergyError),
            "Error of the energy balance over the energy.")
        .Number("runLengthS", r => (r.Check?.With ?? r.Check?.Without)?.Length.Seconds, "Length of the run, s.")
        .Flag("restsOnFacts", r => r.Simulation?.RestsOnFacts ?? false, "True when nothing is assumed.")
        .Maybe("span", r => r.Span, SimulationSpanRows.Shape,
            "What usual values in place of missing facts give; null when no fact is missing, or one has no usual value.")
        .List("findings", r => r.Findings, FindingRows.Shape, "Everything to notice, worst first.")
        .List("cautions", r => r.Cautions, CautionRows.Shape, "Cautions; show them all.");

    private static IReadOnlyList<SimulatedLoad> LoadsOf(CaseSimulation run) => run.Check?.Loads
        ?? [.. (run.Chain?.Parts ?? []).Select(p => new SimulatedLoad(p, null, null, Answer.NotKnown, Answer.NotKnown))];

    private static double? Worst(double? first, double? second) => first is { } a && second is { } b ? Math.Max(a, b) : first ?? second;
}
