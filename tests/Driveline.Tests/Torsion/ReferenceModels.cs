using Driveline.Torsion;
using UnitsNet;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <summary>The models of shared/reference/torsion/transients.csv, as tests/torsion-reference describes them.</summary>
internal static class ReferenceModels
{
    private const double W = 56.5;

    public static TransientResult Run(string name)
    {
        (TorsionStart start, double seconds) = Of(name);
        return start.Run(seconds);
    }

    public static (TorsionStart Start, double Seconds) Of(string name) => name switch
    {
        "c01" => (C01(), 0.25),
        "c02" => (C02(), 0.2),
        "c03" => (C03(), 0.2),
        "c04" => (C04(), 0.2),
        "c05" => (Clutch(0), 0.3),
        "c06" => (Clutch(3), 0.3),
        "c07" => (C07(), 0.5),
        "c08" => (C08(), 0.6),
        "c09" => (C09(), 0.4),
        "c10" => (C10(), 0.2),
        "c11" => (C11(), 0.15),
        "c12" => (C12(), 0.5),
        "c13" => (C13(), 0.036),
        "c14" => (C14(), 0.2),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such case."),
    };

    private static TorsionModelBuilder Chain(params double[] inertias)
    {
        var builder = new TorsionModelBuilder();
        for (int i = 0; i < inertias.Length; i++)
        {
            builder.Rotor(FormattableString.Invariant($"r{i + 1}"), inertias[i]);
        }

        return builder;
    }

    private static TorsionStart C01() => Chain(0.9, 0.05, 0.12, 3.1)
        .AddShaft("s1", "r1", "r2", Shaft(18000)).AddShaft("s2", "r2", "r3", Shaft(6500)).AddShaft("s3", "r3", "r4", Shaft(24000))
        .AddTorque("push", "r1", Nm(350)).AddObstacle("jam", "r4", Obstacle.Jam(S(0)))
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart C02() => Chain(0.9, 0.08, 0.4, 1.2)
        .AddShaft("s1", "r1", "r2", Shaft(18000, 2.0).WithRatio(1.47))
        .AddShaft("s2", "r2", "r3", Shaft(6500, 0.7)).AddShaft("s3", "r3", "r4", Shaft(3000, 0.5))
        .AddDrive("engine", "r1", TorqueSpeedLine.Of(Nm(400), RadPerS(56), 12))
        .AddViscousLoad("air", "r4", 1.1)
        .AddObstacle("o", "r4", Obstacle.SpringDamper(S(0.05), NmPerRad(9000), 4))
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart C03() => Chain(1.1, 0.06, 0.1, 4.0)
        .AddShaft("s1", "r1", "r2", Shaft(20000, 1.5)).AddShaft("s2", "r2", "r3", Shaft(8000, 0.4), BreakingCoupling.At(Nm(1500)))
        .AddShaft("s3", "r3", "r4", Shaft(15000, 0.9))
        .AddDrive("engine", "r1", TorqueSpeedLine.Of(Nm(300), RadPerS(W), 20))
        .AddObstacle("jam", "r4", Obstacle.Jam(S(0.02)))
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart C04() => Chain(1.1, 0.06, 0.1, 4.0)
        .AddShaft("s1", "r1", "r2", Shaft(20000, 1.5))
        .AddShaft("s2", "r2", "r3", Shaft(8000), BreakingCoupling.At(Nm(1500)).WithResidual(Nm(200)))
        .AddShaft("s3", "r3", "r4", Shaft(15000, 0.9))
        .AddTorque("push", "r1", Nm(300)).AddObstacle("jam", "r4", Obstacle.Jam(S(0)))
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart Clutch(double damping) => Chain(0.5, 0.3, 2.0)
        .AddShaft("s1", "r1", "r2", Shaft(2000, damping), FrictionCoupling.Of(Nm(800), Nm(650)))
        .AddShaft("s2", "r2", "r3", Shaft(9000, 1.0))
        .AddTorque("push", "r1", Nm(300)).AddObstacle("jam", "r3", Obstacle.Jam(S(0)))
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart C07() => Chain(1.4, 0.15, 2.2)
        .AddCoupling("clutch", "r1", "r2", FrictionCoupling.Of(Nm(900), Nm(700)).Engaging(S(0.01), S(0.08)))
        .AddShaft("s", "r2", "r3", Shaft(12000, 1.2))
        .AddDrive("engine", "r1", TorqueSpeedLine.Of(Nm(280), RadPerS(56), 6))
        .AddViscousLoad("air", "r3", 0.8)
        .Build().AtRest().WithSpeed("r1", RadPerS(W));

    private static TorsionStart C08() => new TorsionModelBuilder().Held("drive", 1).Rotor("r1", 0.5)
        .AddShaft("s", "drive", "r1", Shaft(2000, 2)).AddFrictionLoad("f", "r1", Nm(300), Nm(240))
        .Build().AtRest();

    private static TorsionStart C09() => Chain(1.0, 2.5)
        .AddShaft("s", "r1", "r2", Shaft(10000, 2), OneWayCoupling.Forward)
        .AddTorque("a", "r1", Nm(84.75)).AddTorque("b", "r1", Nm(-484.75), S(0.05), S(0)).AddTorque("c", "r1", Nm(1900), S(0.15), S(0))
        .AddViscousLoad("air", "r2", 1.5)
        .Build().TurningAt(RadPerS(W)).WithTorque("s", Nm(84.75));

    private static TorsionStart C10() => Chain(0.3, 0.2, 0.6)
        .AddShaft("s1", "r1", "r2", Shaft(5000).WithBacklash(Angle.FromRadians(0.05))).AddShaft("s2", "r2", "r3", Shaft(8000))
        .AddTorque("brake", "r1", Nm(-50))
        .Build().TurningAt(RadPerS(20)).WithSpeed("r1", RadPerS(30));

    private static TorsionStart C11() => Chain(0.8, 0.5)
        .AddShaft("s", "r1", "r2", Shaft(3000, 0.8)).AddTorque("push", "r1", Nm(250))
        .AddObstacle("o", "r2", Obstacle.Yielding(S(0.01), NmPerRad(20000), Nm(2500)).AfterSwingBack(Angle.FromRadians(0.3), Nm(200)))
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart C12() => Chain(0.9, 0.7)
        .AddShaft("s", "r1", "r2", Shaft(6000, 1).WithJoint(Angle.FromDegrees(25), Angle.FromRadians(0.3)))
        .AddDrive("engine", "r1", TorqueSpeedLine.Of(Nm(300), RadPerS(W), 8)).AddViscousLoad("air", "r2", 4)
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart C13() => Chain(1.0, 0.6)
        .AddShaft("s", "r1", "r2", Shaft(9000, 1.5))
        .AddDrive("engine", "r1", TorqueSpeedLine.Of(Nm(200), RadPerS(56), 50).Within(Nm(0), Nm(600))).AddViscousLoad("air", "r2", 2)
        .AddObstacle("o", "r2", Obstacle.SpringDamper(S(0.02), NmPerRad(30000), 5))
        .Build().TurningAt(RadPerS(W));

    private static TorsionStart C14() => new TorsionModelBuilder().Rotor("r0", 0.3).Rotor("r1", 0.2).Rotor("r2", 0.5).Rotor("r3", 0.1)
        .AddShaft("s1", "r0", "r1", Shaft(4000, 0.5)).AddShaft("s2", "r0", "r2", Shaft(7000).WithRatio(2))
            .AddShaft("s3", "r0", "r3", Shaft(2500, 0.2))
        .AddTorque("push", "r0", Nm(100), S(0.01), S(0.005))
        .Build().AtRest();
}
