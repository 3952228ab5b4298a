using Driveline.Cases.Members;
using Driveline.Chains;
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
    public static SimulationDrive? Of(CaseFile file, DrivelineChain chain, bool isStrike)
    {
        CaseObject? tractor = file.Facts.Get(CaseFileMembers.Tractor);
        CaseObject? engagement = file.Facts.Get(CaseFileMembers.Work)?.Get(WorkMembers.Engagement);
        if (tractor?.Get(TractorMembers.PtoSpeed) is not { } work || SpeedOf(tractor, work, isStrike ? null : engagement) is not { } speed)
        {
            return null;
        }

        SimulationDrive drive = SimulationDrive.At(speed).WithEngagement(CaseEngagement.Of(file));
        if (tractor.Get(TractorMembers.FlywheelInertia) is { } flywheel && tractor.Get(TractorMembers.EngineSpeed) is { } engine)
        {
            double ratio = Si.RadiansPerSecond(engine) / Si.RadiansPerSecond(work);
            double atPto = Si.KilogramSquareMeters(flywheel) * ratio * ratio;
            drive = drive.WithEngineInertia(
                InertiaBand.Exactly(MassMomentOfInertia.FromKilogramSquareMeters(atPto), Basis.Given("the case")));
        }

        drive = Line(tractor, work, isStrike ? null : speed) is { } line ? drive.WithEngineLine(line) : drive;
        drive = engagement?.Get(EngagementMembers.RampTime) is { } rise ? drive.WithRise(rise) : drive;
        TorqueBand? torque = isStrike ? CaseWork.Load(file, chain, work) : engagement?.Get(EngagementMembers.Load);
        return torque is { } load ? drive.WithLoad(load) : drive;
    }

    // The PTO follows the engine: n_pto = n_engine · (n_pto at work / n_engine at work).
    private static RotationalSpeed? SpeedOf(CaseObject tractor, RotationalSpeed work, CaseObject? engagement)
    {
        if (engagement?.Get(EngagementMembers.EngineSpeed) is not { } engaging)
        {
            return work;
        }

        return tractor.Get(TractorMembers.EngineSpeed) is { } engine
            ? RotationalSpeed.FromRadiansPerSecond(Si.RadiansPerSecond(engaging) * Si.RadiansPerSecond(work) / Si.RadiansPerSecond(engine))
            : null;
    }

    // At work T0 + K (ω0 − ω). The throttle of an engagement holds its speed without load: K (ω_engagement − ω), and without a fall there
    // is nothing to shift. Never above what is stated, or what power and reserve give.
    private static TorqueSpeedLine? Line(CaseObject tractor, RotationalSpeed work, RotationalSpeed? engaging)
    {
        if (tractor.Get(TractorMembers.EngineTorqueLine) is not { } facts || facts.Get(EngineTorqueLineMembers.Torque) is not { } torque)
        {
            return null;
        }

        double fall = facts.Get(EngineTorqueLineMembers.Fall) ?? 0;
        if (engaging is not null && fall == 0)
        {
            return null;
        }

        TorqueSpeedLine line = engaging is { } idle ? TorqueSpeedLine.Of(Torque.Zero, idle, fall) : TorqueSpeedLine.Of(torque, work, fall);
        double? most = facts.Si(EngineTorqueLineMembers.Highest)
            ?? (tractor.Get(TractorMembers.PtoPower) is { } power
                ? Si.NewtonMeters(PtoTorque.FromPower(power, work)) * (1 + tractor.Get(TractorMembers.TorqueReserve)) : null);
        return most is { } nm
            ? line.Within(Torque.FromNewtonMeters(Math.Min(0, -nm)), Torque.FromNewtonMeters(Math.Max(nm, Si.NewtonMeters(torque)))) : line;
    }
}
