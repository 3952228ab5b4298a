using Driveline.Torsion;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

public class ModesTests
{
    [Fact]
    public void Modes_TwoInertias_MatchTheClosedForm()
    {
        Modes modes = Modes.Of(new TorsionModelBuilder().Rotor("a", 0.8).Rotor("b", 0.2).AddShaft("s", "a", "b", Shaft(2000)).Build());
        Assert.Equal(2, modes.Count);
        Assert.Equal(0, modes[0].RadPerS);
        Assert.Equal(1, modes[0].Amplitude("b"), 1e-14);
        Near(Math.Sqrt(2000 * 1.0 / 0.16), modes[1].RadPerS, 1e-14, "√(k(J1+J2)/(J1J2))");
        Near(-0.25, modes[1].Amplitude("a") / modes[1].Amplitude("b"), 1e-13, "amplitudes as −J2/J1");
        Near(17.794064, modes[1].Frequency.Hertz, 1e-7, "docstring example");
    }

    [Theory]
    [InlineData(1.3, 0.09, 2.2, 21000, 5200)]
    [InlineData(0.4, 3.1, 0.05, 900, 76000)]
    public void Modes_ThreeInertias_AreTheRootsOfTheQuadratic(double j1, double j2, double j3, double k1, double k2)
    {
        // λ² − λ·[k1(1/J1+1/J2) + k2(1/J2+1/J3)] + k1·k2·(J1+J2+J3)/(J1·J2·J3) = 0, beside λ = 0.
        double b = (k1 * ((1 / j1) + (1 / j2))) + (k2 * ((1 / j2) + (1 / j3)));
        double c = k1 * k2 * (j1 + j2 + j3) / (j1 * j2 * j3);
        double high = 0.5 * (b + Math.Sqrt((b * b) - (4 * c)));
        Modes modes = Modes.Of(new TorsionModelBuilder().Rotor("a", j1).Rotor("b", j2).Rotor("c", j3)
            .AddShaft("s", "a", "b", Shaft(k1)).AddShaft("t", "b", "c", Shaft(k2)).Build());
        Near(Math.Sqrt(c / high), modes[1].RadPerS, 1e-12, "low root");
        Near(Math.Sqrt(high), modes[2].RadPerS, 1e-13, "high root");
    }

    [Fact]
    public void Modes_HeldEndGearAndRigidCoupling_ReduceToOneInertia()
    {
        // Fixed end, 3000 N·m/rad, then gear 2:1 up: (0.1 + 0.2) kg·m² counts fourfold: ω = √(3000/1.2) = 50.
        Modes modes = Modes.Of(new TorsionModelBuilder().Held("wall", 0).Rotor("a", 0.1).Rotor("b", 0.2)
            .AddShaft("s", "wall", "a", Shaft(3000).WithRatio(2)).AddCoupling("clutch", "a", "b", FrictionCoupling.Of(Nm(5)))
            .Build());
        NaturalMode mode = Assert.Single(modes);
        Near(50, mode.RadPerS, 1e-14, "√(3000/(4·0.3))");
        Assert.Equal(0, mode.Amplitude("wall"));
        Assert.Equal(mode.Amplitude("a"), mode.Amplitude("b"));
    }
}
