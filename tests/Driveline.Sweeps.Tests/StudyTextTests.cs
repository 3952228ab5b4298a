using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Sweeps.Tests;

public class StudyTextTests
{
    // x2 does nothing: the estimate of its share is a rounding below 0, and its rank correlation a small number of no meaning.
    [Fact]
    public void Text_ShareOfAFactorThatDoesNothing_IsZeroWithoutASign()
    {
        string text = StudyText.Of(Sweep.Run(Study.Of("one of two").WithFactors(TestFunctions.Units(2)).WithDesign(Design.Sobol(4096, 2))
            .WithSensitivity(true).WithOutputs(StudyOutput.Of("y", x => x[0] * x[0]))));
        string[] rows = [.. text.Split('\n').Where(l => l.TrimStart().StartsWith("x2 ", StringComparison.Ordinal))];
        Assert.Equal(2, rows.Length);
        Assert.Matches("^ +x2 +0\\.000 \\(-?0\\.0\\d\\d to 0\\.0\\d\\d\\) +0\\.000 \\(0\\.000 to 0\\.000\\)$", rows[0]);
        Assert.EndsWith(" 0.000", rows[1], StringComparison.Ordinal);
        Assert.DoesNotContain("-0.000", text, StringComparison.Ordinal);
    }

    // f = 3 x1 of a range of 10: the effect is 30 in each trajectory, its spread 0 but for rounding; x2 has none.
    [Fact]
    public void Text_SpreadOfALinearEffect_IsZero()
    {
        string text = StudyText.Of(Sweep.Run(Study.Of("Morris")
            .WithFactors(Factor.Uniform("x1", 0.1, 10.1), Factor.Uniform("x2", 0, 10)).WithDesign(Design.Morris(20, 1))
            .WithOutputs(StudyOutput.Of("y", x => 3 * x[0]))));
        string[] row = text.Split('\n').First(l => l.TrimStart().StartsWith("x1 ", StringComparison.Ordinal))
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["x1", "30.00", "30.00", "0"], row);
    }

    [Fact]
    public void Text_IntervalInSpanish_HasNoEnglishWord()
    {
        string text = StudyText.Of(
            Sweep.Run(Study.Of("y").WithFactors(TestFunctions.Units(2)).WithDesign(Design.Sobol(64, 2))
                .WithSensitivity(true).WithOutputs(StudyOutput.Of("y", x => x[0] + x[1]))),
            ReportOptions.Default.WithLanguage(Language.Spanish));
        Assert.Contains(" a ", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" to ", text, StringComparison.Ordinal);
    }

    // Two groups of two rows cut into three: the first shard has none of them.
    [Fact]
    public void Text_ShardWithoutRows_SaysSoAndShowsNoTable()
    {
        Study study = Study.Of("y").WithFactors(TestFunctions.Units(2)).WithDesign(Design.Sobol(4, 2)).WithRowsPerGroup(2)
            .WithOutputs(StudyOutput.Of("y", x => x[0] + x[1]));
        StudyResult result = Sweep.Run(study, SweepOptions.Default.WithShard(1, 3), CancellationToken.None);
        Assert.Equal(0, result.Rows);
        string text = StudyText.Of(result);
        Assert.Contains("This shard has no rows", text, StringComparison.Ordinal);
        Assert.DoesNotContain("not known", text, StringComparison.Ordinal);
        Assert.DoesNotContain("tenth", text, StringComparison.Ordinal);
    }
}
