using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>A typed row: a shear bolt's radius varies and all else stays; built anew, or with what stays kept.</summary>
internal sealed class TypedRows
{
    private readonly Basis stated = Basis.Given("the benchmark");
    private readonly DrivelineChain chain;
    private readonly ShearBoltDevice device;
    private readonly ProtectionQuestion question;
    private int row;

    public TypedRows()
    {
        device = ShearBoltDevice.Of("shear bolt", Joint(Bolt(), 0.03175));
        chain = Chain(device, Before(), Behind());
        question = Question(chain);
    }

    public double BuildAndRun() =>
        (double)ProtectionCheck.Run(Question(Chain(ShearBoltDevice.Of("shear bolt", Joint(Bolt(), 0.03175)), Before(), Behind()))).Headline;

    public double ChangedAndRun()
    {
        row = (row + 1) & 255;
        DrivelineChain changed = chain.With(device, device.AtRadius(0.0155 + (row * 2e-6)));
        return (double)ProtectionCheck.Run(question.WithChain(changed)).Headline;
    }

    private static DrivelineChain Chain(ShearBoltDevice device, Part[] before, Part[] behind) => DrivelineChain.Of([.. before, device,
        .. behind]);

    private static ShearBolt Bolt() => ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank);

    private static ShearBoltJoint Joint(ShearBolt bolt, double shaftM) => ShearBoltJoint.ThroughShaft(bolt, Length.FromMeters(shaftM))
        .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight);

    private TorqueBand Nm(double low, double expected, double high) => TorqueBand.Between(
        Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(expected), Torque.FromNewtonMeters(high), stated);

    private Part[] Before() =>
    [
        Part.Of(PartKind.PtoStub, "PTO stub").WithDamageTorque(Nm(2600, 2900, 3300)),
        Part.Shaft("drive tube").WithDamageTorque(Nm(1900, 2100, 2400)),
    ];

    private Part[] Behind() =>
    [
        Part.Gearbox("gearbox", 1.47).WithEfficiency(0.96).WithDamageTorque(Nm(2200, 2500, 2900)),
        Part.Rotor("blades", MassMomentOfInertia.FromKilogramSquareMeters(4.2)),
    ];

    private ProtectionQuestion Question(DrivelineChain chain) => ProtectionQuestion.About(chain)
        .WithMachine(MachineKind.RotaryCutter)
        .WithPartsComplete(true)
        .WithWork(WorkPeak.Stated(Nm(420, 500, 650)))
        .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(700, 800, 900)));
}
