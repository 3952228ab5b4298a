using Driveline.Cases.Questions;
using Driveline.Clutches;
using Driveline.Quantities;
using Driveline.Tests.Cases;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class ClutchReadingTests
{
    public static TheoryData<string> Demos() => [.. DemoCases.Names];

    // 250 N and 200 N at 3 m, each within 10 %: 750 and 600 N·m.
    [Fact]
    public void Lever_TwoForces_GiveBreakawayAndRunning()
    {
        SlipTest test = SlipTest.Lever(Build.Today, Force.FromNewtons(250), Force.FromNewtons(200), Length.FromMeters(3));
        Assert.Equal([540, 600, 660], Ends(test.Running!));
        Assert.Equal([675, 750, 825], Ends(test.Breakaway!));
        SlipTorque torque = SlipTorque.OfMeasured(Build.Trusted(RunInState.RunIn).WithSlipTest(test));
        Assert.Equal([540, 600, 660], Ends(torque.Running));
        Assert.Equal([540, 750, 825], Ends(torque.Breakaway));
    }

    [Theory]
    [InlineData(0, 200, 3)]
    [InlineData(250, 0, 3)]
    [InlineData(250, 200, 11)]
    public void Lever_TwoForcesOutOfRange_AreRefused(double first, double slipping, double arm) =>
        Assert.Throws<ArgumentOutOfRangeException>(
        () => SlipTest.Lever(Build.Today, Force.FromNewtons(first), Force.FromNewtons(slipping), Length.FromMeters(arm)));

    // 650 N·m read within 10 % is 585 to 715 N·m: on clean faces nothing remembered cuts it, and breakaway is 1.0 to 1.4 of it.
    [Theory]
    [InlineData(SurfaceState.Dry)]
    [InlineData(SurfaceState.CleanInWork)]
    public void Measured_CleanFaces_IsNotCut(SurfaceState surface)
    {
        SlipTorque torque = Read(650, surface);
        Assert.Equal([585, 650, 715], Ends(torque.Running));
        Assert.Equal([585, 780, 1001], Ends(torque.Breakaway));
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.FadeNotCounted);
    }

    // Damp: low 0.7 · 585 = 409.5; high 1.1 · 715 = 786.5; at the first movement 1.3 · 1001 = 1301.3 N·m.
    [Theory]
    [InlineData(SurfaceState.Damp)]
    [InlineData(SurfaceState.NotKnown)]
    public void Measured_DampFaces_AreWiderBothWays(SurfaceState surface)
    {
        SlipTorque torque = Read(650, surface);
        Assert.Equal([409.5, 650, 786.5], Ends(torque.Running));
        Assert.Equal([409.5, 780, 1301.3], Ends(torque.Breakaway));
        Assert.DoesNotContain(torque.Findings, f => f.Code == ClutchFindings.FadeNotCounted);
    }

    // Dry μ 0.30 to 0.40: damp running up to 0.44, breakaway 1.4 · 1.3 · 0.40 = 0.728, dry 0.56.
    [Fact]
    public void Damp_Facing_RisesAboveDryAboveAllAtBreakaway()
    {
        Facing facing = Facing.OfFriction("lining", RatioBand.Between(0.30, 0.35, 0.40, Build.Stated));
        FrictionBand damp = facing.Friction(SurfaceState.Damp);
        Close.Absolute(0.44, damp.Running.SiBand.High, 1e-12, "hand");
        Close.Absolute(0.728, damp.Breakaway.SiBand.High, 1e-12, "hand");
        Close.Absolute(0.56, facing.Friction(SurfaceState.Dry).Breakaway.SiBand.High, 1e-12, "hand");
        Close.Absolute(0.21, damp.Running.SiBand.Low, 1e-12, "hand: 0.7 · 0.30");
    }

    [Fact]
    public void Friction_EveryState_LiesWithinNotKnown()
    {
        foreach (Facing facing in Facings.All)
        {
            FrictionBand unknown = facing.Friction(SurfaceState.NotKnown);
            foreach (SurfaceState state in Enum.GetValues<SurfaceState>())
            {
                FrictionBand band = facing.Friction(state);
                Assert.True(band.Running.SiBand.High <= unknown.Running.SiBand.High + 1e-12, facing + " running " + state);
                Assert.True(band.Breakaway.SiBand.High <= unknown.Breakaway.SiBand.High + 1e-12, facing + " breakaway " + state);
            }
        }
    }

    // Nine springs at 5 mm of deflection press 7200 N; 600 N·m read there is μ 600/(2 · 7200 · 0.10625) = 0.392. For 480 N·m: 4 mm.
    [Fact]
    public void Setting_CalibratedByReading_ComesBackToTheStatedLength()
    {
        ClutchCondition condition = Build.Clean(RunInState.RunIn).WithSlipTest(SlipTest.Measured(Build.Today, Nm(600)));
        DiscClutch clutch = Build.NineSprings().CalibratedBy(condition);
        Close.Absolute(0.39216, clutch.Facing.Friction(SurfaceState.Dry).Running.SiBand.Expected, 1e-5, "hand");
        Close.Absolute(
            45, ClutchSetting.For(clutch, Torque.FromNewtonMeters(600), Build.Clean(RunInState.RunIn)).SpringLength!.Value.Millimeters,
            1e-9, "stated length");
        Close.Absolute(
            46, ClutchSetting.For(clutch, Torque.FromNewtonMeters(480), Build.Clean(RunInState.RunIn)).SpringLength!.Value.Millimeters,
            1e-9, "hand");
    }

    // 300 N·m read where even the least friction, 0.35, gives 541 N·m: the springs were tightened since; no friction follows from it.
    [Fact]
    public void Calibrated_TightenedSince_StaysAsItWas()
    {
        DiscClutch clutch = Build.NineSprings();
        Assert.Same(clutch, clutch.CalibratedBy(Build.Clean(RunInState.RunIn).WithSlipTest(SlipTest.Measured(Build.Today, Nm(300)))));
        Assert.Same(clutch, clutch.CalibratedBy(Build.Clean(RunInState.RunIn)));
        Assert.Same(clutch, clutch.CalibratedBy(Build.Clean(RunInState.RunIn).WithSlipTest(SlipTest.Slipped(Build.Today))));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Setting_EveryDemoWithAReading_ComesBackToTheStatedLength(string name)
    {
        foreach (CaseClutch demo in CaseClutch.AllOf(DemoCases.Read(name)))
        {
            if (demo.Clutch is not { SpringLength: { } length } clutch || demo.Condition.LastSlipTest?.Running is not { } read
                || ReferenceEquals(clutch.CalibratedBy(demo.Condition), clutch))
            {
                continue;
            }

            ClutchCondition faces = ClutchCondition.AsOf(demo.Condition.Day).WithRunIn(demo.Condition.RunIn)
                .WithSurface(demo.Condition.Surface);
            ClutchSetting setting = ClutchSetting.For(clutch.CalibratedBy(demo.Condition), read.Expected!.Value, faces);
            Close.Absolute(length.Expected!.Value.Millimeters, setting.SpringLength!.Value.Millimeters, 1e-6, name);
        }
    }

    [Fact]
    public void Demos_WithAReading_AreThere() => Assert.Contains(DemoCases.Names.SelectMany(n => CaseClutch.AllOf(DemoCases.Read(n))), d =>
        d.Clutch is { SpringLength: not null } clutch && !ReferenceEquals(clutch.CalibratedBy(d.Condition), clutch));

    // 50 mm free, 40 mm solid: a slip test cannot make springs pressed solid trustworthy.
    [Fact]
    public void Trust_SpringsSolid_IsMustNot()
    {
        DiscClutch solid = Build.NineSprings().WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(40), Build.Stated));
        Assert.Equal(SlipTrust.MayBeTrusted, SlipTorque.Of(Build.NineSprings(), Build.Trusted(RunInState.RunIn)).Trust);
        Assert.Equal(SlipTrust.MustNotBeTrusted, SlipTorque.Of(solid, Build.Trusted(RunInState.RunIn)).Trust);
        Assert.False(SlipTorque.Of(solid, Build.Trusted(RunInState.RunIn)).MayBeTrustedToSlip);
    }

    private static SlipTorque Read(double nm, SurfaceState surface) => SlipTorque.OfMeasured(Build.Trusted(RunInState.RunIn)
        .WithSurface(surface).WithSlipTest(SlipTest.Lever(Build.Today, Force.FromNewtons(nm), Length.FromMeters(1))));

    private static TorqueBand Nm(double nm) => TorqueBand.Between(
        Torque.FromNewtonMeters(0.9 * nm), Torque.FromNewtonMeters(nm), Torque.FromNewtonMeters(1.1 * nm), Build.Stated);

    private static double[] Ends(TorqueBand band) =>
        [Math.Round(band.SiBand.Low, 6), Math.Round(band.SiBand.Expected, 6), Math.Round(band.SiBand.High, 6)];
}
