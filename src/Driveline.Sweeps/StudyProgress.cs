namespace Driveline.Sweeps;

/// <summary>How far a study is.</summary>
public sealed class StudyProgress
{
    internal StudyProgress(long done, long rows, long failed, double seconds, long doneBefore)
    {
        Done = done;
        Rows = rows;
        Failed = failed;
        Elapsed = TimeSpan.FromSeconds(seconds);
        RowsPerSecond = seconds > 0 ? (done - doneBefore) / seconds : 0;
        Left = RowsPerSecond > 0 ? TimeSpan.FromSeconds(Math.Min((rows - done) / RowsPerSecond, 1e9)) : null;
    }

    /// <summary>Rows that are written, those of an earlier run among them.</summary>
    public long Done { get; }

    /// <summary>Rows of the study, or of its shard.</summary>
    public long Rows { get; }

    /// <summary>Rows that have no answer so far.</summary>
    public long Failed { get; }

    /// <summary>Time of this run.</summary>
    public TimeSpan Elapsed { get; }

    /// <summary>Rows of this run by its time.</summary>
    public double RowsPerSecond { get; }

    /// <summary>Time left at that rate; null while it is not known.</summary>
    public TimeSpan? Left { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Done:N0} of {Rows:N0} rows, {RowsPerSecond:N0} rows/s")
        + (Left is { } left ? FormattableString.Invariant($", {left:d\\.hh\\:mm\\:ss} left") : string.Empty);
}
