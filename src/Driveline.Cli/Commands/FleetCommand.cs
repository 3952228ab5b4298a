using System.CommandLine;
using Driveline.Cli.Fleets;

namespace Driveline.Cli.Commands;

/// <summary>fleet [TELEMETRY ...]: silos that watch many drivelines, and logs replayed into them.</summary>
internal static class FleetCommand
{
    public static Command Create(Terminal terminal, SharedOptions shared)
    {
        var logs = new Argument<string[]>("TELEMETRY")
        {
            Description = "Logs of samples as watch takes them, one for each driveline; left out, the silo only serves.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var path = Option<string?>("--case", "CASE", "The case file of the drivelines (*.case.json); needed for logs.");
        var overload = Option<string?>(
            "--overload", "TORQUE", "Torque of an overload; left out, the lowest at which the protection of the case may act.");
        var ratio = Option<double?>("--ratio", "RATIO", "Speed behind over speed before the protection while it holds; left out, 1.");
        var copies = Option<int?>("--copies", "N", "Replay each log as N drivelines, to try a size; left out, 1.");
        var each = Option<int?>("--batch", "N", "Samples in a batch; left out, 100.");
        var silos = Option<int?>("--silos", "N", "Silos in this process, without Redis; left out, 1.");
        var config = Option<string?>("--config", "FILE", "JSON file whose object \"Fleet\" sets ports, Redis, page, key and limits.");
        var url = Option<string?>("--url", "URL", "Where the page and the endpoint for batches are, e.g. http://127.0.0.1:8080.");
        var alarms = Option<string?>("--alarms", "FILE", "File to which alarms are added, one JSON object a line.");
        var serve = new Option<bool>("--serve") { Description = "Go on until stopped." };
        var command = new Command(
            "fleet", "Watches many drivelines on one or more silos; keeps their states and alarms. No safety function.")
        {
            logs, path, overload, ratio, copies, each, silos, config, url, alarms, serve,
        };
        command.SetAction(parsed => FleetRun.Run(terminal, new FleetRequest
        {
            Logs = parsed.GetValue(logs) ?? [],
            CasePath = parsed.GetValue(path),
            Overload = parsed.GetValue(overload) is { } level ? TorqueOption.Parse("--overload", level) : null,
            Ratio = Within(parsed.GetValue(ratio) ?? 1, 0.01, 100, "--ratio"),
            Copies = (int)Within(parsed.GetValue(copies) ?? 1, 1, 100_000, "--copies"),
            SamplesEach = (int)Within(parsed.GetValue(each) ?? 100, 1, 2048, "--batch"),
            Silos = (int)Within(parsed.GetValue(silos) ?? 1, 1, 8, "--silos"),
            Config = parsed.GetValue(config),
            Url = parsed.GetValue(url),
            Alarms = parsed.GetValue(alarms),
            Serves = parsed.GetValue(serve),
            IsJson = parsed.GetValue(shared.Json),
        }));
        return command;
    }

    private static Option<T> Option<T>(string name, string helpName, string description) =>
        new(name) { HelpName = helpName, Description = description };

    private static double Within(double value, double low, double high, string option) => value >= low && value <= high
        ? value
        : throw new BadInputException(FormattableString.Invariant($"{option} must be from {low} to {high}; got {value}."));
}
