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
            double? held = rotor.Draft.Value<double>(ModelRotorMembers.HeldAt);
            builder = held is { } speed
                ? builder.AddHeldRotor(rotor.Name!, RotationalSpeed.FromRadiansPerSecond(speed))
                : builder.AddRotor(rotor.Name!, MassMomentOfInertia.FromKilogramSquareMeters(rotor.Draft.Value<double>(ModelRotorMembers.Inertia)!.Value));
        }

        foreach (ModelPart part in parts.Shafts)
        {
            string from = part.Draft.Reference<string>(ModelShaftMembers.From)!;
            string to = part.Draft.Reference<string>(ModelShaftMembers.To)!;
            Shaft shaft = ShaftOf(part.Draft);
            builder = InLine(part.Draft) is { } coupling ? builder.AddShaft(part.Name!, from, to, shaft, coupling) : builder.AddShaft(part.Name!, from, to, shaft);
        }

        foreach (ModelPart part in parts.Couplings)
        {
            builder = builder.AddCoupling(
                part.Name!,
                part.Draft.Reference<string>(ModelCouplingMembers.From)!,
                part.Draft.Reference<string>(ModelCouplingMembers.To)!,
                part.Draft.Value<double>(ModelCouplingMembers.BreaksAt) is { } breaks
                    ? Breaking(breaks, part.Draft.Value<double>(ModelCouplingMembers.Residual))
                    : Friction(
                        part.Draft.Value<double>(ModelCouplingMembers.SlipsAt)!.Value,
                        part.Draft.Value<double>(ModelCouplingMembers.SlidesAt),
                        part.Draft.Value<double>(ModelCouplingMembers.EngagesAt),
                        part.Draft.Value<double>(ModelCouplingMembers.EngagesOver)));
        }

        Loads(parts, builder);
        foreach (ModelPart part in parts.Obstacles)
        {
            builder = builder.AddObstacle(part.Name!, part.Draft.Reference<string>(ModelObstacleMembers.Rotor)!, ObstacleOf(part.Draft));
        }

        return new TorsionModelFile(
            parts.Model.Reference<string>(ModelMembers.Title),
            StartOf(parts, builder.Build()),
            Seconds(parts.Model.Value<double>(ModelMembers.Duration)));
    }

    private static Shaft ShaftOf(CaseDraft draft)
    {
        Shaft shaft = Shaft.OfStiffness(Stiffness(draft.Value<double>(ModelShaftMembers.Stiffness)!.Value))
            .WithDamping(draft.Value<double>(ModelShaftMembers.Damping) ?? 0)
            .WithRatio(draft.Value<double>(ModelShaftMembers.Ratio) ?? 1)
            .WithBacklash(Angle.FromRadians(draft.Value<double>(ModelShaftMembers.Backlash) ?? 0));
        return draft.Value<double>(ModelShaftMembers.JointAngle) is { } joint
            ? shaft.WithJoint(Angle.FromRadians(joint), Angle.FromRadians(draft.Value<double>(ModelShaftMembers.JointPhase) ?? 0))
            : shaft;
    }

    private static Coupling? InLine(CaseDraft draft) =>
        draft.Value<double>(ModelShaftMembers.BreaksAt) is { } breaks ? Breaking(breaks, draft.Value<double>(ModelShaftMembers.Residual))
        : draft.Value<double>(ModelShaftMembers.SlipsAt) is { } slips ? Friction(
            slips,
            draft.Value<double>(ModelShaftMembers.SlidesAt),
            draft.Value<double>(ModelShaftMembers.EngagesAt),
            draft.Value<double>(ModelShaftMembers.EngagesOver))
        : draft.Value<bool>(ModelShaftMembers.OneWay) == true ? OneWayCoupling.Forward : null;

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
            CaseDraft draft = part.Draft;
            string rotor = draft.Reference<string>(ModelLoadMembers.Rotor)!;
            if (draft.Value<double>(ModelLoadMembers.Viscous) is { } viscous)
            {
                builder.AddViscousLoad(part.Name!, rotor, viscous);
            }
            else if (draft.Value<double>(ModelLoadMembers.Torque) is { } torque)
            {
                builder.AddTorque(part.Name!, rotor, Nm(torque), Seconds(draft.Value<double>(ModelLoadMembers.From)), Seconds(draft.Value<double>(ModelLoadMembers.Over)));
            }
            else
            {
                double sticks = draft.Value<double>(ModelLoadMembers.SticksUpTo)!.Value;
                builder.AddFrictionLoad(part.Name!, rotor, Nm(sticks), Nm(draft.Value<double>(ModelLoadMembers.SlidesAt) ?? sticks));
            }
        }

        if (parts.Drive is { } drive)
        {
            var line = TorqueSpeedLine.Of(
                Nm(drive.Value<double>(ModelDriveMembers.Torque)!.Value),
                RotationalSpeed.FromRadiansPerSecond(drive.Value<double>(ModelDriveMembers.Speed) ?? 0),
                drive.Value<double>(ModelDriveMembers.Slope) ?? 0);
            builder.AddDrive(
                drive.Reference<string>(ModelDriveMembers.Name) ?? ModelParts.DriveName,
                drive.Reference<string>(ModelDriveMembers.Rotor)!,
                drive.Value<double>(ModelDriveMembers.Least) is { } least ? line.Within(Nm(least), Nm(drive.Value<double>(ModelDriveMembers.Most)!.Value)) : line);
        }
    }

    private static Obstacle ObstacleOf(CaseDraft draft)
    {
        Duration at = Seconds(draft.Value<double>(ModelObstacleMembers.At));
        double stiffness = draft.Value<double>(ModelObstacleMembers.Stiffness) ?? 0;
        double damping = draft.Value<double>(ModelObstacleMembers.Damping) ?? 0;
        Obstacle obstacle = draft.Value<ObstacleKind>(ModelObstacleMembers.Kind) switch
        {
            ObstacleKind.Ties => Obstacle.Tie(at, Stiffness(stiffness), damping),
            ObstacleKind.Stops => Obstacle.RigidStop(at),
            ObstacleKind.Jams => Obstacle.Jam(at),
            _ when draft.Value<double>(ModelObstacleMembers.YieldsAt) is { } yields => Obstacle.Yielding(at, Stiffness(stiffness), Nm(yields)),
            _ => Obstacle.SpringDamper(at, Stiffness(stiffness), damping),
        };
        return draft.Value<double>(ModelObstacleMembers.SwingBack) is { } travel
            ? obstacle.AfterSwingBack(Angle.FromRadians(travel), Nm(draft.Value<double>(ModelObstacleMembers.SwingTorque) ?? 0))
            : obstacle;
    }

    private static TorsionStart StartOf(ModelParts parts, TorsionModel model)
    {
        TorsionStart start = model.TurningAt(RotationalSpeed.FromRadiansPerSecond(parts.Start?.Value<double>(ModelStartMembers.Speed) ?? 0));
        foreach (NamedQuantity speed in parts.Start?.Reference<List<NamedQuantity>>(ModelStartMembers.Speeds) ?? [])
        {
            start = start.WithSpeed(speed.Name, RotationalSpeed.FromRadiansPerSecond(speed.Si));
        }

        foreach (NamedQuantity torque in parts.Start?.Reference<List<NamedQuantity>>(ModelStartMembers.Torques) ?? [])
        {
            start = start.WithTorque(torque.Name, Nm(torque.Si));
        }

        return start;
    }

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);

    private static Duration Seconds(double? value) => Duration.FromSeconds(value ?? 0);

    private static RotationalStiffness Stiffness(double value) => RotationalStiffness.FromNewtonMetersPerRadian(value);
}
