using System.CommandLine;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Monitoring;
using Driveline.Reports;
using UnitsNet;

namespace Driveline.Cli.Commands;

/// <summary>watch LOG: what a log of samples shows of a driveline.</summary>
internal static class WatchCommand
{
    private const int SamplesAtOnce = 4096;

    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var log = new Argument<string>("LOG")
        {
            Description = "A log measured at the PTO: a head such as timeS,speedInRpm,speedOutRpm,torqueNm, then a row a sample; "
                + "- reads standard input.",
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
        var save = Option<string?>("--out", "FILE", "File for a copy of the case, or a new one, with the work peak measured.");
        var command = new Command(
            "watch", "Says what a log of torque and speeds shows: overloads, trips, slips, heat, life used, work peak. No safety function.")
        {
            log, path, overload, peaks, hours, ratio, never, save,
        };
        command.SetAction(parsed =>
        {
            string from = parsed.GetRequiredValue(log);
            CaseInput? input = parsed.GetValue(path) is not { } file ? null
                : file == "-" && from == "-" ? throw new BadInputException("Only one of LOG and --case can be standard input.")
                : CaseInput.Of(file, terminal);
            Torque level = LevelOf(parsed.GetValue(overload), input);
            Torque? threshold = parsed.GetValue(peaks) is { } text ? TorqueOption.Parse("--peaks-from", text) : null;
            double asked = Within(parsed.GetValue(hours) ?? 100, 0.01, 1e5, "--hours");
            double speeds = Within(parsed.GetValue(ratio) ?? 1, 0.01, 100, "--ratio");
            ActedInWork acted = parsed.GetValue(never) ? ActedInWork.Never
                : input is null ? ActedInWork.NotKnown
                : MeasuredWork.ActedIn(input.File);
            MonitorReport report = InputFile.ReadLines(from, "a log", terminal, reader =>
                Watch(reader, level, threshold, speeds, input, Duration.FromHours(asked), acted));
            if (parsed.GetValue(save) is { } target)
            {
                Save(target, report, input);
            }

            if (parsed.GetValue(shared.Json))
            {
                JsonText.Print(terminal, stream => MonitorJson.Write(report, stream, shared.LanguageOf(parsed), shared.UnitsOf(parsed)));
            }
            else
            {
                terminal.Output.Write(MonitorText.Of(report,
                    shared.ReportOf(parsed, input?.Title ?? (from == "-" ? "standard input" : Path.GetFileName(from)))));
            }

            return ExitCode.Answered;
        });
        return command;
    }

    private static Option<T> Option<T>(string name, string helpName, string description) =>
        new(name) { HelpName = helpName, Description = description };

    private static MonitorReport Watch(
        TextReader reader, Torque overload, Torque? peaksFrom, double ratio, CaseInput? input, Duration horizon, ActedInWork acted)
    {
        TelemetryLog log = TelemetryLog.Open(reader);
        var samples = new TorqueSample[SamplesAtOnce];
        int count = log.Read(samples);
        MonitorSettings settings = MonitorSettings.Of(overload, PeriodOf(samples.AsSpan(0, count))).WithSpeedRatio(ratio);
        settings = peaksFrom is { } threshold ? settings.WithPeaksFrom(threshold) : settings;
        CaseWatch watch = input is null ? CaseWatch.Of(settings) : CaseWatch.Of(settings, input.File);
        while (count > 0)
        {
            watch.Feed(samples.AsSpan(0, count));
            count = log.Read(samples);
        }

        return watch.Finish(horizon, acted).WithBadRows(log.BadRows, log.FirstBadRows);
    }

    // The middle of the steps of the first samples.
    private static Duration PeriodOf(ReadOnlySpan<TorqueSample> samples)
    {
        var steps = new List<double>();
        for (int k = 1; k < samples.Length; k++)
        {
            double step = samples[k].TimeS - samples[k - 1].TimeS;
            if (step is >= 1e-5 and <= 3600)
            {
                steps.Add(step);
            }
        }

        steps.Sort();
        return Duration.FromSeconds(steps.Count == 0 ? 1 : steps[steps.Count / 2]);
    }

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
            MeasuredWork.TryIn(input?.File ?? CaseFile.Empty, report.WorkPeak, out CaseFile? measured, out string? problem)
                ? CaseWriter.ToJson(measured!) + "\n"
                : throw new BadInputException("--out: " + problem),
            "--out");
    }
}
