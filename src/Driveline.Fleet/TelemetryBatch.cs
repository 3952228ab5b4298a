using System.Runtime.InteropServices;
using Driveline.Monitoring;

namespace Driveline.Fleet;

/// <summary>Samples of one driveline in their order, with the number that the sender counts its batches by. Immutable.</summary>
/// <remarks>
/// The first batch of a driveline is number 1. A sender keeps a batch until it is acknowledged, and may send it again as often as it likes.
/// </remarks>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.TelemetryBatch")]
public sealed class TelemetryBatch
{
    /// <summary>No batch holds more samples.</summary>
    public const int MostSamples = 2048;

    [Id(0)]
    private readonly byte[] bytes;

    private TelemetryBatch(long sequence, byte[] bytes, long lostBefore, bool clockIsNew, bool ends)
    {
        Sequence = sequence;
        this.bytes = bytes;
        LostBefore = lostBefore;
        ClockIsNew = clockIsNew;
        Ends = ends;
    }

    /// <summary>Its number, from 1.</summary>
    [Id(1)]
    public long Sequence { get; }

    /// <summary>How many batches straight before it are lost for good, so that nobody waits for them.</summary>
    [Id(2)]
    public long LostBefore { get; }

    /// <summary>True when the clock of the samples began anew with it.</summary>
    [Id(3)]
    public bool ClockIsNew { get; }

    /// <summary>True when the log ends with it: what goes on is ended.</summary>
    [Id(4)]
    public bool Ends { get; }

    /// <summary>The samples.</summary>
    public ReadOnlySpan<TorqueSample> Samples => MemoryMarshal.Cast<byte, TorqueSample>(bytes);

    /// <summary>A batch.</summary>
    /// <param name="sequence">Its number, from 1; a number out of its range is refused where it is taken.</param>
    /// <param name="samples">Its samples; a copy is kept.</param>
    public static TelemetryBatch Of(long sequence, ReadOnlySpan<TorqueSample> samples) =>
        new(sequence, MemoryMarshal.AsBytes(samples).ToArray(), 0, false, false);

    /// <summary>The same, with so many batches before it lost for good.</summary>
    public TelemetryBatch WithLostBefore(long batches) => new(Sequence, bytes, batches, ClockIsNew, Ends);

    /// <summary>The same, with a clock that began anew.</summary>
    public TelemetryBatch WithNewClock() => new(Sequence, bytes, LostBefore, true, Ends);

    /// <summary>The same, as the last of a log.</summary>
    public TelemetryBatch WithEnd() => new(Sequence, bytes, LostBefore, ClockIsNew, true);

    /// <summary>A checksum by which a batch sent again is known.</summary>
    internal uint Checksum() => Crc32.Of(bytes) ^ (uint)((ClockIsNew ? 1 : 0) | (Ends ? 2 : 0)) ^ (uint)(LostBefore << 2);
}
