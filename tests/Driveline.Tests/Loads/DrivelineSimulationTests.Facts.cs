using Driveline.Chains;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

/// <content>Facts that are missing or assumed, and input out of range.</content>
public partial class DrivelineSimulationTests
{
    [Fact]
    public void Missing_EachFact_IsNamed()
    {
        Part tube = Shaft("tube", 2000);
        Part rotor = Rotor(3);
        SimulatedStrike strike = SimulatedStrike.By(rotor, StrikePlace.Blade, Stop);
        SimulationDrive bare = SimulationDrive.At(RotationalSpeed.FromRadiansPerSecond(W));
        Assert.Equal([SimulationFindings.LoadNotKnown], Codes(Strike(DrivelineChain.Of(tube, rotor), bare, strike)));
        Assert.Equal(
            [SimulationFindings.StiffnessNotKnown], Codes(Strike(DrivelineChain.Of(Part.Shaft("tube"), rotor), Drive(0, 1, 900), strike)));
        Part unknown = Part.Of(PartKind.Rotor, "blades");
        Assert.Equal([SimulationFindings.InertiaNotKnown],
            Codes(Strike(DrivelineChain.Of(tube, unknown), Drive(0, 1, 900), SimulatedStrike.By(unknown, StrikePlace.Blade, Stop))));
        Assert.Equal([SimulationFindings.RatioNotKnown],
            Codes(Strike(DrivelineChain.Of(tube, Part.Gearbox("box"), rotor), Drive(0, 1, 900), strike)));
        Assert.Equal([SimulationFindings.CapacityNotKnown], Codes(DrivelineSimulation.OfEngagement(DrivelineChain.Of(tube, rotor), bare)));
        SimulationDrive gentle = bare.WithEngagement(
            Engagement.Through(PtoClutchKind.HandLever).WithManner(EngagementManner.Gentle).WithCapacity(Nm(900)));
        Assert.Equal([SimulationFindings.RiseNotKnown], Codes(DrivelineSimulation.OfEngagement(DrivelineChain.Of(tube, rotor), gentle)));
        Branch branch = Branch.Of("auger", RatioBand.Exactly(0.3, Given), Part.Shaft("auger shaft"));
        Assert.Equal(
            [SimulationFindings.BranchNotSupported], Codes(Strike(DrivelineChain.Of(tube, branch, rotor), Drive(0, 1, 900), strike)));
        Assert.Equal([SimulationFindings.StiffnessNotKnown],
            Codes(Strike(DrivelineChain.Of(Part.Of(PartKind.OverrunClutch, "freewheel"), rotor), Drive(0, 1, null), strike)));
    }

    [Fact]
    public void Missing_InertiaBetweenClutchAndBolt_BarsOnlyTheRunWithIt()
    {
        Part rotor = Rotor(3);
        DrivelineSimulation simulation = Strike(
            DrivelineChain.Of(Shaft("tube", 2000), Bolt(800), rotor), Drive(100, 1, 900),
                SimulatedStrike.By(rotor, StrikePlace.Blade, Stop));
        Assert.True(simulation.CanRun);
        Assert.True(simulation.TryRun(SimulatedDevices.Blocked, BandPoint.Expected, BandPoint.Expected, out _, out _));
        Assert.False(
            simulation.TryRun(
            SimulatedDevices.Fitted, BandPoint.Expected, BandPoint.Expected, out _, out IReadOnlyList<Driveline.Findings.Finding> missing));
        Assert.Equal([SimulationFindings.InertiaBetweenNotKnown], missing.Select(f => f.Code));
        Assert.Contains(
            SimulationFindings.InertiaBetweenNotKnown, Assert.Throws<InvalidOperationException>(
            () => simulation.Run(SimulatedDevices.Fitted, BandPoint.Expected)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Assumed_EachStandIn_IsNamed()
    {
        DrivelineChain chain = DrivelineChain.Of(Shaft("tube", 2000).WithInertia(KgM2Of(0.02)), Rotor(3));
        Assert.Empty(Strike(chain, Drive(0, 1, 900), SimulatedStrike.By(chain.Parts[1], StrikePlace.Blade, Stop)).Assumed);
        Assert.Equal(
            [SimulationFindings.EngineHeld, SimulationFindings.NoClutchCap, SimulationFindings.PlaceNotKnown],
            Strike(chain, Drive(0, null, null), SimulatedStrike.By(chain.Parts[1], StrikePlace.NotKnown, Stop)).Assumed.Select(
                f => f.Code));
        SimulationDrive bare = SimulationDrive.At(RotationalSpeed.FromRadiansPerSecond(W))
            .WithEngagement(Engagement.Through(PtoClutchKind.Electric).WithCapacity(Nm(900)));
        Assert.Equal(
            [SimulationFindings.EngineHeld, SimulationFindings.NoLoad, SimulationFindings.SuddenBite],
            DrivelineSimulation.OfEngagement(chain, bare).Assumed.Select(f => f.Code));
        Assert.Equal(
            [SimulationFindings.PartsWithoutInertia],
            Strike(DrivelineChain.Of(Shaft("tube", 2000), chain.Parts[1]), Drive(0, 1, 900),
                SimulatedStrike.By(chain.Parts[1], StrikePlace.Blade, Stop)).Assumed.Select(f => f.Code));
        Assert.Null(DrivelineSimulation.OfEngagement(chain, bare).EngagementPeak());
    }

    [Fact]
    public void EngagementPeak_OnFacts_SpansItsRuns()
    {
        DrivelineChain chain = DrivelineChain.Of(
            Part.Of(PartKind.Yoke, "hub").WithInertia(KgM2Of(0.5)), Shaft("tube", 20000).WithInertia(KgM2Of(1e-6)), Rotor(1.5));
        SimulationDrive drive = Drive(0, 50, null)
            .WithEngineLine(TorqueSpeedLine.Of(Torque.FromNewtonMeters(400), RotationalSpeed.FromRadiansPerSecond(W), 100))
            .WithEngagement(Engagement.Through(PtoClutchKind.Electric).WithManner(EngagementManner.Abrupt).WithCapacity(Nm(500, 600, 700)))
            .WithLoad(Nm(0));
        TorqueBand peak = DrivelineSimulation.OfEngagement(chain, drive).EngagementPeak()!;
        Close.Relative(750, peak.Low.NewtonMeters, 1e-3, "hand: 2·500·1.5/2.0");
        Close.Relative(900, peak.Expected!.Value.NewtonMeters, 1e-3, "hand: 2·600·1.5/2.0");
        Close.Relative(1050, peak.High!.Value.NewtonMeters, 1e-3, "hand: 2·700·1.5/2.0");
        Assert.Equal(BasisKind.CommonPractice, peak.WeakestBasis.Kind);
    }

    [Fact]
    public void Trace_OfAnElement_BeginsAtItsSteadyTorqueAndReachesItsPeak()
    {
        Part tube = Shaft("tube", 2000);
        Part rotor = Rotor(3);
        SimulationOutcome outcome = Strike(DrivelineChain.Of(tube, rotor), Drive(300, 3, 1e6),
            SimulatedStrike.By(rotor, StrikePlace.Blade, Stop)).Run(SimulatedDevices.Fitted, BandPoint.Expected);
        IReadOnlyList<double> trace = outcome.Trace(tube, 2001);
        Close.Relative(300, trace[0], 1e-9, "T₀");
        Close.Relative(outcome.Peak(tube).NewtonMeters, trace.Max(), 1e-3, "samples near the peak");
        Assert.Throws<ArgumentOutOfRangeException>(() => outcome.Trace(tube, 1));
        Assert.Throws<ArgumentException>(() => outcome.Trace(Shaft("other", 1), 10));
    }

    [Fact]
    public void BadInput_IsNamedWithRangeAndValue()
    {
        Part rotor = Rotor(3);
        Assert.Contains("PTO speed must be a finite value above 0 rad/s; got 0 rad/s",
            Assert.Throws<ArgumentOutOfRangeException>(() => SimulationDrive.At(RotationalSpeed.Zero)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(
            () => SimulationDrive.At(RotationalSpeed.FromRadiansPerSecond(1)).WithEngineInertia(KgM2(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Part.Shaft("s").WithStiffness(NmPerRad(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Part.Shaft("s").WithDamping(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SimulatedStrike.By(rotor, StrikePlace.Deck, Stop));
        Assert.Throws<ArgumentException>(
            () => Strike(DrivelineChain.Of(Shaft("tube", 1)), Drive(0, 1, 900), SimulatedStrike.By(rotor, StrikePlace.Blade, Stop)));
    }
}
