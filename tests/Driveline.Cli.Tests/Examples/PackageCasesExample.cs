// Docs example: begin
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Protection;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the README of the package Driveline.Cases, compiled; a test keeps both the same.</summary>
internal static class PackageCasesExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        CaseAssessment asked = CaseAssessment.Of("""
            {
              "title": "My cutter",
              "tractor": { "ptoPower": "35 hp", "ptoType": 1, "ptoSpeed": "540 rpm" },
              "driveline": [
                { "shaft": "drive tube", "damagedAt": { "low": "1400 lbf.ft" } },
                { "shearBolt": { "thread": "3/8-16 UNC", "grade": "SAE 2", "layout": "throughShaft",
                  "shaftDiameter": "1 1/4 in", "hub": "free" } } ],
              "specified": { "shearBolt": { "thread": "3/8-16 UNC", "grade": "SAE 5" } }
            }
            """);
        if (!asked.IsGood)
        {
            throw new InvalidDataException(string.Join("\n", asked.Errors));   // each with path, line, column and what is permitted
        }

        ProtectionVerdict verdict = asked.Verdict();
        console.WriteLine($"{verdict.Headline}: guards {verdict.Guards}, quiet {verdict.Quiet}, acts at {verdict.Trip}");
        string json = VerdictJson.Of(verdict, ResultOptions.Default.WithCase(asked.File)).ToJson();

        // Docs example: end
    }
}
