// README example: begin
using Driveline.Cases;
using Driveline.Cases.Results;

// README example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The README's example of a web service, compiled; a test keeps both the same.</summary>
internal static class ReadmeServiceExample
{
    // README example: go on
    public static async Task<IDictionary<string, string[]>> Assess(Stream request, Stream response, CancellationToken stop)
    {
        CaseAssessment asked = await CaseAssessment.ReadAsync(request, stop);
        if (asked.IsGood)
        {
            await VerdictJson.Of(asked.Verdict(stop), ResultOptions.Default.WithCase(asked.File)).WriteAsync(response, stop);
        }

        return asked.ErrorsByPath();   // empty when answered; else what a web API lists as its validation problem
    }

    // README example: end
}
