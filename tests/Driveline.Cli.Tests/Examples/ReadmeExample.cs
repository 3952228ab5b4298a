// README example: begin
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

// README example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the README, compiled; a test keeps both the same.</summary>
internal static class ReadmeExample
{
    public static void Run(TextWriter console)
    {
        // README example: go on
        Basis survey = Basis.Given("our survey");
        TorqueBand tube = TorqueBand.Between(
            Torque.FromNewtonMeters(1900), Torque.FromNewtonMeters(2100), Torque.FromNewtonMeters(2400), survey);
        TorqueBand work = TorqueBand.Between(
            Torque.FromNewtonMeters(420), Torque.FromNewtonMeters(500), Torque.FromNewtonMeters(650), survey);
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank);
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(bolt, Length.FromInches(1.25)).WithHub(HubState.Free);
        DrivelineChain chain = DrivelineChain.Of(Part.Shaft("drive tube").WithDamageTorque(tube), ShearBoltDevice.Of("bolt", joint));
        ProtectionVerdict verdict = ProtectionCheck.Run(ProtectionQuestion.About(chain).WithWork(WorkPeak.Stated(work)));
        console.WriteLine($"{verdict.Headline}: guards {verdict.Guards}, quiet {verdict.Quiet}");
        console.WriteLine($"The bolt acts at {verdict.Trip}.");
        console.WriteLine($"Look at first: {verdict.MeasureNext[0]}");

        // README example: end
    }
}
