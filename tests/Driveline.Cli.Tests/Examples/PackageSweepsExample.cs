// Docs example: begin
using Driveline.Sweeps;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the README of the package Driveline.Sweeps, compiled; a test keeps both the same.</summary>
internal static class PackageSweepsExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        Study study = Study.Of("Slip torque of a clutch, worn or not")
            .WithFactors(Factor.Uniform("friction", 0.25, 0.45), Factor.Triangular("clampN", 6000, 7200, 8000))
            .WithDesign(Design.Sobol(4096, 7))
            .WithOutputs(StudyOutput.Of("slipTorqueNm", row => 2 * row[0] * row[1] * 0.10625));
        StudyResult result = Sweep.Run(study);
        double? low = result.Quantile("slipTorqueNm", 0.05);
        double? high = result.Quantile("slipTorqueNm", 0.95);
        console.WriteLine($"9 of 10 slip between {low:F0} and {high:F0} N·m");

        // Docs example: end
    }
}
