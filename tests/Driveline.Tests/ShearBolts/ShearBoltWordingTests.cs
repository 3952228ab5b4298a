using System.Reflection;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Wording;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class ShearBoltWordingTests
{
    public static TheoryData<string> Codes() =>
        [.. typeof(ShearBoltFindings).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Finding_EachCode_HasWords(string code) => Assert.Contains(code, Texts.English.Codes);

    [Fact]
    public void Finding_EachCodeInWords_LeavesNoBrace()
    {
        ScrewThread m10 = ScrewThread.Parse("M10");
        StressBand mild = StressBand.Exactly(Pressure.FromMegapascals(235), Basis.Given("the case"));
        TorqueBand drag = TorqueBand.Exactly(Torque.FromNewtonMeters(50), Basis.Given("the case"));
        ShearBolt soft = ShearBolt.Of(m10, Iso898.Class4_6);
        Length radius = Length.FromMillimeters(60);
        Finding[] findings =
        [
            .. BreakTorque.Of(ShearBoltJoint.ThroughShaft(soft, Length.FromMillimeters(30))).Findings,
            .. BreakTorque.Of(
                ShearBoltJoint.ThroughShaft(soft.With(PlaneThrough.Thread), Length.FromMillimeters(15)).WithHub(HubState.Seized)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.BoltCircle(soft, radius, 3).WithHub(HubState.Stiff).WithHoleFit(HoleFit.Worn)).Findings,
            .. BreakTorque.Of(
                ShearBoltJoint.BoltCircle(soft, radius, 3).WithHubFriction(drag).WithStandOff(Length.FromMillimeters(2))).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(soft, radius).WithYoke(Length.FromMillimeters(2), mild)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(ShearBolt.Of(m10, FastenerMaterial.UnmarkedMetricBolt), radius)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(ShearBolt.Of(m10, BoltGrade.Parse("A2-70")), radius)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(ShearBolt.Special(m10, PlaneThrough.Taper, null, null), radius)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(ShearBolt.SpringPin(SpringPin.Parse("ISO 8752 8 mm")), radius)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(soft.WithHeadMark(HeadMark.Parse("8.8")), radius)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(soft, radius).WithHole(Length.FromMillimeters(13))).Findings,
            .. BreakTorque.Of(
                ShearBoltJoint.Tangential(ShearBolt.Special(m10, PlaneThrough.Taper, null, Hardness.Parse("HV 250")), radius)).Findings,
            .. BreakTorque.Of(
                ShearBoltJoint.Tangential(soft, radius).WithHub(HubState.Free).WithHubSeen(new DateTime(2009, 1, 1))).Findings,
            .. BreakTorque.Of(ShearBoltJoint.Tangential(soft, radius).WithHoleFit(HoleFit.Worn)).Findings,
            .. BreakTorque.Of(ShearBoltJoint.ThroughShaft(soft, Length.FromMillimeters(30))
                .WithBoltLength(Length.FromMillimeters(90), Length.FromMillimeters(50))).Findings,
            .. ShearBoltDevice.Of("bolt", ShearBoltJoint.Tangential(soft, radius).WithYoke(Length.FromMillimeters(2), mild))
                .BarsUnder(5000),
            .. FittedBolt.Undated("bolt").With(StatedBolt.OfPin(radius).With(PlaneThrough.Thread)).Device.Findings,
            .. BoltFatigue.LowerBoundLife(ShearBoltJoint.Tangential(soft, radius), Torque.FromNewtonMeters(2000), 1).Findings,
        ];
        Assert.Equal(Codes().Count, findings.Select(f => f.Code).Distinct().Count());
        Assert.All(findings, f => Assert.DoesNotContain("{", Texts.English.Of(f), StringComparison.Ordinal));
        Assert.All(findings,
            f => Assert.DoesNotContain("NaN", Texts.English.Of(f, Driveline.Wording.DisplayUnits.UsCustomary), StringComparison.Ordinal));
    }
}
