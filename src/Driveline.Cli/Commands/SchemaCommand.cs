using System.CommandLine;
using Driveline.Cases;
using Driveline.Cases.TorsionModels;

namespace Driveline.Cli.Commands;

/// <summary>schema: the JSON Schema of a case file or of a torsional model.</summary>
internal static class SchemaCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var model = new Option<bool>("--model") { Description = "The schema of a torsional model, for simulate --model." };
        var command = new Command(
            "schema", "Prints the JSON Schema of a case file, for editors that check while you write.") { model, shared.Out };
        command.SetAction(parsed =>
        {
            bool ofModel = parsed.GetValue(model);
            string schema = ofModel ? TorsionModelSchema.Json() : CaseSchema.Json();
            if (parsed.GetValue(shared.Out) is { } folder)
            {
                OutFolder.Write(folder, terminal, [new(ofModel ? "torsional-model.schema.json" : "case.schema.json", schema)]);
            }

            terminal.Output.WriteLine(schema);
            return ExitCode.Answered;
        });
        return command;
    }
}
