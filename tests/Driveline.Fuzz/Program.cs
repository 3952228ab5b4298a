using System.Diagnostics;
using System.Globalization;
using SharpFuzz;

namespace Driveline.Fuzz;

/// <summary>Reads what a fuzzer wrote; whatever is thrown is a crash.</summary>
/// <remarks>
/// TARGET: run under afl-fuzz. --seeds FOLDER: a folder of first inputs for each target. --replay FOLDER: reads each file twice, says how
/// many, and ends with 1 when one throws or takes more than a second the second time. --keep RUN FOLDER: packs what found new branches in
/// a run of AFL++, a file a target.
/// </remarks>
internal static class Program
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    private static int Main(string[] args)
    {
        switch (args)
        {
            case ["--seeds", var folder]:
                Seeds.Write(folder);
                return 0;
            case ["--keep", var run, var folder]:
                Corpus.Keep(run, folder);
                return 0;
            case ["--replay", var folder]:
                return Replay(folder);
            case [var name] when Targets.All.TryGetValue(name, out Action<byte[]>? read):
                Fuzzer.OutOfProcess.Run(stream => read(BytesOf(stream)));
                return 0;
            default:
                Console.Error.WriteLine(
                    "One of: --seeds FOLDER, --replay FOLDER, --keep RUN FOLDER, " + string.Join(", ", Targets.All.Keys));
                return 2;
        }
    }

    private static byte[] BytesOf(Stream stream)
    {
        using var all = new MemoryStream();
        stream.CopyTo(all);
        return all.ToArray();
    }

    // A file belongs to the target whose name its folder has.
    private static int Replay(string folder)
    {
        int files = 0, bad = 0;
        foreach ((string name, Action<byte[]> read) in Targets.All)
        {
            string inputs = Path.Combine(folder, name);
            foreach (string file in Directory.Exists(inputs) ? Directory.GetFiles(inputs).Order(StringComparer.Ordinal).ToArray() : [])
            {
                files++;
                byte[] bytes = File.ReadAllBytes(file);
                try
                {
                    read(bytes);
                    var clock = Stopwatch.StartNew();
                    read(bytes);
                    if (clock.Elapsed > Longest)
                    {
                        bad++;
                        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{file}: {clock.Elapsed.TotalSeconds:0.0} s"));
                    }
                }
#pragma warning disable CA1031 // Whatever is thrown is what we look for.
                catch (Exception thrown)
                {
                    bad++;
                    Console.WriteLine(file + ": " + thrown);
                }
#pragma warning restore CA1031
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{files} inputs, {bad} bad"));
        return bad == 0 && files > 0 ? 0 : 1;
    }
}
