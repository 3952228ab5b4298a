using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Tests.Torsion;

public class YieldCurveTests
{
    // 0.03 rad at 600 N·m, 0.1 rad at 880 N·m, 0.4 rad at 1480 N·m: slopes 20000, 4000, 2000 N·m/rad.
    private static readonly Angle[] Travel = [Angle.FromRadians(0.03), Angle.FromRadians(0.1), Angle.FromRadians(0.4)];

    private static readonly Torque[] Torques = [Build.Nm(600), Build.Nm(880), Build.Nm(1480)];

    private static readonly YieldCurve Curve = YieldCurve.Of(Build.S(0), Travel, Torques);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.015, 300)]
    [InlineData(0.03, 600)]
    [InlineData(0.05, 680)]
    [InlineData(0.1, 880)]
    [InlineData(0.25, 1180)]
    [InlineData(0.4, 1480)]
    [InlineData(2, 1480)]
    public void TorqueAt_OnFirstLoading_IsOnTheCurve(double rad, double newtonMeters) =>
        Assert.Equal(newtonMeters, Curve.TorqueAt(Angle.FromRadians(rad)).NewtonMeters, 1e-9);

    [Fact]
    public void Rotor_StoppedByTheCurve_HasGivenItAllItsEnergy()
    {
        // 1 kg·m² at 20 rad/s: 200 J. Under the curve up to 0.1 rad: 600·0.03/2 + (600 + 880)/2·0.07 = 60.8 J.
        // Beyond: 880·x + 2000·x²/2 = 139.2 J, so x = (−880 + √(880² + 4·1000·139.2))/2000 = 0.1367188 rad and T = 880 + 2000·x.
        double x = (-880 + Math.Sqrt((880.0 * 880) + (4 * 1000 * 139.2))) / 2000;
        TransientResult run = Struck(20).Run(1);
        double sum = Enumerable.Range(0, Curve.Elements.Count).Sum(i => run.PeakNm("piece " + i));
        Build.Near(880 + (2000 * x), sum, 1e-9, "energy balance by hand");

        // Unloading: each piece gives back T²/(2k). Its own: k 16000 at 480, k 2000 at 200, k 2000 at 2000·(0.1 + x).
        double back = (480.0 * 480 / 32000) + (200.0 * 200 / 4000) + (2000 * (0.1 + x) * (0.1 + x) / 2);
        Build.Near(Math.Sqrt(2 * back), -run.Speed("rotor").RadiansPerSecond, 1e-9, "what the springs give back");
    }

    [Fact]
    public void Rotor_TooFastForTheCurve_MeetsItsLastTorque()
    {
        TransientResult run = Struck(40).Run(1);   // 800 J; the curve holds 60.8 + (880 + 1480)/2·0.3 = 414.8 J up to 0.4 rad
        Build.Near(1480, Enumerable.Range(0, Curve.Elements.Count).Sum(i => run.PeakNm("piece " + i)), 1e-12);
    }

    [Fact]
    public void Of_OnePoint_IsElasticThenPlastic() => Assert.Single(YieldCurve.Of(Build.S(0), [Travel[0]], [Torques[0]]).Elements);

    [Theory]
    [InlineData(0.03, 700, "above the 0.03 rad")]      // travel does not rise
    [InlineData(0.05, 500, "from 600 to 1000 N·m")]    // torque falls
    [InlineData(0.05, 1001, "from 600 to 1000 N·m")]   // steeper than 20000 N·m/rad
    [InlineData(0.05, -1, "N·m")]
    public void Of_CurveThatIsNone_IsRefusedWithTheRange(double rad, double newtonMeters, string says) => Assert.Contains(
        says,
        Assert.ThrowsAny<ArgumentException>(
            () => YieldCurve.Of(Build.S(0), [Travel[0], Angle.FromRadians(rad)], [Torques[0], Build.Nm(newtonMeters)])).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Of_ListsOfDifferentLength_AreRefused() =>
        Assert.Throws<ArgumentException>(() => YieldCurve.Of(Build.S(0), Travel, [Torques[0]]));

    private static TorsionStart Struck(double radPerS)
    {
        TorsionModelBuilder builder = new TorsionModelBuilder().Rotor("rotor", 0.6).Rotor("hub", 0.4);
        builder.AddCoupling("rigid", "rotor", "hub", FrictionCoupling.Of(Build.Nm(1e6)));
        for (int i = 0; i < Curve.Elements.Count; i++)
        {
            builder.AddObstacle("piece " + i, "hub", Curve.Elements[i]);
        }

        return builder.Build().TurningAt(Build.RadPerS(radPerS));
    }
}
