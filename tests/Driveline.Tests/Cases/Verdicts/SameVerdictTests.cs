using System.Text.Json;
using System.Text.Json.Nodes;
using Driveline.Cases.Results;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Cases;

/// <summary>A program that builds a machine from the core's types gets the result of the case file, to the last number.</summary>
public class SameVerdictTests
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    private static readonly Basis Told = Basis.Given("the case");

    private static readonly RotationalSpeed Pto540 = RotationalSpeed.FromRevolutionsPerMinute(540);

    [Fact]
    public void RightBolt_BuiltInCode_HasTheVerdictOfItsCase()
    {
        StatedBolt bolt = StatedBolt.OfThread(ScrewThread.Parse("3/8-16 UNC")).With(MaterialName.Parse("SAE 5"));
        FittedBolt fitted = FittedBolt.Undated("shear bolt")
            .With(bolt.With(PlaneThrough.Shank))
            .WithLayout(JointLayout.ThroughShaft).WithShaftDiameter(Length.FromInches(1.25))
            .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight).WithShaftYield(Mpa(700, 700, 700));
        DrivelineChain chain = DrivelineChain.Of(
            Stub(2600, 2900, 3300), Joint(), Tube(1900, 2100, 2400), fitted.Device,
            Gearbox("main gearbox", 1.47, 0.96).WithDamageTorque(Nm(2200, 2500, 2900)), Blades());
        AssertSame("thornbeck-bolt-right", ProtectionQuestion.About(chain.InPlace(Pto540, Nm(420, 500, 650)))
            .WithMachine(MachineKind.RotaryCutter)
            .WithPartsComplete(true)
            .WithWork(WorkPeak.Stated(Nm(420, 500, 650)))
            .WithPeaksPerHour(40)
            .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithManner(EngagementManner.Gentle)
                .WithCapacity(Nm(700, 800, 900)))
            .WithSpecified(((ShearBoltDevice)fitted.Device).Specified(bolt))
            .WithNotes(PtoTypes.Of(1).Check(Power.FromKilowatts(26))));
    }

    [Fact]
    public void HardPin_BuiltInCode_HasTheVerdictOfItsCase()
    {
        StatedBolt pin = StatedBolt.OfPin(Length.FromMillimeters(8)).With(Hardness.Parse("HRC 28"));
        FittedBolt fitted = FittedBolt.Undated("cross pin")
            .With(pin.With(PlaneThrough.Shank))
            .WithLayout(JointLayout.ThroughShaft).WithShaftDiameter(Length.FromMillimeters(35))
            .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight).WithShaftYield(Mpa(600, 650, 750));
        TorsionCapacity shaft = TorsionCapacity.Of(ShaftSection.Solid(Length.FromMillimeters(35)), Mpa(600, 650, 750));
        WorkPeak work = WorkPeak.FromPower(
            PowerBand.Exactly(Power.FromKilowatts(22), Told), RotationalSpeed.FromRevolutionsPerMinute(1000),
            RatioBand.OfSi(new Band(1.3, 1.7, 2.2), BandBasis.Of(Told)));
        DrivelineChain chain = DrivelineChain.Of(
            Stub(2800, 3200, 3700, 2), Joint(), Part.Shaft("drive shaft").WithLimit(PartLimit.Section(shaft.Torque)), fitted.Device,
            Gearbox("spreader gearbox", 0.8, 0.94).WithLimit(PartLimit.RatedTimes(
                Torque.FromNewtonMeters(700), RatioBand.OfSi(new Band(2.2, 2.6, 3), BandBasis.Of(Told)), true)),
            Part.Rotor("spreading discs", MassMomentOfInertia.FromKilogramSquareMeters(0.9)));
        AssertSame("saltmere-spreader-pin", ProtectionQuestion.About(chain)
            .WithMachine(MachineKind.Spreader)
            .WithPartsComplete(true)
            .WithWork(work)
            .WithPeaksPerHour(20)
            .WithEngagement(Engagement.Through(PtoClutchKind.Electric).WithCapacity(Nm(500, 600, 700)))
            .WithSpecified(((ShearBoltDevice)fitted.Device).Specified(pin))
            .WithNotes(PtoTypes.Of(2).Check(Power.FromKilowatts(70))));
    }

    [Theory]
    [InlineData("dunmarsh-clutch-well-set", 2, 2)]
    [InlineData("wickerby-clutch-too-hot", 20, 3)]
    public void Clutch_BuiltInCode_HasTheVerdictOfItsCase(string demo, double slipsPerHour, double slipSeconds)
    {
        SpringPack springs = SpringPack.Of(
            CoilSpring.OfRate(
                ForcePerLength.FromNewtonsPerMillimeter(150), Length.FromMillimeters(40), Length.FromMillimeters(30), Told), 8);
        FittedClutch fitted = FittedClutch.AsOf("slip clutch", new DateTime(2026, 5, 4))
            .With(DiscClutch.Of(Length.FromMillimeters(165), Length.FromMillimeters(100), 4, Facings.MouldedLining, springs)
                .WithSpringLength(LengthBand.OfSi(new Band(0.0338, 0.0342, 0.0346), BandBasis.Of(Told))))
            .WithWear(LengthBand.Exactly(Length.Zero, Told)).WithSurface(SurfaceState.Dry).WithRunIn(RunInState.RunIn)
            .WithSlipTest(SlipTest.Lever(new DateTime(2026, 4, 28), Force.FromNewtons(433), Length.FromMeters(1.5)))
            .WithStorage(new DateTime(2026, 4, 20), 6).WithClimate(StorageClimate.Dry)
            .WithPlateThickness(Length.FromMillimeters(12)).WithThreadPitch(Length.FromMillimeters(1.5))
            .WithSlipsInWork(slipsPerHour).WithSlipTime(Duration.FromSeconds(slipSeconds));
        TorqueBand work = Nm(240, 300, 380);
        DrivelineChain chain = DrivelineChain.Of(
                Stub(2600, 2900, 3300), Joint(), Tube(1500, 1700, 2000), fitted.Device,
                Gearbox("main gearbox", 1.47, 0.96).WithDamageTorque(Nm(1800, 2100, 2500)), Blades())
            .InPlace(Pto540, work);
        AssertSame(demo, ProtectionQuestion.About(chain)
            .WithMachine(MachineKind.RotaryCutter)
            .WithPartsComplete(true)
            .WithWork(WorkPeak.Stated(work))
            .WithPeaksPerHour(40)
            .WithEngagement(Engagement.Through(PtoClutchKind.Hydraulic).WithCapacity(Nm(700, 800, 900)))
            .WithSpecified(StatedDevice.Of("specified clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Nm(600, 650, 700)))
            .WithNotes(PtoTypes.Of(1).Check(Power.FromKilowatts(26))));
    }

    [Fact]
    public void BoltOnABranch_BuiltInCode_HasTheVerdictOfItsCase()
    {
        DrivelineChain chain = DrivelineChain.Of(
            Stub(2600, 2900, 3300), Joint(), Tube(2300, 2500, 2800), Class8("main bolt", "M10", 35, 800).Device,
            Gearbox("angle gearbox", 0.5, 0.95).WithDamageTorque(Nm(2300, 2600, 3000)),
            Branch.Of("discharge auger", RatioBand.OfSi(new Band(0.2, 0.25, 0.3), BandBasis.Of(Told)),
                Class8("auger bolt", "M8", 30, 700).Device, Part.Shaft("auger shaft").WithDamageTorque(Nm(1250, 1350, 1500))),
            Part.Of(PartKind.Other, "mixer gear").WithDamageTorque(Nm(5200, 5800, 6500)));
        ProtectiveDevice?[] specified = [.. chain.Devices.Select(d => ((ShearBoltDevice)d).Specified(
            StatedBolt.OfThread(ScrewThread.Parse(d.Name == "main bolt" ? "M10" : "M8")).With(MaterialName.Parse("ISO 8.8"))))];
        AssertSame("millbrook-feed-auger", ProtectionQuestion.About(chain)
            .WithMachine(MachineKind.FeedMixer)
            .WithPartsComplete(true)
            .WithWork(WorkPeak.Stated(Nm(600, 750, 900)))
            .WithPeaksPerHour(25)
            .WithEngagement(Engagement.Through(PtoClutchKind.Hydraulic).WithCapacity(Nm(1200, 1300, 1450)))
            .WithSpecifiedInOrder(specified)
            .WithNotes(PtoTypes.Of(1).Check(Power.FromKilowatts(48))));
    }

    [Fact]
    public void ClutchBeforeABolt_BuiltInCode_HasTheVerdictOfItsCase()
    {
        SpringPack springs = SpringPack.Of(
            CoilSpring.OfRate(
                ForcePerLength.FromNewtonsPerMillimeter(150), Length.FromMillimeters(46), Length.FromMillimeters(36), Told), 8);
        FittedClutch clutch = FittedClutch.AsOf("flywheel clutch", new DateTime(2026, 6, 12))
            .With(DiscClutch.Of(Length.FromMillimeters(165), Length.FromMillimeters(100), 4, Facings.OfFrictionCode("FE"), springs)
                .WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(40.8), Told)))
            .WithWear(LengthBand.Exactly(Length.Zero, Told)).WithSurface(SurfaceState.Dry).WithRunIn(RunInState.RunIn)
            .WithSlipTest(SlipTest.Measured(new DateTime(2026, 6, 10), Nm(600, 640, 680)))
            .WithStorage(new DateTime(2026, 5, 20), 9).WithClimate(StorageClimate.Dry)
            .WithPlateThickness(Length.FromMillimeters(16)).WithThreadPitch(Length.FromMillimeters(1.5)).WithSlipsInWork(0);
        FittedBolt bolt = FittedBolt.AsOf("flywheel bolt", new DateTime(2026, 6, 12))
            .With(StatedBolt.OfThread(ScrewThread.Parse("M8")).With(MaterialName.Parse("ISO 8.8")).With(PlaneThrough.Shank))
            .WithLayout(JointLayout.BoltCircle).WithBoltCircleDiameter(Length.FromMillimeters(110)).WithBolts(1).WithPlanes(1)
            .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight).WithStandOff(Length.Zero);
        TorqueBand work = Nm(240, 300, 380);
        DrivelineChain chain = DrivelineChain.Of(
                Stub(2600, 2900, 3300), Joint(), Tube(1500, 1700, 2000),
                Part.Of(PartKind.OverrunClutch, "freewheel").WithDamageTorque(Nm(1700, 2000, 2400)), clutch.Device,
                Part.Flywheel("flywheel", MassMomentOfInertia.FromKilogramSquareMeters(9)), bolt.Device,
                Gearbox("plunger gearbox", 0.17, 0.95).WithDamageTorque(Nm(2600, 3000, 3600)))
            .InPlace(Pto540, work);
        AssertSame("cranley-baler-flywheel", ProtectionQuestion.About(chain)
            .WithMachine(MachineKind.SmallSquareBaler)
            .WithPartsComplete(true)
            .WithWork(WorkPeak.Stated(work))
            .WithPeaksPerHour(4000)
            .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithManner(EngagementManner.Gentle).WithCapacity(Nm(800, 900,
                1100)))
            .WithSpecifiedInOrder(
                [StatedDevice.Of("specified clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Nm(540, 610, 680)), null])
            .WithNotes(PtoTypes.Of(1).Check(Power.FromKilowatts(35))));
    }

    private static FittedBolt Class8(string name, string thread, double shaftMm, double yieldMpa) => FittedBolt.Undated(name)
        .With(StatedBolt.OfThread(ScrewThread.Parse(thread)).With(MaterialName.Parse("ISO 8.8")).With(PlaneThrough.Shank))
        .WithLayout(JointLayout.ThroughShaft).WithShaftDiameter(Length.FromMillimeters(shaftMm))
        .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight).WithShaftYield(Mpa(yieldMpa, yieldMpa, yieldMpa));

    // Only a case has paths on which a finding can rest; every other member of the result is the same.
    private static JsonNode Result(ProtectionVerdict verdict)
    {
        JsonNode result = JsonNode.Parse(VerdictJson.Of(verdict).ToJson())!;
        RemoveBecause(result);
        return result;
    }

    private static void RemoveBecause(JsonNode? at)
    {
        if (at is JsonObject owner)
        {
            owner.Remove("because");
            owner.Select(m => m.Value).ToList().ForEach(RemoveBecause);
        }
        else if (at is JsonArray list)
        {
            list.ToList().ForEach(RemoveBecause);
        }
    }

    private static void AssertSame(string demo, ProtectionQuestion question) => Assert.Equal(
        Result(DemoCases.Verdict(demo)).ToJsonString(Indented), Result(ProtectionCheck.Run(question)).ToJsonString(Indented));

    private static TorqueBand Nm(double low, double expected, double high) =>
        TorqueBand.OfSi(new Band(low, expected, high), BandBasis.Of(Told));

    private static StressBand Mpa(double low, double expected, double high) =>
        StressBand.OfSi(new Band(low * 1e6, expected * 1e6, high * 1e6), BandBasis.Of(Told));

    private static Part Stub(double low, double expected, double high, int type = 1) =>
        Part.Of(PartKind.PtoStub, FormattableString.Invariant($"PTO stub (type {type})")).WithDamageTorque(Nm(low, expected, high));

    private static Part Joint() => Part.Of(PartKind.UniversalJoint, "front joint").WithDamageTorque(Nm(2400, 2700, 3100));

    private static Part Tube(double low, double expected, double high) => Part.Shaft("drive tube")
        .WithDamageTorque(Nm(low, expected, high));

    private static Part Gearbox(string name, double ratio, double efficiency) => Part.Gearbox(name, ratio).WithEfficiency(efficiency);

    private static Part Blades() => Part.Rotor("blades and carrier", MassMomentOfInertia.FromKilogramSquareMeters(4.2));
}
