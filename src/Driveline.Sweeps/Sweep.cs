using Driveline.Quantities;
using Driveline.Sweeps.Files;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps;

/// <summary>
/// Runs studies: the same rows, bit for bit, on any number of threads, in any number of shards, and however often interrupted.
/// </summary>
/// <remarks>
/// On one kind of processor; functions of the platform's mathematics may differ in the last bit between kinds.
/// </remarks>
public static class Sweep
{
    /// <summary>Runs a study into memory.</summary>
    /// <exception cref="ArgumentException">The study cannot be run; the message says why.</exception>
    public static StudyResult Run(Study study) => Run(study, SweepOptions.Default, CancellationToken.None);

    /// <summary>Runs a study, or a shard of it, into memory.</summary>
    /// <exception cref="ArgumentException">The study cannot be run; the message says why.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static StudyResult Run(Study study, SweepOptions options, CancellationToken stop) =>
        MemoryRun.Run(StudyPlan.Of(Guard.NotNull(study, nameof(study))), Guard.NotNull(options, nameof(options)), stop);

    /// <summary>Runs a study into a file that ends in .csv or .parquet; the file is there only when it is whole.</summary>
    /// <exception cref="ArgumentException">The study cannot be run, or the file ends otherwise.</exception>
    /// <exception cref="StudyFileException">The file cannot be written; what is done can be gone on with.</exception>
    public static StudyResult RunTo(Study study, string path) => RunTo(study, path, SweepOptions.Default, CancellationToken.None);

    /// <summary>Runs a study, or a shard of it, into a file that ends in .csv or .parquet.</summary>
    /// <remarks>
    /// Rows gather in a file beside it that ends in .partial; with <see cref="SweepOptions.WithResume"/> a run goes on from there. A whole
    /// file that is resumed is only read, for its figures.
    /// </remarks>
    /// <exception cref="ArgumentException">The study cannot be run, or the file ends otherwise.</exception>
    /// <exception cref="StudyFileException">The file cannot be written or resumed.</exception>
    /// <exception cref="OperationCanceledException">It was stopped; what is done can be gone on with.</exception>
    public static StudyResult RunTo(Study study, string path, SweepOptions options, CancellationToken stop)
    {
        StudyPlan plan = StudyPlan.Of(Guard.NotNull(study, nameof(study)));
        return new FileRun(plan, Held(path, nameof(path)), Guard.NotNull(options, nameof(options))).Run(stop);
    }

    /// <summary>Puts the files of all shards of a study together: the bytes are those of a run without shards.</summary>
    /// <param name="shards">The files of the shards, in any order, all of the kind of the new one.</param>
    /// <param name="path">The new file.</param>
    /// <returns>Number of rows.</returns>
    /// <exception cref="ArgumentException">No file, or one that ends otherwise.</exception>
    /// <exception cref="StudyFileException">A file cannot be read, rows are missing or twice, or they are of several studies.</exception>
    public static long Merge(IEnumerable<string> shards, string path) => Merge(shards, path, CancellationToken.None);

    /// <summary>Puts the files of all shards of a study together, until it is stopped.</summary>
    /// <exception cref="ArgumentException">No file, or one that ends otherwise.</exception>
    /// <exception cref="StudyFileException">A file cannot be read, rows are missing or twice, or they are of several studies.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static long Merge(IEnumerable<string> shards, string path, CancellationToken stop)
    {
        string[] files = [.. Guard.NotNull(shards, nameof(shards))];
        if (files.Length == 0)
        {
            throw new ArgumentException("Name at least one file to merge; got none.", nameof(shards));
        }

        bool isCsv = RowFormat.IsCsv(Held(path, nameof(path)));
        if (files.FirstOrDefault(f => RowFormat.IsCsv(Held(f, nameof(shards))) != isCsv) is { } other)
        {
            throw new ArgumentException("All files must be of one kind; '" + other + "' is not of that of '" + path + "'.", nameof(shards));
        }

        try
        {
            return isCsv ? CsvMerge.Run(files, path, stop) : ParquetMerge.Run(files, path, stop);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            throw new StudyFileException("'" + path + "' cannot be made: " + failed.Message, failed);
        }
    }

    private static string Held(string path, string parameter) => RowFormat.IsHeld(Guard.NotBlank(path, "Path", parameter)) ? path
        : throw new ArgumentException("A file of a study must end in .csv or .parquet; got '" + path + "'.", parameter);
}
