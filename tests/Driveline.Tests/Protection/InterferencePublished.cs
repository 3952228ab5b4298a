using Driveline.Protection;
using Driveline.Provenance;

namespace Driveline.Tests.Protection;

public class InterferencePublished
{
    private static readonly Basis Stated = Basis.Given("the reference table");

    [Theory]
    [InlineData("RI01", 0.158655, 5e-7, "P(load>strength)=0.158655")]
    [InlineData("RI02", 0.00747845, 5e-9, "P(load>strength)=0.00747845")]
    [InlineData("RI06", 0.00636268, 5e-9, "P(load>strength)=0.00636268")]
    [InlineData("RI07", 8.39591e-13, 5e-18, "P(load>strength)=8.39591e-13")]
    [InlineData("RI10", 3.872108e-06, 5e-13, "P(load>strength)=3.872108e-06")]
    public void NormalNormal_Row_MatchesInClosedFormAndByQuadrature(string id, double expected, double tolerance, string printed)
    {
        ReferenceRow row = Row(id);
        Assert.Contains(printed, row["recomputed"], StringComparison.Ordinal);
        NormalDistribution load = NormalDistribution.Of(row.Number("load_mean"), row.Number("load_sd"), Stated);
        NormalDistribution strength = NormalDistribution.Of(row.Number("strength_mean"), row.Number("strength_sd"), Stated);
        Close.Within(expected, NormalInterference.Of(load, strength).Value, tolerance);
        Close.Within(expected, Interference.Of(load, strength).Value, tolerance);
    }

    [Fact]
    public void LognormalLognormal_RI05_MatchesInClosedFormAndByQuadrature()
    {
        Close.Cite("RI05");
        ReferenceRow row = Row("RI05");
        Assert.Contains("P=0.021592534", row["recomputed"], StringComparison.Ordinal);
        Close.Within(0.021592534, LognormalInterference.Of(70, 0.15, 100, 0.10, Stated).Value, 5e-10);   // 10.5/70, 10/100
        Close.Within(
            0.021592534,
            Interference.Of(LognormalDistribution.Of(70, 0.15, Stated), LognormalDistribution.Of(100, 0.10, Stated)).Value,
            5e-10);
    }

    [Fact]
    public void LognormalDesignFactor_RI04_MatchesTheTable()
    {
        Close.Cite("recomputed: RI04");
        Assert.Contains("nd=1.41599", Row("RI04")["recomputed"], StringComparison.Ordinal);
        // The row works with z = 3.09 as printed in RI03; Φ(−3.09) = 0.00100078.
        Close.Within(1.41599, LognormalInterference.DesignFactor(4.1 / 50, 5.9 / 78.4, 0.00100078), 5e-6);
    }

    private static ReferenceRow Row(string id) =>
        ReferenceTable.Read("clutch", "reliability-interference.csv").Single(r => r["id"] == id);
}
