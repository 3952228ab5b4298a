using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

/// <summary>Each end of the force of a pack. Nine springs: 50 mm free, 40 mm solid, 160 N/mm each.</summary>
public class SpringPackEndsTests
{
    private static readonly DiscSpring Disc = Din2093.Find('A', Length.FromMillimeters(50)).Spring;   // t 3 mm, l0 4.1 mm

    // 100 mm outside, 2 mm thick and 4 mm of cone: h0/t = 2, above √2, so the force falls before flat.
    private static readonly DiscSpring Falling = DiscSpring.Of(
        Length.FromMillimeters(100), Length.FromMillimeters(51), Length.FromMillimeters(2), Length.FromMillimeters(6));

    [Theory]
    [InlineData(4, 5, 6, 5760, 7200.0, 8640.0, "1440 N/mm times each")]
    [InlineData(4, 5, 10.1, 5760, 7200.0, null, "the longest may be solid")]
    [InlineData(9, 10.1, 10.2, 12960, null, null, "expected solid")]
    [InlineData(10.1, 10.2, 10.3, 14400, null, null, "solid for certain: at least 1440 · 10 N")]
    public void ForceN_BandOfDeflections_IsWorkedEndByEnd(
        double lowMm, double mm, double highMm, double low, double? expected, double? high, string working)
    {
        Band force = Build.NinePack().ForceN(new Band(lowMm / 1000, mm / 1000, highMm / 1000));
        Close.Relative(low, force.Low, 1e-9, working);
        Assert.Equal(expected ?? double.PositiveInfinity, force.Expected, 1e-6);
        Assert.Equal(high ?? double.PositiveInfinity, force.High, 1e-6);
    }

    [Fact]
    public void Coils_RateForceAndTravel_AreSums()
    {
        SpringPack pack = Build.NinePack();
        Close.Relative(1.44e6, pack.RateNPerM(0.003), 1e-12, "9 · 160 N/mm");
        Close.Relative(7200, pack.NominalN(0.005), 1e-12, "1440 N/mm · 5 mm");
        Assert.Equal(0, pack.NominalN(-0.001));
        Close.Relative(14400, pack.LargestN, 1e-9, "1440 N/mm · 10 mm");
        Close.Relative(0.010, pack.TravelM, 1e-9, "50 - 40 mm");
        Assert.True(pack.TryDeflectionFor(Force.FromNewtons(7200), out Length deflection));
        Close.Relative(5, deflection.Millimeters, 1e-9, "7200 / 1440");
        Assert.False(pack.TryDeflectionFor(Force.FromNewtons(14500), out Length none));
        Assert.Equal(Length.Zero, none);
    }

    // The factor 1.1 of a measured force counts in what the springs reach: 15 840 N at solid, 3300 N at 3300/1584 mm.
    [Fact]
    public void Measured_Force_ScalesDeflectionAndLimit()
    {
        SpringPack pack = Build.NinePack().WithMeasuredForce(Length.FromMillimeters(45), ForceBand.Between(
            Force.FromNewtons(7200), Force.FromNewtons(7920), Force.FromNewtons(8640), Build.Stated));
        Close.Relative(15840, pack.LargestN, 1e-9, "1.1 · 14 400 N");
        Close.Relative(3300.0 / 1584, pack.DeflectionFor(Force.FromNewtons(3300)).Millimeters, 1e-9, "1.1 · 1440 N/mm = 1584 N/mm");
        Close.Relative(1.0, pack.Factor.Low, 1e-12, "7200 of 7200 N");
        Close.Relative(1.1, pack.Factor.Expected, 1e-12, "7920 of 7200 N");
        Close.Relative(1.2, pack.Factor.High, 1e-12, "8640 of 7200 N");
    }

    [Fact]
    public void WithMeasuredForce_WhatTellsNothing_IsRefused()
    {
        SpringPack pack = Build.NinePack();
        ForceBand force = ForceBand.Exactly(Force.FromNewtons(7000), Build.Stated);
        Assert.Throws<ArgumentException>(
            () => pack.WithMeasuredForce(Length.FromMillimeters(45), ForceBand.AtLeast(Force.FromNewtons(7000), Build.Stated)));
        Assert.Throws<ArgumentException>(
            () => pack.WithMeasuredForce(Length.FromMillimeters(45), ForceBand.Exactly(Force.Zero, Build.Stated)));
        Assert.Throws<ArgumentException>(() => pack.WithMeasuredForce(Length.FromMillimeters(50), force));
        Assert.Throws<ArgumentNullException>(() => pack.WithMeasuredForce(Length.FromMillimeters(45), null!));
        Assert.Throws<ArgumentNullException>(() => SpringPack.Of((DiscSpring)null!));
        Assert.Throws<ArgumentNullException>(() => SpringPack.Of(null!, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => pack.WithMeasuredForce(Length.FromMillimeters(39.9), force));
        Assert.Throws<ArgumentOutOfRangeException>(() => pack.WithMeasuredForce(Length.FromMillimeters(50.1), force));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(48, true)]
    [InlineData(49, false)]
    public void Of_Count_IsOneToFortyEight(int count, bool accepted)
    {
        CoilSpring spring = ((CoilPack)Build.NinePack()).Spring;
        Assert.Equal(accepted, Record.Exception(() => SpringPack.Of(spring, count)) is null);
        Assert.Equal(accepted, Record.Exception(() => DiscPack.Of(Disc, 1, 1, count)) is null);
        Assert.Equal(count is 1, Record.Exception(() => DiscPack.Of(Disc, count, 1, 1)) is null);
        Assert.Equal(count is not 0, Record.Exception(() => DiscPack.Of(Disc, 1, count, 1)) is null);
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(6, false)]
    public void Of_DiscsInParallel_AreFiveAtMost(int parallel, bool accepted) =>
        Assert.Equal(accepted, Record.Exception(() => DiscPack.Of(Disc, parallel, 1, 1)) is null);

    [Theory]
    [InlineData(50, true)]
    [InlineData(51, false)]
    public void Of_SetsInSeries_AreFiftyAtMost(int series, bool accepted) =>
        Assert.Equal(accepted, Record.Exception(() => DiscPack.Of(Disc, 1, series, 1)) is null);

    [Fact]
    public void Lengths_NotAboveNothing_AreRefused()
    {
        SpringPack pack = Build.NinePack();
        Assert.Throws<ArgumentOutOfRangeException>(() => pack.ForceAtLength(Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => pack.TravelLeft(Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => pack.ForceAtDeflection(Length.FromMillimeters(-0.1)));
        Assert.Equal(0, pack.ForceAtDeflection(Length.Zero).High!.Value.Newtons);
    }

    // Two in parallel double the rate, three sets in series take a third of it, four stacks four times: 4 · 2 / 3 of one disc's, at a
    // third of the deflection.
    [Fact]
    public void Discs_RateAndForce_FollowTheStack()
    {
        DiscPack pack = DiscPack.Of(Disc, 2, 3, 4);
        Close.Relative(
            8.0 / 3 * DiscSpringKernel.RateNPerM(Disc.Shape, 0.0004), pack.RateNPerM(0.0012), 1e-12, "4 · 2 / 3 of one, at 0.4 mm");
        NoSteps none = default;
        Close.Relative(8 * DiscSpringKernel.ForceN(Disc.Shape, 0.0004, ref none), pack.NominalN(0.0012), 1e-12, "4 · 2 of one, at 0.4 mm");
        Assert.Equal(0, pack.NominalN(-0.001));
        Close.Relative(3 * 1.1, pack.TravelM * 1000, 1e-9, "3 · (4.1 - 3) mm");
        double force = pack.NominalN(0.0012) * pack.Factor.Expected;
        Close.Relative(0.0012, pack.DeflectionM(force), 1e-9, "there and back");
        Assert.Equal(0, pack.DeflectionM(0));
        Assert.True(double.IsNaN(pack.DeflectionM(pack.LargestN)));   // flat: nobody knows what it holds there
        Assert.True(double.IsNaN(pack.DeflectionM(pack.LargestN * 1.001)));
    }

    // A power of two for the rate, so that force over rate is the travel to the bit: solid, nobody knows what they hold.
    [Fact]
    public void Coils_ForceAtSolid_HasNoDeflection()
    {
        SpringPack pack = SpringPack.Of(
            CoilSpring.OfRate(
                ForcePerLength.FromNewtonsPerMeter(131072), Length.FromMillimeters(50), Length.FromMillimeters(40), Build.Stated), 1);
        Assert.True(double.IsNaN(pack.DeflectionM(pack.LargestN)));
        Close.Relative(0.005, pack.DeflectionM(131072 * 0.005), 1e-12, "half way");
    }

    // Measured a quarter above the formula: that force, too, is found at the deflection it was measured at.
    [Fact]
    public void Discs_MeasuredForce_ScalesTheDeflection()
    {
        double nominal = SpringPack.Of(Disc).NominalN(0.0004);
        SpringPack pack = SpringPack.Of(Disc).WithMeasuredForce(
            Length.FromMillimeters(4.1 - 0.4), ForceBand.Exactly(Force.FromNewtons(1.25 * nominal), Build.Stated));
        Close.Relative(0.0004, pack.DeflectionM(1.25 * nominal), 1e-9, "4.1 - 3.7 mm");
    }

    [Fact]
    public void Discs_Steps_HaveTheStack()
    {
        StepList log = StepList.New();
        DiscPack.Of(Disc, 2, 3, 4).NominalN(0.0012, ref log);
        Assert.Equal(3, Assert.Single(log.Lines, l => l.Formula == ClutchInputs.Series).Value);
        Assert.Equal(2, Assert.Single(log.Lines, l => l.Formula == ClutchInputs.Parallel).Value);
    }

    // Its peak lies before flat at t (h - √((h² - 2)/3)) = 2 (2 - √(2/3)) = 2.367 mm of 4: the largest force is there, and reached.
    [Fact]
    public void Discs_ForceThatFalls_PeaksWhereItsRateVanishes()
    {
        SpringPack pack = SpringPack.Of(Falling);
        double peak = DiscSpringKernel.PeakM(Falling.Shape);
        Close.Relative(0.0023670, peak, 1e-4, "2 (2 - √(2/3)) mm");
        Close.Relative(pack.NominalN(peak), pack.LargestN, 1e-12, "not at flat");
        Close.Relative(peak, pack.DeflectionM(pack.LargestN), 1e-9, "reached at its peak");
        Assert.True(double.IsPositiveInfinity(DiscSpringKernel.PeakM(Disc.Shape)));   // h0/t = 1.1/3

        // Behind the peak the force falls: the least of a band of deflections is at its far end, the most at its near end.
        Band behind = pack.ForceN(new Band(peak + 2e-4, peak + 4e-4, peak + 6e-4));
        Close.Relative(pack.NominalN(peak + 6e-4) * pack.Factor.Low, behind.Low, 1e-12, "far end");
        Close.Relative(pack.NominalN(peak + 2e-4) * pack.Factor.High, behind.High, 1e-12, "near end");
        Band before = pack.ForceN(new Band(peak - 6e-4, peak - 4e-4, peak - 2e-4));
        Close.Relative(pack.NominalN(peak - 6e-4) * pack.Factor.Low, before.Low, 1e-12, "near end");
        Close.Relative(pack.NominalN(peak - 2e-4) * pack.Factor.High, before.High, 1e-12, "far end");
    }

    // One disc alone has friction at its edges only, 0.05: 1/1.05 unloading, 1/0.95 loading; a set of three 2 · 0.03 more.
    [Theory]
    [InlineData(1, false, 1 / 1.05)]
    [InlineData(1, true, 1 / 0.95)]
    [InlineData(3, false, 1 / 1.11)]
    [InlineData(3, true, 1 / 0.89)]
    public void FrictionFactor_OfASet_CountsLayersAndEdges(int parallel, bool loading, double factor) => Close.Relative(
        factor, DiscPack.FrictionFactor(parallel, DiscPack.MostLayerFriction, DiscPack.MostEdgeFriction, loading), 1e-12, "1 / (1 ± loss)");
}
