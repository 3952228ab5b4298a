using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>What drives the chain of a case: engine, PTO clutch, and what the machine takes.</summary>
internal static class CaseDrive
{
    /// <summary>The drive; null when the PTO speed is not known.</summary>
    public static SimulationDrive? Of(CaseFile file, bool isStrike)
    {
        if (file.Tractor is not { PtoSpeed: { } work } tractor || SpeedOf(file, isStrike) is not { } speed)
        {
            return null;
        }

        SimulationDrive drive = SimulationDrive.At(speed).WithEngagement(CaseEngagement.Of(file));
        if (tractor is { FlywheelInertia: { } flywheel, EngineSpeed: { } engine })
        {
            double ratio = Si.RadiansPerSecond(engine) / Si.RadiansPerSecond(work);
            double atPto = Si.KilogramSquareMeters(flywheel) * ratio * ratio;
            drive = drive.WithEngineInertia(InertiaBand.Exactly(MassMomentOfInertia.FromKilogramSquareMeters(atPto), Basis.Given("the case")));
        }

        drive = Line(tractor, work) is { } line ? drive.WithEngineLine(line) : drive;
        drive = file.Work?.Engagement?.RampTime is { } rise ? drive.WithRise(rise) : drive;
        return LoadOf(file, isStrike, work) is { } load ? drive.WithLoad(load) : drive;
    }

    // The PTO follows the engine: n_pto = n_engine · (n_pto at work / n_engine at work).
    private static RotationalSpeed? SpeedOf(CaseFile file, bool isStrike)
    {
        RotationalSpeed? work = file.Tractor?.PtoSpeed;
        if (isStrike || file.Work?.Engagement?.EngineSpeed is not { } engaging)
        {
            return work;
        }

        return file.Tractor?.EngineSpeed is { } engine
            ? RotationalSpeed.FromRadiansPerSecond(Si.RadiansPerSecond(engaging) * Si.RadiansPerSecond(work!.Value) / Si.RadiansPerSecond(engine))
            : null;
    }

    // T0 + K (ω0 − ω) at the PTO speed of work; never above what is stated, or what power and reserve give.
    private static TorqueSpeedLine? Line(TractorFacts tractor, RotationalSpeed work)
    {
        if (tractor.EngineTorqueLine is not { Torque: { } torque } facts)
        {
            return null;
        }

        TorqueSpeedLine line = TorqueSpeedLine.Of(torque, work, facts.Fall ?? 0);
        double? most = facts.Highest is { } highest ? Si.NewtonMeters(highest)
            : tractor is { PtoPower: { } power, TorqueReserve: { } reserve } ? Si.NewtonMeters(PtoTorque.FromPower(power, work)) * (1 + reserve)
            : null;
        return most is { } nm ? line.Within(Torque.FromNewtonMeters(Math.Min(0, -nm)), Torque.FromNewtonMeters(Math.Max(nm, Si.NewtonMeters(torque)))) : line;
    }

    // A strike finds the mean torque of work, or its peaks when nothing else is known; a machine that is run up, only what is stated.
    private static TorqueBand? LoadOf(CaseFile file, bool isStrike, RotationalSpeed work) => !isStrike
        ? file.Work?.Engagement?.Load
        : file.Work?.SteadyMean ?? (file.Work?.MeanPower is { } power ? PtoTorque.FromPower(power, work) : file.Work?.SteadyPeak);
}
