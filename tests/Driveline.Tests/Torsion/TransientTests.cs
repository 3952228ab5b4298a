using Driveline.Torsion;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <summary>Closed forms, worked by hand: the formula stands beside each case.</summary>
public class TransientTests
{
    private const double Omega540 = 18 * Math.PI;

    [Theory]
    [InlineData(0.5, 2000, "T = ω√(Jk), t = (π/2)√(J/k)")]
    [InlineData(4.2, 55000, "T = ω√(Jk), t = (π/2)√(J/k)")]
    public void Jam_UndampedRotorOnShaft_PeakIsSpeedTimesRootOfInertiaTimesStiffness(double j, double k, string source)
    {
        TransientResult result = Stopped(j, Shaft(k)).Run(3 * Math.Sqrt(j / k));
        Near(Omega540 * Math.Sqrt(j * k), result.PeakNm("shaft"), 1e-12, source);
        Near(0.5 * Math.PI * Math.Sqrt(j / k), result.PeakS("shaft"), 1e-9, source);
        Assert.True(Math.Abs(result.EnergyImbalance) < 1e-13);
    }

    [Fact]
    public void Jam_PreloadedByConstantTorque_AddsThePreload()
    {
        TorsionStart start = new TorsionModelBuilder().Rotor("flywheel", 0.5).Rotor("blades", 0.1)
            .AddShaft("shaft", "flywheel", "blades", Shaft(2000))
            .AddTorque("engine", "flywheel", Nm(300))
            .AddObstacle("stump", "blades", Obstacle.Jam(S(0)))
            .Build().TurningAt(RadPerS(Omega540));
        double sudden = Omega540 * Math.Sqrt(0.5 * 2000);
        Near(300 + Math.Sqrt((300.0 * 300) + (sudden * sudden)), start.Run(0.2).PeakNm("shaft"), 1e-12, "T = Td + √(Td² + kJω²)");
        Near(300 + sudden, start.WithTorque("shaft", Nm(300)).Run(0.2).PeakNm("shaft"), 1e-12, "T = Td + ω√(kJ)");
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    public void Jam_ViscousDamping_SpringPeakIsTheDampedFactor(double zeta)
    {
        const double J = 0.5;
        const double K = 2000;
        double omega = Math.Sqrt(K / J);
        double damped = omega * Math.Sqrt(1 - (zeta * zeta));
        double at = Math.Acos(zeta) / damped;
        TransientResult result = Stopped(J, Shaft(K, 2 * zeta * Math.Sqrt(K * J))).Run(at);
        double expected = Omega540 * Math.Sqrt(K * J) * Math.Exp(-zeta * Math.Acos(zeta) / Math.Sqrt(1 - (zeta * zeta)));
        Near(expected, result.SpringTorque("shaft").NewtonMeters, 1e-12, "ω₀√(kJ)·exp(−ζ·acos ζ/√(1−ζ²)) at t = acos ζ/ω_d");
        Assert.True(Math.Abs(result.EnergyImbalance) < 1e-12);
    }

    [Fact]
    public void Clutch_TwoFreeRotors_SynchronisesInTheTimeAndWithTheHeatOfTheTextbook()
    {
        TransientResult result = new TorsionModelBuilder().Rotor("engine", 0.8).Rotor("machine", 0.2)
            .AddCoupling("clutch", "engine", "machine", FrictionCoupling.Of(Nm(300)))
            .Build().AtRest().WithSpeed("engine", RadPerS(Omega540)).Run(0.05);
        double time = 0.8 * 0.2 * Omega540 / (300 * 1.0);
        Assert.Equal(1, result.EventCount);
        Near(time, result.Event(0).Time.Seconds, 1e-12, "t = I₁I₂Δω/(T(I₁+I₂))");
        Near(0.5 * 0.16 * Omega540 * Omega540, result.SlipEnergy("clutch").Joules, 1e-12, "E = I₁I₂Δω²/2(I₁+I₂)");
        Near(0.8 * Omega540, result.Speed("machine").RadiansPerSecond, 1e-12, "common speed");
        Near(0.5 * Omega540 * time, result.SlipAngle("clutch").Radians, 1e-12, "φ = Δω·t/2");
    }

    [Fact]
    public void FrictionLoad_FreeVibration_LosesAFixedAmplitudeEachHalfCycle()
    {
        // 49087.5 N·m/rad, 25 kg·m², 400 N·m, from 6°: stops after 6 half cycles at θ0 − 6·2Td/k.
        const double K = 49087.5;
        double twist = 6 * Math.PI / 180;
        TransientResult result = new TorsionModelBuilder().Rotor("pulley", 25).Held("wall", 0)
            .AddShaft("shaft", "pulley", "wall", Shaft(K))
            .AddFrictionLoad("bearing", "pulley", Nm(400), Nm(400))
            .Build().AtRest().WithTorque("shaft", Nm(K * twist)).Run(5);
        double half = Math.PI * Math.Sqrt(25 / K);
        Near(twist - (6 * 2 * 400 / K), result.SpringTorque("shaft").NewtonMeters / K, 1e-11, "θ_end = θ0 − 12·Td/k");
        TransientEvent last = result.Event(result.EventCount - 1);
        Assert.Equal(TransientEventKind.SlipEnded, last.Kind);
        Near(6 * half, last.Time.Seconds, 1e-11, "6 half periods");
    }

    [Fact]
    public void Ramp_OnOneInertia_HasTheDynamicFactor()
    {
        double omega = Math.Sqrt(2000 / 0.5);
        double rise = 3 * Math.PI / omega;
        TransientResult result = new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
            .AddShaft("shaft", "rotor", "wall", Shaft(2000))
            .AddTorque("push", "rotor", Nm(100), S(0.01), S(rise))
            .Build().AtRest().Run(0.5);
        Near(100 * (1 + (1 / (1.5 * Math.PI))), result.PeakNm("shaft"), 1e-12, "1 + |sin(ωt_r/2)|/(ωt_r/2)");
    }

    [Fact]
    public void RigidStop_WoundShaftThrowsRotorBack_LeavesAndMeetsAgain()
    {
        // 1 kg·m² behind 1 kg·m²: stop at t=0, shaft winds for half a period, then pulls the struck rotor off the stop.
        TransientResult result = new TorsionModelBuilder().Rotor("fly", 1).Rotor("blades", 1)
            .AddShaft("shaft", "fly", "blades", Shaft(100))
            .AddObstacle("stump", "blades", Obstacle.RigidStop(S(0)))
            .Build().TurningAt(RadPerS(10)).Run(0.4);
        Near(100, result.PeakNm("shaft"), 1e-12, "10·√(1·100)");
        Assert.Equal(TransientEventKind.FacesParted, result.Event(1).Kind);
        Near(Math.PI / 10, result.Event(1).Time.Seconds, 1e-12, "half period π√(J/k)");
        Near(50, result.ImpactEnergy("stump").Joules, 1e-12, "½·1·10²");
        Assert.Null(result.Peak("stump").Own);
    }

    [Fact]
    public void BreakingCoupling_AtItsCapacity_BreaksOnceAndLetsGo()
    {
        TransientResult result = new TorsionModelBuilder().Rotor("fly", 0.5).Rotor("blades", 0.3)
            .AddShaft("shaft", "fly", "blades", Shaft(2000), BreakingCoupling.At(Nm(900)))
            .AddObstacle("stump", "blades", Obstacle.Jam(S(0)))
            .Build().TurningAt(RadPerS(Omega540)).Run(0.3);
        double at = Math.Sqrt(0.5 / 2000) * Math.Asin(900 / (Omega540 * Math.Sqrt(1000)));
        Near(at, result.TripTime("shaft")!.Value.Seconds, 1e-12, "t = √(J/k)·asin(T/ω√(kJ))");
        Near(900, result.PeakNm("shaft"), 1e-12, "the capacity");
        Near(900.0 * 900 / 4000, result.SlipEnergy("shaft").Joules, 1e-12, "T²/2k set free");
        Near(Math.Sqrt((Omega540 * Omega540) - (900.0 * 900 / 1000)), result.Speed("fly").RadiansPerSecond, 1e-12, "√(ω² − T²/kJ)");
    }

    private static TorsionStart Stopped(double inertia, Shaft shaft) => new TorsionModelBuilder()
        .Rotor("rotor", inertia).Rotor("blades", 0.3)
        .AddShaft("shaft", "rotor", "blades", shaft)
        .AddObstacle("stump", "blades", Obstacle.Jam(S(0)))
        .Build().TurningAt(RadPerS(Omega540));
}
