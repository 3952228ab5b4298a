using System.Diagnostics;
using System.Text;
using Driveline.Sweeps.Files;
using Driveline.Sweeps.Statistics;

namespace Driveline.Sweeps.Running;

/// <summary>Runs a study into a file: groups in order into FILE.partial, renamed when all are there.</summary>
/// <remarks>FILE.partial.study tells the study and the shard, so that a run is only gone on with when it is the same.</remarks>
internal sealed class FileRun
{
    private const int CopyBuffer = 1 << 20;

    private readonly StudyPlan plan;
    private readonly string path;
    private readonly SweepOptions options;
    private readonly RowFormat format;
    private readonly GroupRange range;
    private readonly List<GroupSizes> sizes = [];
    private readonly Accumulated seen;

    public FileRun(StudyPlan plan, string path, SweepOptions options)
    {
        this.plan = plan;
        this.path = path;
        this.options = options;
        format = RowFormat.Of(path, plan);
        range = GroupRange.Of(plan.Groups, options.Shard, options.Shards);
        seen = new Accumulated(plan, options.Shards == 1, RowsOf(range), options.Threads);
    }

    private string Partial => path + ".partial";

    private string MarkFile => path + ".partial.study";

    private string Mark => FormattableString.Invariant($"{plan.Mark} {options.Shard}/{options.Shards} of {plan.Count}\n");

    public StudyResult Run(CancellationToken stop)
    {
        var clock = Stopwatch.StartNew();
        try
        {
            if (options.IsResumed && !File.Exists(Partial) && File.Exists(path))
            {
                ReadWhole(stop);
                return new StudyResult(plan, seen, clock.Elapsed.TotalSeconds, null);
            }

            using (FileStream stream = Open(stop))
            {
                Compute(stream, clock, stop);
                stream.Write(format.Foot(sizes));
                stream.Flush(flushToDisk: true);
            }

            File.Move(Partial, path, overwrite: true);
            File.Delete(MarkFile);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new StudyFileException(
                "'" + path + "' cannot be written: " + failed.Message.TrimEnd('.') + "."
                    + (File.Exists(Partial)
                        ? " What is done stays in '" + Partial + "': make room, and go on with --resume." : string.Empty),
                failed);
        }

        return new StudyResult(plan, seen, clock.Elapsed.TotalSeconds, null);
    }

    private FileStream Open(CancellationToken stop)
    {
        bool isResumed = options.IsResumed && File.Exists(Partial);
        if (isResumed && (!File.Exists(MarkFile) || File.ReadAllText(MarkFile) != Mark))
        {
            throw new StudyFileException(
                "'" + Partial + "' is of another study, shard or version of the study; run without --resume to begin anew.");
        }

        if (!isResumed)
        {
            File.WriteAllText(MarkFile, Mark, new UTF8Encoding(false));
        }

        var stream = new FileStream(Partial, isResumed ? FileMode.Open : FileMode.Create, FileAccess.ReadWrite, FileShare.Read, CopyBuffer);
        byte[] head = format.Head();
        if (isResumed && HasHead(stream, head))
        {
            long end = ReadGroups(stream, stop);
            stream.SetLength(end);
            stream.Position = end;
        }
        else
        {
            if (stream.Length > 0)
            {
                stream.SetLength(0);
                stream.Position = 0;
            }

            stream.Write(head);
        }

        return stream;
    }

    private static bool HasHead(FileStream stream, byte[] head)
    {
        byte[] found = new byte[head.Length];
        return stream.ReadAtLeast(found, found.Length, throwOnEndOfStream: false) == head.Length && found.AsSpan().SequenceEqual(head);
    }

    // The groups that are whole; a group that was cut off is computed again.
    private long ReadGroups(FileStream stream, CancellationToken stop)
    {
        var slot = new GroupSlot(plan, format.Columns.Length);
        var work = new GroupWork(plan);
        GroupTally tally = seen.NewTally();
        long end = stream.Position;
        for (long group = range.First; group < range.End; group++)
        {
            stop.ThrowIfCancellationRequested();
            long first = group * plan.RowsPerGroup;
            slot.Rows.Begin(first, (int)Math.Min(plan.RowsPerGroup, plan.Count - first));
            work.Sample(slot.Rows);
            if (!format.TryRead(stream, slot))
            {
                break;
            }

            tally.Take(slot.Rows);
            Take(slot);
            end = stream.Position;
        }

        return end;
    }

    private void ReadWhole(CancellationToken stop)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, CopyBuffer);
        long end = HasHead(stream, format.Head()) ? ReadGroups(stream, stop) : 0;
        byte[] foot = format.Foot(sizes);
        byte[] found = new byte[foot.Length + 1];
        stream.Position = end;
        int got = stream.ReadAtLeast(found, found.Length, throwOnEndOfStream: false);
        if (sizes.Count < range.End - range.First || got != foot.Length || !found.AsSpan(0, got).SequenceEqual(foot))
        {
            throw new StudyFileException("'" + path + "' is there, but it is not this study; run without --resume to write it anew.");
        }
    }

    private void Compute(FileStream stream, Stopwatch clock, CancellationToken stop)
    {
        long before = seen.Rows;
        long rows = RowsOf(range);
        var left = new GroupRange(range.First + sizes.Count, range.End);
        int threads = (int)Math.Clamp(left.End - left.First, 1, options.Threads);
        int slots = threads == 1 ? 1 : threads + 2;
        double told = 0;
        var ordered = new OrderedGroups<GroupSlot>(
            left,
            Enumerable.Range(0, slots).Select(_ => new GroupSlot(plan, format.Columns.Length)),
            (_, slot) =>
            {
                // A group that is told as done outlives a kill.
                stream.Write(slot.Bytes.Written);
                stream.Flush();
                Take(slot);
                double now = clock.Elapsed.TotalSeconds;
                if (options.Progress is { } tell && (now - told >= 0.25 || seen.Rows == rows))
                {
                    told = now;
                    tell(new StudyProgress(seen.Rows, rows, seen.Failed, now, before));
                }
            });
        ordered.Run(threads, () =>
        {
            var work = new GroupWork(plan);
            GroupTally tally = seen.NewTally();
            return (group, slot) =>
            {
                work.Compute(group, slot.Rows, stop);
                tally.Take(slot.Rows);
                format.Encode(slot);
            };
        }, stop);
    }

    private long RowsOf(GroupRange groups) =>
        Math.Min(groups.End * plan.RowsPerGroup, plan.Count) - Math.Min(groups.First * plan.RowsPerGroup, plan.Count);

    private void Take(GroupSlot slot)
    {
        sizes.Add(new GroupSizes(slot.Rows.Count, [.. slot.Sizes]));
        seen.Add(slot.Rows);
    }
}
