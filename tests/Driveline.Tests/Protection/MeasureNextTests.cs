using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Protection;

public class MeasureNextTests
{
    private static ShearBoltJoint Joint => ShearBoltJoint.ThroughShaft(
        ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), BoltGrade.Parse("SAE 5")).With(PlaneThrough.NotKnown), Length.FromInches(1.25));

    private static ProtectionQuestion Owner(ShearBoltJoint joint) => ProtectionQuestion.About(DrivelineChain.Of(
            Part.Of(PartKind.UniversalJoint, "joint"), Part.Shaft("drive tube"), ShearBoltDevice.Of("shear bolt", joint),
            Part.Gearbox("gearbox")))
        .WithMachine(MachineKind.RotaryCutter);

    [Fact]
    public void MeasureNext_OwnerWhoKnowsLittle_AsksTheCheapAndDecisiveFirst()
    {
        string[] codes = [.. ProtectionCheck.Run(Owner(Joint)).MeasureNext.Select(m => m.Code)];
        Assert.Equal(
            [Measurements.HubTurn, Measurements.PlaneThrough, Measurements.ManualSpecification, Measurements.HoursWithoutBreak,
                Measurements.PartsList, Measurements.GearboxData, Measurements.WorkPeak],
            codes.Take(7));
        Assert.Equal(
            [Measurements.PartLimit, Measurements.PtoClutchCapacity, Measurements.ShaftSteelAtHole],
            codes.Skip(7).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void MeasureNext_OfManyParts_AsksOnceAndNamesAll()
    {
        Measurement limits = Assert.Single(ProtectionCheck.Run(Owner(Joint)).MeasureNext, m => m.Code == Measurements.PartLimit);
        Assert.Equal(["joint", "drive tube", "gearbox"], limits.Subjects);
        Assert.Equal(MeasurementPlace.Maker, limits.Place);
        Assert.Null(limits.Minutes);
    }

    [Fact]
    public void MeasureNext_HubByHand_TakesMinutesAndChangesGuards()
    {
        Measurement hub = ProtectionCheck.Run(Owner(Joint)).MeasureNext[0];
        Assert.Equal((5, MeasurementPlace.Machine, Bars.Guards), (hub.Minutes, hub.Place, hub.Changes));
    }

    [Fact]
    public void MeasureNext_HoursCounted_AreNotAskedForAgain() => Assert.DoesNotContain(
        ProtectionCheck.Run(Owner(Joint).WithHistory(BreakHistory.Of(20, 0))).MeasureNext, m => m.Code == Measurements.HoursWithoutBreak);

    [Fact]
    public void MeasureNext_AsSpecified_HasOnlyWhatItsOwnerCanDo()
    {
        ShearBoltJoint sound = Joint.With(Joint.Bolt.With(PlaneThrough.Shank)).WithHub(HubState.Free).WithHoleFit(HoleFit.Tight);
        ProtectionVerdict verdict = ProtectionCheck.Run(Owner(sound).WithSpecified(ShearBoltDevice.Of("manual's", sound)));
        Assert.Equal(Headline.AsSpecified, verdict.Headline);
        Assert.All(verdict.MeasureNext,
            m => Assert.True(m.Place is MeasurementPlace.Machine or MeasurementPlace.Desk or MeasurementPlace.Seat, m.ToString()));
    }

    [Fact]
    public void MeasureNext_HolesNotLookedAt_ChangesAsSpecified()
    {
        ShearBoltJoint joint = Joint.With(Joint.Bolt.With(PlaneThrough.Shank)).WithHub(HubState.Free);
        Assert.True(Assert.Single(
            ProtectionCheck.Run(Owner(joint).WithSpecified(ShearBoltDevice.Of("manual's", joint))).MeasureNext,
            m => m.Code == Measurements.HoleFit).ChangesAsSpecified);
    }

    [Fact]
    public void Measurements_OfAnOwner_HaveMinutes() => Assert.All(
        typeof(Measurements).GetFields().Select(f => (string)f.GetRawConstantValue()!)
            .Select(c => new Measurement(c, [], c, Bars.Nothing, false)),
        m => Assert.Equal(m.Place == MeasurementPlace.Maker, m.Minutes is null));
}
