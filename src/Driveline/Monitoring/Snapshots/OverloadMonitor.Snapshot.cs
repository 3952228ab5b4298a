using System.Buffers.Binary;
using System.Diagnostics.CodeAnalysis;
using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <content>The state as bytes.</content>
public sealed partial class OverloadMonitor
{
    /// <summary>No snapshot is longer, B.</summary>
    public const int LargestSnapshotBytes = 20_000;

    /// <summary>The version of snapshots written here, unless another is asked for; all from 1 on are read.</summary>
    /// <remarks>1: 8 bytes a value, often 5 000 to 9 000. 2: packed, a quarter of that.</remarks>
    public const int SnapshotVersion = 2;

    private const long Mark = 0x314E4F4D4C565244;   // "DRVLMON1" in ASCII, read from the back
    private const int ChecksumBytes = sizeof(uint);
    private const int HeadBytes = 3 * sizeof(long);
    private const int LeastBytes = HeadBytes + ChecksumBytes;

    /// <summary>
    /// The state as bytes: a mark, the version, a checksum of the settings, the state packed, and a CRC-32 of it all.
    /// </summary>
    public byte[] Save() => Save(SnapshotVersion);

    /// <summary>The state in the form of an older version, for a reader that is not yet renewed.</summary>
    /// <param name="version">1 to <see cref="SnapshotVersion"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such version.</exception>
    public byte[] Save(int version)
    {
        if (version is < 1 or > SnapshotVersion)
        {
            throw Guard.OutOfRange("Version of a snapshot",
                FormattableString.Invariant($"from 1 to {SnapshotVersion}"), version, string.Empty, nameof(version));
        }

        byte[] room = new byte[LargestSnapshotBytes];
        return room.AsSpan(0, Write(room, version)).ToArray();
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

        return Write(destination, SnapshotVersion);
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

    private int Write(Span<byte> destination, int version)
    {
        BinaryPrimitives.WriteInt64LittleEndian(destination, Mark);
        BinaryPrimitives.WriteInt64LittleEndian(destination.Slice(sizeof(long)), version);
        BinaryPrimitives.WriteInt64LittleEndian(destination.Slice(2 * sizeof(long)), fingerprint);
        var cursor = new SnapshotCursor(destination.Slice(HeadBytes), reads: false, isPacked: version > 1);
        Exchange(ref cursor);
        int length = HeadBytes + cursor.Position;
        BinaryPrimitives.WriteUInt32LittleEndian(destination.Slice(length), Crc32.Of(destination.Slice(0, length)));
        return length + ChecksumBytes;
    }

    private static string Message(SnapshotProblem problem) => problem switch
    {
        SnapshotProblem.NotASnapshot => "The bytes must be a snapshot of a monitor; these are none.",
        SnapshotProblem.Corrupted => "The snapshot must be whole; its checksum is wrong.",
        SnapshotProblem.NewerVersion =>
            FormattableString.Invariant($"The snapshot must be of version 1 to {SnapshotVersion}; a newer library wrote it."),
        SnapshotProblem.OtherSettings => "The snapshot must belong to a monitor with these settings; it has others.",
        _ => "The snapshot must hold the state of a monitor; this one cannot be one.",
    };

    private SnapshotProblem Read(ReadOnlySpan<byte> content)
    {
        long version = BinaryPrimitives.ReadInt64LittleEndian(content.Slice(sizeof(long)));
        if (version is < 1 or > SnapshotVersion)
        {
            return version > SnapshotVersion ? SnapshotProblem.NewerVersion : SnapshotProblem.Impossible;
        }

        if (BinaryPrimitives.ReadInt64LittleEndian(content.Slice(2 * sizeof(long))) != fingerprint)
        {
            return SnapshotProblem.OtherSettings;
        }

        byte[] bytes = content.Slice(HeadBytes).ToArray();
        var cursor = new SnapshotCursor(bytes, reads: true, isPacked: version > 1);
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
