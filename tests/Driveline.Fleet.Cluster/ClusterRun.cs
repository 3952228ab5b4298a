using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Driveline.Fleet.Silos;
using Driveline.Fleet.Tests;

namespace Driveline.Fleet.Cluster;

/// <summary>
/// Three silos as processes over a real store: two are killed in mid-stream, the store once, and at the end all states and alarms must be
/// those of a run without any silo. The third silo stores in the old format, as in an upgrade of one node after the other.
/// </summary>
internal sealed class ClusterRun(string tool, int drivelines, int batchesEach, int samplesEach)
{
    private const int Silos = 3;
    private const int AtOnce = 4;
    private const int Senders = 96;

    private readonly string folder = Directory.CreateTempSubdirectory("fleet-cluster").FullName;
    private readonly int redisPort = SiloSetup.FreePort();
    private readonly List<string> wrong = [];
    private readonly ConcurrentDictionary<string, ConcurrentBag<double>> ackMs = new();
    private readonly Random random = new(3);
    private string phase = "before";
    private long sent;
    private long sentAgain;
    private long repeats;
    private double longestS;

    private string Redis => string.Create(CultureInfo.InvariantCulture, $"127.0.0.1:{redisPort},connectTimeout=2000,syncTimeout=5000");

    public async Task<bool> RunAsync()
    {
        var servers = new List<ServerProcess>();
        ServerProcess store = StartStore();
        try
        {
            servers.AddRange(Enumerable.Range(0, Silos).Select(StartSilo));
            await using FleetClient client = await FleetClient.ConnectAsync(
                FleetOptions.Default.WithRedis(Redis), new CancellationTokenSource(TimeSpan.FromMinutes(1)).Token);
            await WaitForSilosAsync(client, Silos);
            long emptyBytes = servers.Sum(s => s.ResidentBytes);
            var clock = Stopwatch.StartNew();
            string[] names = [.. Enumerable.Range(0, drivelines).Select(k => string.Create(CultureInfo.InvariantCulture, $"field-{k}"))];
            await EachAsync(names, k => RegisterAsync(client, names[k]));
            Say($"registered {drivelines} drivelines in {clock.Elapsed.TotalSeconds:F1} s");

            clock.Restart();
            long all = (long)drivelines * batchesEach;
            Task killing = Task.Run(async () =>
            {
                await ReachAsync(all / 4);
                Kill(servers[0], "silo 1");
                await ReachAsync(all / 2);
                Say($"longest wait for an acknowledgement after {phase}: {longestS:F1} s");
                phase = "the end of the store";
                longestS = 0;
                store.Kill();
                Say($"the store was killed, and started again after a second");
                await Task.Delay(1000);
                store.Dispose();
                store = StartStore();
                await ReachAsync(3 * all / 4);
                Kill(servers[1], "silo 2");
            });
            await SendAllAsync(client, names);
            await killing;
            Say($"longest wait for an acknowledgement after {phase}: {longestS:F1} s");
            double tookS = clock.Elapsed.TotalSeconds;
            Say($"{all} batches of {samplesEach} samples in {tookS:F1} s: {all / tookS:F0} batches/s over all, kills included");
            foreach ((string when, ConcurrentBag<double> times) in ackMs)
            {
                double[] sorted = [.. times.Order()];
                double middle = sorted[sorted.Length / 2], slowest = sorted[(int)(0.99 * (sorted.Length - 1))];
                Say($"acknowledged {when}: half within {middle:F1} ms, 99 of 100 within {slowest:F1} ms");
            }

            Say($"sent again because not acknowledged: {sentAgain}; sent twice on purpose: {repeats}");
            long usedBytes = servers[2].ResidentBytes, eachBytes = (usedBytes - (emptyBytes / Silos)) / drivelines;
            Say($"memory of the silo left, with all drivelines: {usedBytes / 1e6:F0} MB, {eachBytes} B a driveline");
            var states = new ConcurrentDictionary<string, byte[]>();
            await EachAsync(names, async k => states[names[k]] = await client.Driveline(names[k]).SettleAsync() ?? []);
            var comparison = new Comparison(states, batchesEach, samplesEach);
            comparison.Run(names, [.. Enumerable.Range(0, Silos).Select(AlarmFile)]);
            wrong.AddRange(comparison.Wrong);
        }
        finally
        {
            servers.ForEach(s => s.Dispose());
            store.Dispose();
            if (wrong.Count == 0)
            {
                Directory.Delete(folder, recursive: true);
            }
        }

        wrong.Take(10).ToList().ForEach(Console.Error.WriteLine);
        return wrong.Count == 0;
    }

    public static void Say(FormattableString line) => Console.WriteLine(FormattableString.Invariant(line));

    private static Task EachAsync(string[] names, Func<int, Task> work) => Parallel.ForEachAsync(
        Enumerable.Range(0, names.Length), new ParallelOptions { MaxDegreeOfParallelism = Senders }, async (k, _) => await work(k));

    private static async Task RegisterAsync(FleetClient client, string name)
    {
        RegistrationAnswer answer = await client.Driveline(name).RegisterAsync(TestFleet.Registration());
        if (!answer.IsRegistered)
        {
            throw new InvalidOperationException(answer.Problems[0]);
        }
    }

    // Written to the system before it is answered, so that the end of the process loses nothing.
    private ServerProcess StartStore() => new("redis-server", folder, "redis.log", new Dictionary<string, string>(),
        "--port", redisPort.ToString(CultureInfo.InvariantCulture), "--bind", "127.0.0.1", "--dir", folder, "--appendonly", "yes",
        "--save", string.Empty);

    private ServerProcess StartSilo(int k) => new(
        "dotnet", folder, string.Create(CultureInfo.InvariantCulture, $"silo-{k}.log"), new Dictionary<string, string>
        {
            ["DRIVELINE_FLEET__REDIS"] = Redis,
            ["DRIVELINE_FLEET__STATEFORMAT"] = k == Silos - 1 ? "1" : "2",
        },
        Path.GetFullPath(tool), "fleet", "--serve", "--alarms", AlarmFile(k));

    private string AlarmFile(int k) => Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"alarms-{k}.json"));

    public static async Task WaitForSilosAsync(FleetClient client, int silos)
    {
        for (int k = 0; k < 120; k++)
        {
            if ((await client.Grains.GetGrain<IFleetBoardGrain>(0).ReadAsync()).Length == silos)
            {
                return;
            }

            await Task.Delay(500);
        }

        throw new InvalidOperationException("The silos did not find each other.");
    }

    private void Kill(ServerProcess server, string name)
    {
        if (phase != "before")
        {
            Say($"longest wait for an acknowledgement after {phase}: {longestS:F1} s");
        }

        server.Kill();
        longestS = 0;
        phase = "the end of " + name;
        Say($"{name} was killed after {Interlocked.Read(ref sent)} batches");
    }

    private async Task ReachAsync(long batches)
    {
        while (Interlocked.Read(ref sent) < batches)
        {
            await Task.Delay(5);
        }
    }

    private async Task SendAllAsync(FleetClient client, string[] names)
    {
        void Acknowledged(TimeSpan took) => ackMs.GetOrAdd(phase, _ => []).Add(took.TotalMilliseconds);
        BatchSender[] senders = [.. names.Select(n => new BatchSender(client.Driveline(n), Acknowledged))];
        TelemetryBatch[][] batches = [.. names.Select((_, k) => TestFleet.Batches(k, batchesEach, samplesEach))];
        var limit = new CancellationTokenSource(TimeSpan.FromMinutes(8));
        for (int from = 0; from < batchesEach; from += AtOnce)
        {
            int first = from;
            await EachAsync(names, async k =>
            {
                TelemetryBatch[] some = batches[k][first..Math.Min(first + AtOnce, batchesEach)];
                long began = Stopwatch.GetTimestamp();
                bool twice;
                lock (random)
                {
                    random.Shuffle(some);
                    twice = random.Next(20) == 0;
                }

                FleetRefusal? refusal = await senders[k].SendAsync(some, limit.Token);
                if (refusal is null && twice)
                {
                    Interlocked.Add(ref repeats, some.Length);
                    refusal = await senders[k].SendAsync(some, limit.Token);
                }

                if (refusal is not null)
                {
                    lock (wrong)
                    {
                        wrong.Add(names[k] + ": " + refusal);
                    }
                }

                longestS = Math.Max(longestS, Stopwatch.GetElapsedTime(began).TotalSeconds);
                Interlocked.Add(ref sent, some.Length);
            });
        }

        sentAgain = senders.Sum(s => s.SentAgain);
    }
}
