// Docs example: begin
using Driveline.Cases;
using Driveline.Reports;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the README of the package Driveline.Reports, compiled; a test keeps both the same.</summary>
internal static class PackageReportsExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        CaseAssessment asked = CaseAssessment.Of("""
            {
              "driveline": [
                { "shaft": "drive tube", "damagedAt": { "low": "1400 lbf.ft" } },
                { "shearBolt": { "thread": "3/8-16 UNC", "grade": "SAE 2", "layout": "throughShaft",
                  "shaftDiameter": "1 1/4 in", "hub": "free" } } ],
              "complaint": { "symptom": "breaksOften" }
            }
            """);
        string sheet = VerdictHtml.Of(asked.Verdict());
        string picture = TorqueLadderPicture.Svg(asked.Verdict());
        string letter = AdviceText.Of(asked.Advice());
        console.WriteLine(letter[..letter.IndexOf('\n')]);

        // Docs example: end
    }
}
