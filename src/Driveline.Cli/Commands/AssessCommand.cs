using System.CommandLine;
using Driveline.Cases.Results;
using Driveline.Protection;
using Driveline.Reports;

namespace Driveline.Cli.Commands;

/// <summary>assess CASE: the verdict on a case file.</summary>
internal static class AssessCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.case.json); - reads standard input." };
        var command = new Command("assess", "Says whether the protection acts before a part breaks and stays quiet in normal work.")
        {
            path, shared.Out,
        };
        command.SetAction(parsed =>
        {
            CaseInput input = CaseInput.Of(parsed.GetRequiredValue(path), terminal);
            Print(input, parsed, terminal, shared);
            return input.Verdict.Headline == Headline.Protected ? ExitCode.Answered : ExitCode.NotProtected;
        });
        return command;
    }

    /// <summary>Prints one verdict and writes its files when a folder is given.</summary>
    public static void Print(CaseInput input, ParseResult parsed, Terminal terminal, SharedOptions shared)
    {
        ReportOptions options = shared.ReportOf(parsed, input.Title);
        if (parsed.GetValue(shared.Out) is { } folder)
        {
            OutFolder.WriteReports(folder, input, options, terminal);
        }

        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, VerdictJson.Of(input.Verdict, shared.ResultOf(parsed, input.File)));
        }
        else
        {
            terminal.Output.Write(VerdictText.Of(input.Verdict, options));
        }
    }
}
