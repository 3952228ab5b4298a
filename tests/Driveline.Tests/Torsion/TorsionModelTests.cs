using Driveline.Torsion;
using UnitsNet;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

public class TorsionModelTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(-0.2)]
    public void AddRotor_InertiaNotPositive_IsRefusedWithNameRangeAndValue(double inertia)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new TorsionModelBuilder().Rotor("blades", inertia));
        Assert.Contains("Inertia of \"blades\" must be a finite value above 0 kg·m²; got " + (inertia == 0 ? "0" : "-0.2"), error.Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Shaft_StiffnessNotPositive_IsRefused(double stiffness) =>
        Assert.Contains("Shaft stiffness must be a finite value above 0 N·m/rad",
            Assert.Throws<ArgumentOutOfRangeException>(() => Shaft(stiffness)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(-1.47)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void WithRatio_NotPositiveOrNotFinite_IsRefused(double ratio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Shaft(1).WithRatio(ratio));

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void WithDamping_NegativeOrNotANumber_IsRefused(double damping) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Shaft(1, damping));

    [Fact]
    public void Build_OneRotor_SaysHowManyAreNeeded() =>
        Assert.Contains(
            "at least 2 rotors; got 1", Assert.Throws<InvalidOperationException>(
            () => new TorsionModelBuilder().Rotor("a", 1).Build()).Message, StringComparison.Ordinal);

    [Fact]
    public void Build_DetachedRotor_NamesIt() =>
        Assert.Contains("\"c\" is detached", Assert.Throws<InvalidOperationException>(() => Two().Rotor("c", 1).Build()).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Build_Ring_NamesTheLinkThatClosesIt() =>
        Assert.Contains(
            "\"t\" closes a ring", Assert.Throws<InvalidOperationException>(() => Two().AddShaft("t", "b", "a", Shaft(1)).Build()).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Build_AllHeld_IsRefused() =>
        Assert.Throws<InvalidOperationException>(
            () => new TorsionModelBuilder().Held("a", 0).Held("b", 1).AddShaft("s", "a", "b", Shaft(1)).Build());

    [Fact]
    public void Build_HeldRotorsCoupledDirectly_IsRefused() =>
        Assert.Contains(
            "\"c\" does", Assert.Throws<InvalidOperationException>(() => new TorsionModelBuilder().Held("a", 0).Held("b", 1).Rotor("d", 1)
            .AddCoupling("c", "a", "b", FrictionCoupling.Of(Nm(1))).AddShaft("s", "b", "d", Shaft(1)).Build()).Message,
                StringComparison.Ordinal);

    [Fact]
    public void Add_NameUsedTwice_IsRefused() => Assert.Throws<ArgumentException>(() => Two().AddViscousLoad("s", "a", 1));

    [Fact]
    public void AddShaft_UnknownRotor_ListsTheKnown() =>
        Assert.Contains("There is no rotor \"x\" yet; there are: a, b.",
            Assert.Throws<ArgumentException>(() => Two().AddShaft("t", "a", "x", Shaft(1))).Message, StringComparison.Ordinal);

    [Fact]
    public void AddCoupling_OneWayWithoutShaft_IsRefused() =>
        Assert.Throws<ArgumentException>(
            () => new TorsionModelBuilder().Rotor("a", 1).Rotor("b", 1).AddCoupling("c", "a", "b", OneWayCoupling.Forward));

    [Fact]
    public void AddShaft_BacklashAndCoupling_IsRefused() =>
        Assert.Throws<ArgumentException>(() => new TorsionModelBuilder().Rotor("a", 1).Rotor("b", 1)
            .AddShaft("s", "a", "b", Shaft(1).WithBacklash(Angle.FromDegrees(1)), BreakingCoupling.At(Nm(1))));

    [Fact]
    public void AddDrive_Second_IsRefused() =>
        Assert.Throws<ArgumentException>(
            () => Two().AddDrive("d", "a", TorqueSpeedLine.Constant(Nm(1))).AddDrive("e", "b", TorqueSpeedLine.Constant(Nm(1))));

    [Fact]
    public void AddObstacle_OnHeldRotor_IsRefused() =>
        Assert.Throws<ArgumentException>(() => new TorsionModelBuilder().Held("a", 1).AddObstacle("o", "a", Obstacle.Jam(S(0))));

    [Theory]
    [InlineData(100, 101)]
    [InlineData(100, -1)]
    public void FrictionCoupling_RunningOutsideZeroToBreakaway_IsRefused(double breakaway, double running) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FrictionCoupling.Of(Nm(breakaway), Nm(running)));

    [Theory]
    [InlineData(100, 100)]
    [InlineData(100, 0)]
    public void FrictionCoupling_RunningAtTheEndsOfItsRange_IsAllowed(double breakaway, double running) =>
        Assert.Equal(running, FrictionCoupling.Of(Nm(breakaway), Nm(running)).Running.NewtonMeters);

    [Fact]
    public void AfterSwingBack_Jam_IsRefused() =>
        Assert.Throws<InvalidOperationException>(() => Obstacle.Jam(S(0)).AfterSwingBack(Angle.FromDegrees(20), Nm(10)));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Run_DurationNotPositive_IsRefused(double seconds) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Two().Build().AtRest().Run(seconds));

    [Fact]
    public void WithTorque_OnObstacle_IsRefused()
    {
        TorsionStart start = Two().AddObstacle("o", "b", Obstacle.SpringDamper(S(0), NmPerRad(1), 0)).Build().AtRest();
        Assert.Throws<ArgumentException>(() => start.WithTorque("o", Nm(1)));
    }

    [Theory]
    [InlineData(0.05, 0, 1, 80e9, 49087.385212, "G·πd⁴/32/L = 80e9 · 6.135923e-7")]
    [InlineData(0.06, 0.05, 1.2, 80e9, 43916.85, "0.06⁴ − 0.05⁴ = 6.71e-6; · π/32 = 6.587527e-7 m⁴; · 80e9/1.2")]
    public void Shaft_Section_HasStiffnessGJOverL(double outer, double inner, double length, double shear, double expected, string source)
    {
        double actual = Driveline.Torsion.Shaft.Tube(
            Length.FromMeters(outer), Length.FromMeters(inner), Length.FromMeters(length), Pressure.FromPascals(shear))
            .Stiffness.NewtonMetersPerRadian;
        Near(expected, actual, 1e-7, source);
    }

    [Fact]
    public void Results_AskedForUnknownPart_ListTheKnown()
    {
        TransientResult result = Two().Build().AtRest().Run(0.1);
        Assert.Contains("there are: s.", Assert.Throws<ArgumentException>(() => result.Peak("x")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => result.Event(0));
        Assert.Null(result.TripTime("s"));
    }

    [Fact]
    public void RatioOf_BehindGears_IsTheirProduct()
    {
        TorsionModel model = Two(Shaft(1).WithRatio(1.5)).Rotor("c", 1).AddShaft("t", "c", "b", Shaft(1).WithRatio(3)).Build();
        Assert.Equal(0.5, model.RatioOf("c"), 1e-15);
    }

    private static TorsionModelBuilder Two() => Two(Shaft(1));

    private static TorsionModelBuilder Two(Shaft shaft) =>
        new TorsionModelBuilder().Rotor("a", 1).Rotor("b", 1).AddShaft("s", "a", "b", shaft);
}
