using Driveline.Chains;
using Driveline.Protection;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Reports;

/// <summary>Verdicts of every kind for the reports, by name.</summary>
internal static class ReportCases
{
    /// <summary>A name that tries every markup and terminal trick.</summary>
    public const string Hostile = "<b>|`*_[x](y)\u001b[31m\u202Eevil\u0000 &amp; {damagedLow} \uD800";

    public static readonly Dictionary<string, ProtectionVerdict> All = new()
    {
        ["protected"] = Run(With(Bolt(1200, 1500, 2000)).WithSpecified(Bolt(1200, 1500, 2000))),
        ["overlap"] = Run(With(Bolt(900, 1700, 2600)).WithSpecified(Bolt(700, 900, 1300))),
        ["too strong"] = Run(With(Bolt(2000, 2800, 3500))),
        ["too soft"] = Run(With(Bolt(500, 650, 900))),
        ["unbounded"] = Run(With(StatedDevice.Of(
            "unmarked bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone,
                Driveline.Quantities.TorqueBand.AtLeast(Torque.FromNewtonMeters(1200), Stated)))),
        ["nothing known"] = Run(
            ProtectionQuestion.About(
            DrivelineChain.Of(Part.Shaft("tube"), StatedDevice.NotIdentified("bolt"), Part.Gearbox("box"), Blades))),
        ["one part"] = Run(ProtectionQuestion.About(DrivelineChain.Of(Tube))),
        ["no device"] = Run(With(DrivelineChain.Of(Stub, Joint, Tube, Gearbox, Blades))),
        ["weaker than work"] = Run(With(DrivelineChain.Of(
            Stub, Part.Shaft("drive tube").WithDamageTorque(Nm(600, 700, 900)), Bolt(300, 400, 500), Gearbox, Blades))),
        ["flywheel"] = Run(With(DrivelineChain.Of(
            Stub, Tube, Bolt(1200, 1500, 2000), Part.Flywheel("flywheel", MassMomentOfInertia.FromKilogramSquareMeters(20)), Gearbox,
            Part.Shaft("crank").WithDamageTorque(Nm(50000))))),
        ["hostile"] = Run(
            With(DrivelineChain.Of(
            Stub, Joint, Part.Shaft(Hostile).WithDamageTorque(Nm(1400, 1900, 2100)), Bolt(1200, 1500, 2000), Gearbox, Blades))),
    };

    public static TheoryData<string> Names => [.. All.Keys];

    private static ProtectionVerdict Run(ProtectionQuestion question) => ProtectionCheck.Run(question);
}
