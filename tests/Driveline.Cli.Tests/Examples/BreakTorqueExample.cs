// Docs example: begin
using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.ShearBolts;
using UnitsNet;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the page on break torques, compiled; a test keeps both the same.</summary>
internal static class BreakTorqueExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("M10"), Iso898.Class8_8).With(PlaneThrough.Shank);
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(bolt, Length.FromMillimeters(35)).WithHub(HubState.Free);
        BreakTorque broken = BreakTorque.Of(joint);
        console.WriteLine($"It gives way at {broken.Torque}.");
        foreach (CalculationLine line in broken.Sheet())
        {
            console.WriteLine($"{line.End,-10} {line}");
        }

        console.WriteLine($"Low: {broken.Torque.Basis.Low}");
        console.WriteLine($"Expected: {broken.Torque.Basis.Expected}");
        console.WriteLine($"High: {broken.Torque.Basis.High}");

        // Docs example: end
    }
}
