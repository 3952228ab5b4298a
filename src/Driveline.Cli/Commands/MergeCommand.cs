using System.CommandLine;
using System.Globalization;
using Driveline.Reports;
using Driveline.Reports.Verdicts;
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
            string[] shards = parsed.GetRequiredValue(files);
            string path = parsed.GetRequiredValue(to);
            if (Array.Find(shards, f => !File.Exists(f)) is { } none)
            {
                throw new BadInputException("There is no file '" + none + "'.");
            }

            try
            {
                long rows = Sweep.Merge(shards, path);
                ReportOptions options = shared.ReportOf(parsed, path);
                terminal.Output.WriteLine(parsed.GetValue(shared.Json)
                    ? string.Create(CultureInfo.InvariantCulture, $"{{ \"rows\": {rows} }}")
                    : new Phrase(options.Texts, options.Units).Of(Phrase.Code("study.merged")
                        .With("rows", rows.ToString("N0", CultureInfo.InvariantCulture)).With("file", path)));
                return ExitCode.Answered;
            }
            catch (Exception failed) when (failed is StudyFileException or ArgumentException)
            {
                throw BadInputException.Of(failed);
            }
        });
        return command;
    }
}
