using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>How long a device lasts under the work it meets.</summary>
public class DeviceCheckTests
{
    // A neck of 10 mm, 78.54 mm², on 50 mm.
    private static readonly ProtectiveDevice Necked = ShearBoltDevice.Of("neck", ShearBoltJoint.Tangential(
        ShearBolt.Of(ScrewThread.Parse("M12"), Iso898.Class8_8).With(PlaneThrough.Neck).WithNeckDiameter(Length.FromMillimeters(10)),
        Length.FromMillimeters(50)));

    private static DeviceCheck Check(ProtectiveDevice device, TorqueBand work) => ProtectionCheck.Run(
        With(DrivelineChain.Of(device, Tube)).WithWork(WorkPeak.Stated(work)).WithPeaksPerHour(40)).Devices[0];

    // 785.4 N·m / (78.54 mm² · 50 mm) = 200 MPa, the highest peak; 2e6 / 2^5 = 62 500 cycles, 40 an hour.
    [Fact]
    public void Fatigue_BoltAndRateKnown_IsThatOfTheHighestPeak()
    {
        BoltFatigue fatigue = Check(Necked, Nm(300, 500, 785.398)).Fatigue!;
        Close.Relative(62500, fatigue.Cycles!.Value, 1e-4, "2e6 / 2^5");
        Close.Relative(1562.5, fatigue.Hours!.Value, 1e-4, "62 500 / 40");
    }

    [Fact]
    public void Fatigue_WhereAFactIsMissing_IsNull()
    {
        Assert.Null(Check(Necked, TorqueBand.AtLeast(Torque.FromNewtonMeters(300), Stated)).Fatigue);
        Assert.Null(Check(Bolt(1200, 1500, 2000), Nm(300)).Fatigue);
        ProtectionQuestion question = With(DrivelineChain.Of(Necked, Tube));
        Assert.Null(ProtectionCheck.Run(question).Devices[0].Fatigue);
        Assert.Null(ProtectionCheck.Run(question.WithWork(null).WithPeaksPerHour(40)).Devices[0].Fatigue);
    }

    [Fact]
    public void Fatigue_AskedTwice_IsTheSame()
    {
        DeviceCheck check = Check(Necked, Nm(300));
        Assert.Same(check.Fatigue, check.Fatigue);
    }
}
