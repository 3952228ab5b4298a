using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Tests.Protection;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class HoleTearOutTests
{
    private static readonly Basis Case = Basis.Given("the case");

    private static readonly StressBand Mild = StressBand.Exactly(Pressure.FromMegapascals(360), Case);

    private static readonly ShearBoltJoint Joint = ShearBoltJoint.ThroughShaft(
        ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank), Length.FromInches(1.25))
            .WithHub(HubState.Free);

    private static ShearBoltJoint Yoke => Joint.WithYokeTensile(Length.FromMillimeters(3), Mild);

    // EN 1993-1-8 Table 3.4, end bolt: at e = 3 d0 full 2.5; at 1.5 d0 min(2.8 · 1.5 − 1.7, 2.5) · 0.5 = 1.25; at 1.2 d0 1.66 · 0.4 =
    // 0.664; at d0/2 2.8 · 0.5 − 1.7 < 0.
    [Theory]
    [InlineData(3, 2.5)]
    [InlineData(4, 2.5)]
    [InlineData(1.5, 1.25)]
    [InlineData(1.2, 0.664)]
    [InlineData(0.5, 0)]
    public void Factor_ByEdge_IsTheCodes(double edgeOverHole, double expected) =>
        Close.Absolute(expected, HoleTearOut.FactorOf(edgeOverHole), 1e-12, "EN 1993-1-8:2005 Table 3.4, end bolt");

    [Theory]
    [InlineData(3, 816.5)]
    [InlineData(1.5, 408.3)]
    public void Torque_EdgeTold_IsTheCodesBearing(double edgeOverHole, double nm)
    {
        // 2 · 2.5 · 360 MPa · 9.525 · 3 mm² · 15.875 mm = 816.51 N·m; half of it, 408.26, at 1.5 d0.
        Assert.True(HoleTearOut.TryOf(Yoke.WithYokeEdge(Length.FromMillimeters(9.525 * edgeOverHole)), out HoleTearOut? tearOut));
        Assert.Equal(new[] { nm, nm, nm },
            new[] { tearOut!.Torque.SiBand.Low, tearOut.Torque.SiBand.Expected, tearOut.Torque.SiBand.High }.Select(t => Math.Round(t, 1)));
    }

    [Fact]
    public void Torque_EdgeNotTold_RunsFromTheCodesLeastEdge()
    {
        // 0.664/2.5 of 816.5 N·m.
        Assert.True(HoleTearOut.TryOf(Yoke, out HoleTearOut? tearOut));
        Close.Absolute(216.9, tearOut!.Torque.Low.NewtonMeters, 0.1, "hand");
        Close.Absolute(816.5, tearOut.Torque.High!.Value.NewtonMeters, 0.1, "hand");
    }

    [Fact]
    public void Torque_YieldAlone_BoundsOnlyBelow()
    {
        Assert.True(HoleTearOut.TryOf(
            Joint.WithYoke(Length.FromMillimeters(3), StressBand.Exactly(Pressure.FromMegapascals(235), Case)), out HoleTearOut? tearOut));

        // 2 · 0.664 · 235 MPa · 9.525 · 3 mm² · 15.875 mm = 141.6 N·m.
        Close.Absolute(141.6, tearOut!.Torque.Low.NewtonMeters, 0.1, "hand");
        Assert.Null(tearOut.Torque.Expected);
        Assert.Null(tearOut.Torque.High);
    }

    [Fact]
    public void Edge_WithinTheHole_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Yoke.WithYokeEdge(Length.FromMillimeters(4.7)));

    [Fact]
    public void TryOf_NoWall_IsFalse() => Assert.False(HoleTearOut.TryOf(Joint, out _));

    // The yoke of 3 mm gives way at 817 N·m, before the bolt expected at 1100 N·m: it is a part that is not protected.
    [Fact]
    public void Device_YokeWeakerThanBolt_IsAPartThatIsNotProtected()
    {
        Part yoke = Assert.Single(
            ShearBoltDevice.Of("bolt", Yoke.WithYokeEdge(Length.FromMillimeters(30))).ImpliedParts, p => p.Name == "yoke at the bolt hole");
        Close.Absolute(816.5, yoke.Limit!.DamagedAt.SiBand.Expected, 0.1, "hand, as above");
        ProtectionVerdict verdict = Check(Yoke.WithYokeEdge(Length.FromMillimeters(30)), 100);
        Assert.Equal(Answer.No, Assert.Single(verdict.Parts, p => p.Part.Name == "yoke at the bolt hole").Guards);
    }

    // S235 ovals at 2 · 1.5 · 9.525 · 3 mm² · 235 MPa · 15.875 mm = 319.8 N·m.
    [Theory]
    [InlineData(319, Answer.Yes)]
    [InlineData(320, Answer.Maybe)]
    public void Quiet_WorkOvalsTheHoles_IsMaybe(double workNm, Answer expected)
    {
        ShearBoltJoint thin = Joint.WithYoke(Length.FromMillimeters(3), StressBand.Exactly(Pressure.FromMegapascals(235), Case));
        ProtectionVerdict verdict = Check(thin, workNm);
        Assert.Equal(expected, verdict.Devices[0].Quiet);
        Assert.Equal(expected != Answer.Yes, verdict.MeasureNext.Any(m => m.Code == Measurements.HoleFit));
        Assert.Equal(expected != Answer.Yes, verdict.Findings.Any(f => f.Code == ShearBoltFindings.HolesOvalInWork));
    }

    [Theory]
    [InlineData(HoleFit.Tight, Answer.Yes)]
    [InlineData(HoleFit.Worn, Answer.Maybe)]
    public void Quiet_SingleBoltInWornHole_IsMaybe(HoleFit fit, Answer expected)
    {
        ProtectionVerdict verdict = Check(Joint.WithHoleFit(fit), 100);
        Assert.Equal(expected, verdict.Devices[0].Quiet);
        Assert.Equal(expected != Answer.Yes, verdict.Findings.Any(f => f.Code == ShearBoltFindings.HoleWornAroundBolt));
        Assert.Equal(expected != Answer.Yes, verdict.Findings.Any(f => f.Code == ShearBoltFindings.FacesMayMove));
    }

    // 4 in less a hub of 2 in and a nut of 3/8 in: 1 5/8 in stand out.
    [Fact]
    public void Protrusion_LongBolt_IsLengthLessHubAndNut()
    {
        ShearBoltJoint proud = Joint.WithBoltLength(Length.FromInches(4), Length.FromInches(2));
        Close.Absolute(1.625, proud.Protrusion!.Value.Inches, 1e-9, "hand: 4 − 2 − 0.375 in");
        Assert.Null(Joint.Protrusion);
        Assert.Equal(0, Joint.WithBoltLength(Length.FromInches(2.25), Length.FromInches(2)).Protrusion!.Value.Inches);
        Assert.Throws<ArgumentOutOfRangeException>(() => Joint.WithBoltLength(Length.FromInches(4), Length.FromInches(1.25)));
    }

    // Up to half a diameter, 3/16 in, two or three threads stand beyond the nut of every bolt.
    [Theory]
    [InlineData(2.56, false)]
    [InlineData(2.57, true)]
    public void StandsProud_BeyondHalfADiameter_IsSaid(double inches, bool said) => Assert.Equal(
        said,
        BreakTorque.Of(Joint.WithBoltLength(Length.FromInches(inches), Length.FromInches(2))).Findings.Any(
            f => f.Code == ShearBoltFindings.BoltStandsProud));

    [Theory]
    [InlineData(MachineKind.PostHoleAuger, Severity.Danger)]
    [InlineData(MachineKind.RotaryCutter, Severity.Warning)]
    public void StandsProud_WherePeopleStandNear_IsADanger(MachineKind machine, Severity expected)
    {
        ShearBoltJoint proud = Joint.WithBoltLength(Length.FromInches(4), Length.FromInches(2));
        ProtectionVerdict verdict = ProtectionCheck.Run(Question(proud, 100).WithMachine(machine), ProtectionPolicy.Default);
        Assert.Equal(expected, Assert.Single(verdict.Findings, f => f.Code == ShearBoltFindings.BoltStandsProud).Severity);
    }

    [Fact]
    public void Neck_NotKnownOfNoStrength_SaysMeasureTheNeck()
    {
        ShearBolt special = ShearBolt.Special(ScrewThread.Parse("M12"), PlaneThrough.Step, null, null);
        var findings = BreakTorque.Of(ShearBoltJoint.Tangential(special, Length.FromMillimeters(60))).Findings;
        Assert.Contains(findings, f => f.Code == ShearBoltFindings.NeckAndStrengthNotKnown);
        Assert.DoesNotContain(findings, f => f.Code == ShearBoltFindings.NeckNotKnown);
    }

    private static ProtectionQuestion Question(ShearBoltJoint joint, double workNm) =>
        Thornbeck.With(ShearBoltDevice.Of("bolt", joint)).WithWork(WorkPeak.Stated(Thornbeck.Nm(workNm)));

    private static ProtectionVerdict Check(ShearBoltJoint joint, double workNm) =>
        ProtectionCheck.Run(Question(joint, workNm), ProtectionPolicy.Default);
}
