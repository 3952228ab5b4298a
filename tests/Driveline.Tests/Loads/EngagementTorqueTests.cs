using Driveline.Findings;
using Driveline.Loads;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class EngagementTorqueTests
{
    private static readonly Engagement Lever = Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(1100));

    [Fact]
    public void Peak_Abrupt_IsTheCapacityUpToTwice()
    {
        EngagementTorque start = EngagementTorque.Of(Lever.WithManner(EngagementManner.Abrupt), Rated);
        Assert.Equal(Nm(1100, 1100, 2200).ToString(), start.Peak.ToString());
        Finding swing = Assert.Single(start.Findings, f => f.Code == LoadsFindings.EngagementMayOvershoot);
        Assert.Equal(2200, swing.Parameter("peak")!.Value);
    }

    [Theory]
    [InlineData(PtoClutchKind.HandLever, EngagementManner.Gentle, 0, 1100, 1100, false)]
    [InlineData(PtoClutchKind.HandLever, EngagementManner.NotKnown, 0, 1100, 2200, false)]
    [InlineData(PtoClutchKind.HandLever, EngagementManner.Abrupt, 1100, 1100, 2200, false)]
    [InlineData(PtoClutchKind.Hydraulic, EngagementManner.Gentle, 0, 1100, 2200, true)]
    [InlineData(PtoClutchKind.Electric, EngagementManner.Gentle, 0, 1100, 2200, true)]
    [InlineData(PtoClutchKind.Electric, EngagementManner.Abrupt, 1100, 1100, 2200, false)]
    [InlineData(PtoClutchKind.NotKnown, EngagementManner.Gentle, 0, 1100, 2200, false)]
    public void Peak_ByClutchAndManner_OnlyAHandLeverFeathers(
        PtoClutchKind kind, EngagementManner manner, double low, double expected, double high, bool cannot)
    {
        EngagementTorque start = EngagementTorque.Of(Engagement.Through(kind).WithCapacity(Nm(1100)).WithManner(manner), Rated);
        Close.Absolute(low, start.Peak.Low.NewtonMeters, 1e-9, "capacity 1100 N·m");
        Close.Absolute(expected, start.Peak.Expected!.Value.NewtonMeters, 1e-9, "capacity 1100 N·m");
        Close.Absolute(high, start.Peak.High!.Value.NewtonMeters, 1e-9, "capacity 1100 N·m");
        Assert.Equal(cannot, start.Findings.Any(f => f.Code == LoadsFindings.EngagementNotFeatherable));
    }

    [Fact]
    public void Peak_UnknownCapacity_HasNoBoundAndSaysSo()
    {
        EngagementTorque start = EngagementTorque.Of(Engagement.Through(PtoClutchKind.Electric), Rated)
            .WithRotor(KgM2(2)).WithStiffness(NmPerRad(5000)).WithLoad(Nm(0));
        Assert.False(start.Peak.HasExpected);
        Assert.False(start.ToEngagement().IsKnown);
        Assert.Contains(start.Findings, f => f.Code == LoadsFindings.EngagementCapacityNotKnown && f.Severity == Severity.Warning);
        Finding rigid = Assert.Single(start.Findings, f => f.Code == LoadsFindings.EngagementRigidEstimate);
        Close.Relative(5655, rigid.Parameter("rigid")!.Value, 1e-3, "WE28: 56.549 × √(2 × 5000)");
        Assert.False(start.SynchronisingTime!.HasExpected);
        Close.Relative(3198, start.SlipHeat!.High!.Value.Joules, 1e-3, "hand: ½ × 2 × 56.549², no load: free of the clutch torque");
    }

    // A lower engine speed shortens time and heat; the peak of a clutch that bites stays.
    [Fact]
    public void Peak_LowEngineSpeed_StaysWhileTimeAndHeatFall()
    {
        EngagementTorque fast = EngagementTorque.Of(Lever.WithManner(EngagementManner.Abrupt), Rated).WithRotor(KgM2(2)).WithLoad(Nm(0));
        EngagementTorque slow = fast.WithPtoSpeed(RotationalSpeed.FromRevolutionsPerMinute(270));
        Assert.Equal(fast.Peak.ToString(), slow.Peak.ToString());
        Close.Relative(
            0.5, slow.SynchronisingTime!.Expected!.Value.Seconds / fast.SynchronisingTime!.Expected!.Value.Seconds, 1e-12, "t = J ω / T");
        Close.Relative(0.25, slow.SlipHeat!.Expected!.Value.Joules / fast.SlipHeat!.Expected!.Value.Joules, 1e-12, "E = ½ J ω²");
    }

    // Hand: √(2 × 2 kg·m² × 20 rad/s × 1100 N·m / 4 s) = √22000 = 148.3 N·m; with a load of 100 N·m 248.3 N·m.
    [Fact]
    public void Peak_LeverLetInOverSeconds_MeetsTheSpeedBelowTheCapacity()
    {
        EngagementTorque start = EngagementTorque.Of(Lever.WithManner(EngagementManner.Gentle), RotationalSpeed.FromRadiansPerSecond(20))
            .WithRotor(KgM2(2)).WithRise(Seconds(4));
        Close.Relative(Math.Sqrt(22000), start.Peak.High!.Value.NewtonMeters, 1e-12, "hand");
        Close.Relative(100 + Math.Sqrt(22000), start.WithLoad(Nm(100)).Peak.High!.Value.NewtonMeters, 1e-12, "hand");
        Close.Relative(148.3, start.ToEngagement().Highest!.High!.Value.NewtonMeters, 1e-3, "hand");
        Assert.True(start.ToEngagement().IsKnown);
    }

    // √(2 J ω T_c / t) reaches 1100 N·m at t = 2 × 2 × 20 / 1100 = 0.0727 s: shorter rises give the capacity.
    [Theory]
    [InlineData(0.07, 1100)]
    [InlineData(0.0727, 1100)]
    [InlineData(0.08, 1048.8)]
    public void ClutchTorque_AroundTheShortestUsefulRise_IsAtMostTheCapacity(double seconds, double nm)
    {
        EngagementTorque start = EngagementTorque.Of(Lever, RotationalSpeed.FromRadiansPerSecond(20)).WithRotor(KgM2(2))
            .WithRise(Seconds(seconds));
        Close.Relative(nm, start.ClutchTorque.Expected!.Value.NewtonMeters, 1e-4, "hand: √(88000 / t) at most 1100");
    }

    // ω_n = √(5000 / 2) = 50 rad/s; a bite of 0.4 s is x = 10: high end 1 + 1 / 10, on the capacity.
    [Fact]
    public void Peak_RiseAndStiffnessKnown_SwingsLess()
    {
        EngagementTorque start = EngagementTorque.Of(Engagement.Through(PtoClutchKind.Hydraulic).WithCapacity(Nm(600)), Rated)
            .WithRotor(KgM2(2)).WithLoad(Nm(0)).WithStiffness(NmPerRad(5000)).WithRise(Seconds(0.4));
        double clutch = Math.Sqrt(2 * 2 * 18 * Math.PI * 600 / 0.4);
        Close.Relative(Math.Min(600, clutch), start.ClutchTorque.High!.Value.NewtonMeters, 1e-12, "hand: √(2 J ω T_c / t_r)");
        Close.Relative(1.1 * Math.Min(600, clutch), start.Peak.High!.Value.NewtonMeters, 1e-12, "hand: 1 + 1 / x, x = 50 × 0.4 / 2");
        Close.Relative(
            (1 + (Math.Abs(Math.Sin(10)) / 10)) * Math.Min(600, clutch), start.Peak.Expected!.Value.NewtonMeters, 1e-12,
                "hand: 1 + |sin 10| / 10");
    }

    // Clutch 500 N·m against a load of 300 N·m: t = 1.5 × 50 / 200 = 0.375 s, φ = 9.375 rad, E = 1875 + 300 × 9.375 = 4687.5 J.
    [Fact]
    public void SlipHeat_UnderLoad_AddsTheLoadTimesTheSlipAngle()
    {
        EngagementTorque start = EngagementTorque.Of(Lever.WithCapacity(Nm(500)), RotationalSpeed.FromRadiansPerSecond(50))
            .WithRotor(KgM2(1.5)).WithLoad(Nm(300));
        Close.Relative(0.375, start.SynchronisingTime!.High!.Value.Seconds, 1e-12, "hand");
        Close.Relative(4687.5, start.SlipHeat!.High!.Value.Joules, 1e-12, "hand; = T_c φ = 500 × 9.375");
    }

    [Theory]
    [InlineData(500, 500, 500, LoadsFindings.EngagementNeverSynchronises, Severity.Danger)]
    [InlineData(400, 600, 500, LoadsFindings.EngagementMayNotSynchronise, Severity.Warning)]
    [InlineData(501, 600, 500, null, Severity.Note)]
    public void Findings_CapacityAgainstLoad_SayWhetherItStopsSlipping(
        double low, double expected, double load, string? code, Severity severity)
    {
        EngagementTorque start = EngagementTorque.Of(Lever.WithCapacity(Nm(low, expected, 700)), Rated).WithRotor(KgM2(1))
            .WithLoad(Nm(load));
        string[] known = [LoadsFindings.EngagementNeverSynchronises, LoadsFindings.EngagementMayNotSynchronise];
        Finding? finding = start.Findings.SingleOrDefault(f => known.Contains(f.Code));
        Assert.Equal(code, finding?.Code);
        Assert.Equal(severity, finding?.Severity ?? Severity.Note);
        Assert.Equal(low > load, start.SynchronisingTime!.IsBounded);
        Assert.Equal(low > load, start.SlipHeat!.IsBounded);
        Assert.Equal(expected > load, start.SynchronisingTime.HasExpected);
    }

    [Fact]
    public void SlipHeat_UnknownLoad_HasNoUpperEnd()
    {
        EngagementTorque start = EngagementTorque.Of(Lever, Rated).WithRotor(KgM2(1.5));
        Assert.False(start.SlipHeat!.IsBounded);
        Assert.False(start.SynchronisingTime!.IsBounded);
        Assert.Contains(start.Findings, f => f.Code == LoadsFindings.EngagementLoadNotKnown);
        Assert.Null(EngagementTorque.Of(Lever, Rated).SlipHeat);
        Assert.Contains(EngagementTorque.Of(Lever, Rated).Findings, f => f.Code == LoadsFindings.EngagementRotorNotKnown);
    }

    [Fact]
    public void SlipHeat_EngineThatSlows_LowersTheLowEndOnly()
    {
        EngagementTorque held = EngagementTorque.Of(Lever, Rated).WithRotor(KgM2(2)).WithLoad(Nm(0));
        EngagementTorque slowed = held.WithEngineInertia(KgM2(6));
        Close.Relative(0.75, slowed.SlipHeat!.Low.Joules / held.SlipHeat!.Low.Joules, 1e-12, "hand: 6 / (6 + 2)");
        Assert.Equal(held.SlipHeat.High, slowed.SlipHeat.High);
        Close.Relative(0.75, slowed.SynchronisingTime!.Low.Seconds / held.SynchronisingTime!.Low.Seconds, 1e-12, "hand: 1 / (1 + 2 / 6)");
        Assert.Equal(held.Peak, slowed.Peak);
    }

    [Fact]
    public void Peak_Stated_IsKeptAsItIs()
    {
        EngagementTorque start = EngagementTorque.Of(Lever.WithPeak(Nm(700)), Rated).WithRotor(KgM2(2));
        Assert.Equal(Nm(700), start.Peak);
        Assert.DoesNotContain(start.Findings, f => f.Code == LoadsFindings.EngagementMayOvershoot);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-10)]
    public void Of_SpeedNotAbove0_IsRefused(double perMinute) => Assert.Throws<ArgumentOutOfRangeException>(
        () => EngagementTorque.Of(Lever, RotationalSpeed.FromRevolutionsPerMinute(perMinute)));

    [Fact]
    public void Sheet_WithRotor_ShowsPeakTimeAndHeat()
    {
        string[] codes =
            [.. EngagementTorque.Of(Lever, Rated).WithRotor(KgM2(2)).WithLoad(Nm(0)).Sheet().Select(l => l.Formula.Code).Distinct()];
        Assert.Equal(["loadTorque", "rampTorque", "rampFactor", "engagementPeak", "slipTime", "engagementHeat"], codes);
    }
}
