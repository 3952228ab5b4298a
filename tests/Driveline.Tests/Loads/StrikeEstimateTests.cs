using Driveline.Findings;
using Driveline.Loads;
using Driveline.Provenance;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class StrikeEstimateTests
{
    // ω 50 rad/s, T₀ 300 N·m, line 0.05 kg·m², engine 4.95 kg·m², 2000 N·m/rad:
    // without slip 300 + 50 × √(5 × 2000) = 5300 N·m; behind a clutch of 900 N·m 900 + 50 × √(0.05 × 2000) = 1400 N·m.
    private static readonly DrivingSide Full = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(50), Nm(300))
        .WithClutchCapacity(Nm(900)).WithEngineInertia(KgM2(4.95)).WithLineInertia(KgM2(0.05)).WithStiffness(NmPerRad(2000));

    [Fact]
    public void Peak_ClutchSlips_IsCapacityPlusTheLine()
    {
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Blade, Full);
        Close.Relative(1400, strike.Peak.Expected!.Value.NewtonMeters, 1e-12, "hand: 900 + 50 × √100");
        Close.Relative(1400, strike.Peak.High!.Value.NewtonMeters, 1e-12, "hand");
        Close.Relative(300, strike.Peak.Low.NewtonMeters, 1e-12, "what gives way may add nothing to T₀");
        Close.Relative(1400, strike.WithDeadStop().Peak.Low.NewtonMeters, 1e-12, "hand");
        Assert.True(strike.PassesDriveline);
    }

    [Fact]
    public void Peak_LargeClutch_IsTheWholeInertia() => Close.Relative(
        5300,
        StrikeEstimate.Of(StrikePlace.Blade, Full.WithClutchCapacity(Nm(6000))).Peak.High!.Value.NewtonMeters,
        1e-12,
        "hand: 300 + 50 × √10000, below 6000 + 500");

    [Fact]
    public void Peak_UnknownEngine_IsStillCappedByTheClutch()
    {
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(50), Nm(300))
            .WithClutchCapacity(Nm(900)).WithLineInertia(KgM2(0.05)).WithStiffness(NmPerRad(2000));
        Close.Relative(1400, StrikeEstimate.Of(StrikePlace.Blade, side).Peak.High!.Value.NewtonMeters, 1e-12,
            "hand: the clutch passes 900 whatever turns before it");
    }

    [Fact]
    public void Peak_UnknownCapacity_IsTheWholeInertiaAndAFinding()
    {
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(50), Nm(300))
            .WithEngineInertia(KgM2(4.95)).WithLineInertia(KgM2(0.05)).WithStiffness(NmPerRad(2000));
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Blade, side);
        Close.Relative(5300, strike.Peak.High!.Value.NewtonMeters, 1e-12, "hand");
        Assert.Contains(strike.Findings, f => f.Code == LoadsFindings.StrikeCapacityNotKnown && f.Severity == Severity.Warning);
        Assert.Equal(BasisKind.FromMemory, strike.Peak.WeakestBasis.Kind);
    }

    [Theory]
    [InlineData(false, true, true, LoadsFindings.StrikeCapacityNotKnown)]
    [InlineData(true, false, true, LoadsFindings.StrikeLineInertiaNotKnown)]
    [InlineData(true, true, false, LoadsFindings.StrikeStiffnessNotKnown)]
    public void Peak_OneFactMissing_HasNoUpperEnd(bool capacity, bool line, bool stiffness, string code)
    {
        DrivingSide side = DrivingSide.At(Rated, Nm(300));
        side = capacity ? side.WithClutchCapacity(Nm(900)) : side;
        side = line ? side.WithLineInertia(KgM2(0.05)) : side;
        side = stiffness ? side.WithStiffness(NmPerRad(2000)) : side;
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Blade, side);
        Assert.False(strike.Peak.HasExpected);
        Assert.Equal(300, strike.Peak.Low.NewtonMeters);
        Assert.Contains(strike.Findings, f => f.Code == code);
    }

    [Fact]
    public void Peak_Pan_IsThatOfAWedgedOne_AndMayBeNothing()
    {
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Pan, Full).WithDeadStop();
        Assert.Null(strike.PassesDriveline);
        Close.Relative(1400, strike.Peak.High!.Value.NewtonMeters, 1e-12, "hand, as for a stop of the driveline");
        Close.Relative(300, strike.Peak.Low.NewtonMeters, 1e-12, "mostly it goes past");
        Assert.Contains(strike.Findings, f => f.Code == LoadsFindings.StrikePanMayWedge);
        Assert.DoesNotContain(strike.Findings, f => f.Code == LoadsFindings.StrikePlaceNotKnown);
    }

    [Fact]
    public void Peak_Deck_GoesPastTheDriveline()
    {
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Deck, Full).WithDeadStop().WithRotor(KgM2(10), NmPerRad(4000));
        Assert.False(strike.PassesDriveline);
        Assert.Equal(Full.Steady, strike.Peak);
        Assert.Null(strike.RotorSidePeak);
        Assert.Null(strike.RotorEnergy);
        Assert.Equal([LoadsFindings.StrikeDoesNotPass], strike.Findings.Select(f => f.Code));
    }

    [Fact]
    public void Peak_PlaceNotKnown_IsTheWorstOfThem()
    {
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.NotKnown, Full).WithDeadStop().WithRotor(KgM2(10), NmPerRad(4000));
        Assert.Null(strike.PassesDriveline);
        Close.Relative(1400, strike.Peak.High!.Value.NewtonMeters, 1e-12, "hand, as for a stop of the driveline");
        Close.Relative(300, strike.Peak.Low.NewtonMeters, 1e-12, "it may have been the deck");
        Assert.NotNull(strike.RotorSidePeak);
        Assert.Contains(strike.Findings, f => f.Code == LoadsFindings.StrikePlaceNotKnown);
    }

    // A rotor stopped at its blades spends ½ J ω² in the stump; before it nothing changes, however heavy it is.
    [Fact]
    public void Peak_RotorStoppedAtItsBlades_DoesNotDependOnTheRotor()
    {
        StrikeEstimate light = StrikeEstimate.Of(StrikePlace.Blade, Full).WithRotor(KgM2(1));
        StrikeEstimate heavy = StrikeEstimate.Of(StrikePlace.Blade, Full).WithRotor(KgM2(100));
        Assert.Equal(light.Peak, heavy.Peak);
        Close.Relative(1250, light.RotorEnergy!.Expected!.Value.Joules, 1e-12, "hand: ½ × 1 × 50²");
        Assert.Null(heavy.RotorSidePeak);
        Assert.Contains(light.Findings, f => f.Code == LoadsFindings.StrikeRotorSpendsItself);
    }

    // Something before the rotor stops: 50 × √(2 × 3200) = 4000 N·m from the rotor's side.
    [Fact]
    public void RotorSidePeak_StopBeforeTheRotor_IsTheRotorsInertia()
    {
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Driveline, Full).WithRotor(KgM2(2), NmPerRad(3200));
        Close.Relative(4000, strike.RotorSidePeak!.High!.Value.NewtonMeters, 1e-12, "hand: 50 × √6400");
        Assert.Equal(0, strike.RotorSidePeak.Low.NewtonMeters);
        Close.Relative(
            4000, strike.WithOverrun(OverrunClutch.None).WithDeadStop().RotorSidePeak!.Low.NewtonMeters, 1e-12,
                "hand: no freewheel, dead stop");
        Assert.Contains(strike.Findings, f => f.Code == LoadsFindings.StrikeRotorLoadsLine && f.Severity == Severity.Danger);
        Assert.Contains(strike.Findings, f => f.Code == LoadsFindings.StrikeOverrunNotKnown);
        StrikeEstimate free = strike.WithOverrun(OverrunClutch.Fitted);
        Assert.Null(free.RotorSidePeak);
        Assert.DoesNotContain(free.Findings, f => f.Code == LoadsFindings.StrikeRotorLoadsLine);
        Assert.Equal(strike.Peak, free.Peak);
    }

    [Fact]
    public void Findings_RotorNotKnown_StillWarnsWithoutABound()
    {
        Finding finding = Assert.Single(
            StrikeEstimate.Of(StrikePlace.Driveline, Full).Findings, f => f.Code == LoadsFindings.StrikeRotorLoadsLine);
        Assert.Equal(double.PositiveInfinity, finding.Parameter("peak")!.Value);
    }

    [Theory]
    [InlineData(900, false)]
    [InlineData(901, true)]
    public void Findings_SteadyAgainstCapacity_NameTheContradiction(double steady, bool isAbove)
    {
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Blade, Full.WithSteady(Nm(steady)));
        Assert.Equal(isAbove, strike.Findings.Any(f => f.Code == LoadsFindings.StrikeSteadyAboveCapacity));
        Assert.True(strike.Peak.Low.NewtonMeters >= steady - 1e-9);
    }

    [Fact]
    public void Sheet_OfADeadStop_ShowsBothWaysForEachEnd() => Assert.Equal(
        [5300, 1400, 1400, 5300, 1400, 1400, 5300, 1400, 1400],
        StrikeEstimate.Of(StrikePlace.Blade, Full).WithDeadStop().Sheet()
            .Where(l => !l.Formula.IsInput).Select(l => Math.Round(l.Value, 6)));

    [Fact]
    public void Sheet_WhenSomethingMayGiveWay_HasNoLowestEnd() => Assert.Equal(
        [SheetEnd.MostLikely, SheetEnd.Highest],
        StrikeEstimate.Of(StrikePlace.Blade, Full).Sheet().Select(l => l.End).Distinct());

    [Fact]
    public void At_SpeedNotAbove0_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DrivingSide.At(RotationalSpeed.Zero, Nm(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Full.WithSpeed(RotationalSpeed.FromRevolutionsPerMinute(-1)));
        Assert.Throws<ArgumentNullException>(() => StrikeEstimate.Of(StrikePlace.Blade, null!));
    }
}
