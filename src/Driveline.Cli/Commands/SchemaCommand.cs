using System.CommandLine;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Cases.TorsionModels;
using Driveline.Sweeps;

namespace Driveline.Cli.Commands;

/// <summary>schema: the JSON Schema of a case file, of a torsional model, of a study or of a result.</summary>
internal static class SchemaCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var model = new Option<bool>("--model") { Description = "The schema of a torsional model, for simulate --model." };
        var study = new Option<bool>("--study") { Description = "The schema of a study, for sweep." };
        string[] kinds = [.. Enum.GetNames<ResultKind>().Select(n => n.ToLowerInvariant())];
        var result = new Option<string?>("--result")
        {
            Description = "The schema of what a command prints with --json: " + string.Join(", ", kinds) + ".",
            HelpName = "COMMAND",
        };
        result.AcceptOnlyFromAmong(kinds);
        var command = new Command("schema", "Prints the JSON Schema of a case file, for editors that check while you write.")
        {
            model, study, result, shared.Out,
        };
        command.SetAction(parsed =>
        {
            string? kind = parsed.GetValue(result);
            if ((parsed.GetValue(model) ? 1 : 0) + (parsed.GetValue(study) ? 1 : 0) + (kind is null ? 0 : 1) > 1)
            {
                throw new BadInputException("Only one of --model, --study and --result can be asked for.");
            }

            (string name, string schema) = parsed.GetValue(model) ? ("torsional-model.schema.json", TorsionModelSchema.Json())
                : parsed.GetValue(study) ? ("study.schema.json", StudySchema.Json())
                : kind is not null ? (kind + ".result.schema.json", ResultSchema.Json(Enum.Parse<ResultKind>(kind, ignoreCase: true)))
                : ("case.schema.json", CaseSchema.Json());
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
