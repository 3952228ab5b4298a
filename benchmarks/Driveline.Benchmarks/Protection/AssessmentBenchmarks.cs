using BenchmarkDotNet.Attributes;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Benchmarks.Protection;

/// <summary>One assessment of a chain that is built once, as a fleet or a sweep does it.</summary>
[MemoryDiagnoser]
public class AssessmentBenchmarks
{
    private readonly ProtectionQuestion question;
    private readonly double[] limitNm = [2900, 2100, 2300, 2500];

    public AssessmentBenchmarks()
    {
        Basis stated = Basis.Given("the benchmark");
        TorqueBand Nm(double low, double expected, double high) => TorqueBand.Between(
            Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(expected), Torque.FromNewtonMeters(high), stated);
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(
                ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank), Length.FromInches(1.25))
            .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight).WithShaftYield(StressBand.Exactly(Pressure.FromMegapascals(700), stated));
        DrivelineChain chain = DrivelineChain.Of(
            Part.Of(PartKind.PtoStub, "PTO stub").WithDamageTorque(Nm(2600, 2900, 3300)),
            Part.Shaft("drive tube").WithDamageTorque(Nm(1900, 2100, 2400)),
            ShearBoltDevice.Of("shear bolt", joint),
            Part.Of(PartKind.UniversalJoint, "cross of the joint").WithDamageTorque(Nm(2200, 2400, 2800)),
            Part.Gearbox("gearbox", 1.47).WithEfficiency(0.96).WithDamageTorque(Nm(2200, 2500, 2900)),
            Part.Rotor("blades", MassMomentOfInertia.FromKilogramSquareMeters(4.2)));
        question = ProtectionQuestion.About(chain)
            .WithMachine(MachineKind.RotaryCutter)
            .WithPartsComplete(true)
            .WithWork(WorkPeak.Stated(Nm(420, 500, 650)))
            .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(700, 800, 900)));
        if (ProtectionCheck.Run(question).Headline != Headline.Protected)
        {
            throw new InvalidOperationException("The benchmark must ask a question with an answer.");
        }
    }

    /// <summary>The bare comparison of torques, without bands' bases, bars or positions: the floor nobody can beat.</summary>
    [Benchmark(Baseline = true)]
    public double BareComparison()
    {
        double smallest = double.PositiveInfinity;
        foreach (double limit in limitNm)
        {
            smallest = Math.Min(smallest, limit / 1830);
        }

        return smallest;
    }

    [Benchmark]
    public Headline Assessment() => ProtectionCheck.Run(question).Headline;
}
