using System.CommandLine;
using Driveline.Cases.Results;
using Driveline.Cli.Pages;
using Driveline.Protection;

namespace Driveline.Cli.Commands;

/// <summary>assess CASE: the verdict on a case file.</summary>
internal static class AssessCommand
{
    private static readonly Option<bool> Doubt = new("--doubt")
    {
        Description = "Also say where the doubt about each device's torque comes from.",
    };

    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        Argument<string[]> paths = CaseArgument.Several(
            "A case file (*.case.json), or the name of a built-in case, or several; - reads standard input.", isNeeded: true);
        var pages = new PageOptions(shared);
        var command = new Command("assess", "Says whether the protection acts before a part breaks and stays quiet in normal work.")
        {
            paths,
            Doubt,
        };
        pages.AddTo(command);
        command.SetAction(parsed =>
        {
            var output = new PageOutput(pages, terminal, shared);
            IReadOnlyList<CaseInput> cases = output.Cases(parsed, parsed.GetRequiredValue(paths));
            Print(cases, parsed, terminal, shared, pages);
            return cases.All(c => c.Verdict.Headline == Headline.Protected) ? ExitCode.Answered : ExitCode.NotProtected;
        });
        return command;
    }

    /// <summary>Prints verdicts and writes their files when a folder is given.</summary>
    public static void Print(
        IReadOnlyList<CaseInput> cases, ParseResult parsed, Terminal terminal, SharedOptions shared, PageOptions pages)
    {
        new PageOutput(pages, terminal, shared).Put(
            parsed, [.. cases.Select(c => CaseReports.Verdict(c, pages.Of(parsed, c.Title).WithDoubts(parsed.GetValue(Doubt))))]);
        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, VerdictJson.Of(
                cases[0].Verdict, shared.ResultOf(parsed, cases[0].File).WithDoubts(parsed.GetValue(Doubt))));
        }
    }
}
