using System.CommandLine;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Cli.Pages;

namespace Driveline.Cli.Commands;

/// <summary>simulate: letting the PTO clutch in, or a strike, of a case; or a bare torsional model.</summary>
internal static class SimulateCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        Argument<string[]> paths = CaseArgument.Several(
            "A case file (*.case.json), or the name of a built-in case, or several; - reads standard input.", isNeeded: false);
        var pages = new PageOptions(shared);
        var model = new Option<string?>(
            "--model")
        {
            Description = "A torsional model (*.model.json) to run in place of a case; - reads standard input.",
            HelpName = "MODEL"
        };
        var which = new Option<string?>(
            "--event")
        { Description = "What to simulate: engagement or strike; left out, the strike of the case, else its engagement." };
        which.AcceptOnlyFromAmong("engagement", "strike");
        var command = new Command("simulate",
            "Simulates letting the PTO clutch in, or a strike: what each part carries in time, with and without the protection.")
        {
            paths, model, which,
        };
        pages.AddTo(command);
        command.SetAction(parsed => (parsed.GetValue(paths) ?? [], parsed.GetValue(model)) switch
        {
            ({ Length: > 0 } files, null) => RunCases(files, parsed.GetValue(which), parsed, terminal, shared, pages),
            ({ Length: 0 }, { } file) when parsed.GetValue(which) is not null || parsed.GetValue(shared.Out) is not null
                || parsed.GetValue(pages.Form) is not null => throw new BadInputException(
                    "--model '" + file + "' takes neither --event nor --out nor --report: it writes its numbers with --json."),
            ({ Length: 0 }, { } file) => SimulateModel.Run(file, parsed, terminal, shared),
            _ => throw new BadInputException("simulate needs one of CASE and --model MODEL. See 'driveline simulate --help'."),
        });
        return command;
    }

    private static int RunCases(
        string[] files, string? happened, ParseResult parsed, Terminal terminal, SharedOptions shared, PageOptions pages)
    {
        var output = new PageOutput(pages, terminal, shared);
        IReadOnlyList<CaseInput> cases = output.Cases(parsed, files);
        CaseSimulation[] runs = [.. cases.Select(c => c.Simulate(happened))];
        output.Put(parsed, [.. cases.Select((c, k) => CaseReports.Simulation(c, runs[k], pages.Of(parsed, c.Title)))]);
        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, SimulationJson.Of(runs[0], shared.ResultOf(parsed, cases[0].File)));
        }

        return ExitCode.Answered;
    }
}
