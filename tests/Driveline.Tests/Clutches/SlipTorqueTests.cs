using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class SlipTorqueTests
{
    [Fact]
    public void Of_DocumentedExample_Matches()
    {
        // Example of the documentation: 541.1 N·m new, 535.5 N·m run in.
        Assert.Equal(541.1, Build.Expected(SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.New)).Running), 0.05);
        Assert.Equal(535.5, Build.Expected(SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn)).Running), 0.05);
    }

    [Theory]
    [InlineData(RunInState.New, PressureAssumption.UniformPressure, 541.06, 541.06)]
    [InlineData(RunInState.RunIn, PressureAssumption.UniformWear, 535.5, 535.5)]
    [InlineData(RunInState.NotKnown, PressureAssumption.SpansBoth, 535.5, 541.06)]
    public void Assumption_ByRunIn_IsSaidAndSpanned(RunInState runIn, PressureAssumption assumption, double low, double high)
    {
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), Build.Clean(runIn));
        Assert.Equal(assumption, torque.Assumption);
        Assert.Equal(low, torque.Running.Low.NewtonMeters, 0.005);
        Assert.Equal(high, torque.Running.High!.Value.NewtonMeters, 0.005);
    }

    [Fact]
    public void Breakaway_TrustedClutch_IsBounded()
    {
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), Build.Trusted(RunInState.RunIn));
        Assert.True(torque.MayBeTrustedToSlip);
        Assert.Equal(1.2 * 535.5, torque.Breakaway.High!.Value.NewtonMeters, 0.01); // hand: 642.6 N·m
        Assert.DoesNotContain(torque.Findings, f => f.Severity == Severity.Danger);
    }

    [Fact]
    public void Breakaway_NoSlipTest_HasExpectedButNoHighEnd()
    {
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn));
        Assert.False(torque.MayBeTrustedToSlip);
        Assert.Null(torque.Breakaway.High);
        Assert.NotNull(torque.Breakaway.Expected);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.NoSlipTest && f.Severity == Severity.Danger);
        Assert.True(torque.Running.IsBounded);
    }

    [Fact]
    public void Breakaway_Stuck_HasNoExpectedValue()
    {
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn).Stuck());
        Assert.Null(torque.Breakaway.Expected);
        Assert.Null(torque.Breakaway.High);
        Assert.Equal(SlipTrust.MustNotBeTrusted, torque.Trust);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.Stuck);
    }

    [Fact]
    public void Breakaway_WithstoodTorque_RaisesLowEnd()
    {
        ClutchCondition tested = Build.Clean(RunInState.RunIn)
            .WithSlipTest(SlipTest.DidNotSlip(Build.Today, TorqueBand.Exactly(Torque.FromNewtonMeters(900), Build.Stated)));
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), tested);
        Assert.Equal(900, torque.Breakaway.Low.NewtonMeters, 1e-9);
        Assert.Null(torque.Breakaway.Expected);
    }

    [Theory]
    [InlineData(40.01, false, null)]
    [InlineData(40.0, true, ClutchFindings.SpringsSolid)]
    [InlineData(39.0, true, ClutchFindings.ShorterThanSolid)]
    public void Of_LengthAtSolid_HasNoHighEnd(double lengthMm, bool unbounded, string? code)
    {
        SlipTorque torque = SlipTorque.Of(At(lengthMm, 0), Build.Trusted(RunInState.RunIn));
        Assert.Equal(unbounded, !torque.Running.IsBounded);
        Assert.Equal(unbounded, !torque.Running.HasExpected);
        Assert.Equal(unbounded, !torque.Breakaway.IsBounded);
        if (code is not null)
        {
            Assert.Contains(torque.Findings, f => f.Code == code && f.Severity == Severity.Danger);
        }
    }

    [Fact]
    public void Of_ToleranceReachesSolid_LosesOnlyTheHighEnd()
    {
        SlipTorque torque = SlipTorque.Of(At(40.3, 0.4), Build.Trusted(RunInState.RunIn));
        Assert.True(torque.Running.HasExpected);
        Assert.False(torque.Running.IsBounded);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.SpringsMayBeSolid);
    }

    [Theory]
    [InlineData(49.9, false)]
    [InlineData(50.0, true)]
    [InlineData(60.0, true)]
    public void Of_LengthAtFree_CarriesNothing(double lengthMm, bool loose)
    {
        SlipTorque torque = SlipTorque.Of(At(lengthMm, 0), Build.Trusted(RunInState.RunIn));
        Assert.Equal(loose, Build.Expected(torque.Running) <= 0);
        Assert.Equal(loose, torque.Findings.Any(f => f.Code == ClutchFindings.SpringsLoose));
    }

    [Fact]
    public void Of_SpringLengthNotKnown_GivesNoNumber()
    {
        DiscClutch clutch = DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Build.Exact(0.35), Build.NinePack());
        SlipTorque torque = SlipTorque.Of(clutch, Build.Trusted(RunInState.RunIn));
        Assert.Equal(SlipTorqueSource.NotKnown, torque.Source);
        Assert.Equal(0, torque.Running.Low.NewtonMeters);
        Assert.Null(torque.Running.Expected);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.SpringLengthNotKnown);
        Assert.Empty(torque.Sheet());
    }

    [Fact]
    public void Of_WearNotKnown_LowersOnlyTheLowEnd()
    {
        // hand: 2 faces × 3.175 mm = 6.35 mm is more than the 5 mm of deflection: low 0; one face leaves 267.75 × (1 - 3.175/5) = 97.7 N·m
        ClutchCondition condition = ClutchCondition.AsOf(Build.Today).WithSurface(SurfaceState.Dry).WithRunIn(RunInState.RunIn);
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), condition);
        Assert.Equal(0, torque.Running.Low.NewtonMeters);
        DiscClutch oneFace = DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 1, Build.Exact(0.35), Build.NinePack())
            .WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(45), Build.Stated));
        Assert.Equal(97.7, SlipTorque.Of(oneFace, condition).Running.Low.NewtonMeters, 0.05);
        Assert.Equal(535.5, Build.Expected(torque.Running), 0.005);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.WearNotKnown);
    }

    [Theory]
    [InlineData(1.587, false)]
    [InlineData(1.589, true)]
    public void Of_WearAtLimit_IsWornOut(double wearMm, bool wornOut)
    {
        ClutchCondition condition = Build.Clean(RunInState.RunIn)
            .WithWear(LengthBand.Exactly(Length.FromMillimeters(wearMm), Build.Stated));
        Assert.Equal(wornOut, SlipTorque.Of(Build.NineSprings(), condition).Findings.Any(f => f.Code == ClutchFindings.WornOut));
    }

    [Fact]
    public void Of_FacingPressure_IsJudgedOnBothSidesOfItsLimit()
    {
        // hand: 7200 N run in: 7200 / (2π × 0.0875 × 0.0375) = 349.2 kPa
        Assert.Contains(Pressed(349e3), f => f.Code == ClutchFindings.FacingPressureHigh);
        Assert.DoesNotContain(Pressed(350e3), f => f.Code == ClutchFindings.FacingPressureHigh);
        Assert.Contains(
            SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn)).Findings, f => f.Code == ClutchFindings.FacingLimitNotKnown);

        static IReadOnlyList<Finding> Pressed(double limitPa) => SlipTorque.Of(
            Build.NineSprings().WithFacing(Build.Exact(0.35).WithPressureLimit(Pressure.FromPascals(limitPa), Build.Stated)),
            Build.Clean(RunInState.RunIn)).Findings;
    }

    [Fact]
    public void Of_LeverMeasurement_BeatsTheCalculation()
    {
        // hand: 200 N × 3 m = 600 N·m, read within 10 %: 540 to 660; breakaway high 660 × 1.4 = 924
        ClutchCondition measured = Build.Clean(RunInState.RunIn).WithStorage(Build.Today.AddDays(-30))
            .WithSlipTest(SlipTest.Lever(Build.Today.AddDays(-3), Force.FromNewtons(200), Length.FromMeters(3)));
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), measured);
        Assert.Equal(SlipTorqueSource.Measured, torque.Source);
        Assert.Equal(540, torque.Running.Low.NewtonMeters, 1e-9);
        Assert.Equal(600, Build.Expected(torque.Running), 1e-9);
        Assert.Equal(660, torque.Running.High!.Value.NewtonMeters, 1e-9);
        Assert.Equal(924, torque.Breakaway.High!.Value.NewtonMeters, 1e-9);
        Assert.Equal([200, 3, 600, 0.1, 540, 660, 1.4, 924], torque.Sheet().Select(l => Math.Round(l.Value, 9)));
        Assert.Equal(535.5, torque.SpringSheet().Last(l => l.End == SheetEnd.MostLikely).Value, 1e-9);   // what the springs would give
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.MeasuredDiffers); // 535.5 exactly is not in 540 to 660
    }

    [Fact]
    public void Of_BreakawayRead_IsKept()
    {
        SlipTest test = SlipTest.Lever(Build.Today, Force.FromNewtons(180), Length.FromMeters(3))
            .WithBreakaway(
                TorqueBand.Between(Torque.FromNewtonMeters(640), Torque.FromNewtonMeters(700), Torque.FromNewtonMeters(760), Build.Stated));
        SlipTorque torque = SlipTorque.OfMeasured(Build.Clean(RunInState.RunIn).WithSlipTest(test));
        Assert.Equal(760, torque.Breakaway.High!.Value.NewtonMeters, 1e-9);
        Assert.DoesNotContain(torque.Findings, f => f.Code == ClutchFindings.MeasuredDiffers);
    }

    [Fact]
    public void OfMeasured_NoMeasurement_IsRefused() =>
        Assert.Throws<ArgumentException>(() => SlipTorque.OfMeasured(Build.Trusted(RunInState.RunIn)));

    [Fact]
    public void OfMeasured_Hot_LosesAtTheLowEndOnly()
    {
        ClutchCondition condition = ClutchCondition.AsOf(Build.Today).WithSurface(SurfaceState.Hot)
            .WithSlipTest(SlipTest.Measured(Build.Today, TorqueBand.Exactly(Torque.FromNewtonMeters(600), Build.Stated)));
        SlipTorque torque = SlipTorque.OfMeasured(condition);
        Assert.Equal(420, torque.Running.Low.NewtonMeters, 1e-9); // hand: 0.7 × 600
        Assert.Equal(600, torque.Running.High!.Value.NewtonMeters, 1e-9);
        Assert.Equal(BasisKind.FromMemory, torque.Running.Basis.Low.Kind);
        Assert.Equal(BasisKind.Given, torque.Running.Basis.High.Kind);
    }

    [Theory]
    [InlineData(SurfaceState.Oiled, 60)] // hand: 600 × 0.03 / 0.30
    [InlineData(SurfaceState.Glazed, 300)] // hand: 600 × 0.5
    public void OfMeasured_OilOrGlaze_MayHaveComeAfterTheTest(SurfaceState surface, double lowNm)
    {
        ClutchCondition condition = ClutchCondition.AsOf(Build.Today).WithSurface(surface)
            .WithSlipTest(SlipTest.Measured(Build.Today, TorqueBand.Exactly(Torque.FromNewtonMeters(600), Build.Stated)));
        Assert.Equal(lowNm, SlipTorque.OfMeasured(condition).Running.Low.NewtonMeters, 1e-9);
    }

    [Fact]
    public void OfStated_UnknownSurface_IsNeverAssured()
    {
        TorqueBand book = TorqueBand.Between(
            Torque.FromNewtonMeters(540), Torque.FromNewtonMeters(610), Torque.FromNewtonMeters(680), Build.Stated);
        SlipTorque torque = SlipTorque.OfStated(book, ClutchCondition.AsOf(Build.Today));
        Assert.Equal(SlipTorqueSource.Stated, torque.Source);
        Assert.Equal(54, torque.Running.Low.NewtonMeters, 1e-9); // hand: oil 0.04 × 0.75 = 0.03 against dry 0.35 - 0.05: 540 × 0.1
        Assert.Equal(748, torque.Running.High!.Value.NewtonMeters, 1e-9); // hand: faces not known may be damp: 680 × 1.1
        Assert.Null(torque.Breakaway.High);
        Assert.Throws<ArgumentException>(
            () => SlipTorque.OfStated(TorqueBand.AtLeast(Torque.FromNewtonMeters(5), Build.Stated), ClutchCondition.AsOf(Build.Today)));
    }

    [Fact]
    public void Sheet_Calculated_EndsEachEndAtItsTorque()
    {
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn));
        Assert.Equal(
            ["freeLength", "springLength", "wear", "deflection", "springRate", "coilForce", "springCount", "springFactor", "clampForce",
                "faces", "friction", "outerRadius", "innerRadius", "uniformWearRadius", "peakPressure", "slipTorque"],
            torque.Sheet().Where(l => l.End == SheetEnd.MostLikely).Select(l => l.Formula.Code));
        double Last(SheetEnd end) => torque.Sheet().Last(l => l.Formula.Code == "slipTorque" && l.End == end).Value;
        Assert.Equal(torque.Running.Low.NewtonMeters, Last(SheetEnd.Lowest), 1e-9);
        Assert.Equal(Build.Expected(torque.Running), Last(SheetEnd.MostLikely), 1e-9);
        Assert.Equal(torque.Running.High!.Value.NewtonMeters, Last(SheetEnd.Highest), 1e-9);
    }

    [Fact]
    public void Of_SensitiveSprings_SayHowMuch()
    {
        // hand: 0.4 mm of 5 mm is 8 %; LP51 prints 15 % for 0.4 mm on a stiffer clutch
        Finding finding = SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn)).Findings.Single(
            f => f.Code == ClutchFindings.SensitiveSetting);
        Assert.Equal(8, finding.Parameter("percent")!.Value, 1e-9);
    }

    [Theory]
    [InlineData(RunInState.New, ClutchFindings.NotRunIn)]
    [InlineData(RunInState.NotKnown, ClutchFindings.RunInNotKnown)]
    public void Of_RunIn_IsFound(RunInState runIn, string code) =>
        Assert.Contains(SlipTorque.Of(Build.NineSprings(), Build.Clean(runIn)).Findings, f => f.Code == code);

    [Theory]
    [InlineData(SurfaceState.NotKnown, ClutchFindings.SurfaceNotKnown)]
    [InlineData(SurfaceState.Oiled, ClutchFindings.Oiled)]
    [InlineData(SurfaceState.Glazed, ClutchFindings.Glazed)]
    public void Of_DoubtfulSurface_IsFoundAndLowersTheLowEnd(SurfaceState surface, string code)
    {
        SlipTorque dry = SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn));
        SlipTorque doubtful = SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn).WithSurface(surface));
        Assert.Contains(doubtful.Findings, f => f.Code == code);
        Assert.True(doubtful.Running.Low < dry.Running.Low);
        double rise = surface == SurfaceState.NotKnown ? 1.1 : 1; // faces not known may be damp
        Assert.Equal(rise * dry.Running.High!.Value.NewtonMeters, doubtful.Running.High!.Value.NewtonMeters, 1e-9);
    }

    private static DiscClutch At(double lengthMm, double toleranceMm) =>
        Build.NineSprings().WithSpringLength(Length.FromMillimeters(lengthMm), Length.FromMillimeters(toleranceMm));
}
