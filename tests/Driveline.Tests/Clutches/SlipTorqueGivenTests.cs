using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

/// <summary>A torque measured on the clutch, or stated by its maker, in place of a sum from its springs.</summary>
public class SlipTorqueGivenTests
{
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
}
