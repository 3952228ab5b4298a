using System.Collections.Concurrent;
using System.Diagnostics;
using Driveline.Cases;
using Driveline.Cli.Telemetry;
using Driveline.Fleet;
using UnitsNet;

namespace Driveline.Cli.Fleets;

/// <summary>Replays logs into a fleet as fast as it takes them, and counts.</summary>
internal sealed class FleetReplay(FleetHost fleet, FleetRequest request, Terminal terminal)
{
    private const int AtOnce = 4;

    private readonly ConcurrentBag<double> ackMs = [];
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly Stopwatch sinceTold = Stopwatch.StartNew();
    private long batches;
    private long samples;
    private long sentAgain;
    private long leftOut;

    public async Task<FleetSummary> RunAsync(CountedAlarms alarms, CancellationToken stop)
    {
        string json = CaseJson();
        string[] names = Names();
        await Task.WhenAll(request.Logs.Select((log, k) => Task.Run(() => ReplayAsync(log, names[k], json, alarms, stop), stop)));
        TimeSpan took = clock.Elapsed;
        DrivelineStatus?[] states = await Task.WhenAll(names.SelectMany(CopiesOf).Select(n => fleet.Driveline(n).StatusAsync()));
        double[] times = [.. ackMs.Order()];
        return new FleetSummary
        {
            Drivelines = names.Length * request.Copies,
            Batches = batches,
            Samples = samples,
            SentAgain = sentAgain,
            LeftOut = leftOut,
            Alarms = alarms.Count,
            Took = took,
            MiddleMs = times.Length == 0 ? double.NaN : times[times.Length / 2],
            SlowestMs = times.Length == 0 ? double.NaN : times[(int)(0.99 * (times.Length - 1))],
            Worst = [.. states.OfType<DrivelineStatus>().Order(DrivelineStatus.ByWorst).Take(10)],
        };
    }

    private string CaseJson()
    {
        if (request.CasePath is not { } path)
        {
            throw new BadInputException("fleet needs --case CASE for logs.");
        }

        return CaseWriter.ToJson(CaseInput.Of(path, terminal).File);
    }

    private string[] Names()
    {
        string[] names = [.. request.Logs.Select(Path.GetFileNameWithoutExtension).Select(n => n!)];
        return names.Distinct(StringComparer.Ordinal).Count() == names.Length
            ? names
            : throw new BadInputException("Each driveline is named after its log: no two logs may have the same name.");
    }

    private IEnumerable<string> CopiesOf(string name) => request.Copies == 1 ? [name]
        : Enumerable.Range(1, request.Copies).Select(k => FormattableString.Invariant($"{name}-{k}"));

    private async Task ReplayAsync(string log, string name, string json, CountedAlarms alarms, CancellationToken stop)
    {
        if (!File.Exists(log))
        {
            throw new BadInputException("There is no file '" + log + "'.");
        }

        var notes = new RowNotes();
        using var reader = new StreamReader(log);
        ITelemetry telemetry = TelemetryLog.Open(reader, notes, () => throw new BadInputException(
            "'" + log + "' holds CAN frames; fleet takes logs of samples, watch takes both."));
        var batch = new BatchReader(telemetry, request.SamplesEach);
        BatchSender[] senders = [.. await Task.WhenAll(CopiesOf(name).Select(n => RegisterAsync(n, json, batch.Period)))];
        while (batch.Next(AtOnce) is { Count: > 0 } some)
        {
            FleetRefusal?[] refusals = await Task.WhenAll(senders.Select(s => s.SendAsync(some, stop)));
            if (refusals.FirstOrDefault(r => r is not null) is { } why)
            {
                throw new BadInputException("'" + log + "': " + why);
            }

            Interlocked.Add(ref batches, some.Count * senders.Length);
            Interlocked.Add(ref samples, some.Sum(b => (long)b.Samples.Length) * senders.Length);
            Progress(alarms);
        }

        Interlocked.Add(ref sentAgain, senders.Sum(s => s.SentAgain));
        Interlocked.Add(ref leftOut, notes.Unreadable);
    }

    private async Task<BatchSender> RegisterAsync(string name, string json, Duration period)
    {
        DrivelineRegistration registration = DrivelineRegistration.Of(json, period).WithSpeedRatio(request.Ratio);
        registration = request.Overload is { } level ? registration.WithOverload(level) : registration;
        IDrivelineGrain driveline = fleet.Driveline(name);
        RegistrationAnswer answer = await driveline.RegisterAsync(registration);
        return answer.IsRegistered
            ? new BatchSender(driveline, took => ackMs.Add(took.TotalMilliseconds))
            : throw new BadInputException([.. answer.Problems.Select(p => name + ": " + p)]);
    }

    private void Progress(CountedAlarms alarms)
    {
        lock (sinceTold)
        {
            if (sinceTold.Elapsed.TotalSeconds >= 2)
            {
                sinceTold.Restart();
                double perSecond = batches / clock.Elapsed.TotalSeconds;
                terminal.Progress(FormattableString.Invariant(
                    $"{batches:N0} batches, {samples:N0} samples, {alarms.Count:N0} alarms, {perSecond:N0} batches/s"));
            }
        }
    }
}
