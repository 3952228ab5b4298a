using Driveline.Provenance;
using Driveline.Reports;

namespace Driveline.Tests.Reports;

public class CalculationSheetTests
{
    private static readonly CalculationStep Torque = new("breakTorque", "T", "n · A · τ · r", "N·m", "equilibrium");

    [Fact]
    public void Markdown_Lines_AreRowsInOrderAndBasesWeakestFirst()
    {
        string sheet = CalculationSheet.Markdown(
            "bolt <1>",
            [new CalculationLine(Torque, 1800), new CalculationLine(new CalculationStep("k", "κ", "a | b", "1", "table"), 0.6)],
            [Basis.Given("the case"), Basis.FromMemory("a guess"), Basis.Given("the case")]);
        Assert.Equal(
            "# Calculation: bolt &lt;1\\>\n\n"
            + "| Step | Formula | Value | Unit | Source |\n| :-- | :-- | --: | :-- | :-- |\n"
            + "| T | n · A · τ · r | 1800 | N·m | equilibrium |\n| κ | a \\| b | 0.6 | – | table |\n\n"
            + "## Where the numbers come from\n\n- FromMemory: a guess\n- Given: the case\n\n",
            sheet);
    }

    [Fact]
    public void Markdown_NoLine_SaysSo() =>
        Assert.Contains("No step was recorded.", CalculationSheet.Markdown("x", []), StringComparison.Ordinal);
}
