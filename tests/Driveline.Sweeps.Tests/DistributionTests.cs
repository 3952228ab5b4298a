using Driveline.Sweeps.Factors;
using Driveline.Tests;

namespace Driveline.Sweeps.Tests;

public class DistributionTests
{
    public static TheoryData<ReferenceRow> NormalQuantiles => ReferenceTable.Where("clutch", "statistics.csv",
        r => r["id"].StartsWith("N_q", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(NormalQuantiles))]
    public void NormalQuantile_ReferenceRow_Matches(ReferenceRow row)
    {
        double share = double.Parse(row["quantity"].Split("p=")[1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(row.Number("value"), NormalCurve.Quantile(share), 1e-11);
        Assert.Equal(share, NormalCurve.Chance(NormalCurve.Quantile(share)), 1e-14);
    }

    [Theory]
    [InlineData("uniform", 0.25, 3, "2 + 0.25 · 4")]
    [InlineData("triangular", 0.125, 3, "left of the mode: 2 + √(0.125 · 4 · 2) = 2 + 1")]
    [InlineData("triangular", 0.875, 5, "right of it, by symmetry")]
    [InlineData("triangular", 0.5, 4, "the mode, half way")]
    [InlineData("pert", 0.5, 4, "symmetric: α = β = 3, median in the middle")]
    [InlineData("pert", 0.103515625, 3, "I_x(3,3) = 10x³ − 15x⁴ + 6x⁵ at x = 1/4: 0.15625 − 0.05859375 + 0.005859375")]
    [InlineData("normal", 0.841344746068543, 6, "Φ(1) = 0.841344746068543: 4 + 2")]
    [InlineData("lognormal", 0.5, 3.5777087639996634, "median = m / √(1 + s²/m²) = 4 / √1.25")]
    public void Quantile_WorkedCase_Matches(string kind, double share, double expected, string working)
    {
        Distribution tried = kind switch
        {
            "uniform" => new UniformDistribution(2, 6),
            "triangular" => new TriangularDistribution(2, 4, 6),
            "pert" => new PertDistribution(2, 4, 6),
            "normal" => new NormalDistribution(4, 2),
            _ => new LognormalDistribution(4, 2),
        };
        Assert.Equal(expected, tried.Quantile(share), 1e-11);
        double[] many = [.. Enumerable.Repeat(share, 11)];
        tried.Quantiles(many);
        Assert.All(many, v => Assert.Equal(expected, v, 1e-11));
        Assert.NotEmpty(working);
    }

    [Theory]
    [InlineData(0, 0, 1, 1.0 / 6, "(a + 4 m + b) / 6 = (0 + 0 + 1) / 6")]
    [InlineData(0, 1, 1, 5.0 / 6, "(0 + 4 + 1) / 6")]
    [InlineData(10, 12, 20, 13, "(10 + 48 + 20) / 6")]
    public void Pert_Mean_IsThatOfItsFormula(double low, double mode, double high, double mean, string working)
    {
        var pert = new PertDistribution(low, mode, high);
        Assert.Equal(mean, Enumerable.Range(0, 20_000).Average(k => pert.Quantile((k + 0.5) / 20_000)), 1e-3 * (high - low));
        Assert.NotEmpty(working);
    }

    [Fact]
    public void Lognormal_MeanAndDeviation_AreThoseOfTheValue()
    {
        var lognormal = new LognormalDistribution(4, 2);
        double[] values = [.. Enumerable.Range(0, 200_000).Select(k => lognormal.Quantile((k + 0.5) / 200_000))];
        Assert.Equal(4, values.Average(), 0.001);
        Assert.Equal(2, Math.Sqrt(values.Average(v => (v - 4) * (v - 4))), 0.01);
    }

    [Fact]
    public void List_EachValue_IsAsLikely()
    {
        var list = new ListDistribution([5, 7, 9]);
        Assert.Equal([5, 5, 7, 9, 9], new[] { 1e-9, 0.33, 0.34, 0.67, 1 - 1e-16 }.Select(list.Quantile));
    }

    [Theory]
    [InlineData(0.8)]
    [InlineData(-0.5)]
    public void Copula_RankCorrelation_IsThatOfItsFormula(double rho)
    {
        double[][] x = [new double[20_000], new double[20_000]];
        new Sampling.SobolPoints(2, 20_000, 4).Fill(0, 20_000, x);
        Copula.Of([[1, rho], [rho, 1]], 2, out _)!.Apply(20_000, x);
        double expected = 6 / Math.PI * Math.Asin(rho / 2);
        Assert.Equal(expected, Statistics.Ranks.Correlation(Statistics.Ranks.Of(x[0]), Statistics.Ranks.Of(x[1]))!.Value, 0.005);
    }

    [Theory]
    [InlineData(new double[] { 1, 0.9, 0.9, 0.9, 1, -0.9, 0.9, -0.9, 1 }, "positive definite")]
    [InlineData(new double[] { 1, 0.5, 0, 0.4, 1, 0, 0, 0, 1 }, "symmetric")]
    [InlineData(new double[] { 2, 0, 0, 0, 1, 0, 0, 0, 1 }, "must be 1; got 2")]
    [InlineData(new double[] { 1, 1, 0, 1, 1, 0, 0, 0, 1 }, "above -1 and below 1; got 1")]
    public void Copula_NoCorrelationMatrix_SaysWhy(double[] cells, string says)
    {
        Assert.Null(Copula.Of([.. cells.Chunk(3)], 3, out string? problem));
        Assert.Contains(says, problem, StringComparison.Ordinal);
    }
}
