using System.CommandLine;
using Driveline.Cases;

namespace Driveline.Cli.Commands;

/// <summary>schema: the JSON Schema of a case file.</summary>
internal static class SchemaCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var command = new Command("schema", "Prints the JSON Schema of a case file, for editors that check while you write.") { shared.Out };
        command.SetAction(parsed =>
        {
            string schema = CaseSchema.Json();
            if (parsed.GetValue(shared.Out) is { } folder)
            {
                OutFolder.Write(folder, terminal, [new("case.schema.json", schema)]);
            }

            terminal.Output.WriteLine(schema);
            return ExitCode.Answered;
        });
        return command;
    }
}
