using Driveline.Sweeps;

namespace Driveline.Fleet.Tests;

public class FleetStudyTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("fleet-study").FullName;

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    [Theory]
    [InlineData(".csv", 1)]
    [InlineData(".parquet", 5)]
    public async Task Study_OnTwoSilos_GivesTheBytesOfARunOnOneMachine(string ending, int shards)
    {
        string study = Study(2000);
        Sweep.RunTo(StudyReader.ReadFile(study).Study!, Path.Combine(folder, "local" + ending));
        await using FleetHost first = await FleetHost.StartAsync(FleetOptions.Default, null, default);
        await using FleetHost second = await FleetHost.JoinAsync(first, FleetOptions.Default, null, default);
        string path = Path.Combine(folder, "fleet" + ending);
        Assert.Equal(2000, await FleetStudy.RunToAsync(first.Grains, study, path, shards, 4, default));
        Assert.Equal(File.ReadAllBytes(Path.Combine(folder, "local" + ending)), File.ReadAllBytes(path));
        Assert.Equal(4, Directory.GetFiles(folder).Length);
    }

    [Fact]
    public async Task Study_WhoseSiloGoesAway_IsTheSameToTheByte()
    {
        string study = Study(40_000);
        Sweep.RunTo(StudyReader.ReadFile(study).Study!, Path.Combine(folder, "local.csv"));
        await using FleetHost first = await FleetHost.StartAsync(FleetOptions.Default, null, default);
        FleetHost second = await FleetHost.JoinAsync(first, FleetOptions.Default, null, default);
        string path = Path.Combine(folder, "fleet.csv");
        Task<long> run = FleetStudy.RunToAsync(first.Grains, study, path, 20, 8, default);
        while (Directory.GetFiles(folder, "fleet.csv.*").Length < 2)
        {
            await Task.Delay(20);
        }

        await second.DisposeAsync();
        Assert.Equal(40_000, await run);
        Assert.Equal(File.ReadAllBytes(Path.Combine(folder, "local.csv")), File.ReadAllBytes(path));
    }

    [Fact]
    public async Task Study_ThatIsBad_IsRefusedBeforeAnythingRuns()
    {
        string study = Study(10);
        File.WriteAllText(study, File.ReadAllText(study).Replace("steadyPeak", "stedyPeak", StringComparison.Ordinal));
        await using FleetHost host = await FleetHost.StartAsync(FleetOptions.Default, null, default);
        ArgumentException refused = await Assert.ThrowsAsync<ArgumentException>(
            () => FleetStudy.RunToAsync(host.Grains, study, Path.Combine(folder, "a.csv"), 2, 2, default));
        Assert.Contains("did you mean \"steadyPeak\"?", refused.Message, StringComparison.Ordinal);
    }

    // Its case stands beside it, to go with it.
    private string Study(int rows)
    {
        File.WriteAllText(Path.Combine(folder, "t.case.json"), TestFleet.CaseJson("thornbeck-bolt-right"));
        string path = Path.Combine(folder, "t.study.json");
        File.WriteAllText(path, $$"""
            {
              "title": "t", "case": "t.case.json", "factors": [ { "path": "work.steadyPeak", "uniform": ["300 N.m", "700 N.m"] } ],
              "design": { "kind": "sobol", "n": {{rows}}, "seed": 3 },
              "outputs": ["assess.verdict", "assess.workMargin"], "rowsPerGroup": 100
            }
            """);
        return path;
    }
}
