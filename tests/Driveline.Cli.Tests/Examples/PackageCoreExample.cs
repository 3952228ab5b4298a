// Docs example: begin
using Driveline.Fasteners;
using Driveline.ShearBolts;
using UnitsNet;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the README of the package Driveline, compiled; a test keeps both the same.</summary>
internal static class PackageCoreExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank);
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(bolt, Length.FromInches(1.25)).WithHub(HubState.Free);
        BreakTorque at = BreakTorque.Of(joint);
        console.WriteLine($"It gives way at {at.Torque}.");
        console.WriteLine($"Least sure: {at.Torque.Basis.Weakest.Kind}.");

        // Docs example: end
    }
}
