using System.CommandLine;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Cases.TorsionModels;

namespace Driveline.Cli.Commands;

/// <summary>schema: the JSON Schema of a case file, of a torsional model or of a result.</summary>
internal static class SchemaCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var model = new Option<bool>("--model") { Description = "The schema of a torsional model, for simulate --model." };
        string[] kinds = [.. Enum.GetNames<ResultKind>().Select(n => n.ToLowerInvariant())];
        var result = new Option<string?>("--result")
        {
            Description = "The schema of what a command prints with --json: " + string.Join(", ", kinds) + ".",
            HelpName = "COMMAND",
        };
        result.AcceptOnlyFromAmong(kinds);
        var command = new Command("schema", "Prints the JSON Schema of a case file, for editors that check while you write.")
        {
            model, result, shared.Out,
        };
        command.SetAction(parsed =>
        {
            (string name, string schema) = (parsed.GetValue(model), parsed.GetValue(result)) switch
            {
                (true, null) => ("torsional-model.schema.json", TorsionModelSchema.Json()),
                (true, _) => throw new BadInputException("Only one of --model and --result can be asked for."),
                (false, { } kind) => (kind + ".result.schema.json", ResultSchema.Json(Enum.Parse<ResultKind>(kind, ignoreCase: true))),
                _ => ("case.schema.json", CaseSchema.Json()),
            };
            if (parsed.GetValue(shared.Out) is { } folder)
            {
                OutFolder.Write(folder, terminal, [new(name, schema)]);
            }

            terminal.Output.WriteLine(schema);
            return ExitCode.Answered;
        });
        return command;
    }
}
