using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

/// <summary>Trust, pressures and sheets of a slip torque, fact by fact.</summary>
public class SlipTorqueTrustTests
{
    private static readonly ClutchCondition Trusted = Build.Trusted(RunInState.RunIn);

    private static readonly ClutchCondition Read = Build.Clean(RunInState.RunIn).WithStorage(Build.Today.AddDays(-40), 5)
        .WithSlipTest(SlipTest.Lever(Build.Today.AddDays(-1), Force.FromNewtons(180), Length.FromMeters(3)));

    private static DiscClutch At(double mm, double toleranceMm) => Build.NineSprings().WithSpringLength(LengthBand.Between(
        Length.FromMillimeters(mm - toleranceMm), Length.FromMillimeters(mm), Length.FromMillimeters(mm + toleranceMm), Build.Stated));

    [Theory]
    [InlineData(45, 0, SlipTrust.MayBeTrusted)]
    [InlineData(40.5, 1, SlipTrust.NotKnown)]            // down to 39.5 mm, and they are solid at 40
    [InlineData(40, 0, SlipTrust.MustNotBeTrusted)]
    [InlineData(39, 0, SlipTrust.MustNotBeTrusted)]
    public void Trust_OfATestedClutch_FallsWithItsSprings(double mm, double toleranceMm, SlipTrust trust)
    {
        SlipTorque torque = SlipTorque.Of(At(mm, toleranceMm), Trusted);
        Assert.Equal(trust, torque.Trust);
        Assert.Equal(trust == SlipTrust.MayBeTrusted, torque.MayBeTrustedToSlip);
    }

    // Springs that may be solid take trust away, they give none: a stuck clutch stays one that must not be trusted.
    [Fact]
    public void Trust_StuckWithSpringsThatMayBeSolid_StaysNone() => Assert.Equal(
        SlipTrust.MustNotBeTrusted, SlipTorque.Of(At(40.5, 1), Build.Clean(RunInState.RunIn).Stuck()).Trust);

    // 7200 N on π (125² - 87.5²) mm² = 25 034 mm²: 0.2876 MPa; at the inner radius 7200 / (2π · 87.5 · 37.5) = 0.3492 MPa.
    [Fact]
    public void Pressures_OfADescribedClutch_AreWorkedByHand()
    {
        SlipTorque torque = SlipTorque.Of(Build.NineSprings(), Trusted);
        Close.Relative(0.28761, torque.MeanPressure!.Expected!.Value.Megapascals, 1e-4, "7200 / 25 034 mm²");
        Close.Relative(0.34924, torque.PeakPressure!.Expected!.Value.Megapascals, 1e-4, "7200 / (2π · 87.5 · 37.5 mm²)");
        Assert.Null(SlipTorque.OfStated(TorqueBand.Exactly(Torque.FromNewtonMeters(500), Build.Stated), Trusted).MeanPressure);
        Assert.Null(SlipTorque.OfStated(TorqueBand.Exactly(Torque.FromNewtonMeters(500), Build.Stated), Trusted).PeakPressure);
    }

    // 180 N · 3 m = 540 N·m, read within 10 %: 486 to 594; the first slip at most 1.4 times as much on clean faces: 831.6.
    [Fact]
    public void Sheet_OfALeverTest_ListsWhatWasRead()
    {
        SlipTorque torque = SlipTorque.OfMeasured(Read);
        var lines = torque.Sheet();
        Assert.Equal(
            ["leverForce", "leverArm", "leverTorque", "readingError", "readLow", "readHigh"],
            lines.Take(6).Select(l => l.Formula.Code));
        double[] values = [.. lines.Take(6).Select(l => l.Value)];
        foreach ((double expected, double value) in new[] { 180, 3, 540, 0.1, 486, 594 }.Zip(values))
        {
            Close.Relative(expected, value, 1e-9, "180 N · 3 m ± 10 %");
        }

        Assert.Equal(["breakawayRatio", "breakawayTorque"], lines.Skip(6).Select(l => l.Formula.Code));
        Close.Relative(1.4, lines[6].Value, 1e-12, "first slip over running friction of clean faces, at most");
        Close.Relative(831.6, lines[7].Value, 1e-9, "1.4 · 594 N·m");
        Assert.Equal(ClutchInputs.BreakawayOfReading, lines[7].Formula);
        Assert.Empty(torque.SpringSheet());
    }

    [Fact]
    public void Sheet_OfALeverTestOnHotFaces_SaysWhatIsLeft() => Assert.Contains(
        SlipTorque.OfMeasured(Read.WithSurface(SurfaceState.Hot)).Sheet(), l => l.Formula.Code == "presentLow");

    [Fact]
    public void Sheet_FirstSlipReadApart_IsStatedAndNotOfTheRatio()
    {
        ClutchCondition both = Read.WithSlipTest(
            SlipTest.Lever(Build.Today.AddDays(-1), Force.FromNewtons(250), Force.FromNewtons(180), Length.FromMeters(3)));
        SlipTorque torque = SlipTorque.OfMeasured(both);
        Assert.True(torque.Breakaway.IsBounded);
        Assert.DoesNotContain(torque.Sheet(), l => l.Formula.Code == "breakawayRatio");
        Close.Relative(825, torque.Sheet()[^1].Value, 1e-9, "250 N · 3 m and 10 %");
        Assert.Equal(ClutchInputs.BreakawayStated, torque.Sheet()[^1].Formula);
    }

    [Fact]
    public void Sheet_OfATorqueRead_IsEmpty() => Assert.Empty(SlipTorque.OfMeasured(Read.WithSlipTest(
        SlipTest.Measured(Build.Today, TorqueBand.Exactly(Torque.FromNewtonMeters(600), Build.Stated)))).Sheet());

    // The reading stands in the sheet, the springs in one of their own: with a reading both, without one only the springs' own sheet.
    [Fact]
    public void SpringSheet_BesideAReading_IsTheCalculation()
    {
        Assert.Contains(SlipTorque.Of(Build.NineSprings(), Read).SpringSheet(), l => l.Formula.Code == "clampForce");
        Assert.Empty(SlipTorque.Of(Build.NineSprings(), Trusted).SpringSheet());
        Assert.Contains(SlipTorque.Of(Build.NineSprings(), Trusted).Sheet(), l => l.Formula.Code == "breakawayFriction");
        Assert.DoesNotContain(
            SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn)).Sheet(), l => l.Formula.Code == "breakawayFriction");
        Assert.Empty(SlipTorque.OfStated(TorqueBand.Exactly(Torque.FromNewtonMeters(500), Build.Stated), Trusted).Sheet());
    }

    [Fact]
    public void Findings_OfAReading_SayWhenAndHowMuch()
    {
        Finding measured = Assert.Single(SlipTorque.Of(Build.NineSprings(), Read).Findings, f => f.Code == ClutchFindings.Measured);
        Assert.Equal("2026-05-03", measured.Parameter("date")!.Text);
        Close.Relative(540, measured.Parameter("torque")!.Value, 1e-12, "180 N · 3 m");
        Assert.Contains(SlipTorque.Of(Build.NineSprings(), Read).Findings, f => f.Code == ClutchFindings.FadeNotCounted);
        Assert.DoesNotContain(
            SlipTorque.OfMeasured(Read.WithSurface(SurfaceState.Oiled)).Findings, f => f.Code == ClutchFindings.FadeNotCounted);
    }

    // 100 N · 3 m = 300 N·m, 330 at most; the springs as set give 2 · 0.35 · 7200 N · 107.35 mm = 541.1 N·m: tightened since.
    [Fact]
    public void Findings_SpringsAboveTheReading_AreTighterThanMeasured()
    {
        ClutchCondition read = Read.WithSlipTest(SlipTest.Lever(Build.Today.AddDays(-1), Force.FromNewtons(100), Length.FromMeters(3)));
        Finding tighter = Assert.Single(
            SlipTorque.Of(Build.NineSprings(), read).Findings, f => f.Code == ClutchFindings.TighterThanMeasured);
        Close.Relative(300, tighter.Parameter("measured")!.Value, 1e-12, "100 N · 3 m");
        Close.Relative(541.06, tighter.Parameter("calculated")!.Value, 1e-4, "2 · 0.35 · 7200 N · 107.35 mm");
        Assert.DoesNotContain(
            SlipTorque.Of(Build.NineSprings(), Read).Findings, f => f.Code == ClutchFindings.TighterThanMeasured);
        Assert.DoesNotContain(SlipTorque.OfMeasured(read).Findings, f => f.Code == ClutchFindings.TighterThanMeasured);
    }

    [Fact]
    public void Of_WithoutClutchOrCondition_IsRefused()
    {
        TorqueBand stated = TorqueBand.Exactly(Torque.FromNewtonMeters(500), Build.Stated);
        Assert.Throws<ArgumentNullException>(() => SlipTorque.Of(null!, Trusted));
        Assert.Throws<ArgumentNullException>(() => SlipTorque.Of(Build.NineSprings(), null!));
        Assert.Throws<ArgumentNullException>(() => SlipTorque.OfStated(stated, null!));
        Assert.Throws<ArgumentNullException>(() => SlipTorque.OfStated(null!, Trusted));
        Assert.Throws<ArgumentNullException>(() => SlipTorque.OfMeasured(null!));
        Assert.Throws<ArgumentNullException>(() => SlipTorque.NotKnown(null!));
    }

    [Fact]
    public void OfStated_OiledFaces_AreFound()
    {
        TorqueBand stated = TorqueBand.Exactly(Torque.FromNewtonMeters(500), Build.Stated);
        Assert.Contains(
            SlipTorque.OfStated(stated, Trusted.WithSurface(SurfaceState.Oiled)).Findings, f => f.Code == ClutchFindings.Oiled);
    }

    [Fact]
    public void OfStated_Unbounded_IsRefused() => Assert.Throws<ArgumentException>(
        () => SlipTorque.OfStated(TorqueBand.AtLeast(Torque.FromNewtonMeters(500), Build.Stated), Trusted));

    [Fact]
    public void NotKnown_Condition_MayStillSayThatItIsStuck()
    {
        SlipTorque torque = SlipTorque.NotKnown(Build.Clean(RunInState.NotKnown).Stuck());
        Assert.Equal(SlipTrust.MustNotBeTrusted, torque.Trust);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.Stuck);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.RunInNotKnown);
        Assert.Equal(SlipTorqueSource.NotKnown, torque.Source);
    }
}
