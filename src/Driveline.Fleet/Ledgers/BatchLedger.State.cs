using System.Buffers.Binary;
using Driveline.Monitoring;

namespace Driveline.Fleet.Ledgers;

/// <content>The state as bytes.</content>
internal sealed partial class BatchLedger
{
    private const uint Mark = 0x474C5644;   // "DVLG" in ASCII, read from the back
    private const int ChecksumBytes = sizeof(uint);
    private const int HeadBytes = sizeof(uint) + 1;
    private const int LeastAlarmBytes = 4 + 6 * sizeof(double);

    /// <summary>The state in a form that stands for a version; batches that wait are not in it.</summary>
    /// <remarks>
    /// A mark, the format, the last batch taken and the lost ones, the checksums remembered, the open alarms, the monitor, and a CRC-32 of
    /// it all; little-endian. The formats differ in the form of the monitor alone, so that going from one to the other and back is exact.
    /// </remarks>
    public byte[] Save(StateFormat format)
    {
        using var stream = new MemoryStream(4096);
        using var writer = new BinaryWriter(stream);
        writer.Write(Mark);
        writer.Write((byte)format);
        writer.Write7BitEncodedInt64(through);
        writer.Write7BitEncodedInt64(lost);
        writer.Write((byte)checksums.Count);
        checksums.ForEach(writer.Write);
        writer.Write7BitEncodedInt(outbox.Count);
        foreach (OpenAlarm alarm in outbox)
        {
            Write(writer, alarm);
        }

        writer.Write(monitor.Save((int)format));
        writer.Flush();
        stream.SetLength(stream.Position + ChecksumBytes);
        byte[] bytes = stream.ToArray();
        Span<byte> content = bytes.AsSpan(0, bytes.Length - ChecksumBytes);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(content.Length), Crc32.Of(content));
        return bytes;
    }

    /// <summary>The ledger of a state.</summary>
    /// <param name="settings">The settings of its monitor.</param>
    /// <param name="bytes">What <see cref="Save"/> gave.</param>
    /// <param name="newest">The newest format this silo reads.</param>
    /// <exception cref="FleetStateException">It is damaged, of other settings, or of a newer format.</exception>
    public static BatchLedger Restore(MonitorSettings settings, ReadOnlySpan<byte> bytes, StateFormat newest)
    {
        if (bytes.Length < HeadBytes + ChecksumBytes || BinaryPrimitives.ReadUInt32LittleEndian(bytes) != Mark
            || Crc32.Of(bytes[..^ChecksumBytes]) != BinaryPrimitives.ReadUInt32LittleEndian(bytes[^ChecksumBytes..]))
        {
            throw new FleetStateException("The stored state is damaged: its checksum is wrong.");
        }

        int format = bytes[HeadBytes - 1];
        if (format < (int)StateFormat.Wide || format > (int)newest)
        {
            throw new FleetStateException(FormattableString.Invariant(
                $"The stored state is of format {format}; this silo reads 1 to {(int)newest}. It stays as it is for a newer silo."));
        }

        byte[] content = bytes[HeadBytes..^ChecksumBytes].ToArray();
        using var reader = new BinaryReader(new MemoryStream(content));
        try
        {
            long through = reader.Read7BitEncodedInt64(), lost = reader.Read7BitEncodedInt64();
            uint[] checksums = [.. Enumerable.Range(0, reader.ReadByte()).Select(_ => reader.ReadUInt32())];
            OpenAlarm[] outbox = [.. Enumerable.Range(0, AlarmsIn(reader)).Select(_ => ReadAlarm(reader))];
            int head = (int)reader.BaseStream.Position;
            if (!OverloadMonitor.TryRestore(settings, content.AsSpan(head), out OverloadMonitor? monitor, out SnapshotProblem problem))
            {
                throw new FleetStateException("The monitor of the stored state cannot be restored: " + problem + ".");
            }

            var ledger = new BatchLedger(monitor) { through = through, lost = lost };
            ledger.checksums.AddRange(checksums);
            ledger.outbox.AddRange(outbox);
            return ledger;
        }
        catch (Exception failed) when (failed is EndOfStreamException or FormatException)
        {
            throw new FleetStateException("The stored state cannot be read.", failed);
        }
    }

    private static void Write(BinaryWriter writer, OpenAlarm alarm)
    {
        MonitorEvent seen = alarm.Event;
        writer.Write7BitEncodedInt64(alarm.Sequence);
        writer.Write7BitEncodedInt(alarm.Index);
        writer.Write((byte)seen.Kind);
        writer.Write((byte)((seen.AtEngagement ? 1 : 0) | (seen.IsCut ? 2 : 0)));
        writer.Write(seen.StartS);
        writer.Write(seen.DurationS);
        writer.Write(seen.PeakNm);
        writer.Write(seen.SlipAngleRad);
        writer.Write(seen.EnergyJ);
        writer.Write(seen.PeakFaceK);
    }

    // Room is made for as many as are stated, so no more may be stated than can follow.
    private static int AlarmsIn(BinaryReader reader)
    {
        int stated = reader.Read7BitEncodedInt();
        return stated >= 0 && stated <= (reader.BaseStream.Length - reader.BaseStream.Position) / LeastAlarmBytes
            ? stated
            : throw new FormatException(FormattableString.Invariant($"{stated} alarms cannot be in the state."));
    }

    private static OpenAlarm ReadAlarm(BinaryReader reader)
    {
        long sequence = reader.Read7BitEncodedInt64();
        int index = reader.Read7BitEncodedInt();
        var kind = (MonitorEventKind)reader.ReadByte();
        byte flags = reader.ReadByte();
        return new OpenAlarm(sequence, index, new MonitorEvent(
            kind, reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble(),
            reader.ReadDouble(), (flags & 1) != 0, (flags & 2) != 0));
    }
}
