using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class HubAgeTests
{
    private static readonly DateTime Day = new(2026, 6, 1);

    private static readonly ShearBoltJoint Joint = ShearBoltJoint.ThroughShaft(
        ShearBolt.Of(ScrewThread.Parse("1/2-13 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank), Length.FromInches(1.25));

    [Fact]
    public void HubFree_NotDated_HoldsForTheDay()
    {
        Assert.False(Joint.WithHub(HubState.Free).IsHubSeenTooLongAgo);
        Assert.NotNull(BreakTorque.Of(Joint.WithHub(HubState.Free)).Torque.High);
    }

    // 12 months from 2025-06-01 end on 2026-06-01.
    [Theory]
    [InlineData(2025, 6, 1, false)]
    [InlineData(2025, 5, 31, true)]
    [InlineData(2009, 6, 1, true)]
    public void HubFree_SeenOnADay_CountsTwelveMonths(int year, int month, int day, bool isTooOld)
    {
        ShearBoltJoint joint = Joint.WithHub(HubState.Free).WithHubSeen(new DateTime(year, month, day), Day);
        BreakTorque trip = BreakTorque.Of(joint);
        Assert.Equal(isTooOld, joint.IsHubSeenTooLongAgo);
        Assert.Equal(isTooOld, trip.Torque.High is null);
        Assert.Equal(BreakTorque.Of(Joint.WithHub(HubState.Free)).Torque, trip.IfHubFree);
        Assert.Equal(isTooOld, trip.Findings.Any(f => f.Code == ShearBoltFindings.HubFreedomTooOld));
        Assert.Equal(isTooOld, ShearBoltDevice.Of("bolt", joint).GuardBars.Any(f => f.Code == ShearBoltFindings.HubFreedomTooOld));
    }

    [Fact]
    public void HubFree_SeenButDayNotKnown_IsTooOld() =>
        Assert.True(Joint.WithHub(HubState.Free).WithHubSeen(Day).IsHubSeenTooLongAgo);

    [Fact]
    public void HubDrag_MeasuredTooLongAgo_BoundsNothing()
    {
        var drag = TorqueBand.Exactly(Torque.FromNewtonMeters(80), Basis.Given("measured"));
        ShearBoltJoint stiff = Joint.WithHub(HubState.Stiff).WithHubFriction(drag);
        Assert.NotNull(BreakTorque.Of(stiff.WithHubSeen(new DateTime(2026, 1, 1), Day)).Torque.High);
        Assert.Null(BreakTorque.Of(stiff.WithHubSeen(new DateTime(2024, 1, 1), Day)).Torque.High);
    }

    [Theory]
    [InlineData(HubState.NotKnown, HubState.Free)]
    [InlineData(HubState.Stiff, HubState.Stiff)]
    [InlineData(HubState.Seized, HubState.Seized)]
    [InlineData(HubState.Free, HubState.Free)]
    public void LastTrip_Lately_FreesOnlyAnUnstatedHub(HubState stated, HubState expected)
    {
        ShearBoltJoint joint = Joint.WithHub(stated).WithLastTrip(new DateTime(2026, 3, 1), Day);
        Assert.Equal(expected, joint.Hub);
        Assert.False(joint.IsHubSeenTooLongAgo);
    }

    [Fact]
    public void LastTrip_LongAgo_LeavesTheHubInDoubt()
    {
        ShearBoltJoint joint = Joint.WithLastTrip(new DateTime(2009, 3, 1), Day);
        Assert.True(joint.IsHubSeenTooLongAgo);
        Assert.Null(BreakTorque.Of(joint).Torque.High);
        Assert.False(Joint.WithHub(HubState.Free).WithLastTrip(new DateTime(2009, 3, 1), Day).IsHubSeenTooLongAgo);
    }

    [Fact]
    public void HubSeized_SeenLongAgo_StaysSeized()
    {
        ShearBoltJoint joint = Joint.WithHub(HubState.Seized).WithHubSeen(new DateTime(2009, 3, 1), Day);
        Assert.False(joint.IsHubSeenTooLongAgo);
        Assert.Contains(BreakTorque.Of(joint).Findings, f => f.Code == ShearBoltFindings.HubSeized);
    }

    [Fact]
    public void HubFreed_AfterAnOldDate_HoldsForTheDayAgain() =>
        Assert.False(Joint.WithHub(HubState.Free).WithHubSeen(new DateTime(2009, 3, 1), Day).WithHub(HubState.Free).IsHubSeenTooLongAgo);

    [Fact]
    public void HubNotKnown_TriedLongAgo_StaysNotKnown()
    {
        BreakTorque trip = BreakTorque.Of(Joint.WithHubSeen(new DateTime(2009, 3, 1), Day));
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.HubFreedomNotKnown);
        Assert.Null(trip.Torque.High);
    }

    [Fact]
    public void HubSeen_AfterTheDay_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Joint.WithHubSeen(Day.AddDays(1), Day));
        Assert.Throws<ArgumentOutOfRangeException>(() => Joint.WithLastTrip(Day.AddDays(1), Day));
    }
}
