// Docs example: begin
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Fatigue;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.ShearBolts;
using Driveline.Torsion;
using UnitsNet;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of from-code.md, compiled; a test keeps both the same.</summary>
internal static class FromCodeExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        // what the parts behind the bolt take, and what a plane of the bolt takes
        ShaftSection section = ShaftSection.Solid(Length.FromMillimeters(30));
        console.WriteLine($"Shaft: {TorsionCapacity.Of(section, SteelGrade.Of("1045 hot rolled")).Torque}");
        console.WriteLine($"Stub of the tractor: {StubStrength.Of(PtoType.Of(1)).Torque}");
        ScrewThread thread = ScrewThread.Parse("M10");
        ShearBolt bolt = ShearBolt.Of(thread, Iso898.Class8_8).With(PlaneThrough.Shank);
        BoltStrength tension = BoltStrength.Of(Iso898.Class8_8, thread);
        console.WriteLine($"One plane of {bolt}: {ShearPlane.Of(bolt).Load}; in tension {tension.TensileLoad}");
        console.WriteLine($"Three lines: {HeadMark.RadialLines(3).Identify(ScrewThread.Parse("1/2-13 UNC")).Candidates[0]}");

        // a slip clutch by its faces and springs
        Basis maker = Basis.Given("spring maker");
        CoilSpring spring = CoilSpring.OfRate(
            ForcePerLength.FromNewtonsPerMillimeter(90), Length.FromMillimeters(50), Length.FromMillimeters(33), maker);
        DiscClutch clutch = DiscClutch
            .Of(Length.FromMillimeters(160), Length.FromMillimeters(100), 4, Facings.MouldedLining, SpringPack.Of(spring, 8))
            .WithSpringLength(Length.FromMillimeters(42), Length.FromMillimeters(0.5));
        console.WriteLine($"Slips at {SlipTorque.Of(clutch, ClutchCondition.AsOf(new DateTime(2026, 5, 4))).Running}");

        // the life of a detail: 1000 swings of 200 MPa, then 1000 of 300 MPa
        double[] stressPa = [.. Enumerable.Range(0, 4001).Select(k => k % 2 == 0 ? 0 : k < 2000 ? 200e6 : 300e6)];
        SNCurve curve = SNCurve.Shear(Pressure.FromMegapascals(100), Basis.Given("our test"));
        console.WriteLine($"Damage: {curve.Damage(Rainflow.Count(stressPa)):F4}");

        // a rotor that stops dead at 540 per minute, with a bolt of 800 N·m before it
        TorsionModel model = new TorsionModelBuilder()
            .AddRotor("tractor", MassMomentOfInertia.FromKilogramSquareMeters(0.8))
            .AddRotor("rotor", MassMomentOfInertia.FromKilogramSquareMeters(0.2))
            .AddShaft(
                "driveline", "tractor", "rotor", Shaft.OfStiffness(RotationalStiffness.FromNewtonMetersPerRadian(2000)),
                BreakingCoupling.At(Torque.FromNewtonMeters(800)))
            .AddObstacle("stump", "rotor", Obstacle.RigidStop(Duration.Zero))
            .Build();
        console.WriteLine($"Natural frequency: {model.NaturalModes()[1].Frequency.Hertz:F2} Hz");
        TransientResult run = Transient.Run(
            model.TurningAt(RotationalSpeed.FromRevolutionsPerMinute(540)), Duration.FromMilliseconds(50));
        console.WriteLine($"The bolt parts after {run.TripTime("driveline")!.Value.Milliseconds:F2} ms");

        // Docs example: end
    }
}
