using System.Globalization;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Protection;

public class BandDistributionPublished
{
    private static readonly Basis Stated = Basis.Given("the reference table");

    private const string Tables = "SciPy 1.10.1 and closed forms (reference table statistics.csv)";

    public static TheoryData<string, double, double> Rows(string prefix)
    {
        var data = new TheoryData<string, double, double>();
        foreach (ReferenceRow row in ReferenceTable.Read("clutch", "statistics.csv").Where(
            r => r["id"].StartsWith(prefix, StringComparison.Ordinal)))
        {
            double at = double.Parse(row["id"].AsSpan(prefix.Length), NumberStyles.Float, CultureInfo.InvariantCulture);
            data.Add(row.ToString(), at, row.Number("value"));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Rows), "PE_q")]
    public void Pert_Quantile_MatchesTheTable(string source, double p, double expected)
    {
        Close.Cite(Tables);
        BandDistribution pert = BandDistribution.Of(RatioBand.Between(0.25, 0.35, 0.55, Stated));
        Assert.True(Math.Abs(pert.Quantile(p) - expected) < 1e-10, source);
        Assert.True(Math.Abs(pert.Cdf(expected) - p) < 1e-9, source);
    }

    [Theory]
    [MemberData(nameof(Rows), "N_q")]
    public void Normal_Quantile_MatchesTheTable(string source, double p, double expected)
    {
        Close.Cite(Tables);
        Assert.True(Math.Abs(NormalDistribution.Of(10, 1, Stated).Quantile(p) - 10 - expected) < 1e-9, source);
    }

    [Theory]
    [MemberData(nameof(Rows), "N_c")]
    public void Normal_Cdf_MatchesTheTable(string source, double z, double expected)
    {
        Close.Cite(Tables);

        // Two rows print a rounded z (1.64485, 2.32635) beside the round probability: there the row itself is 3e-7 off.
        double tolerance = Math.Abs(z - Math.Round(z)) > 0 ? 4e-7 : 1e-12;
        Assert.True(Math.Abs(NormalDistribution.Of(10, 1, Stated).Cdf(10 + z) - expected) < tolerance, source);
    }

    [Theory]
    [MemberData(nameof(Rows), "LN_q")]
    public void Lognormal_Quantile_MatchesTheTable(string source, double p, double expected)
    {
        Close.Cite(Tables);
        Assert.True(Math.Abs(LognormalDistribution.Of(100, 0.10, Stated).Quantile(p) - expected) < 1e-8, source);
    }

    [Fact]
    public void Pert_Mean_MatchesTheTable()
    {
        Close.Cite(Tables);
        ReferenceRow row = ReferenceTable.Read("clutch", "statistics.csv").Single(r => r["id"] == "PE_m");
        Assert.StartsWith("(a+4c+b)/6 = 0.366666666667", row["value"], StringComparison.Ordinal);
        Close.Digits(0.366666666667, BandDistribution.Of(RatioBand.Between(0.25, 0.35, 0.55, Stated)).Mean!.Value, 11);
    }
}
