using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>What the bolt is made of, when that leaves an end of the torque open.</summary>
public class BreakTorqueMaterialTests
{
    private static readonly ScrewThread Half = ScrewThread.Parse("1/2-13 UNC");

    [Fact]
    public void Unmarked_Bolt_HasNoHighEndAndIsADanger()
    {
        BreakTorque trip = BreakTorque.Of(
            ShearBoltJoint.ThroughShaft(ShearBolt.Of(Half, FastenerMaterial.UnmarkedInchBolt).With(PlaneThrough.Shank),
                Length.FromInches(1.25)).WithHub(HubState.Free));
        Assert.Null(trip.Torque.High);
        Assert.True(trip.Torque.Low.NewtonMeters > 0);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.BoltNotIdentified && f.Severity == Severity.Danger);
    }

    [Fact]
    public void MaterialNotKnown_Joint_IsNotKnown()
    {
        BreakTorque trip = BreakTorque.Of(
            ShearBoltJoint.ThroughShaft(ShearBolt.Of(Half, FastenerMaterial.NotKnown), Length.FromInches(1.25)).WithHub(HubState.Free));
        Assert.False(trip.IsKnown);
        Assert.Equal(0, trip.Torque.Low.NewtonMeters);
        Assert.Null(trip.Torque.Expected);
    }

    [Fact]
    public void StainlessBolt_NoMaximum_SaysSo()
    {
        BreakTorque trip = BreakTorque.Of(ShearBoltJoint.Tangential(
            ShearBolt.Of(ScrewThread.Parse("M10"), BoltGrade.Parse("A2-70")).With(PlaneThrough.Shank), Length.FromMillimeters(60))
                .WithHub(HubState.Free));
        Assert.Null(trip.Torque.High);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.NoAssuredMaximum);
    }

    [Fact]
    public void SpringPin_ThroughShaft_LowIsThePublishedLoadAndNothingElseIsKnown()
    {
        BreakTorque trip = BreakTorque.Of(
            ShearBoltJoint.ThroughShaft(ShearBolt.SpringPin(SpringPin.Parse("ISO 8752 8 mm")), Length.FromMillimeters(30))
                .WithHub(HubState.Free));
        double published = SpringPin.Parse("ISO 8752 8 mm").PublishedLoad.Value;
        Close.Relative(published * 1000 * 0.015, trip.Torque.Low.NewtonMeters, 1e-9, "ISO 8752: double-shear load × 15 mm");
        Assert.Null(trip.Torque.Expected);
        Assert.Null(trip.Torque.High);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.SpringPinNoMaximum);
    }
}
