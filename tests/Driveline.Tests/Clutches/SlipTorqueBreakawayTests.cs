using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

/// <summary>The torque of the first slip, and what may be said of a clutch that was never made to slip.</summary>
public class SlipTorqueBreakawayTests
{
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
}
