using Driveline.Sweeps.Factors;
using FsCheck;

namespace Driveline.Sweeps.Tests;

public class StudyLaws
{
    [Law]
    public void Distribution_Quantiles_AreWithinItsSupportAndNeverFall(int kind, int low, PositiveInt width, NonNegativeInt at)
    {
        Distribution any = Any(kind, low, width.Get, at.Get);
        double[] shares = [1e-12, 1e-6, .. Enumerable.Range(1, 99).Select(k => k / 100.0), 1 - 1e-6, 1 - 1e-12];
        double[] quantiles = (double[])shares.Clone();
        any.Quantiles(quantiles);
        for (int k = 0; k < quantiles.Length; k++)
        {
            Assert.InRange(quantiles[k], any.Low, any.High);
            Assert.Equal(any.Quantile(shares[k]), quantiles[k], 1e-9 * Math.Max(1, Math.Abs(quantiles[k])));
            Assert.True(k == 0 || quantiles[k] >= quantiles[k - 1], any.Mark);
        }
    }

    [Law]
    public void Sample_OfAnyDesign_LiesWithinTheSupport(
        int kind, int low, PositiveInt width, NonNegativeInt at, int design, PositiveInt seed)
    {
        Distribution any = Any(kind, low, width.Get, at.Get);
        Study study = Study.Of("law").WithFactors(Factor.Of("x", any), Factor.Uniform("y", 0, 1)).WithDesign(AnyDesign(design, seed.Get))
            .WithOutputs(StudyOutput.Of("twice", row => 2 * row[0]));
        StudyTable table = Sweep.Run(study, SweepOptions.Default.WithThreads(1), default).Table!;
        Assert.All(table.Numbers("x").ToArray(), x => Assert.InRange(x, any.Low, any.High));
        Assert.All(table.Numbers("y").ToArray(), y => Assert.InRange(y, 0, 1));
    }

    [Law(MaxTest = 20)]
    public void Shards_InAnyNumberAndOrder_MergeToTheSameBytes(PositiveInt rows, PositiveInt shards, int order, bool isCsv)
    {
        using var folder = new TestFolder();
        string kind = isCsv ? ".csv" : ".parquet";
        Study study = TestStudies.Mixed(1 + (rows.Get % 900));
        int count = 1 + (shards.Get % 9);
        Sweep.RunTo(study, folder["whole" + kind], SweepOptions.Default.WithThreads(1), default);
        for (int i = 1; i <= count; i++)
        {
            Sweep.RunTo(study, folder[i + kind], SweepOptions.Default.WithThreads(1 + (i % 3)).WithShard(i, count), default);
        }

        var random = new System.Random(order);
        string[] files = [.. Enumerable.Range(1, count).OrderBy(_ => random.Next()).Select(i => folder[i + kind])];
        Sweep.Merge(files, folder["merged" + kind]);
        Assert.Equal(File.ReadAllBytes(folder["whole" + kind]), File.ReadAllBytes(folder["merged" + kind]));
    }

    [Law(MaxTest = 20)]
    public void Indices_OfASum_AreItsSharesAndTotalsNotBelowFirsts(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt seed)
    {
        // Of y = a x1 + b x2 + c x3, each uniform, S = Si = a² / (a² + b² + c²).
        double[] weights = [1 + (a.Get % 20), 1 + (b.Get % 20), 1 + (c.Get % 20)];
        Study study = Study.Of("law").WithFactors(TestFunctions.Units(3)).WithDesign(Design.Sobol(512, (ulong)seed.Get))
            .WithSensitivity(true)
            .WithOutputs(StudyOutput.Of("y", x => (weights[0] * x[0]) + (weights[1] * x[1]) + (weights[2] * x[2])));
        double all = weights.Sum(w => w * w);
        SensitivityIndex[] found = [.. Sweep.Run(study).Sensitivity];
        for (int k = 0; k < found.Length; k++)
        {
            double share = weights[k] * weights[k] / all;
            Assert.Equal(share, found[k].First!.Value, 0.03);
            Assert.Equal(share, found[k].Total!.Value, 0.03);
            Assert.True(found[k].TotalHigh >= found[k].FirstLow, found[k].ToString());
            Assert.InRange(found[k].Total!.Value, found[k].TotalLow!.Value, found[k].TotalHigh!.Value);
        }
    }

    [Law]
    public void Correlation_OfTwo_IsPositiveDefiniteBelowOneAlone(NormalFloat any)
    {
        double r = Math.IEEERemainder(any.Get, 3);
        string? problem = null;
        Copula? copula = Copula.Of([[1, r], [r, 1]], 2, out problem);
        Assert.Equal(Math.Abs(r) < 1 - 1e-9, copula is not null);
        Assert.Equal(copula is null, problem is not null);
    }

    private static Distribution Any(int kind, int low, int width, int at)
    {
        double a = low / 7.0;
        double b = a + (width / 3.0);
        double m = a + ((b - a) * (at % 11) / 10);
        return (kind & 7) switch
        {
            0 or 1 => new UniformDistribution(a, b),
            2 => new NormalDistribution(a, b - a),
            3 => new LognormalDistribution(Math.Abs(a) + 0.1, b - a),
            4 => new TriangularDistribution(a, m, b),
            5 or 6 => new PertDistribution(a, m, b),
            _ => new ListDistribution([.. new[] { a, m, b }.Order()]),
        };
    }

    private static Design AnyDesign(int kind, int seed) => (kind & 7) switch
    {
        0 => Design.Grid(5),
        1 => Design.Random(64, (ulong)seed),
        2 => Design.LatinHypercube(64, (ulong)seed),
        3 => Design.MaximinLatinHypercube(16, (ulong)seed),
        4 => Design.Morris(8, (ulong)seed),
        5 => Design.UnscrambledSobol(64),
        _ => Design.Sobol(64, (ulong)seed),
    };
}
