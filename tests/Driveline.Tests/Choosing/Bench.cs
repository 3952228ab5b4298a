using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.ShearBolts;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Choosing;

/// <summary>An invented brush cutter whose bolt sits beside the shaft, one plane, every fact known.</summary>
internal static class Bench
{
    public const string Fitted = "M8 ISO 8.8";

    public static ShearBoltJoint Joint(string thread, string grade, double radiusMm) =>
        Beside(ShearBolt.Of(ScrewThread.Parse(thread), BoltGrade.Parse(grade)).With(PlaneThrough.Shank), radiusMm);

    public static ShearBoltJoint Beside(ShearBolt bolt, double radiusMm) => ShearBoltJoint
        .Tangential(bolt, Length.FromMillimeters(radiusMm))
        .WithPlanes(1).WithStandOff(Length.Zero).WithHub(HubState.Free).WithHoleFit(HoleFit.Tight);

    public static ShearBoltDevice Bolt(string thread, string grade, double radiusMm) =>
        ShearBoltDevice.Of("shear bolt", Joint(thread, grade, radiusMm));

    /// <summary>The chain around a device, the drive tube damaged at a torque.</summary>
    public static DrivelineChain Chain(ProtectiveDevice device, double tubeNm) =>
        DrivelineChain.Of(Stub, Protection.Thornbeck.Joint, Part.Shaft("drive tube").WithDamageTorque(Nm(tubeNm)), device, Gearbox, Blades);

    public static ProtectionQuestion Question(ProtectiveDevice device, double tubeNm, double workNm) =>
        ProtectionQuestion.About(Chain(device, tubeNm))
        .WithMachine(MachineKind.RotaryCutter)
        .WithPartsComplete(true)
        .WithWork(WorkPeak.Stated(Nm(workNm)))
        .WithPeaksPerHour(20)
        .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(100)))
        .WithSpecified(Bolt("M8", "8.8", 50));

    /// <summary>M8 class 8.8 at 50 mm.</summary>
    public static ProtectionQuestion Question(double tubeNm, double workNm) => Question(Bolt("M8", "8.8", 50), tubeNm, workNm);

    public static StockList Stock(params string[] items) => StockList.Parse(string.Join("; ", items));

    public static string[] Codes(BoltChoice choice) => [.. choice.Findings.Select(f => f.Code)];

    public static double Value(this Driveline.Findings.Finding finding, string name) => finding.Parameter(name)!.Value;
}
