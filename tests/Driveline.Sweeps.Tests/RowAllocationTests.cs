using Driveline.Cases;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Sweeps.Outputs;
using Driveline.Sweeps.Rows;
using UnitsNet;

namespace Driveline.Sweeps.Tests;

/// <summary>What a row costs in new memory once its thread has answered some: the collector stops every thread.</summary>
public class RowAllocationTests
{
    [Theory]
    [InlineData("ravensmoor-stump", "simulate.peakTorqueNm[main gearbox]", 14_000, "strike.force")]
    [InlineData("ravensmoor-stump", "simulate.peakTorqueNm[main gearbox]", 15_000, "driveline[1].stiffness")]
    [InlineData("thornbeck-bolt-right", "assess.verdict", 6_500, "driveline[2].shearBolt.shaftDiameter", "driveline[3].damagedAt",
        "work.steadyPeak")]
    [InlineData("thornbeck-bolt-right", "assess.guardMargin", 2_500, "work.steadyPeak")]
    [InlineData("dunmarsh-clutch-well-set", "assess.verdict", 13_500, "driveline[2].slipClutch.springLength")]
    public void Row_AfterTheFirst_AllocatesLittle(string name, string asked, int most, params string[] paths)
    {
        CaseFile file = TestStudies.Case(name);
        var targets = new List<CaseTarget>();
        foreach (string path in paths)
        {
            Assert.True(CaseTarget.TryFind(file, path, out CaseTarget? target, out _));
            targets.Add(target);
        }

        Assert.True(CaseOutputs.TryFind(file, asked, out CaseOutput? output, out _, out _));
        var rows = new CaseRows(file, [.. paths.Select(p => Factor.Uniform(p, 0, 1))], targets);
        var scratch = new CaseScratch(paths.Length);
        double[][] columns = [.. targets.Select(t => Enumerable.Range(0, 200).Select(k => Stated(t) * (0.98 + (k * 2e-4))).ToArray())];
        CaseOutput[] outputs = [output];
        double[] numbers = new double[1];
        string?[] words = new string?[1];
        long Bytes(int from, int to)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            for (int row = from; row < to; row++)
            {
                Assert.Null(rows.Answer(columns, row, scratch, outputs, numbers, words, CancellationToken.None));
            }

            return (GC.GetAllocatedBytesForCurrentThread() - before) / (to - from);
        }

        Bytes(0, 150);
        Assert.InRange(Bytes(150, 200), 0, most);
    }

    // A question of C# whose bolt alone moves, judged: chain, device, question, verdict, and a check for each element.
    [Fact]
    public void TypedRow_AfterTheFirst_AllocatesLittle()
    {
        Basis stated = Basis.Given("the test");
        TorqueBand Nm(double nm) => TorqueBand.Exactly(Torque.FromNewtonMeters(nm), stated);
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank);
        ShearBoltDevice device = ShearBoltDevice.Of("shear bolt", ShearBoltJoint.ThroughShaft(bolt, Length.FromMeters(0.03175))
            .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight));
        DrivelineChain chain = DrivelineChain.Of(
            Part.Of(PartKind.PtoStub, "PTO stub").WithDamageTorque(Nm(2600)), Part.Shaft("drive tube").WithDamageTorque(Nm(1900)), device,
            Part.Gearbox("gearbox", 1.47).WithEfficiency(0.96).WithDamageTorque(Nm(2200)),
            Part.Rotor("blades", MassMomentOfInertia.FromKilogramSquareMeters(4.2)));
        ProtectionQuestion question = ProtectionQuestion.About(chain).WithMachine(MachineKind.RotaryCutter).WithPartsComplete(true)
            .WithWork(WorkPeak.Stated(Nm(500))).WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(800)));
        int known = 0;
        long Bytes(int from, int to)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            for (int row = from; row < to; row++)
            {
                ProtectionVerdict verdict = ProtectionCheck.Run(
                    question.WithChain(chain.With(device, device.AtRadius(0.0155 + (row * 2e-6)))));
                known += verdict.Headline == Headline.NotKnown ? 0 : 1;
            }

            return (GC.GetAllocatedBytesForCurrentThread() - before) / (to - from);
        }

        Bytes(0, 150);
        Assert.InRange(Bytes(150, 200), 0, 1_600);
        Assert.Equal(200, known);
    }

    private static double Stated(CaseTarget target) =>
        target.Stated is QuantityBand band ? band.SiBand.Expected : (double)target.Stated!;
}
