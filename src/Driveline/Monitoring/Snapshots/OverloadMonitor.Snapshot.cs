using System.Buffers.Binary;
using System.Diagnostics.CodeAnalysis;
using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <content>The state as bytes.</content>
public sealed partial class OverloadMonitor
{
    /// <summary>No snapshot is longer, B.</summary>
    public const int LargestSnapshotBytes = 20_000;

    /// <summary>The version of snapshots written and read here.</summary>
    public const int SnapshotVersion = 1;

    private const long Mark = 0x314E4F4D4C565244;   // "DRVLMON1" in ASCII, read from the back
    private const int ChecksumBytes = sizeof(uint);
    private const int LeastBytes = (3 * sizeof(long)) + ChecksumBytes;

    /// <summary>
    /// The state as bytes: a mark, the version, a checksum of the settings, the state, and a CRC-32 of it all; little-endian.
    /// </summary>
    public byte[] Save()
    {
        byte[] room = new byte[LargestSnapshotBytes];
        int length = Save(room);
        return room.AsSpan(0, length).ToArray();
    }

    /// <summary>Writes the state and says how many bytes it took; allocates nothing of its own.</summary>
    /// <param name="destination">Room for at least <see cref="LargestSnapshotBytes"/>.</param>
    /// <exception cref="ArgumentException">Too little room.</exception>
    public int Save(Span<byte> destination)
    {
        if (destination.Length < LargestSnapshotBytes)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"The span must hold at least {LargestSnapshotBytes} bytes; got {destination.Length}."),
                nameof(destination));
        }

        var cursor = new SnapshotCursor(destination, reads: false);
        long mark = Mark, version = SnapshotVersion, print = fingerprint;
        cursor.Whole(ref mark, Mark, Mark);
        cursor.Whole(ref version, 1, SnapshotVersion);
        cursor.Whole(ref print, 0, uint.MaxValue);
        Exchange(ref cursor);
        BinaryPrimitives.WriteUInt32LittleEndian(destination.Slice(cursor.Position), Crc32.Of(destination.Slice(0, cursor.Position)));
        return cursor.Position + ChecksumBytes;
    }

    /// <summary>The monitor of a snapshot.</summary>
    /// <param name="settings">The settings of the monitor that was saved.</param>
    /// <param name="snapshot">What <see cref="Save()"/> gave.</param>
    /// <exception cref="ArgumentException">It is refused; the message says why.</exception>
    public static OverloadMonitor Restore(MonitorSettings settings, ReadOnlySpan<byte> snapshot) =>
        TryRestore(settings, snapshot, out OverloadMonitor? monitor, out SnapshotProblem problem)
            ? monitor!
            : throw new ArgumentException(Message(problem), nameof(snapshot));

    /// <summary>The monitor of a snapshot, or why it is refused. The checksum is looked at first.</summary>
    /// <param name="settings">The settings of the monitor that was saved.</param>
    /// <param name="snapshot">What <see cref="Save()"/> gave.</param>
    /// <param name="monitor">The monitor; null when it is refused.</param>
    /// <param name="problem">Why it is refused.</param>
    public static bool TryRestore(MonitorSettings settings, ReadOnlySpan<byte> snapshot, [NotNullWhen(true)] out OverloadMonitor? monitor,
        out SnapshotProblem problem)
    {
        Guard.NotNull(settings, nameof(settings));
        monitor = null;
        if (snapshot.Length < LeastBytes || BinaryPrimitives.ReadInt64LittleEndian(snapshot) != Mark)
        {
            problem = SnapshotProblem.NotASnapshot;
            return false;
        }

        ReadOnlySpan<byte> content = snapshot.Slice(0, snapshot.Length - ChecksumBytes);
        if (Crc32.Of(content) != BinaryPrimitives.ReadUInt32LittleEndian(snapshot.Slice(content.Length)))
        {
            problem = SnapshotProblem.Corrupted;
            return false;
        }

        var restored = new OverloadMonitor(settings);
        problem = restored.Read(content);
        monitor = problem == SnapshotProblem.None ? restored : null;
        return monitor is not null;
    }

    private static string Message(SnapshotProblem problem) => problem switch
    {
        SnapshotProblem.NotASnapshot => "The bytes must be a snapshot of a monitor; these are none.",
        SnapshotProblem.Corrupted => "The snapshot must be whole; its checksum is wrong.",
        SnapshotProblem.NewerVersion =>
            FormattableString.Invariant($"The snapshot must be of version {SnapshotVersion}; a newer library wrote it."),
        SnapshotProblem.OtherSettings => "The snapshot must belong to a monitor with these settings; it has others.",
        _ => "The snapshot must hold the state of a monitor; this one cannot be one.",
    };

    private SnapshotProblem Read(ReadOnlySpan<byte> content)
    {
        byte[] bytes = content.ToArray();
        var cursor = new SnapshotCursor(bytes, reads: true);
        long mark = 0, version = 0, print = 0;
        cursor.Whole(ref mark, long.MinValue, long.MaxValue);
        cursor.Whole(ref version, long.MinValue, long.MaxValue);
        cursor.Whole(ref print, long.MinValue, long.MaxValue);
        if (version != SnapshotVersion)
        {
            return version > SnapshotVersion ? SnapshotProblem.NewerVersion : SnapshotProblem.Impossible;
        }

        if (print != fingerprint)
        {
            return SnapshotProblem.OtherSettings;
        }

        Exchange(ref cursor);
        return cursor.Failed || cursor.Position != bytes.Length || !cycles.IsPossible() ? SnapshotProblem.Impossible : SnapshotProblem.None;
    }

    private void Exchange(ref SnapshotCursor cursor)
    {
        double timeS = last.TimeS, speedIn = last.SpeedInRadPerS, speedOut = last.SpeedOutRadPerS, torqueNm = last.TorqueNm;
        cursor.Number(ref timeS);
        cursor.Number(ref speedIn);
        cursor.NumberOrNone(ref speedOut);
        cursor.Number(ref torqueNm);
        last = new TorqueSample(timeS, speedIn, speedOut, torqueNm);
        cursor.NumberOrNone(ref lastSlip);
        cursor.Flag(ref overloadAtEngagement);
        cursor.NumberOrNone(ref highestNm);
        cursor.Count(ref overloads);
        gate.Exchange(ref cursor);
        engagement.Exchange(ref cursor);
        overload.Exchange(ref cursor);
        slips.Exchange(ref cursor);
        trips.Exchange(ref cursor);
        thermometer.Exchange(ref cursor);
        cycles.Exchange(ref cursor);
        peaks.Exchange(ref cursor);
        slipTorques.Exchange(ref cursor);
    }
}
