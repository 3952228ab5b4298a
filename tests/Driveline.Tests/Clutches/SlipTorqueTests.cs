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
}
