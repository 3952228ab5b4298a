using Driveline.Provenance;
using Driveline.Reports;

namespace Driveline.Tests.Reports;

public class CalculationSheetTests
{
    private static readonly CalculationStep Torque = new("breakTorque", "T", "n · A", "N·m", "equilibrium");

    [Fact]
    public void Markdown_Lines_AreAWorkedSumInOrderAndBasesWeakestFirst()
    {
        string sheet = CalculationSheet.Markdown(
            "bolt <1>",
            [
                new CalculationLine(new CalculationStep("n", "n", "a | b", "1", "table"), 0.6),
                new CalculationLine(new CalculationStep("A", "A", "an area", "1", string.Empty), 3000), new CalculationLine(Torque, 1800),
            ],
            [Basis.Given("the case"), Basis.FromMemory("a guess"), Basis.Given("the case")]);
        Assert.StartsWith(
            "# bolt &lt;1\\>\n\nn = 0.6  \na \\| b (table)\n\nA = 3000  \nan area\n\nT = n · A = 0.6 · 3000 = 1800 N·m  \nequilibrium\n\n"
            + "## Where the numbers come from\n\n- a guess (from memory: nobody has checked it)\n- the case (stated in the case)\n\n",
            sheet, StringComparison.Ordinal);
        Assert.EndsWith("signature\n\n", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Markdown_NoLine_SaysSo() =>
        Assert.Contains("No step was recorded.", CalculationSheet.Markdown("x", []), StringComparison.Ordinal);
}
