using System.Security.Cryptography;
using Driveline.Monitoring;

namespace Driveline.Cli.Telemetry;

/// <summary>What a watch leaves behind to be resumed: the state of its monitor, of its decoder, and what the reader was about.</summary>
/// <remarks>
/// As text, so that mail and logs carry it: Base64 of a mark, a version, the content (little-endian) and its SHA-256. At most
/// 35 000 characters. Until a watch has its period, its first samples are kept in place of a monitor.
/// </remarks>
internal sealed class WatchState
{
    /// <summary>No state is longer, characters.</summary>
    public const int Longest = 35_000;

    private const long Mark = 0x3148435741565244;   // "DRVAWCH1" in ASCII, read from the back
    private const int Version = 1;
    private const int HeadBytes = sizeof(long) + sizeof(int);
    private const int SampleBytes = 4 * sizeof(double);

    /// <summary>Period of the samples, s; NaN while it is not known.</summary>
    public double PeriodS { get; init; } = double.NaN;

    /// <summary>The samples that came before the period was known.</summary>
    public IReadOnlyList<TorqueSample> Waiting { get; init; } = [];

    /// <summary>Rows that could not be read.</summary>
    public long Unreadable { get; init; }

    /// <summary>The state of the decoder; empty when the log holds no CAN frames.</summary>
    public byte[] Decoder { get; init; } = [];

    /// <summary>The state of the monitor; empty while the period is not known.</summary>
    public byte[] Monitor { get; init; } = [];

    /// <summary>The state as text.</summary>
    public string Write()
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        writer.Write(Mark);
        writer.Write(Version);
        writer.Write(PeriodS);
        writer.Write(Unreadable);
        writer.Write(Waiting.Count);
        foreach (TorqueSample sample in Waiting)
        {
            writer.Write(sample.TimeS);
            writer.Write(sample.SpeedInRadPerS);
            writer.Write(sample.SpeedOutRadPerS);
            writer.Write(sample.TorqueNm);
        }

        writer.Write(Decoder.Length);
        writer.Write(Decoder);
        writer.Write(Monitor.Length);
        writer.Write(Monitor);
        writer.Flush();
        byte[] content = stream.ToArray();
        return Convert.ToBase64String([.. content, .. SHA256.HashData(content)]) + "\n";
    }

    /// <summary>Reads a state.</summary>
    /// <param name="text">What <see cref="Write"/> gave.</param>
    /// <param name="from">Where it was, for the message.</param>
    /// <exception cref="BadInputException">It is none, damaged, or of a newer version.</exception>
    public static WatchState Read(string text, string from)
    {
        byte[] room = new byte[text.Length];
        if (text.Length > Longest || !Convert.TryFromBase64String(text, room, out int length)
            || length < HeadBytes + SHA256.HashSizeInBytes || BitConverter.ToInt64(room) != Mark)
        {
            throw new BadInputException("--resume '" + from + "' is no state that watch saved.");
        }

        ReadOnlySpan<byte> content = room.AsSpan(0, length - SHA256.HashSizeInBytes);
        if (!SHA256.HashData(content).AsSpan().SequenceEqual(room.AsSpan(content.Length, SHA256.HashSizeInBytes)))
        {
            throw new BadInputException("--resume '" + from + "' is damaged: its checksum is wrong.");
        }

        if (BitConverter.ToInt32(content[sizeof(long)..]) != Version)
        {
            throw new BadInputException("--resume '" + from + "' was saved by a newer version.");
        }

        using var reader = new BinaryReader(new MemoryStream(room, HeadBytes, content.Length - HeadBytes));
        try
        {
            return Read(reader);
        }
        catch (Exception failed) when (failed is EndOfStreamException or FormatException)
        {
            throw new BadInputException("--resume '" + from + "' cannot be the state of a watch.");
        }
    }

    private static WatchState Read(BinaryReader reader)
    {
        double periodS = reader.ReadDouble();
        long unreadable = reader.ReadInt64();
        var waiting = new TorqueSample[Count(reader, SampleBytes)];
        for (int k = 0; k < waiting.Length; k++)
        {
            waiting[k] = new TorqueSample(reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble());
        }

        return new WatchState
        {
            PeriodS = periodS,
            Unreadable = unreadable,
            Waiting = waiting,
            Decoder = reader.ReadBytes(Count(reader, 1)),
            Monitor = reader.ReadBytes(Count(reader, 1)),
        };
    }

    // No more may be stated than can follow.
    private static int Count(BinaryReader reader, int size)
    {
        int stated = reader.ReadInt32();
        return stated >= 0 && stated <= (reader.BaseStream.Length - reader.BaseStream.Position) / size ? stated
            : throw new FormatException();
    }
}
