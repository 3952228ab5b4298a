using Driveline.Advice;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Torsion;
using Driveline.Wording;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;
using DisplayUnits = Driveline.Wording.DisplayUnits;

namespace Driveline.Tests.Protection;

/// <summary>
/// A strike against the parts and the device. Without the device the tube carries 100 + 18π·√(0.502·2000) = 1891.8 N·m, the tube's 0.002
/// kg·m² being at its driven side.
/// </summary>
public class SimulationCheckTests
{
    private const double W = 18 * Math.PI;   // 540 min⁻¹

    private static readonly FastenerMaterial Grade2 = FastenerMaterial.Graded(SaeJ429.Grade2, ScrewThread.Parse("5/16-18 UNC"));

    [Theory]
    [InlineData(700, 800, 1000, StrikeFindings.ShouldHaveTripped, true, "1000 N·m is below 1890 N·m")]
    [InlineData(2000, 2200, 2500, StrikeFindings.MayHaveTripped, false,
        "2000 N·m is above 1890 N·m, but a rotor that springs back puts up to 100 + 2·1792 = 3680 N·m on it")]
    [InlineData(1500, 1700, 2500, StrikeFindings.MayHaveTripped, true, "1890 N·m lies between 1500 and 2500 N·m")]
    [InlineData(1500, 1950, 2500, StrikeFindings.MayHaveTripped, false, "1890 N·m lies between 1500 and 2500 N·m")]
    public void Health_OfADevice_FollowsItsBand(double low, double expected, double high, string code, bool trips, string why)
    {
        SimulationCheck check = Check(Tube(3000, 3300, 3600), Stated(low, expected, high));
        Assert.True(check.Findings.Count(f => f.Code == code) == 1, why + "; got " + string.Join(", ", check.Findings));
        Assert.Equal(trips, check.Tripped);
    }

    [Fact]
    public void Health_OfADeviceAboveABlowThatGives_HadNoReasonToAct()
    {
        SimulationCheck check = Yielding(Tube(3000, 3300, 3600), Stated(2500, 2700, 3000));
        Assert.Contains(check.Findings, f => f.Code == StrikeFindings.BelowTrip);
        Assert.False(check.IsBlowUnbounded);
        Assert.NotNull(check.BlowAtDevice);
    }

    [Fact]
    public void BlowAtDevice_OfABlowThatNothingBounds_IsKnownOnlyWhereItTellsThatTheDeviceShouldAct()
    {
        Assert.Null(Check(Tube(3000, 3300, 3600), Stated(2000, 2200, 2500)).BlowAtDevice);

        // 100 + 18π·√(0.5·2000) = 1888.2 with the tube's 0.002 kg·m² wholly behind the device, 1891.8 with it wholly before.
        Assert.InRange(Check(Tube(3000, 3300, 3600), Stated(700, 800, 1000)).BlowAtDevice!.Low.NewtonMeters, 1888.2, 1891.8);
    }

    [Theory]
    [InlineData(1000, 1200, 1500, Answer.NotKnown, Answer.Yes, "carries 800 to 1000 N·m with, 1890 without; the run knows of no rebound")]
    [InlineData(500, 600, 700, Answer.Yes, Answer.Yes, "the bolt of 800 N·m is stronger than 600 N·m, and a rebound only adds")]
    [InlineData(2500, 2600, 2700, Answer.NotKnown, Answer.NotKnown,
        "1890 N·m is below 2500 N·m, but 100 + 2·1792 = 3680 N·m with a full rebound is above")]
    public void Damage_OfABlowThatNothingBounds_IsNeverNo(double low, double expected, double high, Answer with, Answer without, string why)
    {
        SimulationCheck check = Check(Tube(low, expected, high), Stated(800, 800, 800));
        Assert.True(check.IsBlowUnbounded);
        Assert.True(with == check.Loads[0].DamagedWith && without == check.Loads[0].DamagedWithout, why + "; got " + check.Loads[0]);
        Assert.DoesNotContain(check.Findings, f => f.Code is StrikeFindings.SavedByDevice or StrikeFindings.BelowTrip);
        InspectionList inspection = InspectionList.After(StruckBy.Blade, deviceActed: false, check);
        Assert.DoesNotContain(inspection.PartLoads, f => f.Code == InspectionList.SimulatedBelowDamage);
    }

    [Theory]
    [InlineData(1000, 1200, 1500, Answer.No, Answer.Yes, StrikeFindings.SavedByDevice,
        "carries 800 to 1000 N·m at most with, 1890 without")]
    [InlineData(500, 600, 700, Answer.Yes, Answer.Yes, StrikeFindings.Overloaded, "the bolt of 800 N·m is stronger than 600 N·m")]
    [InlineData(700, 1200, 1500, Answer.Maybe, Answer.Yes, StrikeFindings.MayOverload,
        "a strong bolt passes 800 N·m, a weak tube stands 700")]
    [InlineData(2500, 2600, 2700, Answer.No, Answer.No, null, "1890 N·m is below 2500 N·m")]
    public void Damage_WithAndWithoutTheDevice_IsTold(
        double low, double expected, double high, Answer with, Answer without, string? code, string why)
    {
        SimulationCheck check = Yielding(Tube(low, expected, high), Stated(800, 800, 800));
        SimulatedLoad tube = check.Loads[0];
        Assert.True(with == tube.DamagedWith && without == tube.DamagedWithout,
            why + "; got " + tube + ", " + tube.WithProtection + ", " + tube.WithoutProtection);
        Assert.Equal(code is null ? 0 : 1,
            check.Findings.Count(f => f.Code is StrikeFindings.SavedByDevice or StrikeFindings.Overloaded or StrikeFindings.MayOverload));
        Assert.True(code is null || check.Findings.Any(f => f.Code == code), why);
    }

    [Fact]
    public void SeizedHub_PassesTheBlowOn_AndIsSaidSo()
    {
        SimulationCheck check = Check(Tube(700, 800, 900), Joint(HubState.Seized, Grade2));
        Assert.False(check.Tripped);
        Assert.Equal(Answer.Yes, check.Loads[0].DamagedWith);
        Assert.Contains(check.Findings, f => f.Code == StrikeFindings.PassedOn);
        Assert.Contains(check.Findings, f => f.Code == StrikeFindings.ShouldHaveTripped);
    }

    [Fact]
    public void UnmarkedBolt_NobodyKnows_DecidesNeitherTripNorDamage()
    {
        ShearBoltDevice unmarked = Joint(HubState.Free, FastenerMaterial.UnmarkedInchBolt);
        Assert.False(unmarked.IsIdentified, "the row must test a bolt that nobody identified");
        SimulationCheck check = Check(Tube(700, 800, 900), unmarked);
        Assert.Null(check.Tripped);
        Assert.Equal(Answer.NotKnown, check.Loads[0].DamagedWith);
        Assert.Null(check.Loads[0].WithProtection);
        Assert.Equal(Answer.Yes, check.Loads[0].DamagedWithout);
        Assert.Contains(check.Findings, f => f.Code == SimulationFindings.DeviceNotKnown);
        Assert.Contains(check.Findings, f => f.Code == StrikeFindings.MayOverload);
        Assert.DoesNotContain(check.Findings, f => f.Code is StrikeFindings.PassedOn or StrikeFindings.Overloaded);
    }

    [Fact]
    public void BlowOnTheDeck_PassesTheDrivelineBy()
    {
        Part rotor = Part.Rotor("blades", KgM2Of(3));
        SimulationCheck check = SimulationCheck.Of(
            DrivelineSimulation.OfStrike(DrivelineChain.Of(Tube(700, 800, 900), rotor), Drive(), SimulatedStrike.Beside(rotor)));
        Assert.Equal([StrikeFindings.DidNotPassDriveline], check.Findings.Select(f => f.Code));
        Assert.False(check.Tripped);
        Assert.All(check.Loads, load => Assert.Equal(Answer.No, load.DamagedWith));
        Assert.Equal(100, check.Loads[0].WithProtection!.Value.NewtonMeters, 9);
    }

    [Fact]
    public void BlowOnThePan_IsRunAsIfItWedged_AndDecidesNothing()
    {
        // Wedged it stops the rotor: 100 + 20·√(0.501·2000) N·m and more in the tube, which 700 N·m may damage; mostly it does not.
        Part rotor = Part.Rotor("blades", KgM2Of(3));
        SimulationCheck check = SimulationCheck.Of(DrivelineSimulation.OfStrike(
            DrivelineChain.Of(Tube(700, 800, 900), rotor), Drive(), SimulatedStrike.By(rotor, StrikePlace.Pan, Stop)));
        Assert.Contains(check.Findings, f => f.Code == SimulationFindings.PanAsWedged);
        Assert.Null(check.Tripped);
        Assert.Equal(Answer.Maybe, check.Loads[0].DamagedWith);
        Assert.Null(check.BlowAtDevice);
        Assert.DoesNotContain(check.Findings, f => f.Code == StrikeFindings.ShouldHaveTripped);
    }

    [Theory]
    [InlineData("engine", SimulationFindings.EngineHeld)]
    [InlineData("capacity", SimulationFindings.NoClutchCap)]
    [InlineData("tube", SimulationFindings.PartsWithoutInertia)]
    [InlineData("place", SimulationFindings.PlaceNotKnown)]
    public void OneFactLess_GivesNeitherYesNorNo(string less, string code)
    {
        SimulationDrive drive = Drive(less != "engine", less != "capacity");
        Part tube = less == "tube" ? Bare().WithDamageTorque(Nm(700, 800, 900)) : Tube(700, 800, 900);
        Part strong = Part.Of(PartKind.Yoke, "yoke").WithInertia(KgM2Of(0.01)).WithDamageTorque(Nm(90000));
        Part rotor = Part.Rotor("blades", KgM2Of(3));
        StrikePlace place = less == "place" ? StrikePlace.NotKnown : StrikePlace.Blade;
        SimulationCheck check = SimulationCheck.Of(
            DrivelineSimulation.OfStrike(DrivelineChain.Of(strong, tube, rotor), drive, SimulatedStrike.By(rotor, place, Stop)));
        Assert.Contains(check.Findings, f => f.Code == code);
        Assert.Equal([Answer.Maybe, Answer.Maybe, Answer.NotKnown], check.Loads.Select(l => l.DamagedWith));
        Assert.Equal([Answer.Maybe, Answer.Maybe, Answer.NotKnown], check.Loads.Select(l => l.DamagedWithout));
    }

    [Fact]
    public void AssumedLimit_GivesNeitherYesNorNo()
    {
        Part tube = Bare().WithInertia(KgM2Of(0.02))
            .WithLimit(PartLimit.RatedTimes(Torque.FromNewtonMeters(300), RatioBand.Exactly(2, Given), isSourced: false));
        Assert.Equal(Answer.Maybe, Check(tube, Stated(2000, 2200, 2500)).Loads[0].DamagedWith);
    }

    [Fact]
    public void Texts_OfEveryFinding_NameItsNumbers()
    {
        foreach (SimulationCheck check in new[]
        {
            Check(Tube(1000, 1200, 1500), Stated(800, 800, 800)), Check(Tube(500, 600, 700), Stated(1500, 1700, 2500)),
                Check(Tube(700, 800, 900), Joint(HubState.Seized, Grade2)),
        })
        {
            Assert.All(check.Findings, finding =>
            {
                string text = Texts.English.Of(finding, DisplayUnits.Metric);
                Assert.DoesNotContain("{", text, StringComparison.Ordinal);
                Assert.DoesNotContain("..", text, StringComparison.Ordinal);
            });
        }
    }

    private static SimulationCheck Check(Part tube, ProtectiveDevice device)
    {
        Part rotor = Part.Rotor("blades", KgM2Of(3));
        return SimulationCheck.Of(
            DrivelineSimulation.OfStrike(
                DrivelineChain.Of(tube, device, rotor), Drive(), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop)));
    }

    // It gives at 50 kN·m and stops 3 kg·m² within 4 ms, of a swing of 100 ms; 12.5 J of 4800 J come back.
    private static SimulationCheck Yielding(Part tube, ProtectiveDevice device)
    {
        Part rotor = Part.Rotor("blades", KgM2Of(3));
        SimulatedStrike strike = SimulatedStrike.By(rotor, StrikePlace.Blade, Obstacle.Yielding(
            Duration.Zero, RotationalStiffness.FromNewtonMetersPerRadian(1e8), Torque.FromNewtonMeters(50000), Angle.FromDegrees(360)));
        return SimulationCheck.Of(DrivelineSimulation.OfStrike(DrivelineChain.Of(tube, device, rotor), Drive(), strike));
    }

    private static SimulationDrive Drive() => Drive(true, true);

    private static SimulationDrive Drive(bool hasEngine, bool hasCapacity)
    {
        SimulationDrive drive = SimulationDrive.At(RotationalSpeed.FromRadiansPerSecond(W)).WithLoad(Nm(100));
        drive = hasEngine ? drive.WithEngineInertia(KgM2(0.5)) : drive;
        return hasCapacity
            ? drive.WithEngagement(Engagement.Through(PtoClutchKind.Hydraulic).WithManner(EngagementManner.Abrupt).WithCapacity(Nm(5000)))
            : drive;
    }

    private static Part Bare() => Part.Shaft("tube").WithStiffness(NmPerRad(2000));

    private static Part Tube(double low, double expected, double high) => Bare().WithInertia(KgM2Of(0.002))
        .WithDamageTorque(Nm(low, expected, high));

    private static StatedDevice Stated(double low, double expected, double high) =>
        StatedDevice.Of("bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, Nm(low, expected, high));

    private static ShearBoltDevice Joint(HubState hub, FastenerMaterial material) => ShearBoltDevice.Of(
        "bolt",
        ShearBoltJoint.ThroughShaft(
            ShearBolt.Of(ScrewThread.Parse("5/16-18 UNC"), material).With(PlaneThrough.Shank), Length.FromInches(1.25)).WithHub(hub));

    private static Obstacle Stop => Obstacle.RigidStop(UnitsNet.Duration.Zero);

    private static MassMomentOfInertia KgM2Of(double value) => MassMomentOfInertia.FromKilogramSquareMeters(value);
}
