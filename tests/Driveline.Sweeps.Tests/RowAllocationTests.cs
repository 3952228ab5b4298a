using Driveline.Cases;
using Driveline.Sweeps.Outputs;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Tests;

/// <summary>What a row costs in new memory once its thread has answered some: the collector stops every thread for each of its rounds.</summary>
public class RowAllocationTests
{
    [Theory]
    [InlineData("ravensmoor-stump", "simulate.peakTorqueNm[main gearbox]", 14_000, "strike.force")]
    [InlineData("ravensmoor-stump", "simulate.peakTorqueNm[main gearbox]", 15_000, "driveline[1].stiffness")]
    [InlineData("thornbeck-bolt-right", "assess.verdict", 6_500, "driveline[2].shearBolt.shaftDiameter", "driveline[3].damagedAt",
        "work.steadyPeak")]
    [InlineData("thornbeck-bolt-right", "assess.guardMargin", 2_500, "work.steadyPeak")]
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

    private static double Stated(CaseTarget target) =>
        target.Stated is Quantities.QuantityBand band ? band.SiBand.Expected : (double)target.Stated!;
}
