using Driveline.Cases;

namespace Driveline.Tests.Cases;

/// <summary>Each range of the format on both sides of each end.</summary>
public class CaseRangeTests
{
    [Theory]
    [InlineData("tractor.ptoPower", "\"0.001 kW\"", "\"1000 kW\"", "\"0 kW\"", "\"1000.001 kW\"")]
    [InlineData("tractor.enginePower", "\"0.001 kW\"", "\"1500 kW\"", "\"0 kW\"", "\"1500.001 kW\"")]
    [InlineData("tractor.engineSpeed", "\"0.001 rpm\"", "\"5000 rpm\"", "\"0 rpm\"", "\"5000.001 rpm\"")]
    [InlineData("tractor.ptoType", "1", "4", "0", "5")]
    [InlineData("tractor.ptoSpeed", "\"0.001 rpm\"", "\"3000 rpm\"", "\"0 rpm\"", "\"3000.001 rpm\"")]
    [InlineData("tractor.stubDamagedAt", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("tractor.stubYieldStrength", "\"10 MPa\"", "\"3000 MPa\"", "\"9.999 MPa\"", "\"3000.001 MPa\"")]
    [InlineData("tractor.ptoClutch.capacity", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"-1 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("implement.width", "\"1 mm\"", "\"30 m\"", "\"0 m\"", "\"30.001 m\"")]
    [InlineData("implement.massFlow", "\"0.001 kg/s\"", "\"300 kg/s\"", "\"0 kg/s\"", "\"300.001 kg/s\"")]
    [InlineData("shearBolt.pinDiameter", "\"2 mm\"", "\"80 mm\"", "\"1.999 mm\"", "\"80.001 mm\"")]
    [InlineData("shearBolt.shaftDiameter", "\"5 mm\"", "\"200 mm\"", "\"4.999 mm\"", "\"200.001 mm\"")]
    [InlineData("shearBolt.radius", "\"2 mm\"", "\"1 m\"", "\"1.999 mm\"", "\"1.001 m\"")]
    [InlineData("shearBolt.boltCircleDiameter", "\"4 mm\"", "\"2 m\"", "\"3.999 mm\"", "\"2.001 m\"")]
    [InlineData("shearBolt.bolts", "1", "24", "0", "25")]
    [InlineData("shearBolt.planes", "1", "2", "0", "3")]
    [InlineData("shearBolt.neckDiameter", "\"1 mm\"", "\"80 mm\"", "\"0.999 mm\"", "\"80.001 mm\"")]
    [InlineData("shearBolt.hubFriction", "\"0 N.m\"", "\"1000 kN.m\"", "\"-0.001 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("shearBolt.holeDiameter", "\"2 mm\"", "\"100 mm\"", "\"1.999 mm\"", "\"100.001 mm\"")]
    [InlineData("shearBolt.permittedHole", "\"2 mm\"", "\"100 mm\"", "\"1.999 mm\"", "\"100.001 mm\"")]
    [InlineData("shearBolt.standOff", "\"0 mm\"", "\"100 mm\"", "\"-0.001 mm\"", "\"100.001 mm\"")]
    [InlineData("shearBolt.boltLength", "\"3 mm\"", "\"1 m\"", "\"2.999 mm\"", "\"1.001 m\"")]
    [InlineData("shearBolt.yokeThickness", "\"0.5 mm\"", "\"300 mm\"", "\"0.499 mm\"", "\"300.001 mm\"")]
    [InlineData("shearBolt.yokeYieldStrength", "\"10 MPa\"", "\"3000 MPa\"", "\"9.999 MPa\"", "\"3000.001 MPa\"")]
    [InlineData("shearBolt.shaftYieldStrength", "\"10 MPa\"", "\"3000 MPa\"", "\"9.999 MPa\"", "\"3000.001 MPa\"")]
    [InlineData("shearBolt.yokeTensileStrength", "\"10 MPa\"", "\"3000 MPa\"", "\"9.999 MPa\"", "\"3000.001 MPa\"")]
    [InlineData("shearBolt.yokeEdge", "\"2 mm\"", "\"500 mm\"", "\"1.999 mm\"", "\"500.001 mm\"")]
    [InlineData("shearBolt.hubDiameter", "\"5 mm\"", "\"500 mm\"", "\"4.999 mm\"", "\"500.001 mm\"")]
    [InlineData("shearBolt.hubSeen", "\"1900-01-01\"", "\"2199-12-31\"", "\"1899-12-31\"", "\"2200-01-01\"")]
    [InlineData("shearBolt.lastTrip", "\"1900-01-01\"", "\"2199-12-31\"", "\"1899-12-31\"", "\"2200-01-01\"")]
    [InlineData("slipClutch.outerDiameter", "\"20 mm\"", "\"1 m\"", "\"19.999 mm\"", "\"1.001 m\"")]
    [InlineData("slipClutch.innerDiameter", "\"5 mm\"", "\"999 mm\"", "\"4.999 mm\"", "\"1 m\"")]
    [InlineData("slipClutch.faces", "1", "40", "0", "41")]
    [InlineData("slipClutch.springLength", "\"1 mm\"", "\"1 m\"", "\"0.999 mm\"", "\"1.001 m\"")]
    [InlineData("slipClutch.threadPitch", "\"0.2 mm\"", "\"10 mm\"", "\"0.199 mm\"", "\"10.001 mm\"")]
    [InlineData("slipClutch.wear", "\"0 mm\"", "\"50 mm\"", "\"-0.001 mm\"", "\"50.001 mm\"")]
    [InlineData("slipClutch.lastSlipTest", "\"1900-01-01\"", "\"2199-12-31\"", "\"1899-12-31\"", "\"2200-01-01\"")]
    [InlineData("slipClutch.lastStorage", "\"1900-01-01\"", "\"2199-12-31\"", "\"1899-12-31\"", "\"2200-01-01\"")]
    [InlineData("slipClutch.storedMonths", "0", "1200", "-1", "1201")]
    [InlineData("slipClutch.statedTorque", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("slipClutch.plateThickness", "\"0.5 mm\"", "\"100 mm\"", "\"0.499 mm\"", "\"100.001 mm\"")]
    [InlineData("slipClutch.slipsPerHour", "0", "3600", "-1", "3601")]
    [InlineData("slipClutch.slipTime", "\"0.001 s\"", "\"600 s\"", "\"0 s\"", "\"600.001 s\"")]
    [InlineData("slipClutch.springs.coil.count", "1", "48", "0", "49")]
    [InlineData("slipClutch.springs.coil.rate", "\"100 N/m\"", "\"100 kN/mm\"", "\"99.999 N/m\"", "\"100.001 kN/mm\"")]
    [InlineData("slipClutch.springs.coil.freeLength", "\"2 mm\"", "\"1 m\"", "\"1.999 mm\"", "\"1.001 m\"")]
    [InlineData("slipClutch.springs.coil.solidLength", "\"1 mm\"", "\"1 m\"", "\"0.999 mm\"", "\"1.001 m\"")]
    [InlineData("slipClutch.springs.coil.wire", "\"0.5 mm\"", "\"50 mm\"", "\"0.499 mm\"", "\"50.001 mm\"")]
    [InlineData("slipClutch.springs.coil.meanDiameter", "\"2 mm\"", "\"500 mm\"", "\"1.999 mm\"", "\"500.001 mm\"")]
    [InlineData("slipClutch.springs.coil.coils", "2.5", "200", "2.499", "200.001")]
    [InlineData("slipClutch.springs.disc.outerDiameter", "\"5 mm\"", "\"1 m\"", "\"4.999 mm\"", "\"1.001 m\"")]
    [InlineData("slipClutch.springs.disc.innerDiameter", "\"2 mm\"", "\"999 mm\"", "\"1.999 mm\"", "\"1 m\"")]
    [InlineData("slipClutch.springs.disc.thickness", "\"0.1 mm\"", "\"50 mm\"", "\"0.099 mm\"", "\"50.001 mm\"")]
    [InlineData("slipClutch.springs.disc.reducedThickness", "\"0.1 mm\"", "\"50 mm\"", "\"0.099 mm\"", "\"50.001 mm\"")]
    [InlineData("slipClutch.springs.disc.freeHeight", "\"0.2 mm\"", "\"100 mm\"", "\"0.199 mm\"", "\"100.001 mm\"")]
    [InlineData("slipClutch.springs.disc.parallel", "1", "5", "0", "6")]
    [InlineData("slipClutch.springs.disc.sets", "1", "50", "0", "51")]
    [InlineData("slipClutch.springs.disc.stacks", "1", "48", "0", "49")]
    [InlineData("cutOut.trip", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("cutOut.afterTrip", "0", "1", "-0.001", "1.001")]
    [InlineData("cutOut.reengagesBelow", "\"0.001 rpm\"", "\"3000 rpm\"", "\"0 rpm\"", "\"3000.001 rpm\"")]
    [InlineData("cutOut.lastTrip", "\"1900-01-01\"", "\"2199-12-31\"", "\"1899-12-31\"", "\"2200-01-01\"")]
    [InlineData("cutOut.lastStorage", "\"1900-01-01\"", "\"2199-12-31\"", "\"1899-12-31\"", "\"2200-01-01\"")]
    [InlineData("specified.slipTorque", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("date", "\"1900-01-01\"", "\"2199-12-31\"", "\"1899-12-31\"", "\"2200-01-01\"")]
    [InlineData("element.gearbox.ratio", "0.05", "20", "0.0499", "20.001")]
    [InlineData("element.gearbox.efficiency", "0.001", "1", "0", "1.001")]
    [InlineData("element.gearbox.efficiency", "\"0.1 %\"", "\"100 %\"", "\"0 %\"", "\"100.1 %\"")]
    [InlineData("element.universalJoint.angle", "\"0 deg\"", "\"89.999 deg\"", "\"-0.001 deg\"", "\"90 deg\"")]
    [InlineData("element.rotor.inertia", "\"0.001 kg.m2\"", "\"10000 kg.m2\"", "\"0 kg.m2\"", "\"10000.001 kg.m2\"")]
    [InlineData("element.part.damagedAt", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("element.part.outerDiameter", "\"3 mm\"", "\"500 mm\"", "\"2.999 mm\"", "\"500.001 mm\"")]
    [InlineData("element.part.splineRootDiameter", "\"3 mm\"", "\"500 mm\"", "\"2.999 mm\"", "\"500.001 mm\"")]
    [InlineData("element.part.yieldStrength", "\"10 MPa\"", "\"3000 MPa\"", "\"9.999 MPa\"", "\"3000.001 MPa\"")]
    [InlineData("element.part.ratedTorque", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("element.branch.powerShare", "0.001", "1", "0", "1.001")]
    [InlineData("work.steadyPeak", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("work.steadyMean", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("work.meanPower", "\"0.001 kW\"", "\"1000 kW\"", "\"0 kW\"", "\"1000.001 kW\"")]
    [InlineData("work.peakFactor", "1", "20", "0.999", "20.001")]
    [InlineData("work.peaksPerHour", "0", "1000000", "-1", "1000001")]
    [InlineData("work.engagement.peak", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("tractor.flywheelInertia", "\"0.001 kg.m2\"", "\"1000 kg.m2\"", "\"0 kg.m2\"", "\"1000.001 kg.m2\"")]
    [InlineData("work.engagement.rampTime", "\"0.001 s\"", "\"20 s\"", "\"0 s\"", "\"20.001 s\"")]
    [InlineData("work.engagement.engineSpeed", "\"0.001 rpm\"", "\"5000 rpm\"", "\"0 rpm\"", "\"5000.001 rpm\"")]
    [InlineData("work.engagement.load", "\"0 N.m\"", "\"1000 kN.m\"", "\"-0.001 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("element.shaft.length", "\"1 mm\"", "\"20 m\"", "\"0.999 mm\"", "\"20.001 m\"")]
    [InlineData("element.shaft.stiffness", "\"1 N.m/rad\"", "\"1000000000 N.m/rad\"", "\"0.999 N.m/rad\"", "\"1000000001 N.m/rad\"")]
    [InlineData("element.shaft.damping", "\"0 N.m.s/rad\"", "\"1000000 N.m.s/rad\"", "\"-0.001 N.m.s/rad\"", "\"1000001 N.m.s/rad\"")]
    [InlineData("strike.stiffness", "\"1 N.m/rad\"", "\"1000000000 N.m/rad\"", "\"0.999 N.m/rad\"", "\"1000000001 N.m/rad\"")]
    [InlineData("strike.torque", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("strike.force", "\"0.001 N\"", "\"1000 kN\"", "\"0 N\"", "\"1000.001 kN\"")]
    [InlineData("strike.swing", "\"0.001 deg\"", "\"360 deg\"", "\"0 deg\"", "\"360.001 deg\"")]
    [InlineData("strike.time", "\"0 s\"", "\"10 s\"", "\"-0.001 s\"", "\"10.001 s\"")]
    [InlineData("tractor.engineTorqueLine.torque", "\"0 N.m\"", "\"1000 kN.m\"", "\"-0.001 N.m\"", "\"1000.001 kN.m\"")]
    [InlineData("tractor.torqueReserve", "0", "2", "-0.001", "2.001")]
    [InlineData("complaint.hoursBetweenBreaks", "0.001", "100000", "0", "100001")]
    public void Range_EachEnd_IsReadWithinAndRefusedBeyond(string path, string lowest, string highest, string below, string above)
    {
        CaseReaderTests.ReadGood(Sample.At(path, lowest));
        CaseReaderTests.ReadGood(Sample.At(path, highest));
        foreach (string outside in new[] { below, above })
        {
            CaseError error = CaseReaderTests.ReadOneError(Sample.At(path, outside));
            Assert.EndsWith(path.Substring(path.LastIndexOf('.') + 1), error.Path, StringComparison.Ordinal);
            Assert.NotNull(error.Permitted);
            Assert.Equal(outside.Trim('"'), error.Received!.Trim('"'));
        }
    }

    [Theory]
    [InlineData("\"nutTurns\": {0}, \"threadPitch\": \"1.5 mm\"", "0", "100", "-0.001", "100.001", "nutTurns")]
    [InlineData("\"leverTorque\": {0}, \"lastSlipTest\": \"2026-05-01\"", "\"0.001 N.m\"", "\"1000 kN.m\"", "\"0 N.m\"",
        "\"1000.001 kN.m\"", "leverTorque")]
    [InlineData("\"leverForce\": {0}, \"leverArm\": \"1 m\", \"lastSlipTest\": \"2026-05-01\"", "\"0.001 N\"", "\"100 kN\"", "\"0 N\"",
        "\"100.001 kN\"", "leverForce")]
    [InlineData("\"leverForce\": \"9 N\", \"leverArm\": \"1 m\", \"lastSlipTest\": \"2026-05-01\", \"breakawayForce\": {0}", "\"0.001 N\"",
        "\"100 kN\"", "\"0 N\"", "\"100.001 kN\"", "breakawayForce")]
    [InlineData("\"leverTorque\": \"9 N.m\", \"lastSlipTest\": \"2026-05-01\", \"breakawayTorque\": {0}", "\"0.001 N.m\"", "\"1000 kN.m\"",
        "\"0 N.m\"", "\"1000.001 kN.m\"", "breakawayTorque")]
    [InlineData("\"leverForce\": \"9 N\", \"leverArm\": {0}, \"lastSlipTest\": \"2026-05-01\"", "\"50 mm\"", "\"10 m\"", "\"49.999 mm\"",
        "\"10.001 m\"", "leverArm")]
    public void ClutchRange_OfAMemberThatNeedsAnother_IsReadWithinAndRefusedBeyond(
        string members, string lowest, string highest, string below, string above, string named)
    {
        string Case(string value) => "{ \"driveline\": [ { \"slipClutch\": { " + members.Replace("{0}", value, StringComparison.Ordinal)
            + " } } ] }";
        CaseReaderTests.ReadGood(Case(lowest));
        CaseReaderTests.ReadGood(Case(highest));
        Assert.EndsWith(named, CaseReaderTests.ReadOneError(Case(below)).Path, StringComparison.Ordinal);
        Assert.EndsWith(named, CaseReaderTests.ReadOneError(Case(above)).Path, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("20 mm", "19.999 mm", true)]
    [InlineData("20 mm", "20 mm", false)]
    [InlineData("500 mm", "499.999 mm", true)]
    public void Bore_Boundary_IsTheOuterDiameter(string outer, string inner, bool isGood) =>
        Assert.Equal(
            isGood, CaseReader.Read("{ \"driveline\": [ { \"shaft\": \"s\", \"outerDiameter\": \"" + outer + "\", \"innerDiameter\": \""
            + inner + "\" } ] }").IsRead);

    [Theory]
    [InlineData("1", true)]
    [InlineData("20", true)]
    [InlineData("0.999", false)]
    [InlineData("20.001", false)]
    public void OverloadFactor_Boundary_IsOneToTwenty(string factor, bool isGood) =>
        Assert.Equal(
            isGood, CaseReader.Read(
            "{ \"driveline\": [ { \"part\": \"p\", \"ratedTorque\": \"5 N.m\", \"overloadFactor\": " + factor + " } ] }").IsRead);

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(0.501, false)]
    public void PowerShares_Sum_MayReachOne(double second, bool isGood) =>
        Assert.Equal(
            isGood, CaseReader.Read(
            FormattableString.Invariant(
            $$"""{ "driveline": [ { "branch": "a", "powerShare": 0.5 }, { "branch": "b", "powerShare": {{second}} } ] }""")).IsRead);
}
