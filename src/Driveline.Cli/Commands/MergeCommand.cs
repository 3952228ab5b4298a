using System.CommandLine;
using System.Globalization;
using Driveline.Sweeps;

namespace Driveline.Cli.Commands;

/// <summary>merge FILES --to FILE: puts the shards of a study together.</summary>
internal static class MergeCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var files = new Argument<string[]>("FILES")
        {
            Description = "The files of all shards, in any order.",
            Arity = ArgumentArity.OneOrMore,
        };
        var to = SweepCommand.To("The new file, of the same kind; its bytes are those of a run without shards.");
        var command = new Command(
            "merge", "Puts the files of a study's shards together; sweep --resume on the new file then gives its figures.")
        {
            files, to,
        };
        command.SetAction(parsed =>
        {
            try
            {
                long rows = Sweep.Merge(parsed.GetRequiredValue(files), parsed.GetRequiredValue(to));
                terminal.Output.WriteLine(parsed.GetValue(shared.Json)
                    ? string.Create(CultureInfo.InvariantCulture, $"{{ \"rows\": {rows} }}")
                    : string.Create(CultureInfo.InvariantCulture, $"{rows:N0} rows in {parsed.GetRequiredValue(to)}"));
                return ExitCode.Answered;
            }
            catch (Exception failed) when (failed is StudyFileException or ArgumentException)
            {
                throw new BadInputException(failed.Message);
            }
        });
        return command;
    }
}
