using System.Text;

namespace Driveline.Sweeps.Tests;

/// <summary>Studies and files for tests.</summary>
internal static class TestStudies
{
    public static string CaseFile(string name) => Path.Combine(AppContext.BaseDirectory, "cases", name + ".case.json");

    public static Cases.CaseFile Case(string name) => Cases.CaseReader.Read(File.ReadAllBytes(CaseFile(name))).Case!;

    /// <summary>Two factors, a number with gaps, a word with a comma, and rows that fail.</summary>
    public static Study Mixed(int rows) => Study.Of("mixed")
        .WithFactors(Factor.Uniform("x, first", 0, 1), Factor.Normal("y", 5, 2), Factor.Choice("grade", "soft", "hard, \"gold\""))
        .WithDesign(Design.Sobol(rows, 3)).WithRowsPerGroup(100)
        .WithOutputs(
            StudyOutput.Of("sum", x => x[0] > 0.9 ? double.NaN : x[0] < 0.01 ? double.PositiveInfinity : x[0] + x[1]),
            StudyOutput.OfWords("word", x => x[1] > 8 ? null : x[1] > 5 ? "large, very" : "small"),
            StudyOutput.OfColumns("double", (x, into) =>
            {
                for (int k = 0; k < into.Length; k++)
                {
                    into[k] = 2 * x[0][k];
                }
            }),
            StudyOutput.Of("fails", x => x[1] < 1.5 ? throw new InvalidOperationException("y is too small\nfor this") : x[1]));

    public static string Json(string more, string factors, string outputs) => $$"""
        {
          "title": "t", "case": {{File.ReadAllText(CaseFile("thornbeck-bolt-right"), Encoding.UTF8)}},
          "factors": [ {{factors}} ], "outputs": [ {{outputs}} ], {{more}}
        }
        """;
}
