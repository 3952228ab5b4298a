using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Tests.Torsion;

/// <summary>
/// Once no torque can reach its peak again, the rest of a run is one leap; runs by series are the oracle.
/// </summary>
public class SettlingTests
{
    [Theory]
    [InlineData(1, 1.5, 40)]
    [InlineData(1, 15, 40)]
    [InlineData(30, 1.5, 40)]
    [InlineData(1, 4000, 40)]
    public void Run_OfADampedLine_LeapsOverWhatHasSettled(double seconds, double dampingNms, long mostSteps)
    {
        // With 4000 N·m·s/rad the rate is 82 000/s, 41 000 steps of 2 rad; what has died away limits no step.
        // Else steps of 2 rad at √(2·20000/0.06) = 816 rad/s: about 410 a second; the leap is one step.
        TorsionStart start = Jammed(dampingNms, 0);
        TransientResult leapt = Transient.Run(start, Duration.FromSeconds(seconds), new TransientWorkspace());
        Assert.True(leapt.IsComplete);
        Assert.InRange(leapt.StepCount, 1, mostSteps);
    }

    [Theory]
    [InlineData(1, 1.5, 0)]
    [InlineData(3, 15, 0)]
    [InlineData(1, 1.5, 200)]
    [InlineData(2, 40, -300)]
    [InlineData(0.5, 4000, 0)]
    public void Run_ThatLeaps_EqualsTheRunStepByStep(double seconds, double dampingNms, double applied)
    {
        TorsionStart start = Jammed(dampingNms, applied);
        var duration = Duration.FromSeconds(seconds);
        TransientResult leapt = Transient.Run(start, duration, new TransientWorkspace());
        TransientResult stepped = Transient.Run(start, duration, new TransientWorkspace { UsesSeries = true });
        Assert.True(leapt.StepCount < stepped.StepCount / 2);
        foreach (string shaft in new[] { "s1", "s2", "s3" })
        {
            Assert.Equal(stepped.Peak(shaft).Own!.Value.NewtonMeters, leapt.Peak(shaft).Own!.Value.NewtonMeters, 1e-9);
            Assert.Equal(stepped.ReversePeak(shaft).Own!.Value.NewtonMeters, leapt.ReversePeak(shaft).Own!.Value.NewtonMeters, 1e-9);
            Assert.Equal(stepped.TorqueAtEnd(shaft).NewtonMeters, leapt.TorqueAtEnd(shaft).NewtonMeters, 1e-8);
            Assert.Equal(stepped.DampingEnergy(shaft).Joules, leapt.DampingEnergy(shaft).Joules, 1e-8);
        }

        Assert.Equal(stepped.Turned("r1").Radians, leapt.Turned("r1").Radians, 1e-9);
        Assert.Equal(stepped.Speed("r1").RadiansPerSecond, leapt.Speed("r1").RadiansPerSecond, 1e-9);
        Assert.True(Math.Abs(leapt.EnergyImbalance) < 1e-11);
    }

    [Fact]
    public void Run_WhosePeakComesAtTheEnd_DoesNotLeapOverIt()
    {
        // Slowly beating pair: the far side peaks only after the beat has come over; nothing has settled before.
        TorsionStart start = new TorsionModelBuilder()
            .AddRotor("a", MassMomentOfInertia.FromKilogramSquareMeters(1))
            .AddRotor("b", MassMomentOfInertia.FromKilogramSquareMeters(1))
            .AddShaft("one", "a", "b", Shaft.OfStiffness(RotationalStiffness.FromNewtonMetersPerRadian(50)))
            .AddObstacle("left", "a", Obstacle.SpringDamper(Duration.Zero, RotationalStiffness.FromNewtonMetersPerRadian(10000), 0))
            .AddTorque("kick", "b", Torque.FromNewtonMeters(100), Duration.FromSeconds(0.5), Duration.Zero)
            .Build().TurningAt(RotationalSpeed.FromRadiansPerSecond(1));
        var duration = Duration.FromSeconds(5);
        TransientResult leapt = Transient.Run(start, duration, new TransientWorkspace());
        TransientResult stepped = Transient.Run(start, duration, new TransientWorkspace { UsesSeries = true });
        Assert.Equal(stepped.Peak("one").Own!.Value.NewtonMeters, leapt.Peak("one").Own!.Value.NewtonMeters, 1e-9);
        Assert.Equal(stepped.ReversePeak("one").Own!.Value.NewtonMeters, leapt.ReversePeak("one").Own!.Value.NewtonMeters, 1e-9);
    }

    // 1.1, 0.06, 0.1, 4 kg·m² on 20000, 8000, 15000 N·m/rad; the last one jams, the middle shaft breaks at 1500 N·m.
    private static TorsionStart Jammed(double dampingNms, double applied)
    {
        TorsionModelBuilder builder = new TorsionModelBuilder()
            .AddRotor("r1", MassMomentOfInertia.FromKilogramSquareMeters(1.1))
            .AddRotor("r2", MassMomentOfInertia.FromKilogramSquareMeters(0.06))
            .AddRotor("r3", MassMomentOfInertia.FromKilogramSquareMeters(0.1))
            .AddRotor("r4", MassMomentOfInertia.FromKilogramSquareMeters(4))
            .AddShaft("s1", "r1", "r2", Damped(20000, dampingNms))
            .AddShaft("s2", "r2", "r3", Damped(8000, 0.4), BreakingCoupling.At(Torque.FromNewtonMeters(1500)))
            .AddShaft("s3", "r3", "r4", Damped(15000, 0.9))
            .AddObstacle("jam", "r4", Obstacle.Jam(Duration.Zero));
        builder = applied == 0 ? builder : builder.AddTorque("pull", "r1", Torque.FromNewtonMeters(applied), Duration.Zero, Duration.Zero);
        return builder.Build().TurningAt(RotationalSpeed.FromRadiansPerSecond(56.5));
    }

    private static Shaft Damped(double stiffness, double dampingNms) =>
        Shaft.OfStiffness(RotationalStiffness.FromNewtonMetersPerRadian(stiffness)).WithDamping(dampingNms);
}
