using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class SpringPackTests
{
    [Fact]
    public void CoilPack_DocumentedExample_Matches() =>
        Assert.Equal(7200, Build.NinePack().ForceAtDeflection(Length.FromMillimeters(5)).Expected!.Value.Newtons, 1e-6);

    [Fact]
    public void OfWire_DocumentedExample_Matches()
    {
        CoilSpring spring = CoilSpring.OfWire(
            Length.FromMillimeters(7), Length.FromMillimeters(42), 10, CoilEnds.SquaredGround, Pressure.FromGigapascals(81.37),
                Length.FromMillimeters(110));
        Assert.Equal(41.2, spring.Rate.NewtonsPerMillimeter, 0.05);
        Assert.Equal(70, spring.SolidLength.Millimeters, 1e-9);
        Assert.True(spring.LowRate < spring.Rate && spring.Rate < spring.HighRate);
    }

    [Fact]
    public void ShearStress_DocumentedExample_Matches()
    {
        CoilSpring spring = CoilSpring.OfWire(
            Length.FromMillimeters(3), Length.FromMillimeters(18), 17, CoilEnds.SquaredGround, Length.FromMillimeters(80));
        Assert.Equal(85.05, spring.ShearStress(Force.FromNewtons(40))!.Value.Megapascals, 0.005);
        Assert.Null(Build.NinePack() is CoilPack pack ? pack.Spring.ShearStress(Force.FromNewtons(40)) : Pressure.Zero);
    }

    [Theory]
    [InlineData(CoilEnds.Plain, 10, 11)]
    [InlineData(CoilEnds.PlainGround, 9, 10)]
    [InlineData(CoilEnds.Squared, 8, 11)]
    [InlineData(CoilEnds.SquaredGround, 8, 10)]
    [InlineData(CoilEnds.NotKnown, 8, 11)]
    public void CoilEnds_TenCoils_FollowTheRule(CoilEnds ends, double active, double solidDiameters)
    {
        // reference pack, section 2: active coils and solid length by ends
        Assert.Equal(active, CoilSpringKernel.ActiveCoils(10, ends));
        Assert.Equal(solidDiameters, CoilSpringKernel.SolidLengthM(1, 10, ends));
    }

    [Fact]
    public void OfWire_EndsNotKnown_SpansEveryKind()
    {
        CoilSpring unknown = Spring(CoilEnds.NotKnown);
        foreach (CoilEnds ends in new[] { CoilEnds.Plain, CoilEnds.PlainGround, CoilEnds.Squared, CoilEnds.SquaredGround })
        {
            CoilSpring known = Spring(ends);
            Assert.True(unknown.LowRate <= known.LowRate && unknown.HighRate >= known.HighRate, ends.ToString());
            Assert.True(unknown.SolidLength >= known.SolidLength, ends.ToString());
        }

        static CoilSpring Spring(CoilEnds ends) =>
            CoilSpring.OfWire(Length.FromMillimeters(7), Length.FromMillimeters(42), 10, ends, Pressure.FromGigapascals(81.37),
                Length.FromMillimeters(110));
    }

    [Fact]
    public void CoilSpring_MeasuredRate_ReplacesTheComputedBand()
    {
        CoilSpring spring = CoilSpring.OfWire(
            Length.FromMillimeters(7), Length.FromMillimeters(42), 10, CoilEnds.SquaredGround, Length.FromMillimeters(110))
            .WithMeasuredRate(ForcePerLength.FromNewtonsPerMillimeter(39), ForcePerLength.FromNewtonsPerMillimeter(40),
                ForcePerLength.FromNewtonsPerMillimeter(41));
        ForceBand force = SpringPack.Of(spring, 2).ForceAtLength(Length.FromMillimeters(100));
        Assert.Equal(780, force.Low.Newtons, 1e-6);
        Assert.Equal(800, force.Expected!.Value.Newtons, 1e-6);
        Assert.Equal(820, force.High!.Value.Newtons, 1e-6);
        Assert.Equal(12, SpringPack.Of(spring.WithFreeLength(Length.FromMillimeters(112)), 1).FreeLength.Millimeters - 100, 1e-9);
        Assert.Equal(72, spring.WithSolidLength(Length.FromMillimeters(72)).SolidLength.Millimeters, 1e-9);
    }

    [Theory]
    [InlineData(0, 42, 10, 110)]
    [InlineData(7, 13.9, 10, 110)]
    [InlineData(7, 42, 2.4, 110)]
    [InlineData(7, 42, 10, 70)]
    [InlineData(7, 42, 10, -1)]
    public void OfWire_BadMeasure_IsRefused(double wireMm, double meanMm, double coils, double freeMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(
        () => CoilSpring.OfWire(
            Length.FromMillimeters(wireMm), Length.FromMillimeters(meanMm), coils, CoilEnds.SquaredGround, Length.FromMillimeters(freeMm)));

    [Fact]
    public void OfWire_FreeNotAboveSolid_NamesBoth()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(
            () => CoilSpring.OfWire(
                Length.FromMillimeters(7), Length.FromMillimeters(42), 10, CoilEnds.SquaredGround, Length.FromMillimeters(60)));
        Assert.Contains("above the solid length of 0.07 m; got 0.06 m", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(51, 0.0, 0.0)]
    [InlineData(50, 0.0, 0.0)]
    [InlineData(45, 7200.0, 7200.0)]
    [InlineData(40, 14400.0, null)]
    [InlineData(30, 14400.0, null)]
    public void ForceAtLength_FreeToSolid_IsHonest(double mm, double lowN, double? highN)
    {
        ForceBand force = Build.NinePack().ForceAtLength(Length.FromMillimeters(mm));
        Assert.Equal(lowN, force.Low.Newtons, 1e-6);
        Assert.Equal(highN is null, force.High is null);
        Assert.Equal(highN is null, force.Expected is null);
        if (highN is { } newtons)
        {
            Assert.Equal(newtons, force.High!.Value.Newtons, 1e-6);
        }
    }

    [Fact]
    public void DeflectionFor_BeyondSolid_NamesTheRange()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Build.NinePack().DeflectionFor(Force.FromNewtons(14401)));
        Assert.Contains("14400 N", error.Message, StringComparison.Ordinal);
        Assert.False(Build.NinePack().TryDeflectionFor(Force.FromNewtons(14401), out _));
        Assert.Throws<ArgumentOutOfRangeException>(() => Build.NinePack().DeflectionFor(Force.FromNewtons(-1)));
    }

    [Fact]
    public void TravelLeft_AtAndBelowSolid_IsNeverNegative()
    {
        Assert.Equal(5, Build.NinePack().TravelLeft(Length.FromMillimeters(45)).Millimeters, 1e-9);
        Assert.Equal(0, Build.NinePack().TravelLeft(Length.FromMillimeters(39)).Millimeters);
    }

    [Fact]
    public void DiscPack_SetsAndSeries_AddForceAndTravel()
    {
        // reference pack, section 3: n parallel force n F; i sets travel i s; length i (l0 + (n - 1) t)
        DiscSpring disc = Din2093.Find('A', Length.FromMillimeters(50)).Spring; // t 3, l0 4.1
        SpringPack pack = DiscPack.Of(disc, 2, 3, 1);
        Assert.Equal(3 * (4.1 + 3), pack.FreeLength.Millimeters, 1e-9);
        Assert.Equal(3 * (3.0 + 3), pack.SolidLength.Millimeters, 1e-9);
        double one = disc.Force(Length.FromMillimeters(0.8)).Expected!.Value.Newtons;
        Assert.Equal(2 * one, pack.ForceAtDeflection(Length.FromMillimeters(2.4)).Expected!.Value.Newtons, 1e-6);
        Assert.Equal(4 * one, DiscPack.Of(disc, 2, 3, 2).ForceAtDeflection(Length.FromMillimeters(2.4)).Expected!.Value.Newtons, 1e-6);
    }

    [Fact]
    public void DiscPack_LayerFriction_WidensTheBand()
    {
        // hand: n = 2, wM 0.03, wR 0.05: low 0.95 / 1.08, high 1.10 / 0.92 of a 5 mm thick disc's force
        DiscSpring disc = Din2093.Find('A', Length.FromMillimeters(80)).Spring;
        ForceBand force = DiscPack.Of(disc, 2, 1, 1).ForceAtDeflection(Length.FromMillimeters(1));
        Assert.Equal(0.95 / 1.08, force.Low.Newtons / force.Expected!.Value.Newtons, 1e-9);
        Assert.Equal(1.10 / 0.92, force.High!.Value.Newtons / force.Expected.Value.Newtons, 1e-9);
    }

    [Fact]
    public void DiscPack_ForceThatFalls_CoversThePeakWithinTheBand()
    {
        // h0/t = 2: the force peaks before flat. A band of lengths over the peak must reach it.
        DiscSpring disc = DiscSpring.Of(
            Length.FromMillimeters(100), Length.FromMillimeters(51), Length.FromMillimeters(2), Length.FromMillimeters(6));
        Assert.True(disc.ForceFallsBeforeFlat);
        SpringPack pack = SpringPack.Of(disc);
        double peakM = DiscSpringKernel.PeakM(disc.Shape);
        Assert.Equal(0, DiscSpringKernel.RateNPerM(disc.Shape, peakM) / DiscSpringKernel.RateNPerM(disc.Shape, 0), 1e-9);
        Band across = pack.ForceN(new Band(peakM - 3e-4, peakM - 1e-4, peakM + 3e-4));
        Assert.Equal(pack.NominalN(peakM) * pack.Factor.High, across.High, 1e-6);
        Assert.True(pack.DeflectionFor(Force.FromNewtons(pack.NominalN(peakM) * 0.99)).Meters < peakM);
        Assert.False(pack.TryDeflectionFor(Force.FromNewtons(pack.NominalN(peakM) * 1.01), out _));
    }

    [Fact]
    public void WithMeasuredForce_ScalesTheCurve()
    {
        DiscSpring disc = Din2093.Find('C', Length.FromMillimeters(100)).Spring;
        SpringPack pack = SpringPack.Of(disc).WithMeasuredForce(Length.FromMillimeters(4), ForceBand.Between(
            Force.FromNewtons(7000), Force.FromNewtons(7500), Force.FromNewtons(8000), Build.Stated));
        ForceBand force = pack.ForceAtLength(Length.FromMillimeters(4));
        Assert.Equal(7000, force.Low.Newtons, 1e-6);
        Assert.Equal(7500, force.Expected!.Value.Newtons, 1e-6);
        Assert.Equal(8000, force.High!.Value.Newtons, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => pack.WithMeasuredForce(Length.FromMillimeters(6.3), force));
        Assert.Throws<ArgumentException>(() => pack.WithMeasuredForce(Length.FromMillimeters(6.2), force));
    }

    [Fact]
    public void Stresses_AtFlat_HaveTheSignsOfTheStandard()
    {
        // hand, σOM at s = h0 of 250/125/10, h0 4 mm: 4 · 206e9 / 0.91 / (0.694333 · 0.25²) · 0.01 · 0.004 · 3/π = -797 MPa
        DiscSpring disc = DiscSpring.Of(
            Length.FromMillimeters(250), Length.FromMillimeters(125), Length.FromMillimeters(10), Length.FromMillimeters(14));
        DiscSpringStresses flat = disc.Stresses(Length.FromMillimeters(4));
        Assert.Equal(-797, flat.Middle.Megapascals, 0.5);
        Assert.True(flat.UpperInner.Megapascals < flat.Middle.Megapascals);
        Assert.True(flat.LowerOuter.Megapascals > 0);
        Assert.Equal(0, disc.Stresses(Length.Zero).LowerInner.Megapascals);
    }

    [Theory]
    [InlineData(1.24, 0.925, 1.25)]
    [InlineData(1.25, 0.925, 1.15)]
    [InlineData(3.0, 0.925, 1.15)]
    [InlineData(3.01, 0.95, 1.10)]
    [InlineData(6.0, 0.95, 1.10)]
    [InlineData(6.01, 0.95, 1.05)]
    public void DiscSpring_ForceTolerance_FollowsThickness(double mm, double low, double high)
    {
        // reference pack, section 3, tolerance on F in DIN 2093 (memory)
        DiscSpring disc = DiscSpring.Of(
            Length.FromMillimeters(100), Length.FromMillimeters(51), Length.FromMillimeters(mm), Length.FromMillimeters(mm + 2));
        ForceBand force = disc.Force(Length.FromMillimeters(1));
        Assert.Equal(low, force.Low.Newtons / force.Expected!.Value.Newtons, 1e-12);
        Assert.Equal(high, force.High!.Value.Newtons / force.Expected.Value.Newtons, 1e-12);
    }

    [Theory]
    [InlineData(50, 50, 3, 4)]
    [InlineData(50, 25, 0, 4)]
    [InlineData(50, 25, 13, 14)]
    [InlineData(50, 25, 3, 3)]
    [InlineData(50, 25, 3, 12.1)]
    public void DiscSpring_BadMeasure_IsRefused(double de, double di, double t, double l0) => Assert.Throws<ArgumentOutOfRangeException>(
        () => DiscSpring.Of(Length.FromMillimeters(de), Length.FromMillimeters(di), Length.FromMillimeters(t), Length.FromMillimeters(l0)));

    [Fact]
    public void Din2093_NotHeld_ListsTheSeries()
    {
        var error = Assert.Throws<ArgumentException>(() => Din2093.Find('C', Length.FromMillimeters(125)));
        Assert.Contains("250 mm", error.Message, StringComparison.Ordinal);
        Assert.False(Din2093.TryFind('D', Length.FromMillimeters(50), out _));
    }
}
