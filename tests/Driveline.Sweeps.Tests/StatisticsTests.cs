using System.Globalization;
using Driveline.Sweeps.Statistics;
using Driveline.Tests;

namespace Driveline.Sweeps.Tests;

public class StatisticsTests
{
    public static TheoryData<ReferenceRow> Nist => ReferenceTable.Where("clutch", "statistics.csv", r =>
        (r["quantity"] is "mean" || r["quantity"].StartsWith("sample standard deviation",
            StringComparison.Ordinal)) && Data(r["name"]) is not null);

    public static TheoryData<ReferenceRow> Percentiles => ReferenceTable.Where("clutch", "statistics.csv", r =>
        r["name"] == "Lottery" && r["quantity"].Contains("type 7", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Nist))]
    public void Spread_CertifiedSet_MatchesMeanAndDeviation(ReferenceRow row)
    {
        var spread = new ValueSpread();
        spread.Add(Data(row["name"])!);
        double certified = row.Number("value");
        double found = row["quantity"] == "mean" ? spread.Mean!.Value : spread.StandardDeviation!.Value;

        // NumAcc4 loses digits in its data already: 10000000.2 and 0.1 leave 8 of the deviation (NIST: "higher difficulty").
        Assert.Equal(certified, found, Math.Abs(certified) * (row["name"] == "NumAcc4" ? 1e-7 : 1e-9));
    }

    [Theory]
    [MemberData(nameof(Percentiles))]
    public void Quantile_Lottery_IsTheReference(ReferenceRow row)
    {
        var spread = new ValueSpread();
        spread.Add(Data("Lottery")!);
        double share = double.Parse(row["quantity"].Split(' ')[1], CultureInfo.InvariantCulture) / 100;
        Assert.Equal(row.Number("value"), spread.Quantile(share)!.Value, 1e-9);
    }

    [Fact]
    public void Quantile_MoreRowsThanAreKept_IsGoodTo1In10000()
    {
        var spread = new ValueSpread();
        const int Rows = ValueSpread.MostExact + 200_000;
        double[] values = [.. Enumerable.Range(0, Rows).Select(k => 100.0 + (k * 7919L % Rows * 1e-3))];
        spread.Add(values);
        Assert.False(spread.IsExact);
        Assert.All(new[] { 0.05, 0.5, 0.95 }, p => Assert.Equal(1, spread.Quantile(p)!.Value / (100 + (p * (Rows - 1) * 1e-3)), 1.2e-4));
    }

    [Fact]
    public void Quantile_MoreRowsThanAreKept_KnowsSignZeroAndInfinity()
    {
        var spread = new ValueSpread();
        double[] block = [-5, -5, 0, 0, 0, 3, 3, double.PositiveInfinity, double.PositiveInfinity, double.NaN];
        for (int k = 0; k < 160_000; k++)
        {
            spread.Add(block);
        }

        Assert.False(spread.IsExact);
        Assert.Equal(-5, spread.Quantile(0.1)!.Value, 1e-3);
        Assert.Equal(0, spread.Quantile(0.4)!.Value);
        Assert.Equal(3, spread.Quantile(0.7)!.Value, 1e-3);
        Assert.Equal(double.PositiveInfinity, spread.Quantile(0.95));
        Assert.Equal(160_000, spread.NotKnown);
    }

    [Fact]
    public void Quantile_Nothing_IsNotKnown()
    {
        var spread = new ValueSpread();
        spread.Add([double.NaN]);
        Assert.Null(spread.Quantile(0.5));
        Assert.Null(spread.Mean);
    }

    [Fact]
    public void Ranks_EqualNumbers_ShareTheirMean() => Assert.Equal([2.5, 1, 4, 2.5], Ranks.Of([3, 1, 9, 3]));

    [Fact]
    public void RankCorrelation_WorkedCase_Matches()
    {
        // Ranks 1 2 3 4 5 and 2 1 4 3 5: 1 − 6 Σd² / (n (n² − 1)) = 1 − 6·4/120 = 0.8.
        Assert.Equal(0.8, Ranks.Correlation(Ranks.Of([10, 20, 30, 40, 50]), Ranks.Of([7, 3, 12, 9, 40]))!.Value, 1e-12);
        Assert.Null(Ranks.Correlation([1, 1], [1, 2]));
    }

    private static double[]? Data(string name) => name switch
    {
        "NumAcc2" => Alternating(1.2, 1.1, 1.3),
        "NumAcc3" => Alternating(1000000.2, 1000000.1, 1000000.3),
        "NumAcc4" => Alternating(10000000.2, 10000000.1, 10000000.3),
        "Lottery" or "NumAcc1" => [.. ReferenceTable.Read("clutch", "statistics.csv").Single(r => r["id"] == name + "_data")["value"]
            .Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))],
        _ => null,
    };

    private static double[] Alternating(double first, double a, double b) =>
        [first, .. Enumerable.Range(0, 500).SelectMany(_ => new[] { a, b })];
}
