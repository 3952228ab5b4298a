using System.Globalization;
using System.Text.Json;

namespace Driveline.Fleet.Tests;

/// <summary>The command fleet, as a shell runs it.</summary>
public sealed class FleetCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("fleet").FullName;
    private readonly StringWriter output = new(CultureInfo.InvariantCulture);
    private readonly StringWriter error = new(CultureInfo.InvariantCulture);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Fleet_ReplayingLogs_CountsWhatWatchCountsInEach()
    {
        string[] logs = [Log("north", 1), Log("south", 2)];
        string alarms = Path.Combine(folder, "alarms.json");
        Assert.Equal(0, Run(["fleet", .. logs, "--case", Case, "--overload", "900 N.m", "--batch", "64", "--silos", "2",
            "--alarms", alarms, "--json"]));
        using JsonDocument summary = JsonDocument.Parse(output.ToString());
        JsonElement root = summary.RootElement;
        Assert.Equal(2, root.GetProperty("drivelines").GetInt32());
        Assert.Equal(32, root.GetProperty("batches").GetInt32());   // 2 · 1000 samples: 15 whole batches of 64 and one of 40 each
        Assert.Equal(2000, root.GetProperty("samples").GetInt32());
        JsonElement[] told = [.. File.ReadLines(alarms).Select(line => JsonDocument.Parse(line).RootElement)];
        Assert.Equal(told.Length, root.GetProperty("alarms").GetInt32());
        foreach (string log in logs)
        {
            output.GetStringBuilder().Clear();
            Assert.Equal(0, Run(["watch", log, "--case", Case, "--overload", "900 N.m", "--json"]));
            string[] lines = output.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
            using JsonDocument watched = JsonDocument.Parse(lines[^1]);
            JsonElement one = root.GetProperty("worst").EnumerateArray()
                .Single(w => w.GetProperty("driveline").GetString() == Path.GetFileNameWithoutExtension(log));
            Assert.True(watched.RootElement.GetProperty("overloads").GetInt64() > 0);
            foreach (string count in new[] { "overloads", "trips", "slips" })
            {
                Assert.Equal(watched.RootElement.GetProperty(count).GetInt64(), one.GetProperty(count).GetInt64());
            }

            // Of each event watch prints a line; the last one sums up.
            string name = one.GetProperty("driveline").GetString()!;
            Assert.Equal(lines.Length - 1, told.Count(a => a.GetProperty("driveline").GetString() == name));
        }
    }

    [Fact]
    public void Fleet_AsText_SaysWhatCameOfIt()
    {
        Assert.Equal(0, Run(["fleet", Log("east", 3), "--case", Case, "--overload", "900 N.m", "--copies", "2"]));
        Assert.Contains("2 drivelines, 22 batches, 2,000 samples", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("| east-1", output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fleet needs logs to replay, or --serve.")]
    [InlineData("fleet needs --case CASE for logs.", "LOG")]
    [InlineData("There is no file 'nothing.csv'.", "nothing.csv", "--case", "CASE")]
    [InlineData("--silos must be from 1 to 8; got 9.", "LOG", "--silos", "9")]
    [InlineData("Each driveline is named after its log: no two logs may have the same name.", "LOG", "LOG", "--case", "CASE")]
    [InlineData("ApiKey must be set where the endpoint listens beyond loopback; Url is http://0.0.0.0:0.",
        "--serve", "--url", "http://0.0.0.0:0")]
    [InlineData("'FOLDER/none.json' cannot be read", "--serve", "--config", "FOLDER/none.json")]
    [InlineData("SiloPort must be from 0 to 65535; got x.", "--serve", "--config", "FOLDER/bad.json")]
    public void Fleet_AskedWrongly_SaysWhatItNeeds(string expected, params string[] args)
    {
        File.WriteAllText(Path.Combine(folder, "bad.json"), "{\"Fleet\":{\"SiloPort\":\"x\"}}");
        string log = Log("west", 4);
        string In(string text) => text == "LOG" ? log : text == "CASE" ? Case : text.Replace("FOLDER", folder, StringComparison.Ordinal);
        Assert.Equal(2, Run(["fleet", .. args.Select(In)]));
        Assert.Contains(In(expected), error.ToString(), StringComparison.Ordinal);
    }

    private static string Case => Path.Combine(AppContext.BaseDirectory, "cases", "dunmarsh-clutch-well-set.case.json");

    private int Run(string[] args) => Cli.Cli.Run(args, TextReader.Null, output, error);

    private string Log(string name, int seed)
    {
        string file = Path.Combine(folder, name + ".csv");
        File.WriteAllLines(file, TestFleet.Work(seed, 1000)
            .Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.TimeS},{s.SpeedInRadPerS},{s.SpeedOutRadPerS},{s.TorqueNm}"))
            .Prepend("timeS,speedInRadPerS,speedOutRadPerS,torqueNm"));
        return file;
    }
}
