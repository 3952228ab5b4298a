using Driveline.Torsion;

namespace Driveline.Cases.Results;

/// <summary>A run of a bare torsional model.</summary>
internal static class TransientRows
{
    private static readonly ShapeOf<TransientEvent> Event = new ShapeOf<TransientEvent>("transientEvent", "Something that happened.")
        .Choice("kind", e => e.Kind, "What happened.")
        .Text("element", e => e.Part, "The rotor or element it happened to.")
        .Number("timeS", e => e.Time.Seconds, "When, s.");

    private static readonly ShapeOf<InRun> Peak = new ShapeOf<InRun>("peak", "The highest torques of an element, at its own speed.")
        .Text("element", p => p.Name, "Name of the element.")
        .Number("torqueNm", p => InRun.Torque(p.Run.Peak(p.Name), p.Run.ReversePeak(p.Name)),
            "The larger of the forward and the reverse peak, reverse negative, N·m; of two that are equal the earlier.")
        .Number("timeS", p => InRun.Time(p.Run.Peak(p.Name), p.Run.ReversePeak(p.Name)), "When it was reached, s.")
        .Number("springTorqueNm", p => !p.Run.HasSpring(p.Name) ? null
            : InRun.Torque(p.Run.SpringPeak(p.Name), p.Run.ReverseSpringPeak(p.Name)),
            "The same in its spring alone, N·m; null when it has none.")
        .Number("springTimeS", p => !p.Run.HasSpring(p.Name) ? null
            : InRun.Time(p.Run.SpringPeak(p.Name), p.Run.ReverseSpringPeak(p.Name)), "When that was reached, s; null when it has none.")
        .Number("forwardTorqueNm", p => p.Run.Peak(p.Name).Own?.NewtonMeters ?? double.PositiveInfinity, "Highest forward torque, N·m.")
        .Number("forwardTimeS", p => p.Run.Peak(p.Name).Time.Seconds, "When it was reached, s.")
        .Number("reverseTorqueNm", p => p.Run.ReversePeak(p.Name).Own?.NewtonMeters ?? double.PositiveInfinity,
            "Highest reverse torque, N·m.")
        .Number("reverseTimeS", p => p.Run.ReversePeak(p.Name).Time.Seconds, "When it was reached, s.");

    private static readonly ShapeOf<InRun> Rotor = new ShapeOf<InRun>("rotorState", "A rotor at the end of the run.")
        .Text("name", r => r.Name, "Name.")
        .Number("speedRadS", r => r.Run.SpeedRadPerS(r.Name), "Speed, rad/s.")
        .Number("angleRad", r => r.Run.TurnedRad(r.Name), "How far it turned, rad.");

    private static readonly ShapeOf<InRun> Element = new ShapeOf<InRun>("elementState", "An element at the end of the run.")
        .Text("name", e => e.Name, "Name.")
        .Number("torqueNm", e => e.Run.TorqueNm(e.Name), "Torque, N·m.")
        .Number("springTorqueNm", e => e.Run.SpringTorqueNm(e.Name), "Torque in its spring alone, N·m.")
        .Number("slipRad", e => e.Run.SlipRad(e.Name), "How far it slipped, rad.");

    private static readonly ShapeOf<TransientResult> Final = new ShapeOf<TransientResult>("finalState", "The model at the end of the run.")
        .Number("timeS", r => r.Time.Seconds, "Length of the run, s.")
        .List("rotors", r => r.Model.Rotors, (r, name) => new InRun(r, name), Rotor, "Every rotor.")
        .List("shafts", r => r.Model.Elements, (r, name) => new InRun(r, name), Element, "Every element.");

    private static readonly ShapeOf<TransientResult> Energy = new ShapeOf<TransientResult>("energy", "Where the energy came from and went.")
        .Number("startJ", r => r.Energies.Start, "In the model at the start, J.")
        .Number("driveJ", r => r.Energies.Drive, "Put in by the drive, J.")
        .Number("torquesJ", r => r.Energies.Torques, "Put in by given torques, J.")
        .Number("heldRotorsJ", r => r.Energies.HeldRotors, "Put in by rotors whose speed is held, J.")
        .Number("dampingJ", r => r.Energies.Damping, "Taken by damping, J.")
        .Number("viscousJ", r => r.Energies.Viscous, "Taken by viscous drag, J.")
        .Number("slipJ", r => r.Energies.Slip, "Taken by slip, or set free by a break, J.")
        .Number("impactJ", r => r.Energies.Impact, "Taken by blows, J.")
        .Number("storedJ", r => r.Energies.Stored, "In the model at the end, J.")
        .Number("errorRelative", r => r.EnergyImbalance, "What is missing in the sum, over the energy that was moved.");

    public static readonly ShapeOf<TransientResult> Shape = new ShapeOf<TransientResult>(
            "transient", "A run of a bare torsional model; times count from its start, a torque is at the element's own speed.")
        .Flag("isComplete", r => r.IsComplete, "False when the run ended at a limit.")
        .List("events", r => [.. Enumerable.Range(0, r.EventCount).Select(r.Event)], Event, "What happened, in time.")
        .List("peaks", r => r.Model.Elements, (r, name) => new InRun(r, name), Peak, "The highest torques of every element.")
        .Object("finalState", r => r, Final, "The model at the end of the run.")
        .Object("energy", r => r, Energy, "The balance of energy.")
        .List("findings", r => r.Findings, FindingRows.Shape, "Everything to notice, worst first.");
}
