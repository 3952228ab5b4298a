// Docs example: begin
using Driveline.Findings;
using Driveline.Wording;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the README of the package Driveline.Wording, compiled; a test keeps both the same.</summary>
internal static class PackageWordingExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        console.WriteLine(QuantityWords.Of(1377, QuantityKind.Torque, DisplayUnits.Metric));
        console.WriteLine(QuantityWords.Of(1377, QuantityKind.Torque, DisplayUnits.UsCustomary, Language.Spanish));
        console.WriteLine(Texts.Spanish.Of("headline.Protected"));

        // Docs example: end
    }
}
