using System.Text.Json;
using Driveline.Fleet.Tests;

namespace Driveline.Fleet.Cluster;

/// <summary>Holds states and alarms of a cluster against those of a run without any silo.</summary>
internal sealed class Comparison(IReadOnlyDictionary<string, byte[]> states, int batchesEach, int samplesEach)
{
    /// <summary>Everything that differs.</summary>
    public List<string> Wrong { get; } = [];

    /// <summary>Compares, and says what came of it.</summary>
    public void Run(string[] names, string[] alarmFiles)
    {
        (AlarmId Id, string Line)[] told = [.. alarmFiles.Where(File.Exists).SelectMany(File.ReadLines).Select(line => (IdOf(line), line))];
        ILookup<AlarmId, string> byId = told.ToLookup(t => t.Id, t => t.Line);
        Wrong.AddRange(byId.Where(lines => lines.Distinct().Count() > 1).Select(lines => lines.Key + " was told in two ways"));
        var expected = new HashSet<AlarmId>();
        int same = 0;
        for (int k = 0; k < names.Length; k++)
        {
            (byte[] state, AlarmId[] alarms) = Reference.Of(names[k], TestFleet.Batches(k, batchesEach, samplesEach));
            expected.UnionWith(alarms);
            if (states[names[k]].AsSpan().SequenceEqual(state))
            {
                same++;
            }
            else
            {
                Wrong.Add(names[k] + ": the state differs");
            }
        }

        AlarmId[] missing = [.. expected.Where(id => !byId.Contains(id))];
        AlarmId[] invented = [.. byId.Select(lines => lines.Key).Where(id => !expected.Contains(id))];
        Wrong.AddRange(missing.Select(id => id + " was not told"));
        Wrong.AddRange(invented.Select(id => id + " was invented"));
        int largest = states.Values.Max(s => s.Length);
        double mean = states.Values.Average(s => s.Length);
        ClusterRun.Say($"states equal byte for byte: {same} of {names.Length}; largest {largest} B, mean {mean:F0} B");
        ClusterRun.Say($"alarms: {expected.Count} expected, {told.Length} told, {told.Length - byId.Count} of them again");
        ClusterRun.Say($"alarms missing: {missing.Length}, invented: {invented.Length}");
    }

    private static AlarmId IdOf(string line)
    {
        using JsonDocument document = JsonDocument.Parse(line);
        JsonElement alarm = document.RootElement;
        return new AlarmId(
            alarm.GetProperty("driveline").GetString()!, alarm.GetProperty("sequence").GetInt64(), alarm.GetProperty("index").GetInt32());
    }
}
