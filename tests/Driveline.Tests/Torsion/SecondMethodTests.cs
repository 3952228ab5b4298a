using Driveline.Torsion;
using UnitsNet;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <summary>The exact propagation and an embedded Runge–Kutta pair, each the other's check.</summary>
public class SecondMethodTests
{
    private const double Omega = 40;

    [Fact]
    public void DormandPrince_Oscillator_DenseOutputFollowsTheSine()
    {
        double[] times = Enumerable.Range(0, 60).Select(i => 0.00431 * i).ToArray();
        double[][] states = DormandPrince.Solve((_, y) => [y[1], -3600 * y[0]], [0, 60], times, 1e-11);
        for (int i = 0; i < times.Length; i++)
        {
            Assert.Equal(Math.Sin(60 * times[i]), states[i][0], 1e-7);
        }
    }

    [Theory]
    [InlineData(0.9, 0.07, 2.5, 14000, 9000, 1.1, 0.3)]
    [InlineData(0.2, 1.3, 0.4, 3000, 61000, 0.1, 4.0)]
    public void Transient_DampedChainWithDrive_FollowsTheSecondMethod(
        double j1, double j2, double j3, double k1, double k2, double c1, double c2)
    {
        TorsionStart start = new TorsionModelBuilder().Rotor("a", j1).Rotor("b", j2).Rotor("c", j3)
            .AddShaft("s", "a", "b", Shaft(k1, c1)).AddShaft("t", "b", "c", Shaft(k2, c2))
            .AddDrive("engine", "a", TorqueSpeedLine.Of(Nm(250), RadPerS(Omega), 9)).AddViscousLoad("air", "c", 3)
            .Build().TurningAt(RadPerS(Omega)).WithSpeed("c", RadPerS(0.5 * Omega));
        double T(double[] y) => (k1 * y[0]) + (c1 * (y[2] - y[3]));
        double U(double[] y) => (k2 * y[1]) + (c2 * (y[3] - y[4]));
        Compare(start, T, 0.3, [0, 0, Omega, Omega, 0.5 * Omega], (_, y) =>
        [
            y[2] - y[3], y[3] - y[4], (250 + (9 * (Omega - y[2])) - T(y)) / j1, (T(y) - U(y)) / j2, (U(y) - (3 * y[4])) / j3,
        ]);
    }

    [Theory]
    [InlineData(15, 0)]
    [InlineData(35, 70)]
    public void Transient_UniversalJoint_FollowsTheSecondMethod(double degrees, double phase)
    {
        double beta = degrees * Math.PI / 180;
        double zero = phase * Math.PI / 180;
        TorsionStart start = new TorsionModelBuilder().Rotor("a", 0.9).Rotor("b", 0.7)
            .AddShaft("s", "a", "b", Shaft(6000, 1).WithJoint(Angle.FromDegrees(degrees), Angle.FromDegrees(phase)))
            .AddDrive("engine", "a", TorqueSpeedLine.Of(Nm(200), RadPerS(Omega), 8)).AddViscousLoad("air", "b", 4)
            .Build().TurningAt(RadPerS(Omega));
        double R(double angle) => Math.Cos(beta) / (1 - Math.Pow(Math.Sin(beta) * Math.Cos(angle + zero), 2));
        double T(double[] y) => (6000 * y[0]) + (y[1] * R(y[3])) - y[2];
        Compare(start, T, 0.4, [0, Omega, Omega, 0], (_, y) =>
        [
            (y[1] * R(y[3])) - y[2], (200 + (8 * (Omega - y[1])) - (T(y) * R(y[3]))) / 0.9, (T(y) - (4 * y[2])) / 0.7, y[1],
        ]);
    }

    private static void Compare(
        TorsionStart start, Func<double[], double> torque, double seconds, double[] state, Func<double, double[], double[]> rates)
    {
        double[] trace = new double[200];
        TransientResult result = Transient.TraceTorque(start, S(seconds), new TransientWorkspace(), "s", trace);
        double[] times = Enumerable.Range(0, trace.Length).Select(i => seconds * i / (trace.Length - 1.0)).ToArray();
        double[][] states = DormandPrince.Solve(rates, state, times, 1e-11);
        double scale = trace.Max(Math.Abs);
        for (int i = 0; i < trace.Length; i++)
        {
            Assert.Equal(torque(states[i]), trace[i], 2e-7 * scale);
        }

        Assert.True(Math.Abs(result.EnergyImbalance) < 1e-11);
    }
}
