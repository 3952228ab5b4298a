using Driveline.Torsion;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <summary>What is stiff, over-damped or slow limits no step: runs counted in steps, never timed.</summary>
public class StepCountTests
{
    private static readonly double[] Inertia = [1.1, 0.06, 0.1, 4];
    private static readonly double[] Stiffness = [20000, 8000, 15000];
    private static readonly double[] Damping = [1.5, 0.4, 0.9];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Run_OverdampedShaftOnALightRotor_TakesAtMostThreeTimesTheStepsOfThePlainLine(int shaft)
    {
        double[] inertia = [.. Inertia];
        double[] damping = [.. Damping];
        inertia[shaft == 0 ? 1 : 2] = 0.012;
        damping[shaft] = 4000;
        Assert.InRange(Line(inertia, Stiffness, damping).Run(1).StepCount, 1, 3 * Plain());
    }

    [Theory]
    [MemberData(nameof(StiffShafts))]
    public void Run_StiffShaftBesideSoftOnes_CostsAtMostThreeTimesThePlainLine(int shaft, double newtonMetersPerRadian)
    {
        double[] stiffness = [1e4, 1e4, 1e4];
        stiffness[shaft] = newtonMetersPerRadian;
        TransientResult plain = Line(Inertia, Stiffness, Damping).Run(1);
        TransientResult stiff = Line(Inertia, stiffness, Damping).Run(1);
        Assert.InRange(stiff.Work, 1, 3 * plain.Work);
        Assert.InRange(stiff.StepCount, 1, 3 * plain.StepCount);
    }

    /// <summary>Each shaft in turn, from as stiff as its neighbours to a million times.</summary>
    public static TheoryData<int, double> StiffShafts()
    {
        var data = new TheoryData<int, double>();
        for (int shaft = 0; shaft < 3; shaft++)
        {
            for (int tens = 4; tens <= 10; tens++)
            {
                data.Add(shaft, Math.Pow(10, tens));
            }
        }

        return data;
    }

    // What grows while it ripples is largest where the bolt breaks: the ripples before it are never searched one by one.
    [Theory]
    [InlineData(1e6)]
    [InlineData(1e8)]
    [InlineData(1e10)]
    public void Run_StiffShaftAtTheStop_FindsThePeaksOfTheRunBySeries(double newtonMetersPerRadian)
    {
        TorsionStart start = Line(Inertia, [1e4, 1e4, newtonMetersPerRadian], Damping);
        TransientResult modes = start.Run(0.008);
        TransientResult series = Transient.Run(start, S(0.008), new TransientWorkspace { UsesSeries = true });
        double rounding = 1e-12 * series.PeakNm("s3");
        foreach (string element in new[] { "s1", "s2", "s3" })
        {
            Assert.Equal(series.PeakNm(element), modes.PeakNm(element), rounding);
            Assert.Equal(
                series.ReversePeak(element).Own!.Value.NewtonMeters, modes.ReversePeak(element).Own!.Value.NewtonMeters, rounding);
        }
    }

    [Theory]
    [InlineData(4, 4)]
    [InlineData(20, 4)]
    [InlineData(20, 4000)]
    public void Run_LongEngagementOfASlippingClutch_TakesStepsOfItsSwingsNotOfItsFastestRate(double seconds, double dampingNms)
    {
        // At 2·√(9000/0.012) = 1730 rad/s a second has 866 steps of 2 rad, at 4000/0.012 = 333 000/s it has 167 000.
        TransientResult result = Engagement(seconds, dampingNms).Run(1.25 * seconds);
        Assert.True(result.IsComplete);
        Assert.InRange(result.StepCount, 1, 500);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(40)]
    public void Run_EngagementByModes_EqualsTheRunBySeries(double dampingNms)
    {
        TorsionStart start = Engagement(0.6, dampingNms);
        TransientResult modes = start.Run(1.5);
        TransientResult series = Transient.Run(start, S(1.5), new TransientWorkspace { UsesSeries = true });
        Assert.Equal(
            Enumerable.Range(0, series.EventCount).Select(i => series.Event(i).Kind),
            Enumerable.Range(0, modes.EventCount).Select(i => modes.Event(i).Kind));
        for (int i = 0; i < series.EventCount; i++)
        {
            Assert.Equal(series.Event(i).Time.Seconds, modes.Event(i).Time.Seconds, 1e-12);
        }

        foreach (string element in new[] { "clutch", "front", "back" })
        {
            Near(series.PeakNm(element), modes.PeakNm(element), 1e-12, element);
            Assert.Equal(series.TorqueAtEnd(element).NewtonMeters, modes.TorqueAtEnd(element).NewtonMeters, 1e-9);
            Assert.Equal(series.SlipEnergy(element).Joules, modes.SlipEnergy(element).Joules, 1e-7);
            Assert.Equal(series.DampingEnergy(element).Joules, modes.DampingEnergy(element).Joules, 1e-7);
        }

        Near(series.DriveWork.Joules, modes.DriveWork.Joules, 1e-11, "drive");
        Near(series.Turned("machine").Radians, modes.Turned("machine").Radians, 1e-11, "turned");
        Assert.True(Math.Abs(modes.EnergyImbalance) < 1e-12);
    }

    [Fact]
    public void Run_CriticallyDampedRotor_FollowsTheHandCalculation()
    {
        // J = 1, k = 100, c = 20: φ = ω₀·t·e^(−10t), so that k·φ peaks at t = 0.1 s with 100·5·0.1/e = 50/e.
        TransientResult result = new TorsionModelBuilder().Rotor("rotor", 1).Held("wall", 0)
            .AddShaft("s", "rotor", "wall", Shaft(100, 20))
            .Build().AtRest().WithSpeed("rotor", RadPerS(5)).Run(0.1);
        Near(50 / Math.E, result.SpringTorque("s").NewtonMeters, 1e-13, "50/e");
    }

    private static long Plain() => Line(Inertia, Stiffness, Damping).Run(1).StepCount;

    private static TorsionStart Line(double[] inertia, double[] stiffness, double[] damping) => new TorsionModelBuilder()
        .Rotor("r1", inertia[0]).Rotor("r2", inertia[1]).Rotor("r3", inertia[2]).Rotor("r4", inertia[3])
        .AddShaft("s1", "r1", "r2", Shaft(stiffness[0], damping[0]))
        .AddShaft("s2", "r2", "r3", Shaft(stiffness[1], damping[1]), BreakingCoupling.At(Nm(1500)))
        .AddShaft("s3", "r3", "r4", Shaft(stiffness[2], damping[2]))
        .AddObstacle("jam", "r4", Obstacle.Jam(S(0)))
        .Build().TurningAt(RadPerS(56.5));

    private static TorsionStart Engagement(double seconds, double dampingNms) => new TorsionModelBuilder()
        .Rotor("engine", 0.9).Rotor("yoke", 0.02).Rotor("tube", 0.012).Rotor("machine", 4.2)
        .AddCoupling("clutch", "engine", "yoke", FrictionCoupling.Of(Nm(1050), Nm(900)).Engaging(S(0), S(seconds)))
        .AddShaft("front", "yoke", "tube", Shaft(9000, dampingNms))
        .AddShaft("back", "tube", "machine", Shaft(40000, 5))
        .AddFrictionLoad("drag", "machine", Nm(40), Nm(40))
        .AddDrive("line", "engine", TorqueSpeedLine.Of(Nm(500), RadPerS(56.5), 40).Within(Nm(-100), Nm(850)))
        .Build().AtRest().WithSpeed("engine", RadPerS(56.5));
}
