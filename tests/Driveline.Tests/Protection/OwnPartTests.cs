using Driveline.Cases;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Protection;

/// <summary>What an owner can read off a bolt and its bag: number, lengths, shank, marks; and a bolt whose layout nobody told.</summary>
public class OwnPartTests
{
    private static StatedBolt ThreeEighths => StatedBolt.OfThread(ScrewThread.Parse("3/8-16 UNC"));

    private static AsSpecified Answered(string fitted, string manual) => CaseAssessment.Of(
        "{ \"implement\": { \"kind\": \"rotaryCutter\" }, \"driveline\": [ { \"universalJoint\": \"joint\" }, { \"shaft\": \"tube\" }, "
            + "{ \"shearBolt\": { " + fitted + " } }, { \"gearbox\": \"gearbox\" }, { \"rotor\": \"rotor\" } ], "
            + "\"specified\": { \"shearBolt\": { " + manual + " } } }").Verdict().AsSpecified;

    [Theory]
    [InlineData("\"partNumber\": \"AB 12-34\", \"hub\": \"free\", \"holeFit\": \"tight\"", "\"partNumber\": \"ab1234\"", Answer.Yes,
        SpecifiedFindings.PartNumber)]
    [InlineData("\"partNumber\": \"AB 12-34\", \"hub\": \"free\"", "\"partNumber\": \"ab1234\"", Answer.Maybe,
        SpecifiedFindings.HolesNotKnown)]
    [InlineData("\"partNumber\": \"AB 12-34\", \"hub\": \"seized\", \"holeFit\": \"tight\"", "\"partNumber\": \"ab1234\"", Answer.No,
        ShearBoltFindings.HubSeized)]
    [InlineData("\"partNumber\": \"AB 12-35\", \"hub\": \"free\", \"holeFit\": \"tight\"", "\"partNumber\": \"ab1234\"", Answer.NotKnown,
        SpecifiedFindings.OtherPartNumber)]
    [InlineData(
        "\"thread\": \"3/8-16 UNC\", \"headMarks\": \"none\", \"planeThrough\": \"shank\", \"hub\": \"free\", \"holeFit\": \"tight\"",
        "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 2\"", Answer.NotKnown, SpecifiedFindings.UnmarkedAsNamed)]
    [InlineData(
        "\"thread\": \"3/8-16 UNC\", \"headMarks\": \"none\", \"planeThrough\": \"shank\", \"hub\": \"free\", \"holeFit\": \"tight\"",
        "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\"", Answer.NotKnown, SpecifiedFindings.GradeNotKnown)]
    [InlineData("\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 8\", \"partNumber\": \"ab1234\", \"hub\": \"free\", \"holeFit\": \"tight\"",
        "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"partNumber\": \"ab1234\"", Answer.No, SpecifiedFindings.OtherGrade)]
    public void AsSpecified_WhatIsReadOffTheBolt_IsAnsweredAndNamed(string fitted, string manual, Answer expected, string code)
    {
        AsSpecified asked = Answered(fitted, manual);
        Assert.Equal(expected, asked.Answer);
        Assert.Contains(code, asked.For.Concat(asked.Against).Concat(asked.Open).Select(f => f.Code));
    }

    // Neither radius nor shaft is told: nobody knows the torque, but size, grade, hub and holes say which bolt it is.
    [Fact]
    public void AsSpecified_BoltWithoutLayout_NeedsNoTorque()
    {
        const string Bolt = "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"planeThrough\": \"shank\", \"hub\": \"free\", "
            + "\"holeFit\": \"tight\"";
        Assert.Equal(Answer.Yes, Answered(Bolt, "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\"").Answer);
        Assert.Equal(Answer.No, Answered(Bolt, "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 2\"").Answer);
        Assert.Equal(Answer.No, Answered(Bolt, "\"thread\": \"1/2-13 UNC\", \"grade\": \"SAE 5\"").Answer);
        Assert.Equal(Answer.NotKnown, Answered(Bolt, "\"partNumber\": \"ab1234\"").Answer);
        ProtectiveDevice device = FittedBolt.Undated("bolt").With(ThreeEighths.With(MaterialName.Parse("SAE 5"))).Device;
        Assert.Equal(DeviceKind.ShearBolt, device.Kind);
        Assert.False(device.IsIdentified);
        Assert.Null(device.Breakaway);
    }

    // A hub of 2 in says nothing of a shaft that nobody measured.
    [Fact]
    public void Device_BoltWithoutShaft_HoldsWhateverElseIsTold()
    {
        FittedBolt fitted = FittedBolt.Undated("bolt").With(ThreeEighths.WithBoltLength(Length.FromInches(3)))
            .WithHubDiameter(Length.FromInches(1.5)).WithHoleDiameter(Length.FromMillimeters(60)).WithHub(HubState.Seized);
        Assert.Equal(DeviceKind.ShearBolt, fitted.Device.Kind);
        Assert.Null(fitted.Device.Breakaway);
    }

    [Fact]
    public void Verdict_ManualsPartOfUnknownLayout_AsksForTheLayoutAndRaisesNoDanger()
    {
        ProtectionVerdict verdict = CaseAssessment.Of(
            "{ \"implement\": { \"kind\": \"woodChipper\" }, \"driveline\": [ { \"shearBolt\": { \"partNumber\": \"A1\", "
                + "\"hub\": \"free\", \"holeFit\": \"tight\" } } ], \"specified\": { \"shearBolt\": { \"partNumber\": \"a-1\" } } }")
            .Verdict();
        Assert.Equal(Headline.AsSpecified, verdict.Headline);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.BoltLayoutNotKnown && f.Severity == Severity.Warning);
        Assert.Contains(verdict.MeasureNext, m => m.Code == Measurements.BoltLayout);
        Assert.DoesNotContain(verdict.MeasureNext, m => m.Code == Measurements.IdentifyDevice);
        Assert.Equal(Answer.NotKnown, verdict.Guards);
    }

    [Theory]
    [InlineData(3, 1, 2, 1, PlaneThrough.Shank, "shank 2 in; planes at (2-1)/2 = 0.5 and (2+1)/2 = 1.5 in")]
    [InlineData(3, 2.6, 2, 1, PlaneThrough.Thread, "shank 0.4 in, before the first plane at 0.5")]
    [InlineData(3, 2, 2, 1, PlaneThrough.NotKnown, "shank 1.0 in: one plane in the shank, one in the thread")]
    [InlineData(3, 3, 2, 1, PlaneThrough.Thread, "threaded to the head")]
    public void Plane_ThroughHubAndShaft_FollowsFromTheLengths(
        double length, double thread, double hub, double shaft, PlaneThrough expected, string working)
    {
        FittedBolt fitted = FittedBolt.Undated("bolt")
            .With(ThreeEighths.WithBoltLength(Length.FromInches(length)).WithThreadLength(Length.FromInches(thread)))
            .WithLayout(JointLayout.ThroughShaft).WithShaftDiameter(Length.FromInches(shaft)).WithHubDiameter(Length.FromInches(hub));
        Assert.True(expected == fitted.Joint!.Bolt.PlaneThrough, working + ": " + fitted.Joint.Bolt.PlaneThrough);
    }

    [Theory]
    [InlineData(40, 15, 24, 10, PlaneThrough.Shank, "shank 25 mm, beyond the grip of 24")]
    [InlineData(40, 32, 24, 10, PlaneThrough.Thread, "shank 8 mm; the wall of 10 of 24 puts the plane at 10 or 14 mm")]
    [InlineData(40, 28, 24, 10, PlaneThrough.NotKnown, "shank 12 mm, between 10 and 14")]
    [InlineData(40, 32, 24, 0, PlaneThrough.NotKnown, "shank 8 mm; without the wall the plane is anywhere from 0 to 24 mm")]
    public void Plane_InAFlange_FollowsFromGripAndWall(
        double length, double thread, double grip, double wall, PlaneThrough expected, string working)
    {
        FittedBolt fitted = FittedBolt.Undated("bolt")
            .With(ThreeEighths.WithBoltLength(Length.FromMillimeters(length)).WithThreadLength(Length.FromMillimeters(thread)))
            .WithLayout(JointLayout.Tangential).WithRadius(Length.FromMillimeters(50)).WithGripLength(Length.FromMillimeters(grip));
        fitted = wall > 0 ? fitted.WithYokeThickness(Length.FromMillimeters(wall)) : fitted;
        Assert.True(expected == fitted.Joint!.Bolt.PlaneThrough, working + ": " + fitted.Joint.Bolt.PlaneThrough);
    }

    [Fact]
    public void Plane_StatedAgainstTheLengths_IsAContradiction()
    {
        FittedBolt fitted = FittedBolt.Undated("bolt")
            .With(ThreeEighths.WithBoltLength(Length.FromMillimeters(40)).WithThreadLength(Length.FromMillimeters(15))
                .With(PlaneThrough.Thread))
            .WithLayout(JointLayout.Tangential).WithRadius(Length.FromMillimeters(50)).WithGripLength(Length.FromMillimeters(24));
        Assert.Equal("planeThrough", fitted.Conflicts.Single().Fact);
    }

    [Fact]
    public void Shank_Measured_StandsInPlaceOfTheStandards()
    {
        // Of a 3/8 in bolt of any style the thinnest shank is 0.360 in = 9.144 mm, of a hexagon one 0.369 in = 9.3726 mm; here 9.3 mm.
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), BoltGrade.Parse("SAE 5")).With(PlaneThrough.Shank);
        double Low(ShearBolt b) => BreakTorque.Of(ShearBoltJoint.ThroughShaft(b, Length.FromInches(1.25))
            .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight)).IfHubFree!.SiBand.Low;
        Close.Relative(
            Math.Pow(9.3 / 9.144, 2), Low(bolt.WithShankDiameter(Length.FromMillimeters(9.3))) / Low(bolt), 1e-9, "(9.3/9.144)²");
        Close.Relative(Math.Pow(9.3726 / 9.144, 2), Low(bolt.WithBody(BodyStyle.HexCapScrew)) / Low(bolt), 1e-9, "(9.3726/9.144)²");
        Assert.Throws<ArgumentOutOfRangeException>(() => bolt.WithShankDiameter(Length.FromMillimeters(12.7)));
    }
}
