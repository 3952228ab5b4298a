using Driveline.Protection;
using Driveline.Provenance;

namespace Driveline.Tests.Protection;

/// <summary>Rows of the interference table that are remembered: they are met, and prove nothing.</summary>
public class InterferenceRememberedTests
{
    private static readonly Basis Stated = Basis.Given("the reference table");

    [Fact]
    public void NormalDesignFactor_RI03_MatchesThePrintedExample()
    {
        // Shigley (8th-10th ed.): 78.4 ± 5.9, 50 ± 4.1, reliability 0.999: n = 1.416.
        Assert.Contains("nd=1.416", Row("RI03")["printed_answer"], StringComparison.Ordinal);
        Close.Within(1.416, NormalInterference.DesignFactor(4.1 / 50, 5.9 / 78.4, 0.001), 1e-3);
    }

    [Theory]
    [InlineData(1, 0.00636268, 5e-9)]
    [InlineData(10, 0.047903, 5e-7)]
    [InlineData(100, 0.200161, 5e-7)]
    public void RepeatedPeaksOnOneSpecimen_RI08_MatchesTheTable(long peaks, double expected, double tolerance)
    {
        Assert.Contains("n=10 0.047903; n=100 0.200161", Row("RI08")["recomputed"], StringComparison.Ordinal);
        Probability p = Interference.Of(NormalDistribution.Of(700, 90, Stated), NormalDistribution.Of(1000, 80, Stated), peaks);
        Close.Within(expected, p.Value, tolerance);
    }

    private static ReferenceRow Row(string id) =>
        ReferenceTable.Read("clutch", "reliability-interference.csv").Single(r => r["id"] == id);
}
