using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Tests.Cases;
using UnitsNet;

namespace Driveline.Tests.Protection;

/// <summary>Sums that a practitioner does on paper of what bends, warms and swings, each beside its row.</summary>
public class CheckedByHandMotionTests
{
    private static readonly Basis Stated = Basis.Given("the test");

    private static readonly RotationalSpeed Pto540 = RotationalSpeed.FromRevolutionsPerMinute(540);

    [Fact]
    public void Bolt_FiveMillimetresOfGap_HoldsTwoFifths()
    {
        // 3/8 in, grade 5, body at least 0.360 in = 9.144 mm: 8 · 0.60 · 5 / (1.5 · 0.75 · 9.144) = 2.333; 1/√(1 + 2.333²) = 0.394.
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(
            ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank), Length.FromInches(1.25))
            .WithHub(HubState.Free);
        Close.Relative(0.394, BreakTorque.Of(joint.WithStandOff(Length.FromMillimeters(5))).Torque.SiBand.Low
            / BreakTorque.Of(joint).Torque.SiBand.Low, 0.005, "sum above");
    }

    [Fact]
    public void Clutch_BlockedAt540_IsAt200DegreesInAboutFourSeconds()
    {
        // 645.5 N·m · 18π = 36 502 W on 4 · 13 528 mm²; √(52 · 7272 · 420) = 12 602 of 12 602 + √(0.353 · 1250 · 614) = 520 goes into the
        // iron: 648 kW/m². 6 mm behind each face, a = 1.7026e-5 m²/s: 180 K = 648e3 · 0.006/52 · (Fo + 1/3), Fo = 2.075, t = 4.39 s.
        HeatPath path = HeatPath.Of(Area.FromSquareMillimeters(13528.5), 4, ThermalMaterials.HighCarbonCastIron,
            Length.FromMillimeters(6), ThermalMaterials.OrganicLiningWorn);
        SlipHeat heat = SlipHeat.Of(
            SlipEvent.Blocked(Torque.FromNewtonMeters(645.5), Pto540), path, Facings.MouldedLining, Temperature.FromDegreesCelsius(20));
        Close.Relative(4.39, heat.TimeToContinuous!.Value.Seconds, 0.005, "sum above; 200 °C is the limit of moulded linings");
    }

    [Fact]
    public void Rotor_BroughtUpByAHeldDrive_HeatsByHalfItsSwing()
    {
        // 4.2 kg·m² · 1.47² = 9.076 kg·m²; 540 · 1260/2160 = 315 min⁻¹ = 32.99 rad/s: half of 9.076 · 32.99² = 4938 J.
        SlipEvent up = SlipEvent.StartUp(Torque.FromNewtonMeters(1100), MassMomentOfInertia.FromKilogramSquareMeters(4.2 * 1.47 * 1.47),
            RotationalSpeed.FromRevolutionsPerMinute(315), Torque.Zero);
        Close.Relative(4938, up.Energy!.Value.Joules, 0.001, "sum above");
    }

    [Fact]
    public void SuddenBite_OfAClutchThatPasses1100_SwingsALittleAboveIt()
    {
        // What lies before the tube, 0.02 + 0.006 kg·m², on 8151 N·m/rad (tube and blade shaft in a row): ω = 560 rad/s. A torque that
        // rises in 20 ms leaves a swing of 1100 · |sin(ωτ/2)|/(ωτ/2) = 1100 · 0.631/5.60 = 124 N·m without damping: 1100 to 1224.
        CaseFile bite = DemoCases.Read("ravensmoor-clutch-dropped-in").With("tractor.ptoClutch.capacity", "\"1100 N.m\"").Case!;
        CaseSimulation run = CaseSimulation.Of(bite);
        SimulatedLoad tube = run.Check!.Loads.Single(l => l.Element.Name == "drive tube");
        Assert.InRange(tube.WithoutProtection!.Value.NewtonMeters, 1100, 1224);

        // The bolt of 952 N·m goes, though nothing is struck: dropped in, the lever breaks it.
        Assert.True(run.Check.Tripped);
    }

    [Fact]
    public void DeadStop_WithNothingThatSlips_IsTheSwingOfTheEngine()
    {
        // 9 kg·m² of engine at the PTO and 0.03 of line through 5000 N·m/rad: 300 + 18π · √(9.03 · 5000) = 12 316 N·m.
        DrivingSide side = DrivingSide.At(Pto540, Thornbeck.Nm(300))
            .WithEngineInertia(Inertia(9))
            .WithLineInertia(Inertia(0.03))
            .WithStiffness(StiffnessBand.Exactly(RotationalStiffness.FromNewtonMetersPerRadian(5000), Stated));
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Blade, side).WithDeadStop();
        Close.Relative(12316, strike.Peak.High!.Value.NewtonMeters, 0.001, "sum above");
    }

    [Fact]
    public void Rock_BehindARustedClutch_IsThePtoClutchAndADampedSwing()
    {
        // The PTO clutch passes 1050. Tube 9000 and blade shaft 40 000 · 1.47² in a row: 8151 N·m/rad; 0.026 kg·m² before them swing
        // 18π · √(0.026 · 8151) = 823 N·m further. The tube's 4 N·m·s/rad are 3.4 of the row: ζ = 3.4/(2 · 14.56) = 0.116, a quarter swing
        // keeps e^−0.170 = 0.844 of it: 1050 + 694 = 1744, above the 1500 at which the tube may bend.
        SimulatedLoad tube = DemoCases.Simulation("ravensmoor-rusted-clutch-rock").Check!.Loads.Single(l => l.Element.Name == "drive tube");
        Close.Relative(1744, tube.WithProtection!.Value.NewtonMeters, 0.02, "sum above");
        Assert.Equal(Answer.Yes, tube.DamagedWith);
    }

    private static InertiaBand Inertia(double kgM2) => InertiaBand.Exactly(MassMomentOfInertia.FromKilogramSquareMeters(kgM2), Stated);
}
