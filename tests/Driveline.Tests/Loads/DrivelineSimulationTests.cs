using Driveline.Chains;
using Driveline.Loads;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

/// <summary>The mapping of a chain to masses on springs, against closed forms worked by hand.</summary>
public partial class DrivelineSimulationTests
{
    private const double W = 18 * Math.PI;   // 540 min⁻¹

    [Theory]
    [InlineData(1, 3.0, 2000, 300, 4680.24097, "hand: 300 + 18π·√(3.0·2000)")]
    [InlineData(2, 3.0, 500, 300, 2340.12049, "hand: behind 1:2 the PTO feels 500·2² N·m/rad; own torque is half of 4680.24097")]
    [InlineData(1, 0.5, 2000, 300, 2088.2259, "torsional impact pack T04, preloaded start")]
    public void Strike_RotorStoppedDead_ShaftCarriesT0PlusDrivingInertia(
        double ratio, double engine, double stiffness, double load, double expected, string source)
    {
        Part tube = Shaft("tube", stiffness);
        Part rotor = Rotor(4.2);
        DrivelineChain chain = DrivelineChain.Of(Part.Gearbox("gearbox", ratio).WithEfficiency(1), tube, rotor);
        SimulationOutcome outcome = Strike(chain, Drive(load, engine, 1e6), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop))
            .Run(SimulatedDevices.Fitted, BandPoint.Expected);
        Close.Relative(expected, outcome.Peak(tube).NewtonMeters, 1e-7, source);
        Assert.True(outcome.EnergyError < 1e-9, source);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(4.2)]
    [InlineData(40)]
    public void Strike_RotorStoppedDead_ItsOwnInertiaChangesNothingBefore(double inertia)
    {
        Part tube = Shaft("tube", 2000);
        Part rotor = Rotor(inertia);
        SimulationOutcome outcome = Strike(
            DrivelineChain.Of(tube, rotor), Drive(300, 3, 1e6), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop))
            .Run(SimulatedDevices.Fitted, BandPoint.Expected);
        Close.Relative(4680.24097, outcome.Peak(tube).NewtonMeters, 1e-7, "hand: as above, whatever the rotor");
    }

    [Fact]
    public void Strike_ClutchSlips_LineInertiaAddsToItsCapacity()
    {
        // Held engine: the clutch sticks until the shaft carries 900 N·m, then J = 0.4 runs on: 900 + 18π·√(0.4·5000) = 3428.9332 N·m.
        Part hub = Part.Of(PartKind.Yoke, "hub").WithInertia(KgM2Of(0.4));
        Part tube = Shaft("tube", 5000);
        Part rotor = Rotor(4);
        SimulationOutcome outcome = Strike(
            DrivelineChain.Of(hub, tube, rotor), Drive(300, null, 900), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop))
            .Run(SimulatedDevices.Fitted, BandPoint.Expected);
        Close.Relative(3428.9332, outcome.Peak(tube).NewtonMeters, 1e-6, "hand");
        Assert.Equal("PTO clutch", outcome.Slips[0].Clutch);
        Assert.True(outcome.Slips[0].EnergyJ > 0);
    }

    [Fact]
    public void Strike_BoltBreaks_AtItsCapacityAndTime()
    {
        // Engine J = 0.5 on k = 2000 with T₀ = 0: t = √(J/k)·asin(800/(18π·√(kJ))) = 0.0073336911 s (torsional impact pack T10).
        Part tube = Shaft("tube", 2000);
        ProtectiveDevice bolt = Bolt(800);
        Part rotor = Rotor(3);
        DrivelineSimulation simulation = Strike(
            DrivelineChain.Of(tube, bolt, rotor), Drive(0, 0.5, null), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop));
        SimulationOutcome with = simulation.Run(SimulatedDevices.Fitted, BandPoint.Expected);
        Assert.Same(bolt, with.TrippedDevice);
        Close.Absolute(0.0073336911, with.TripTime!.Value.Seconds, 1e-9, "T10, t1");
        Close.Relative(800, with.Peak(bolt).NewtonMeters, 1e-12, "a breaking coupling never carries more");
        SimulationOutcome without = simulation.Run(SimulatedDevices.Blocked, BandPoint.Expected);
        Assert.False(without.Tripped);
        Close.Relative(1788.2259, without.Peak(bolt).NewtonMeters, 1e-7, "torsional impact pack T02: 18π·√(0.5·2000)");
    }

    [Theory]
    [InlineData(nameof(BandPoint.Low), 700)]
    [InlineData(nameof(BandPoint.Expected), 800)]
    [InlineData(nameof(BandPoint.High), 1000)]
    public void Strike_BandOfABolt_ActsAtTheChosenPoint(string point, double expected)
    {
        Part rotor = Rotor(3);
        ProtectiveDevice bolt = Bolt(700, 800, 1000);
        SimulationOutcome outcome = Strike(
            DrivelineChain.Of(Shaft("tube", 2000), bolt, rotor), Drive(0, 0.5, null), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop))
            .Run(SimulatedDevices.Fitted, Enum.Parse<BandPoint>(point));
        Close.Relative(expected, outcome.Peak(bolt).NewtonMeters, 1e-12, "the point of the band");
    }

    [Fact]
    public void Strike_BehindAGearbox_BoltActsAtItsOwnTorque()
    {
        // A bolt of 800 N·m behind 1:2 is 1600 N·m at the PTO: below the 1788.2 N·m of the blow it breaks, and 900 N·m behind it would not.
        Part rotor = Rotor(3);
        foreach ((double nm, bool trips) in new[] { (894.0, true), (894.2, false) })
        {
            ProtectiveDevice bolt = Bolt(nm);
            SimulationOutcome outcome = Strike(
                DrivelineChain.Of(Shaft("tube", 2000), Part.Gearbox("box", 2).WithEfficiency(1), bolt, rotor), Drive(0, 0.5, null),
                    SimulatedStrike.By(rotor, StrikePlace.Blade, Stop))
                .Run(SimulatedDevices.Fitted, BandPoint.Expected);
            Assert.Equal(trips, outcome.Tripped);
        }
    }

    [Fact]
    public void Strike_SlipClutch_HoldsItsTorqueAndHeats()
    {
        // Torsional impact pack T10: 800 N·m holds, heat 639.43796 J, slip 0.79929745 rad.
        Part rotor = Rotor(3);
        StatedDevice clutch = StatedDevice.Of("slip clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Nm(800));
        SimulationOutcome outcome = Strike(
            DrivelineChain.Of(Shaft("tube", 2000), clutch, rotor), Drive(0, 0.5, null), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop))
            .Run(SimulatedDevices.Fitted, BandPoint.Expected);
        Assert.True(outcome.Tripped);
        SimulatedSlip slip = outcome.Slips.Single(s => s.Clutch == "slip clutch");
        Close.Relative(639.43796, slip.EnergyJ, 1e-7, "T10 heat");
        Close.Relative(0.79929745, slip.AngleRad, 1e-7, "T10 slip angle");
        Close.Relative(800, outcome.Peak(clutch).NewtonMeters, 1e-12, "T10 peak");
    }

    [Fact]
    public void Strike_Yielding_CarriesLessThanADeadStop()
    {
        // What gives way at 500 N·m from a light rotor: the shaft sees at most 500 N·m and what the rotor's 0.01 kg·m² add while they are
        // braked.
        Part tube = Shaft("tube", 2000);
        Part rotor = Rotor(0.01);
        SimulatedStrike stump = SimulatedStrike.By(rotor, StrikePlace.Blade, Obstacle.Yielding(
            UnitsNet.Duration.Zero, RotationalStiffness.FromNewtonMetersPerRadian(1e5), Torque.FromNewtonMeters(500),
                Angle.FromDegrees(360)));
        SimulationOutcome outcome = Strike(DrivelineChain.Of(tube, rotor), Drive(0, 0.5, null), stump)
            .Run(SimulatedDevices.Blocked, BandPoint.Expected);
        Assert.InRange(outcome.Peak(tube).NewtonMeters, 400, 1001);   // 2 × 500 N·m: a step from nothing, undamped
    }

    [Fact]
    public void Strike_BeforeTheRotor_RotorTwistsWhatLiesBetween()
    {
        // The gearbox seizes: the rotor runs on and winds up its shaft alone, ω·√(J·k) = 18π·√(4·3000) = 6194.6 N·m.
        Part box = Part.Gearbox("box", 1).WithEfficiency(1).WithInertia(KgM2Of(0.1));
        Part shaft = Shaft("rotor shaft", 3000);
        SimulationOutcome outcome = Strike(
            DrivelineChain.Of(Shaft("tube", 2000), box, shaft, Rotor(4)), Drive(0, 0.5, null),
                SimulatedStrike.By(box, StrikePlace.Driveline, Stop))
            .Run(SimulatedDevices.Blocked, BandPoint.Expected);
        Close.Relative(6194.5963, outcome.Peak(shaft).NewtonMeters, 1e-6, "hand");
    }

    [Fact]
    public void Engagement_SuddenBite_FreeLineSwingsToTwiceItsShare()
    {
        // 2·T_c·J₂/(J₁ + J₂) = 2·600·1.5/(0.5 + 1.5) = 900 N·m while the clutch slips.
        Part tube = Shaft("tube", 20000);
        DrivelineSimulation simulation = DrivelineSimulation.OfEngagement(
            DrivelineChain.Of(Part.Of(PartKind.Yoke, "hub").WithInertia(KgM2Of(0.5)), tube, Rotor(1.5)), Drive(0, null, 600));
        Close.Relative(900, simulation.Run(SimulatedDevices.Blocked, BandPoint.Expected).Peak(tube).NewtonMeters, 1e-9, "hand");
    }

    [Fact]
    public void Engagement_RigidLine_TakesTheWorkedTimeAndHeat()
    {
        // Worked example: 1.5 kg·m² to 540 min⁻¹ at 600 N·m: ½·J·ω² = 2398.3 J, 600 N·m throughout.
        SimulationOutcome outcome = DrivelineSimulation.OfEngagement(DrivelineChain.Of(Rotor(1.5)), Drive(0, null, 600))
            .Run(SimulatedDevices.Blocked, BandPoint.Expected);
        Close.Relative(0.5 * 1.5 * W * W, outcome.SlipEnergy.Joules, 1e-9, "½·J·ω² = 2398.3 J");
        Assert.DoesNotContain(outcome.Findings, f => f.Code == SimulationFindings.StillSlipping);
    }

    [Fact]
    public void Engagement_FreeEngine_LosesTheSharedHeat()
    {
        // J₁·J₂·ω²/(2·(J₁ + J₂)) with 0.8 and 0.2 kg·m² at 540 min⁻¹: 255.82015 J (torsional impact pack T09); the engine gives no torque.
        SimulationDrive drive = Drive(0, 0.8, 300).WithEngineLine(TorqueSpeedLine.Constant(Torque.Zero));
        SimulationOutcome outcome = DrivelineSimulation.OfEngagement(DrivelineChain.Of(Rotor(0.2)), drive)
            .Run(SimulatedDevices.Blocked, BandPoint.Expected);
        Close.Relative(255.82015, outcome.SlipEnergy.Joules, 1e-7, "T09, E");
    }

    [Fact]
    public void Engagement_Feathered_PeaksLowerThanAbrupt()
    {
        DrivelineChain chain = DrivelineChain.Of(Part.Of(PartKind.Yoke, "hub").WithInertia(KgM2Of(0.5)), Shaft("tube", 2000), Rotor(1.5));
        double abrupt = DrivelineSimulation.OfEngagement(chain, Drive(0, null, 600)).Run(SimulatedDevices.Blocked, BandPoint.Expected)
            .Peak(chain.Elements[1]).NewtonMeters;
        SimulationDrive slow = Drive(0, null, 600).WithRise(Seconds(3));
        double feathered = DrivelineSimulation.OfEngagement(chain, slow).Run(SimulatedDevices.Blocked, BandPoint.Expected)
            .Peak(chain.Elements[1]).NewtonMeters;
        Assert.True(feathered < 0.7 * abrupt, feathered + " against " + abrupt);
    }

    [Fact]
    public void Engagement_CapacityBelowLoad_SlipsOnAndSaysSo()
    {
        SimulationOutcome outcome = DrivelineSimulation.OfEngagement(DrivelineChain.Of(Rotor(1.5)), Drive(700, null, 600))
            .Run(SimulatedDevices.Blocked, BandPoint.Expected);
        Assert.Contains(outcome.Findings, f => f.Code == SimulationFindings.StillSlipping);
    }

    private static IEnumerable<string> Codes(DrivelineSimulation simulation) => simulation.Missing.Select(f => f.Code);

    private static DrivelineSimulation Strike(DrivelineChain chain, SimulationDrive drive, SimulatedStrike strike) =>
        DrivelineSimulation.OfStrike(chain, drive, strike);

    private static SimulationDrive Drive(double load, double? engine, double? capacity)
    {
        SimulationDrive drive = SimulationDrive.At(RotationalSpeed.FromRadiansPerSecond(W)).WithLoad(Nm(load));
        drive = engine is { } inertia ? drive.WithEngineInertia(KgM2(inertia)) : drive;
        return capacity is { } nm ? drive.WithEngagement(
            Engagement.Through(PtoClutchKind.Hydraulic).WithManner(EngagementManner.Abrupt).WithCapacity(Nm(nm))) : drive;
    }

    private static Part Shaft(string name, double stiffness) =>
        Part.Shaft(name).WithStiffness(NmPerRad(stiffness));

    private static Part Rotor(double inertia) => Part.Rotor("blades", KgM2Of(inertia));

    private static StatedDevice Bolt(double nm) => Bolt(nm, nm, nm);

    private static StatedDevice Bolt(double low, double expected, double high) =>
        StatedDevice.Of("bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, Nm(low, expected, high));

    private static Obstacle Stop => Obstacle.RigidStop(UnitsNet.Duration.Zero);

    private static MassMomentOfInertia KgM2Of(double value) => MassMomentOfInertia.FromKilogramSquareMeters(value);
}
