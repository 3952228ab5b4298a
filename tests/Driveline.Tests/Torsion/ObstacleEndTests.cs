using Driveline.Torsion;
using UnitsNet;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <summary>Obstacles that end, by closed forms: two rotors bolted together, J = 2 kg·m², meet them at 10 rad/s.</summary>
public class ObstacleEndTests
{
    private const double J = 2;
    private const double W = 10;

    [Fact]
    public void Yielding_CutThrough_TakesItsWorkAndLetsGo()
    {
        // 800 N·m/rad, 20 N·m, 0.5 rad: rise to 0.025 rad, then 0.475 rad at 20 N·m; 20·0.5 − 20²/1600 = 9.75 J.
        TransientResult result = Run(Obstacle.Yielding(S(0.1), NmPerRad(800), Nm(20), Rad(0.5)));
        double omega = Math.Sqrt(800 / J);
        double rise = Math.Asin(20.0 / 800 * omega / W) / omega;
        double before = W * Math.Cos(omega * rise);
        double after = Math.Sqrt((W * W) - (2 * 9.75 / J));
        Near(20, result.PeakNm("stump"), 1e-12, "the torque at which it yields");
        Near(0.1 + rise + ((before - after) / (20 / J)), When(result), 1e-11, "rise by a quarter sine, then Δω·J/T");
        Near(after, result.Speed("fly").RadiansPerSecond, 1e-12, "√(ω² − 2W/J)");
        Near(9.75, result.SlipEnergy("stump").Joules, 1e-11, "T·θ − T²/2k");
        Assert.Equal(0, result.TorqueAtEnd("stump").NewtonMeters);
        Assert.True(Math.Abs(result.EnergyImbalance) < 1e-13);
    }

    [Fact]
    public void Yielding_CutThroughBeforeItYields_PeaksAtStiffnessTimesThickness()
    {
        TransientResult result = Run(Obstacle.Yielding(S(0.1), NmPerRad(800), Nm(20), Rad(0.02)));
        double omega = Math.Sqrt(800 / J);
        Near(16, result.PeakNm("stump"), 1e-12, "800·0.02");
        Near(0.1 + (Math.Asin(0.02 * omega / W) / omega), When(result), 1e-11, "t = asin(θΩ/ω)/Ω");
        Near(Math.Sqrt((W * W) - (800 * 0.02 * 0.02 / J)), result.Speed("fly").RadiansPerSecond, 1e-12, "√(ω² − kθ²/J)");
        Assert.True(Math.Abs(result.EnergyImbalance) < 1e-13);
    }

    [Fact]
    public void Yielding_ThickerThanTheRotorCanCut_StopsIt()
    {
        // ½·2·10² = 100 J; 400·0.3 − 400²/1600 = 20 J does not stop it, 400·0.6 − 100 = 140 J does.
        TransientResult through = Run(Obstacle.Yielding(S(0.1), NmPerRad(800), Nm(400), Rad(0.6)));
        Assert.DoesNotContain(Events(through), e => e == TransientEventKind.CutThrough);
        Assert.Contains(Events(through), e => e == TransientEventKind.YieldingEnded);
    }

    [Fact]
    public void Yielding_LeftAndMetAgain_IsCutAtItsWholeThickness()
    {
        // Thrown back by its elastic part, then pushed on by 300 N·m against 200 N·m: gone 0.6 rad behind first contact.
        TransientResult result = Bolted().AddTorque("push", "fly", Nm(300), S(0.4), S(0))
            .AddObstacle("stump", "blades", Obstacle.Yielding(S(0.1), NmPerRad(800), Nm(200), Rad(0.6)))
            .Build().TurningAt(RadPerS(8)).Run(1);
        double contact = 8 * 0.1;
        TransientEvent end = Enumerable.Range(0, result.EventCount).Select(result.Event)
            .Single(e => e.Kind == TransientEventKind.CutThrough);
        Assert.Contains(Events(result), e => e == TransientEventKind.FacesParted);
        TransientResult there = Bolted().AddTorque("push", "fly", Nm(300), S(0.4), S(0))
            .AddObstacle("stump", "blades", Obstacle.Yielding(S(0.1), NmPerRad(800), Nm(200), Rad(0.6)))
            .Build().TurningAt(RadPerS(8)).Run(end.Time.Seconds);
        Near(contact + 0.6, there.Turned("blades").Radians, 1e-11, "first contact at ω·t, then the thickness");
        Near((200 * 0.6) - (200.0 * 200 / 1600), result.SlipEnergy("stump").Joules, 1e-10, "all of its work, spent once");
    }

    [Fact]
    public void AfterSwingBack_ThenCutThrough_CostsBoth()
    {
        TransientResult result = Run(Obstacle.Yielding(S(0.1), NmPerRad(800), Nm(20), Rad(0.5)).AfterSwingBack(Rad(0.4), Nm(10)));
        Near(Math.Sqrt((W * W) - (2 * (4 + 9.75) / J)), result.Speed("fly").RadiansPerSecond, 1e-12, "10·0.4 J, then 9.75 J");
        Assert.True(Math.Abs(result.EnergyImbalance) < 1e-13);
    }

    [Fact]
    public void RigidStop_OnARotorWhoseBranchIsCutThrough_LeavesTheBranchGone()
    {
        TransientResult result = Bolted().AddObstacle("branch", "blades", Obstacle.Yielding(S(0), NmPerRad(800), Nm(20), Rad(0.1)))
            .AddObstacle("rock", "blades", Obstacle.RigidStop(S(0.2))).Build().TurningAt(RadPerS(W)).Run(0.4);
        Near(20, result.PeakNm("branch"), 1e-12, "its own");
        Assert.Equal(0, result.TorqueAtEnd("branch").NewtonMeters);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Yielding_NoThickness_IsRefused(double rad) => Assert.Throws<ArgumentOutOfRangeException>(
        () => Obstacle.Yielding(S(0), NmPerRad(1), Nm(1), Rad(rad)));

    private static TorsionModelBuilder Bolted() => new TorsionModelBuilder().Rotor("fly", 1.5).Rotor("blades", 0.5)
        .AddCoupling("bolts", "fly", "blades", BreakingCoupling.At(Nm(1e9)));

    private static TransientResult Run(Obstacle obstacle) =>
        Bolted().AddObstacle("stump", "blades", obstacle).Build().TurningAt(RadPerS(W)).Run(0.4);

    private static IEnumerable<TransientEventKind> Events(TransientResult result) =>
        Enumerable.Range(0, result.EventCount).Select(i => result.Event(i).Kind);

    private static double When(TransientResult result) => Enumerable.Range(0, result.EventCount).Select(result.Event)
        .Single(e => e.Kind == TransientEventKind.CutThrough).Time.Seconds;

    private static Angle Rad(double value) => Angle.FromRadians(value);
}
