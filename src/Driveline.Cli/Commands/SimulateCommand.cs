using System.CommandLine;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Reports;

namespace Driveline.Cli.Commands;

/// <summary>simulate: letting the PTO clutch in, or a strike, of a case; or a bare torsional model.</summary>
internal static class SimulateCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var path = new Argument<string?>(
            "CASE")
        { Description = "A case file (*.case.json); - reads standard input.", Arity = ArgumentArity.ZeroOrOne };
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
            path, model, which, shared.Out,
        };
        command.SetAction(parsed => (parsed.GetValue(path), parsed.GetValue(model)) switch
        {
            ({ } file, null) => RunCase(file, parsed.GetValue(which), parsed, terminal, shared),
            (null, { } file) when parsed.GetValue(which) is not null || parsed.GetValue(shared.Out) is not null =>
                throw new BadInputException("--model '" + file + "' takes neither --event nor --out: it writes its numbers with --json."),
            (null, { } file) => SimulateModel.Run(file, parsed, terminal, shared),
            _ => throw new BadInputException("simulate needs one of CASE and --model MODEL. See 'driveline simulate --help'."),
        });
        return command;
    }

    private static int RunCase(string path, string? happened, ParseResult parsed, Terminal terminal, SharedOptions shared)
    {
        CaseInput input = CaseInput.Of(path, terminal);
        CaseSimulation run = input.Simulate(happened);
        ReportOptions options = shared.ReportOf(parsed, input.Title);
        string text = run.Check is { } check ? SimulationText.Of(check, run.Span, options)
            : SimulationText.OfMissing(run.Event, run.Missing, run.Machine, options);
        if (parsed.GetValue(shared.Out) is { } folder)
        {
            OutFolder.WriteSimulation(folder, input, run, text, options, terminal);
        }

        if (parsed.GetValue(shared.Json))
        {
            JsonText.Print(terminal, SimulationJson.Of(run, shared.ResultOf(parsed, input.File)));
        }
        else
        {
            terminal.Output.Write(text);
        }

        return ExitCode.Answered;
    }
}
