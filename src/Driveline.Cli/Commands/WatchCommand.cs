using System.CommandLine;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Cli.Telemetry;
using Driveline.Monitoring;
using Driveline.Reports;
using UnitsNet;

namespace Driveline.Cli.Commands;

/// <summary>watch TELEMETRY: what a log of samples shows of a driveline.</summary>
internal static class WatchCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var log = new Argument<string>("TELEMETRY")
        {
            Description = "A log measured at the PTO: the head " + TelemetryLog.Head + ", then a row a sample; or CAN frames with their "
                + "times, as candump writes them. - reads standard input.",
        };
        var path = Option<string?>(
            "--case", "CASE", "The case file of the driveline (*.case.json): gives the overload level, the clutch and the bolts.");
        var overload = Option<string?>(
            "--overload", "TORQUE", "Torque of an overload, e.g. \"900 N.m\"; with --case the lowest at which the protection may act.");
        var peaks = Option<string?>(
            "--peaks-from", "TORQUE", "Torque from which on a peak counts for the work peak; left out, 0.6 of the overload level.");
        var hours = Option<double?>("--hours", "HOURS", "Hours of work whose highest torque is asked for; left out, 100.");
        var ratio = Option<double?>("--ratio", "RATIO", "Speed behind over speed before the protection while it holds; left out, 1.");
        var never = new Option<bool>("--only-strikes")
        {
            Description = "Say that the protection never acted in normal work, only at strikes and plugs.",
        };
        var copy = Option<string?>("--out", "FILE", "File for a copy of the case, or a new one, with the work peak measured.");
        var save = Option<string?>(
            "--save", "FILE", "File for the state at the end, from which --resume goes on. What is going on is then not ended.");
        var resume = Option<string?>(
            "--resume", "FILE", "State of an earlier watch with the same case and options: the answer covers the whole.");
        var anew = new Option<bool>("--new-clock")
        {
            Description = "Say that the clock of the log began anew since the state was saved; else earlier times are left out as sent "
                + "twice.",
        };
        var reference = Option<string?>(
            "--reference-torque", "TORQUE", "Reference torque of the engine (SPN 544), when the log of CAN frames lacks it.");
        var whole = Option<string?>(
            "--report", "FILE", "File for all there is to say, as one JSON object: findings, cautions, life, history.");
        var command = new Command(
            "watch", "Says what a log of torque and speeds shows: overloads, trips, slips, heat, life used, work peak. No safety function.")
        {
            log, path, overload, peaks, hours, ratio, never, copy, save, resume, anew, reference, whole,
        };
        command.SetAction(parsed =>
        {
            string from = parsed.GetRequiredValue(log);
            CaseInput? input = parsed.GetValue(path) is not { } file ? null
                : file == "-" && from == "-" ? throw new BadInputException("Only one of TELEMETRY and --case can be standard input.")
                : CaseInput.Of(file, terminal);
            bool json = parsed.GetValue(shared.Json);
            var options = new WatchOptions
            {
                Overload = LevelOf(parsed.GetValue(overload), input),
                PeaksFrom = TorqueOf(parsed.GetValue(peaks), "--peaks-from"),
                Horizon = Duration.FromHours(Within(parsed.GetValue(hours) ?? 100, 0.01, 1e5, "--hours")),
                Ratio = Within(parsed.GetValue(ratio) ?? 1, 0.01, 100, "--ratio"),
                Acted = parsed.GetValue(never) ? ActedInWork.Never
                    : input is null ? ActedInWork.NotKnown
                    : MeasuredWork.ActedIn(input.File),
                Case = input,
                Reference = TorqueOf(parsed.GetValue(reference), "--reference-torque"),
                Resume = parsed.GetValue(resume),
                Save = parsed.GetValue(save),
                ClockIsNew = parsed.GetValue(anew),
                Tell = json ? seen => Print(terminal, WatchLines.Event(seen)) : _ => { },
            };
            MonitorReport report = InputFile.ReadLines(from, "a log", terminal, reader => options.Watch(reader, terminal));
            if (parsed.GetValue(copy) is { } target)
            {
                Save(target, report, input);
            }

            if (parsed.GetValue(whole) is { } all)
            {
                ResultOptions result = input is null ? shared.ResultOf(parsed) : shared.ResultOf(parsed, input.File);
                OutFolder.WriteFile(all, MonitorJson.Of(report, result).ToJson() + "\n", "--report");
            }

            ReportOptions words = shared.ReportOf(parsed, input?.Title ?? (from == "-" ? "standard input" : Path.GetFileName(from)));
            if (json)
            {
                foreach (string row in MonitorText.RowsOf(report, words))
                {
                    terminal.Error(row);
                }

                Print(terminal, WatchLines.Summary(report));
            }
            else
            {
                terminal.Report(MonitorText.Of(report, words), shared.LanguageOf(parsed));
            }

            return ExitCode.Answered;
        });
        return command;
    }

    private static Option<T> Option<T>(string name, string helpName, string description) =>
        new(name) { HelpName = helpName, Description = description };

    private static void Print(Terminal terminal, string? line)
    {
        if (line is not null)
        {
            terminal.Output.WriteLine(line);
        }
    }

    private static Torque? TorqueOf(string? text, string option) => text is null ? null : TorqueOption.Parse(option, text);

    private static Torque LevelOf(string? text, CaseInput? input) => text is not null ? TorqueOption.Parse("--overload", text)
        : input is null ? throw new BadInputException(
            "watch needs --overload TORQUE, or --case CASE with a protection whose torque is known.")
        : input.Verdict.Trip is { Low.NewtonMeters: > 0 } trip ? trip.Low
        : throw new BadInputException("At what torque the protection of the case acts is not known; give --overload TORQUE.");

    private static double Within(double value, double low, double high, string option) => value >= low && value <= high
        ? value
        : throw new BadInputException(FormattableString.Invariant($"{option} must be from {low} to {high}; got {value}."));

    private static void Save(string target, MonitorReport report, CaseInput? input)
    {
        OutFolder.WriteFile(
            target,
            MeasuredWork.TryIn(input?.File ?? CaseFile.Empty, report, out CaseFile? measured, out string? problem)
                ? CaseWriter.ToJson(measured!) + "\n"
                : throw new BadInputException("--out: " + problem),
            "--out");
    }
}
