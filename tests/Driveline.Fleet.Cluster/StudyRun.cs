using System.Globalization;
using Driveline.Fleet.Silos;
using Driveline.Fleet.Tests;
using Driveline.Sweeps;

namespace Driveline.Fleet.Cluster;

/// <summary>A study on three silos as processes, one of them killed while it computes shards: the bytes are those of a local run.</summary>
internal sealed class StudyRun(string tool)
{
    private const int Silos = 3;
    private const int Rows = 40_000;
    private const int Shards = 20;
    private const int AtOnce = 6;

    private readonly string folder = Directory.CreateTempSubdirectory("fleet-study").FullName;
    private readonly int redisPort = SiloSetup.FreePort();

    private string Redis => string.Create(CultureInfo.InvariantCulture, $"127.0.0.1:{redisPort},connectTimeout=2000,syncTimeout=5000");

    public async Task<bool> RunAsync()
    {
        string study = Study();
        string local = Path.Combine(folder, "local.parquet");
        Sweep.RunTo(StudyReader.ReadFile(study).Study!, local);
        var servers = new List<ServerProcess> { Store() };
        bool isSame = false;
        try
        {
            servers.AddRange(Enumerable.Range(0, Silos).Select(Silo));
            await using FleetClient client = await FleetClient.ConnectAsync(
                FleetOptions.Default.WithRedis(Redis), new CancellationTokenSource(TimeSpan.FromMinutes(1)).Token);
            await ClusterRun.WaitForSilosAsync(client, Silos);
            string path = Path.Combine(folder, "fleet.parquet");
            var limit = new CancellationTokenSource(TimeSpan.FromMinutes(8));
            Task<long> run = FleetStudy.RunToAsync(client.Grains, study, path, Shards, AtOnce, limit.Token);
            while (!run.IsCompleted && Directory.GetFiles(folder, "fleet.parquet.*").Length < 2)
            {
                await Task.Delay(5);
            }

            bool isBefore = !run.IsCompleted;
            servers[1].Kill();
            long rows = await run;
            isSame = isBefore && rows == Rows && File.ReadAllBytes(local).AsSpan().SequenceEqual(File.ReadAllBytes(path));
            string found = isSame ? "the bytes of a local run" : "NOT the bytes of a local run";
            ClusterRun.Say($"a study of {rows} rows in {Shards} shards, a silo killed in it: {found}");
        }
        finally
        {
            servers.ForEach(s => s.Dispose());
            if (isSame)
            {
                Directory.Delete(folder, recursive: true);
            }
        }

        return isSame;
    }

    private ServerProcess Store() => new("redis-server", folder, "redis.log", new Dictionary<string, string>(),
        "--port", redisPort.ToString(CultureInfo.InvariantCulture), "--bind", "127.0.0.1", "--dir", folder, "--save", string.Empty);

    private ServerProcess Silo(int k) => new(
        "dotnet", folder, string.Create(CultureInfo.InvariantCulture, $"silo-{k}.log"),
        new Dictionary<string, string> { ["DRIVELINE_FLEET__REDIS"] = Redis },
        Path.GetFullPath(tool), "fleet", "--serve");

    private string Study()
    {
        File.WriteAllText(Path.Combine(folder, "t.case.json"), TestFleet.CaseJson("thornbeck-bolt-right"));
        string path = Path.Combine(folder, "t.study.json");
        File.WriteAllText(path, FormattableString.Invariant($$"""
            {
              "title": "t", "case": "t.case.json", "factors": [ { "path": "work.steadyPeak", "uniform": ["300 N.m", "700 N.m"] } ],
              "design": { "kind": "sobol", "n": {{Rows}}, "seed": 3 },
              "outputs": ["assess.verdict", "assess.workMargin"], "rowsPerGroup": 100
            }
            """));
        return path;
    }
}
