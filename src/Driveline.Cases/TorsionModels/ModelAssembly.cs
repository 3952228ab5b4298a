using Driveline.Cases.Members;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Cases.TorsionModels;

/// <summary>Puts the read parts together.</summary>
internal static class ModelAssembly
{
    public static TorsionModelFile Of(ModelParts parts)
    {
        var builder = new TorsionModelBuilder();
        foreach (ModelPart rotor in parts.Rotors)
        {
            double? held = rotor.Draft.Si(ModelRotorMembers.HeldAt);
            builder = held is { } speed
                ? builder.AddHeldRotor(rotor.Name!, RotationalSpeed.FromRadiansPerSecond(speed))
                : builder.AddRotor(
                    rotor.Name!, MassMomentOfInertia.FromKilogramSquareMeters(rotor.Draft.Si(ModelRotorMembers.Inertia)!.Value));
        }

        foreach (ModelPart part in parts.Shafts)
        {
            string from = part.Draft.Get(ModelShaftMembers.From)!;
            string to = part.Draft.Get(ModelShaftMembers.To)!;
            Shaft shaft = ShaftOf(part.Draft);
            builder = InLine(part.Draft) is { } coupling ? builder.AddShaft(part.Name!, from, to, shaft, coupling)
                : builder.AddShaft(part.Name!, from, to, shaft);
        }

        foreach (ModelPart part in parts.Couplings)
        {
            builder = builder.AddCoupling(
                part.Name!,
                part.Draft.Get(ModelCouplingMembers.From)!,
                part.Draft.Get(ModelCouplingMembers.To)!,
                part.Draft.Si(ModelCouplingMembers.BreaksAt) is { } breaks
                    ? Breaking(breaks, part.Draft.Si(ModelCouplingMembers.Residual))
                    : Friction(
                        part.Draft.Si(ModelCouplingMembers.SlipsAt)!.Value,
                        part.Draft.Si(ModelCouplingMembers.SlidesAt),
                        part.Draft.Si(ModelCouplingMembers.EngagesAt),
                        part.Draft.Si(ModelCouplingMembers.EngagesOver)));
        }

        Loads(parts, builder);
        foreach (ModelPart part in parts.Obstacles)
        {
            builder = builder.AddObstacle(part.Name!, part.Draft.Get(ModelObstacleMembers.Rotor)!, ObstacleOf(part.Draft));
        }

        return new TorsionModelFile(
            parts.Model.Get(ModelMembers.Title),
            StartOf(parts, builder.Build()),
            Seconds(parts.Model.Si(ModelMembers.Duration)));
    }

    private static Shaft ShaftOf(CaseObject draft)
    {
        Shaft shaft = Shaft.OfStiffness(Stiffness(draft.Si(ModelShaftMembers.Stiffness)!.Value))
            .WithDamping(draft.Si(ModelShaftMembers.Damping) ?? 0)
            .WithRatio(draft.Si(ModelShaftMembers.Ratio) ?? 1)
            .WithBacklash(Angle.FromRadians(draft.Si(ModelShaftMembers.Backlash) ?? 0));
        return draft.Si(ModelShaftMembers.JointAngle) is { } joint
            ? shaft.WithJoint(Angle.FromRadians(joint), Angle.FromRadians(draft.Si(ModelShaftMembers.JointPhase) ?? 0))
            : shaft;
    }

    private static Coupling? InLine(CaseObject draft) =>
        draft.Si(ModelShaftMembers.BreaksAt) is { } breaks ? Breaking(breaks, draft.Si(ModelShaftMembers.Residual))
        : draft.Si(ModelShaftMembers.SlipsAt) is { } slips ? Friction(
            slips,
            draft.Si(ModelShaftMembers.SlidesAt),
            draft.Si(ModelShaftMembers.EngagesAt),
            draft.Si(ModelShaftMembers.EngagesOver))
        : draft.Get(ModelShaftMembers.OneWay) == true ? OneWayCoupling.Forward : null;

    private static BreakingCoupling Breaking(double at, double? residual) => BreakingCoupling.At(Nm(at)).WithResidual(Nm(residual ?? 0));

    private static FrictionCoupling Friction(double slips, double? slides, double? engages, double? over)
    {
        FrictionCoupling coupling = FrictionCoupling.Of(Nm(slips), Nm(slides ?? slips));
        return engages is { } at ? coupling.Engaging(Seconds(at), Seconds(over)) : coupling;
    }

    private static void Loads(ModelParts parts, TorsionModelBuilder builder)
    {
        foreach (ModelPart part in parts.Loads)
        {
            CaseObject draft = part.Draft;
            string rotor = draft.Get(ModelLoadMembers.Rotor)!;
            if (draft.Si(ModelLoadMembers.Viscous) is { } viscous)
            {
                builder.AddViscousLoad(part.Name!, rotor, viscous);
            }
            else if (draft.Si(ModelLoadMembers.Torque) is { } torque)
            {
                builder.AddTorque(
                    part.Name!, rotor, Nm(torque), Seconds(draft.Si(ModelLoadMembers.From)), Seconds(draft.Si(ModelLoadMembers.Over)));
            }
            else
            {
                double sticks = draft.Si(ModelLoadMembers.SticksUpTo)!.Value;
                builder.AddFrictionLoad(part.Name!, rotor, Nm(sticks), Nm(draft.Si(ModelLoadMembers.SlidesAt) ?? sticks));
            }
        }

        if (parts.Drive is { } drive)
        {
            var line = TorqueSpeedLine.Of(
                Nm(drive.Si(ModelDriveMembers.Torque)!.Value),
                RotationalSpeed.FromRadiansPerSecond(drive.Si(ModelDriveMembers.Speed) ?? 0),
                drive.Si(ModelDriveMembers.Slope) ?? 0);
            builder.AddDrive(
                drive.Get(ModelDriveMembers.Name) ?? ModelParts.DriveName,
                drive.Get(ModelDriveMembers.Rotor)!,
                drive.Si(ModelDriveMembers.Least) is { } least ? line.Within(Nm(least), Nm(drive.Si(ModelDriveMembers.Most)!.Value))
                    : line);
        }
    }

    private static Obstacle ObstacleOf(CaseObject draft)
    {
        Duration at = Seconds(draft.Si(ModelObstacleMembers.At));
        double stiffness = draft.Si(ModelObstacleMembers.Stiffness) ?? 0;
        double damping = draft.Si(ModelObstacleMembers.Damping) ?? 0;
        Obstacle obstacle = draft.Get(ModelObstacleMembers.Kind) switch
        {
            ObstacleKind.Ties => Obstacle.Tie(at, Stiffness(stiffness), damping),
            ObstacleKind.Stops => Obstacle.RigidStop(at),
            ObstacleKind.Jams => Obstacle.Jam(at),
            _ when draft.Si(ModelObstacleMembers.YieldsAt) is { } yields && draft.Si(ModelObstacleMembers.Through) is { } through =>
                Obstacle.Yielding(at, Stiffness(stiffness), Nm(yields), Angle.FromRadians(through)),
            _ when draft.Si(ModelObstacleMembers.YieldsAt) is { } yields => Obstacle.Yielding(at, Stiffness(stiffness), Nm(yields)),
            _ => Obstacle.SpringDamper(at, Stiffness(stiffness), damping),
        };
        return draft.Si(ModelObstacleMembers.SwingBack) is { } travel
            ? obstacle.AfterSwingBack(Angle.FromRadians(travel), Nm(draft.Si(ModelObstacleMembers.SwingTorque) ?? 0))
            : obstacle;
    }

    private static TorsionStart StartOf(ModelParts parts, TorsionModel model)
    {
        TorsionStart start = model.TurningAt(RotationalSpeed.FromRadiansPerSecond(parts.Start?.Si(ModelStartMembers.Speed) ?? 0));
        foreach (NamedQuantity speed in parts.Start?.Get(ModelStartMembers.Speeds) ?? [])
        {
            start = start.WithSpeed(speed.Name, RotationalSpeed.FromRadiansPerSecond(speed.Si));
        }

        foreach (NamedQuantity torque in parts.Start?.Get(ModelStartMembers.Torques) ?? [])
        {
            start = start.WithTorque(torque.Name, Nm(torque.Si));
        }

        return start;
    }

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);

    private static Duration Seconds(double? value) => Duration.FromSeconds(value ?? 0);

    private static RotationalStiffness Stiffness(double value) => RotationalStiffness.FromNewtonMetersPerRadian(value);
}
