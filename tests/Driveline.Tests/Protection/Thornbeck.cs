using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Protection;

/// <summary>An invented brush cutter with every fact known, from which tests take one fact away at a time.</summary>
internal static class Thornbeck
{
    public static readonly Basis Stated = Basis.Given("the test");

    public static TorqueBand Nm(double low, double expected, double high) => TorqueBand.Between(
        Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(expected), Torque.FromNewtonMeters(high), Stated);

    public static TorqueBand Nm(double value) => Nm(value, value, value);

    public static ProtectiveDevice Bolt(double low, double expected, double high) =>
        StatedDevice.Of("shear bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, Nm(low, expected, high));

    public static Part Stub => Part.Of(PartKind.PtoStub, "PTO stub").WithDamageTorque(Nm(3000));

    public static Part Joint => Part.Of(PartKind.UniversalJoint, "universal joint").WithDamageTorque(Nm(3000));

    public static Part Tube => Part.Shaft("drive tube").WithDamageTorque(Nm(2100, 2300, 2600));

    public static Part Gearbox => Part.Gearbox("gearbox", 1.5).WithEfficiency(0.96).WithDamageTorque(Nm(2900));

    public static Part Blades => Part.Rotor("blades", MassMomentOfInertia.FromKilogramSquareMeters(4.2));

    public static ProtectionQuestion With(ProtectiveDevice device) => With(DrivelineChain.Of(Stub, Joint, Tube, device, Gearbox, Blades));

    public static ProtectionQuestion With(DrivelineChain chain) => ProtectionQuestion.About(chain)
        .WithMachine(MachineKind.RotaryCutter)
        .WithPartsComplete(true)
        .WithWork(WorkPeak.Stated(Nm(700, 800, 1000)))
        .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(1100)));
}
