using System.Text.Json.Nodes;
using Driveline.Quantities;

namespace Driveline.Sweeps;

/// <summary>A shard of a study as it travels: text goes to where it is run, the bytes of its file come back.</summary>
/// <remarks>
/// The bytes are those of <see cref="Sweep.RunTo(Study, string, SweepOptions, CancellationToken)"/> for the same shard, on any machine
/// with the same kind of processor; written to files they are put together by <see cref="Sweep.Merge(IEnumerable{string}, string)"/>. Cut
/// a study into so many shards that each fits into memory.
/// </remarks>
public static class StudyShard
{
    /// <summary>A study file as one text that needs no other file: a case that it names stands in it.</summary>
    /// <param name="path">The study file.</param>
    /// <exception cref="IOException">The study or its case cannot be read.</exception>
    /// <exception cref="ArgumentException">Something is wrong with the study; the message lists it.</exception>
    public static string TextOf(string path)
    {
        StudyReadResult read = StudyReader.ReadFile(path);
        if (!read.IsRead)
        {
            throw Wrong(read, nameof(path));
        }

        var study = (JsonObject)JsonNode.Parse(File.ReadAllText(path))!;
        if (study["case"] is JsonValue name)
        {
            string beside = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, name.GetValue<string>());
            study["case"] = JsonNode.Parse(File.ReadAllText(beside));
        }

        return study.ToJsonString();
    }

    /// <summary>Runs a shard and gives its file as bytes.</summary>
    /// <param name="study">The text of the study, with its case in it.</param>
    /// <param name="ending">".csv" or ".parquet".</param>
    /// <param name="options">Which shard, and on how many threads; it is never resumed.</param>
    /// <param name="stop">Stops it between rows.</param>
    /// <exception cref="ArgumentException">Something is wrong with the study, or the ending is another.</exception>
    /// <exception cref="StudyFileException">There is no room for it on the disk.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static byte[] Run(string study, string ending, SweepOptions options, CancellationToken stop)
    {
        StudyReadResult read = StudyReader.Read(Guard.NotNull(study, nameof(study)));
        if (!read.IsRead)
        {
            throw Wrong(read, nameof(study));
        }

        string folder = Directory.CreateTempSubdirectory("driveline-shard").FullName;
        try
        {
            string path = Path.Combine(folder, "shard" + Guard.NotNull(ending, nameof(ending)));
            Sweep.RunTo(read.Study, path, Guard.NotNull(options, nameof(options)).WithResume(false), stop);
            return File.ReadAllBytes(path);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static ArgumentException Wrong(StudyReadResult read, string parameter) =>
        new("The study cannot be run: " + string.Join("; ", read.Errors), parameter);
}
