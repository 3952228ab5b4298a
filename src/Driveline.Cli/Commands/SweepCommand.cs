using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using Driveline.Reports;
using Driveline.Sweeps;

namespace Driveline.Cli.Commands;

/// <summary>sweep STUDY --to FILE: computes every row of a study.</summary>
internal static class SweepCommand
{
    private const double Phone = 360;

    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var study = new Argument<string>("STUDY") { Description = "A study file (*.study.json); its case stands in it or beside it." };
        var to = To("The file for the rows, ending in .parquet or .csv; it is there only when it is whole.");
        var threads = new Option<int?>("--threads") { Description = "Number of threads; left out, one a processor.", HelpName = "N" };
        var shard = new Option<string?>("--shard")
        {
            Description = "Only shard i of n, e.g. 2/7: put the files together with merge.",
            HelpName = "I/N",
        };
        var resume = new Option<bool>("--resume")
        {
            Description = "Go on from the .partial file that a run left; a whole file is only read for its figures.",
        };
        var command = new Command("sweep", "Computes a case over many rows, and says what matters. The same study gives the same bytes.")
        {
            study, to, threads, shard, resume, shared.Out,
        };
        command.SetAction(parsed =>
        {
            SweepOptions options = Options(parsed.GetValue(threads), parsed.GetValue(shard))
                .WithResume(parsed.GetValue(resume)).WithProgress(Teller(terminal));
            StudyResult result = Run(parsed.GetRequiredValue(study), parsed.GetRequiredValue(to), options);
            ReportOptions report = shared.ReportOf(parsed, result.Study.Title);
            if (parsed.GetValue(shared.Out) is { } folder)
            {
                OutFolder.Write(folder, terminal, [.. Pictures(result, Path.GetFileNameWithoutExtension(parsed.GetValue(to)!), report)]);
            }

            if (parsed.GetValue(shared.Json))
            {
                JsonText.Print(terminal, result.Document(shared.ResultOf(parsed)));
            }
            else
            {
                terminal.Output.Write(StudyText.Of(result, report));
            }

            return ExitCode.Answered;
        });
        return command;
    }

    public static Option<string> To(string description) => new("--to") { Description = description, HelpName = "FILE", Required = true };

    private static StudyResult Run(string path, string to, SweepOptions options)
    {
        if (!File.Exists(path))
        {
            throw new BadInputException("There is no file '" + path + "'.");
        }

        try
        {
            StudyReadResult read = StudyReader.ReadFile(path);
            if (!read.IsRead)
            {
                throw InputFile.Refused(path, read.Errors);
            }

            using var stop = new CancellationTokenSource();
            using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
            {
                signal.Cancel = true;
                stop.Cancel();
            });
            return Sweep.RunTo(read.Study, to, options, stop.Token);
        }
        catch (OperationCanceledException)
        {
            throw new BadInputException("Stopped. What is done stays in '" + to + ".partial'; go on with --resume.");
        }
        catch (Exception failed) when (failed is StudyFileException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw BadInputException.Of(failed);
        }
    }

    private static SweepOptions Options(int? threads, string? shard)
    {
        SweepOptions options = SweepOptions.Default;
        if (threads is { } count)
        {
            options = count is >= 1 and <= 1024 ? options.WithThreads(count)
                : throw new BadInputException(FormattableString.Invariant($"--threads must be from 1 to 1024; got {count}."));
        }

        if (shard is null)
        {
            return options;
        }

        string[] parts = shard.Split('/');
        return parts.Length == 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int i)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out int n) && i >= 1 && i <= n && n <= 1_000_000
            ? options.WithShard(i, n)
            : throw new BadInputException("--shard must be I/N with I from 1 to N, e.g. 2/7; got '" + shard + "'.");
    }

    private static Action<StudyProgress> Teller(Terminal terminal)
    {
        var since = Stopwatch.StartNew();
        return progress =>
        {
            if (since.Elapsed.TotalSeconds >= 2)
            {
                since.Restart();
                terminal.Progress(progress.ToString());
            }
        };
    }

    // Each picture as wide as a page, and again as wide as a phone.
    private static IEnumerable<KeyValuePair<string, string>> Pictures(StudyResult result, string name, ReportOptions options)
    {
        foreach (string output in result.NumberOutputs)
        {
            string file = name + "." + string.Concat(output.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
            foreach ((string ending, ReportOptions of) in new[] { (".svg", options), (".narrow.svg", options.WithPictureWidth(Phone)) })
            {
                yield return new(file + ".tornado" + ending, StudyPicture.Tornado(result, output, of));
                yield return new(file + ".exceedance" + ending, StudyPicture.Exceedance(result, output, of));
                if (result.WidestSwing(output) is { } factor)
                {
                    yield return new(file + ".scatter" + ending, StudyPicture.Scatter(result, factor, output, of));
                }
            }
        }
    }
}
