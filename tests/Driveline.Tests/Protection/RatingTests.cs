using Driveline.Cases;
using Driveline.Chains;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Protection;

public class RatingTests
{
    private static readonly TorqueBand Bolt = Thornbeck.Nm(1150, 1300, 1500);

    private static Answer Guards(PartLimit limit) => ProtectionCheck.Run(Thornbeck.With(DrivelineChain.Of(
        Thornbeck.Stub, Thornbeck.Joint, Part.Shaft("drive tube").WithLimit(limit),
        StatedDevice.Of("shear bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, Bolt), Thornbeck.Gearbox, Thornbeck.Blades))).Guards;

    // The bolt holds 1500 N·m at most; a rating above that is enough, whatever a factor would add; one below is no evidence against it.
    [Theory]
    [InlineData(1501, Answer.Yes)]
    [InlineData(1499, Answer.Maybe)]
    [InlineData(400, Answer.Maybe)]
    public void Guards_RatingAlone_SupportsAYesAndNeverMakesANo(double ratedNm, Answer expected)
    {
        Torque rated = Torque.FromNewtonMeters(ratedNm);
        var factor = RatioBand.Between(1.2, 1.5, 2, Basis.Given("the test"));
        Assert.Equal(expected, Guards(PartLimit.Rating(rated)));
        Assert.Equal(expected, Guards(PartLimit.RatedTimes(rated, factor, false)));
    }

    [Fact]
    public void Guards_UnsourcedFactorReachesWhereTheRatingDoesNot_IsMaybe() => Assert.Equal(Answer.Maybe, Guards(PartLimit.RatedTimes(
        Torque.FromNewtonMeters(1000), RatioBand.Between(2, 2.5, 3, Basis.Given("the test")), false)));

    [Fact]
    public void Findings_RatingBelowTheBolt_SaysWhatIsNotKnown()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(DrivelineChain.Of(
            Thornbeck.Stub, Part.Of(PartKind.UniversalJoint, "joint").WithLimit(PartLimit.Rating(Torque.FromNewtonMeters(460))),
            Thornbeck.Tube, StatedDevice.Of("shear bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, Bolt), Thornbeck.Gearbox,
            Thornbeck.Blades)));
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.TripAboveRating);
        Assert.NotEqual(0.3, verdict.GuardMargin ?? 0, 0.01);   // 460 / 1500 is no margin to damage
        Assert.Equal("drive tube", verdict.WeakestPart!.Part.Name);
    }

    // hand: 26 kW at 540 min⁻¹ is 26000 / 56.549 = 459.8 N·m; series 4 at 540 is 460 N·m
    [Theory]
    [InlineData("{ \"gearbox\": \"g\", \"ratio\": 1, \"ratedPower\": \"26 kW\", \"ratedSpeed\": \"540 rpm\" }", 459.8)]
    [InlineData("{ \"gearbox\": \"g\", \"ratio\": 1, \"ratedTorque\": \"460 N.m\" }", 460)]
    [InlineData("{ \"universalJoint\": \"j\", \"cross\": \"27 x 74.6\" }", 460)]
    public void Case_RatingAsPeopleReadIt_IsTheLeastThePartTakes(string element, double expected)
    {
        string json = "{ \"tractor\": { \"ptoSpeed\": \"540 rpm\" }, \"driveline\": [ " + element + " ] }";
        Part part = CaseAssessment.Of(json).Verdict().Question.Chain.Parts.Single(p => p.Kind != PartKind.PtoStub);
        Assert.Equal(expected, part.Limit!.DamagedAt.Low.NewtonMeters, 0.1);
        Assert.Equal(LimitKind.Rating, part.Limit.Kind);
        Assert.Null(part.Limit.DamagedAt.High);
    }

    [Theory]
    [InlineData("S355", 355)]
    [InlineData("4140", 415)]
    [InlineData("42CrMo4 +QT", 650)]
    [InlineData("c45", 305)]
    [InlineData("St 52", 355)]
    [InlineData("1045 Hot Rolled", 310)]
    public void Steel_ByItsUsualName_IsHeld(string name, double yieldMpa) =>
        Assert.Equal(yieldMpa, ShaftMaterials.Of(name).Yield.Low.Megapascals, 1e-9);
}
