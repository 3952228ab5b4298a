using System.Buffers.Binary;
using System.Diagnostics.CodeAnalysis;

namespace Driveline.Monitoring;

/// <content>The state as bytes.</content>
public sealed partial class EngineTorqueDecoder
{
    private const long Mark = 0x31474E454C565244;   // "DRVLENG1" in ASCII, read from the back
    private const int Values = 19;
    private const int SnapshotBytes = (Values * sizeof(long)) + sizeof(uint);

    /// <summary>The state as 156 bytes: a mark, the version, the state, and a CRC-32 of it all; little-endian.</summary>
    public byte[] Save()
    {
        byte[] bytes = new byte[SnapshotBytes];
        var cursor = new SnapshotCursor(bytes, reads: false, isPacked: false);
        Exchange(ref cursor);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(cursor.Position), Crc32.Of(bytes.AsSpan(0, cursor.Position)));
        return bytes;
    }

    /// <summary>The decoder of a snapshot; false when it is none, or damaged.</summary>
    /// <param name="snapshot">What <see cref="Save"/> gave.</param>
    /// <param name="decoder">The decoder; null when it is refused.</param>
    public static bool TryRestore(ReadOnlySpan<byte> snapshot, [NotNullWhen(true)] out EngineTorqueDecoder? decoder)
    {
        decoder = null;
        if (snapshot.Length != SnapshotBytes)
        {
            return false;
        }

        byte[] content = snapshot.Slice(0, SnapshotBytes - sizeof(uint)).ToArray();
        if (Crc32.Of(content) != BinaryPrimitives.ReadUInt32LittleEndian(snapshot.Slice(content.Length)))
        {
            return false;
        }

        var restored = new EngineTorqueDecoder();
        var cursor = new SnapshotCursor(content, reads: true, isPacked: false);
        restored.Exchange(ref cursor);
        decoder = cursor.Failed ? null : restored;
        return decoder is not null;
    }

    /// <summary>The same state with a stated reference torque; when the bus tells one too, the higher counts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The torque is out of its range.</exception>
    public EngineTorqueDecoder WithReference(UnitsNet.Torque reference)
    {
        double nm = new EngineTorqueDecoder(reference).statedNm;
        TryRestore(Save(), out EngineTorqueDecoder? copy);
        copy!.statedNm = nm;
        return copy;
    }

    private void Exchange(ref SnapshotCursor cursor)
    {
        long mark = Mark, version = 1;
        cursor.Whole(ref mark, Mark, Mark);
        cursor.Whole(ref version, 1, 1);
        cursor.NumberOrNone(ref statedNm);
        cursor.NumberOrNone(ref busNm);
        cursor.NumberOrNone(ref friction);
        cursor.NumberOrNone(ref losses);
        cursor.NumberOrNone(ref ptoRadPerS);
        cursor.NumberOrNone(ref ptoS);
        cursor.Flag(ref ptoIsOff);
        cursor.Index(ref engine, Nobody, byte.MaxValue);
        cursor.Index(ref heard, Nobody, byte.MaxValue);
        cursor.Count(ref withoutReference);
        cursor.Count(ref withoutPto);
        cursor.Count(ref errors);
        transport.Exchange(ref cursor);
    }
}
