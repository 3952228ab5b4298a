using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>What a hub that does not turn freely and clamped flanges add to the torque that breaks the bolt.</summary>
public class BreakTorqueDragTests
{
    private static readonly ShearBoltJoint Shaft = BreakTorqueTests.Shaft;

    [Theory]
    [InlineData(HubState.NotKnown, ShearBoltFindings.HubFreedomNotKnown)]
    [InlineData(HubState.Stiff, ShearBoltFindings.HubStiff)]
    [InlineData(HubState.Seized, ShearBoltFindings.HubSeized)]
    public void Hub_NotFree_HasNoHighEndAndSaysSo(HubState hub, string code)
    {
        BreakTorque trip = BreakTorque.Of(Shaft.WithHub(hub));
        Assert.Null(trip.Torque.High);
        Assert.Equal(BreakTorque.Of(Shaft).Torque, trip.IfHubFree);
        Assert.Contains(trip.Findings, f => f.Code == code);
    }

    [Theory]
    [InlineData(HubState.Stiff, 80)]
    [InlineData(HubState.Free, 80)]
    [InlineData(HubState.NotKnown, 80)]
    public void Hub_DragMeasured_AddsToHighOnly(HubState hub, double nm)
    {
        var drag = TorqueBand.Exactly(Torque.FromNewtonMeters(nm), Basis.Given("measured"));
        Band free = BreakTorque.Of(Shaft).Torque.SiBand;
        Band stiff = BreakTorque.Of(Shaft.WithHub(hub).WithHubFriction(drag)).Torque.SiBand;
        Close.Absolute(free.High + nm, stiff.High, 1e-9, "hand: high + 80 N·m");
        Assert.Equal(free.Low, stiff.Low);
        Assert.Equal(free.Expected, stiff.Expected);
    }

    [Fact]
    public void Hub_SeizedWithADragMeasured_StaysUnbounded() => Assert.Null(
        BreakTorque.Of(Shaft.WithHub(HubState.Seized)
            .WithHubFriction(TorqueBand.Exactly(Torque.FromNewtonMeters(80), Basis.Given("measured")))).Torque.High);

    [Fact]
    public void FlangeFriction_Stated_AddsToHighOnly()
    {
        var friction = TorqueBand.Between(
            Torque.FromNewtonMeters(20), Torque.FromNewtonMeters(50), Torque.FromNewtonMeters(120), Basis.Given("the case"));
        Band plain = BreakTorque.Of(Shaft).Torque.SiBand;
        Band clamped = BreakTorque.Of(Shaft.WithFlangeFriction(friction)).Torque.SiBand;
        Assert.Equal(new Band(plain.Low, plain.Expected, plain.High + 120), clamped);
    }
}
