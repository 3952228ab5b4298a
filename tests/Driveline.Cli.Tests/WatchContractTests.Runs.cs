using System.Globalization;
using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <content>Runs and logs.</content>
public sealed partial class WatchContractTests
{
    private static CliRun Watch(string log, params string[] more) =>
        CliRun.WithInput(log, ["watch", "-", "--overload", "1000 N.m", "--json", .. more]);

    private static string Refused(string log, params string[] more) =>
        CliRun.Refused(log, ["watch", "-", "--overload", "1000 N.m", "--json", .. more]);

    private static JsonElement[] Lines(CliRun run)
    {
        Assert.Equal(0, run.Code);
        return [.. run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement)];
    }

    private static string Events(CliRun run)
    {
        Assert.Equal(0, run.Code);
        string[] events = [.. run.Output.Split('\n').Where(line => line.StartsWith("{\"event\"", StringComparison.Ordinal))];
        return string.Concat(events.Select(line => line + "\n"));
    }

    private static void AssertEvent(JsonElement seen, params (string Name, double Value)[] expected)
    {
        Assert.Equal(expected.Select(e => e.Name), seen.EnumerateObject().Skip(1).Select(m => m.Name));
        Assert.All(expected, e => Assert.Equal(e.Value, seen.GetProperty(e.Name).GetDouble(), 1e-4));
    }

    // Work at 10 Hz with overloads, slips, trips, pauses, late rows, rows sent twice and rows that are none.
    private static string[] Rows(int count)
    {
        var random = new Random(8);
        var rows = new string[count];
        double time = 0;
        for (int k = 0; k < count; k++)
        {
            time += random.Next(40) == 0 ? 2.5 : random.Next(30) == 0 ? -0.2 : random.Next(30) == 0 ? 0 : 0.1;
            int torque = random.Next(100, 1400), speedOut = random.Next(8) == 0 ? random.Next(540) : 540;
            rows[k] = random.Next(40) == 0 ? "soft\n" : string.Create(CultureInfo.InvariantCulture, $"{time:F1},540,{speedOut},{torque}\n");
        }

        return rows;
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(folder, name);
        File.WriteAllText(path, text);
        return path;
    }
}
