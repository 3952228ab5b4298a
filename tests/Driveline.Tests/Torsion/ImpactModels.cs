using System.Globalization;
using Driveline.Torsion;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <summary>The models that the printed impacts and strikes are computed with.</summary>
internal static class ImpactModels
{
    private const double W = 18 * Math.PI;

    public static double Computed(string id, string what)
    {
        switch (id[..3])
        {
            case "T01":
                double omega = Modes.Of(
                    new TorsionModelBuilder().Rotor("a", 0.8).Rotor("b", 0.2).AddShaft("s", "a", "b", Shaft(2000)).Build())[1].RadPerS;
                return what == "w" ? omega : what == "f" ? omega / (2 * Math.PI) : 2 * Math.PI / omega;
            case "T02":
                TransientResult stop = Strike(0.5, 2000, W, 0, 0);
                return what == "t" ? stop.PeakS("shaft") : stop.PeakNm("shaft");
            case "T03":
                double zeta = double.Parse(id[4..], CultureInfo.InvariantCulture);
                return SpringPeakAfterStop(zeta) / (W * Math.Sqrt(1000));
            case "T04":
                return Strike(0.5, 2000, W, 300, what == "preloaded" ? 300 : 0).PeakNm("shaft");
            case "T05":
                return StepFactor(double.Parse(what, CultureInfo.InvariantCulture));
            case "T06":
                TransientResult free = new TorsionModelBuilder().Rotor("a", 0.8).Rotor("b", 0.2).AddShaft("s", "a", "b", Shaft(2000))
                    .AddTorque("push", "a", Nm(500)).Build().AtRest().Run(0.2);
                return what == "peak" ? free.PeakNm("s") : 0.5 * (free.PeakNm("s") - free.ReversePeak("s").Own!.Value.NewtonMeters);
            case "T07":
                return RampFactor(double.Parse(what, CultureInfo.InvariantCulture) * Math.PI);
            case "T08":
                return new TorsionModelBuilder().Rotor("a", 0.8).Rotor("b", 0.2).AddShaft("s", "a", "b", Shaft(2000)).Build()
                    .TurningAt(RadPerS(20)).WithSpeed("a", RadPerS(30)).Run(0.1).PeakNm("s");
            case "T09":
                TransientResult engaged = new TorsionModelBuilder().Rotor("a", 0.8).Rotor("b", 0.2)
                    .AddCoupling("clutch", "a", "b", FrictionCoupling.Of(Nm(300))).Build().AtRest().WithSpeed("a", RadPerS(W)).Run(0.1);
                return what == "t" ? engaged.Event(0).Time.Seconds : what == "E" ? engaged.SlipEnergy("clutch").Joules
                    : engaged.Speed("b").RadiansPerSecond;
            case "T10":
                return SlipClutch(what, 0);
            case "T11":
                return SlipClutch(what, 300);
            case "T12":
                return StickSlip(what);
            case "T13":
                TransientResult friction = new TorsionModelBuilder().Rotor("pulley", 25).Held("wall", 0)
                    .AddShaft("s", "pulley", "wall", Shaft(49087.5))
                    .AddFrictionLoad("f", "pulley", Nm(400), Nm(400)).Build().AtRest().WithTorque("s", Nm(49087.5 * Math.PI / 30)).Run(3);
                return what == "half cycles"
                    ? Enumerable.Range(0, friction.EventCount).Count(i => friction.Event(i).Kind == TransientEventKind.SlipEnded)
                    : friction.SpringTorque("s").NewtonMeters / 49087.5 * 180 / Math.PI;
            case "T14":
                double wheel = 0.5 * 2000 * (Math.PI / 4 * 0.12 * 0.12) * 0.02 * 0.06 * 0.06;
                double k = 79e9 * Math.PI * Math.Pow(0.02, 4) / 32 / 0.25;
                double torque = Strike(wheel, k, 80 * Math.PI, 0, 0).PeakNm("shaft");
                return what == "T" ? torque : torque / k;
            case "T15":
                return Strike(0.8, 2000, W, 0, 0).PeakNm("shaft");
            case "T16":
                return Decrement(double.Parse(what, CultureInfo.InvariantCulture));
            default:
                throw new ArgumentOutOfRangeException(nameof(id), id, "No such row.");
        }
    }

    public static TransientResult Strike(double inertia, double stiffness, double speed, double drive, double preload) =>
        new TorsionModelBuilder()
        .Rotor("rotor", inertia).Rotor("end", 1)
        .AddShaft("shaft", "rotor", "end", Shaft(stiffness)).AddTorque("drive", "rotor", Nm(drive))
            .AddObstacle("stop", "end", Obstacle.Jam(S(0)))
        .Build().TurningAt(RadPerS(speed)).WithTorque("shaft", Nm(preload)).Run(Math.PI * Math.Sqrt(inertia / stiffness));

    private static double SpringPeakAfterStop(double zeta)
    {
        // The spring's torque peaks where the speed is nil: the rotor is brought to rest there.
        TorsionStart start = new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
            .AddShaft("s", "rotor", "wall", Shaft(2000, 2 * zeta * Math.Sqrt(1000))).Build().AtRest().WithSpeed("rotor", RadPerS(W));
        double low = 0;
        double high = Math.PI * Math.Sqrt(0.5 / 2000);
        while (high - low > 1e-15)
        {
            double middle = 0.5 * (low + high);
            bool before = start.Run(middle).Speed("rotor").RadiansPerSecond > 0;
            low = before ? middle : low;
            high = before ? high : middle;
            if (middle == low && middle == high)
            {
                break;
            }
        }

        return start.Run(high).SpringTorque("s").NewtonMeters;
    }

    private static double StepFactor(double zeta)
    {
        double damped = Math.Sqrt(2000 / 0.5) * Math.Sqrt(1 - (zeta * zeta));
        return new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
            .AddShaft("s", "rotor", "wall", Shaft(2000, 2 * zeta * Math.Sqrt(1000))).AddTorque("step", "rotor", Nm(100))
            .Build().AtRest().Run(Math.PI / damped).SpringTorque("s").NewtonMeters / 100;
    }

    private static double RampFactor(double reach) => new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
        .AddShaft("s", "rotor", "wall", Shaft(2000)).AddTorque("ramp", "rotor", Nm(100), S(0), S(reach * Math.Sqrt(0.5 / 2000)))
        .Build().AtRest().Run(1).PeakNm("s") / 100;

    private static double SlipClutch(string what, double drive)
    {
        TorsionStart start = new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
            .AddShaft("s", "rotor", "wall", Shaft(2000), FrictionCoupling.Of(Nm(800))).AddTorque("drive", "rotor", Nm(drive))
            .Build().AtRest().WithSpeed("rotor", RadPerS(W));
        TransientResult result = start.Run(0.3);
        double t1 = result.Event(0).Time.Seconds;
        double t2 = result.Event(1).Time.Seconds;
        switch (what)
        {
            case "t1": return t1;
            case "slip time": return t2 - t1;
            case "heat": return result.SlipEnergy("s").Joules;
            case "slip angle": return result.SlipAngle("s").Radians;
            case "peak torque": return result.PeakNm("s");
            case "amplitude": return result.ReversePeak("s").Own!.Value.NewtonMeters;
            default: return start.Run(t1).Speed("rotor").RadiansPerSecond;
        }
    }

    private static double StickSlip(string what)
    {
        TransientResult result = new TorsionModelBuilder().Held("drive", 1).Rotor("block", 0.5)
            .AddShaft("s", "drive", "block", Shaft(2000)).AddFrictionLoad("f", "block", Nm(300), Nm(240))
            .Build().AtRest().WithTorque("s", Nm(200)).Run(1);
        double slip1 = result.Event(0).Time.Seconds;
        double stick1 = result.Event(1).Time.Seconds;
        double slip2 = result.Event(2).Time.Seconds;
        return what switch
        {
            "stick" => slip2 - stick1,
            "slip" => stick1 - slip1,
            "period" => slip2 - slip1,
            "max torque" => result.PeakNm("s"),
            _ => LeastOfCycle(),
        };
    }

    private static double LeastOfCycle()
    {
        // The same block, the drive's steady friction torque taken off so that the swing below it shows as a reverse peak.
        TransientResult result = new TorsionModelBuilder().Held("drive", 1).Rotor("block", 0.5)
            .AddShaft("s", "drive", "block", Shaft(2000)).AddFrictionLoad("f", "block", Nm(300), Nm(240))
                .AddTorque("help", "block", Nm(240))
            .Build().AtRest().WithTorque("s", Nm(-30)).Run(1);
        return 240 - result.ReversePeak("s").Own!.Value.NewtonMeters;
    }

    private static double Decrement(double zeta)
    {
        TorsionStart start = new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
            .AddShaft("s", "rotor", "wall", Shaft(2000, 2 * zeta * Math.Sqrt(1000))).Build().AtRest().WithTorque("s", Nm(100));
        double period = 2 * Math.PI / (Math.Sqrt(2000 / 0.5) * Math.Sqrt(1 - (zeta * zeta)));
        return Math.Log(100 / start.Run(period).SpringTorque("s").NewtonMeters);
    }

    public static TransientResult StartUp() => new TorsionModelBuilder().Held("pto", 18 * Math.PI).Rotor("machine", 1.5)
        .AddCoupling("clutch", "pto", "machine", FrictionCoupling.Of(Nm(600))).Build().AtRest().Run(0.5);

    public static TransientResult Geared(int degrees, double phase, double expected) => new TorsionModelBuilder().Held("driving", 1)
        .Rotor("driven", 1e-6)
        .AddShaft("s", "driving", "driven", Shaft(1000).WithJoint(UnitsNet.Angle.FromDegrees(degrees), UnitsNet.Angle.FromDegrees(phase)))
        .Build().AtRest().WithSpeed("driven", RadPerS(expected)).Run(1e-3);
}
