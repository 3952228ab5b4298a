using System.IO.Compression;

namespace Driveline.Fuzz;

/// <summary>Inputs that were kept, an archive a target: those that once found new branches. What crashed stays as a file.</summary>
internal static class Corpus
{
    private const int Most = 60;
    private const int LongestBytes = 4096;

    // AFL++ says in a file's name that it reached a branch for the first time.
    private const string NewBranch = "*+cov*";

    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Packs the shortest inputs of a run that found new branches.</summary>
    public static void Keep(string run, string folder)
    {
        foreach (string target in Targets.All.Keys)
        {
            var queue = new DirectoryInfo(Path.Combine(run, target, "default", "queue"));
            FileInfo[] kept = queue.Exists
                ? [.. queue.GetFiles(NewBranch).Where(f => f.Length <= LongestBytes).OrderBy(f => f.Length).ThenBy(f => f.Name).Take(Most)]
                : [];
            if (kept.Length == 0)
            {
                continue;
            }

            using var archive = new ZipArchive(File.Create(Path.Combine(folder, target + ".zip")), ZipArchiveMode.Create);
            for (int k = 0; k < kept.Length; k++)
            {
                ZipArchiveEntry entry = archive.CreateEntry(FormattableString.Invariant($"kept-{k:00}"), CompressionLevel.SmallestSize);
                entry.LastWriteTime = NoTime;
                using Stream into = entry.Open();
                into.Write(File.ReadAllBytes(kept[k].FullName));
            }
        }
    }

    /// <summary>Puts every input that was kept beside the first ones of its target.</summary>
    public static void Unpack(string corpus, string folder)
    {
        foreach (string archive in Directory.GetFiles(corpus, "*.zip"))
        {
            ZipFile.ExtractToDirectory(archive, Path.Combine(folder, Path.GetFileNameWithoutExtension(archive)), overwriteFiles: true);
        }
    }
}
