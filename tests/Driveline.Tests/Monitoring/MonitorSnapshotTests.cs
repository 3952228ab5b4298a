using System.Buffers.Binary;
using System.IO.Compression;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

public class MonitorSnapshotTests
{
    [Fact]
    public void Checksum_OfTheCheckString_IsThePublishedOne() =>
        Assert.Equal(0xCBF43926u,
            Crc32.Of("123456789"u8));   // check value of CRC-32/ISO-HDLC in the public catalogue of parametrised CRC algorithms

    [Fact]
    public void Restore_AnyBitFlipped_IsRefused()
    {
        byte[] bytes = Filled(500).Save();
        for (int k = 0; k < bytes.Length; k++)
        {
            bytes[k] ^= (byte)(1 << (k % 8));
            Assert.False(OverloadMonitor.TryRestore(Streams.Settings(), bytes, out OverloadMonitor? none, out SnapshotProblem problem));
            Assert.Null(none);
            Assert.Equal(k < 8 ? SnapshotProblem.NotASnapshot : SnapshotProblem.Corrupted, problem);
            bytes[k] ^= (byte)(1 << (k % 8));
        }
    }

    [Theory]
    [InlineData(0, SnapshotProblem.NotASnapshot)]
    [InlineData(20, SnapshotProblem.NotASnapshot)]
    [InlineData(40, SnapshotProblem.Corrupted)]
    public void Restore_Cut_IsRefused(int length, SnapshotProblem expected)
    {
        Assert.False(OverloadMonitor.TryRestore(Streams.Settings(), Filled(500).Save().AsSpan(0, length), out _,
            out SnapshotProblem problem));
        Assert.Equal(expected, problem);
    }

    [Fact]
    public void Restore_NewerVersion_IsRefused()
    {
        byte[] bytes = Filled(100).Save();
        BinaryPrimitives.WriteInt64LittleEndian(bytes.AsSpan(8), OverloadMonitor.SnapshotVersion + 1);
        Assert.Equal(SnapshotProblem.NewerVersion, Sealed(bytes));
        var error = Assert.Throws<ArgumentException>(() => OverloadMonitor.Restore(Streams.Settings(), bytes));
        Assert.Contains("newer", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Restore_OtherSettings_IsRefused()
    {
        Assert.False(OverloadMonitor.TryRestore(Streams.Settings().WithSpeedRatio(2), Filled(100).Save(), out _,
            out SnapshotProblem problem));
        Assert.Equal(SnapshotProblem.OtherSettings, problem);
    }

    // Any eight bytes of the state written over with what no state holds, under a right checksum: refused, or a monitor that still runs.
    [Fact]
    public void Restore_ImpossibleContent_NeverThrows()
    {
        byte[] whole = Filled(800).Save(1);
        TorqueSample[] more = Streams.Work(5, 300);
        int refused = 0;
        for (int at = 24; at < whole.Length - 12; at += 8)
        {
            foreach (long value in new[] { long.MaxValue, -5, 1L << 40, BitConverter.DoubleToInt64Bits(double.PositiveInfinity) })
            {
                byte[] bytes = [.. whole];
                BinaryPrimitives.WriteInt64LittleEndian(bytes.AsSpan(at), value);
                Seal(bytes);
                if (OverloadMonitor.TryRestore(Streams.Settings(), bytes, out OverloadMonitor? monitor, out SnapshotProblem problem))
                {
                    Streams.Feed(monitor!, more);
                    _ = monitor!.CountedClosedHistory();
                }
                else
                {
                    Assert.Equal(SnapshotProblem.Impossible, problem);
                    refused++;
                }
            }
        }

        Assert.True(refused > 100, "only " + refused + " were refused");
    }

    [Fact]
    public void Snapshot_WithEveryStoreFull_StaysWithinItsBound()
    {
        // 600 peaks and 128 slips within the middle class, then the longest residue: ranges of 1, 2, … 512, 512, … 2, 1 classes.
        var monitor = new OverloadMonitor(Streams.Settings(1).WithPeaksFrom(Torque.FromNewtonMeters(1)));
        var events = new List<MonitorEvent>();
        double time = 0, level = 0, classNm = 4000.0 / 256;
        for (int k = 0; k < 600; k++)
        {
            monitor.Feed([new TorqueSample(time += 1, 50, 50, 1.5), new TorqueSample(time += 1, 50, 50, 0.5),
                new TorqueSample(time += 2, 50, 50, 0.5)], events);
        }

        for (int k = 0; k < 128; k++)
        {
            monitor.Feed([new TorqueSample(time += 1, 50, 30, 0.5), new TorqueSample(time += 1, 50, 50, 0.5)], events);
        }

        for (int k = 0; k <= 1024; k++)
        {
            monitor.Feed([new TorqueSample(time += 1, 0, level * classNm)], events);
            level += (k % 2 == 0 ? 1 : -1) * (k < 512 ? k + 1 : 1024 - k);
        }

        Assert.Equal(1024, monitor.CountedRanges().Sum(r => 2 * r.Cycles));

        // 1025 reversals, 512 ranges, 512 peaks and 2 · 128 numbers of slips of 8 bytes are 18 440 bytes.
        Assert.InRange(monitor.Save(1).Length, 18_440, OverloadMonitor.LargestSnapshotBytes);
        Assert.InRange(monitor.Save().Length, 0, 4096);
        Assert.Equal(monitor.Save(), OverloadMonitor.Restore(monitor.Settings, monitor.Save()).Save());
    }

    // What fills a snapshot most: peaks and slips with all their digits, and cycles of every range.
    [Fact]
    public void Snapshot_AfterALifeOfNoise_FitsIn4Kilobytes()
    {
        MonitorSettings settings = Streams.Settings(0.1)
            .WithPeaksFrom(Torque.FromNewtonMeters(400)).WithScale(Torque.FromNewtonMeters(900));
        var monitor = new OverloadMonitor(settings);
        var random = new Random(11);
        var samples = new TorqueSample[600_000];
        double time = 0;
        for (int k = 0; k < samples.Length; k++)
        {
            bool slips = k % 400 < 3;
            double nm = k % 25 < 4 ? 1000 * random.NextDouble() * random.NextDouble()
                : 900 * ((2 * random.NextDouble()) - 1) * (k % 5 / 4.0);
            samples[k] = new TorqueSample(time += 0.1, 56 + random.NextDouble(), slips ? 30 + random.NextDouble() : 56, nm);
        }

        Streams.Feed(monitor, samples);
        Assert.InRange(monitor.Save().Length, 2500, 4096);
        Assert.Equal(monitor.Save(), OverloadMonitor.Restore(settings, monitor.Save()).Save());
    }

    // Counts such as no stream of a test reaches, in the form of 8 bytes a value. Of a monitor that has seen nothing the counts end before
    // 9 values of the peaks, 3 of the slips and the checksum.
    [Theory]
    [InlineData(1e9)]
    [InlineData(1e12)]
    public void Snapshot_OfManyCycles_GrowsByTheirDigits(double cycles)
    {
        byte[] wide = Filled(0).Save(1);
        var random = new Random(5);
        for (int k = 0; k < 512; k++)
        {
            int at = wide.Length - 4 - (8 * (3 + 9 + 512 - k));
            BinaryPrimitives.WriteInt64LittleEndian(wide.AsSpan(at), (long)(cycles / 512 * 2 * random.NextDouble()));
        }

        Seal(wide);
        OverloadMonitor monitor = OverloadMonitor.Restore(Streams.Settings(), wide);
        Assert.Equal(wide, OverloadMonitor.Restore(Streams.Settings(), monitor.Save()).Save(1));
        Assert.InRange(monitor.Save().Length, 0, Filled(0).Save().Length + (512 * (Math.Log2(cycles / 512) + 4) / 8));
    }

    [Fact]
    public void Restore_OfVersionOne_SavesItAgainByteForByte()
    {
        using var zipped = new GZipStream(new MemoryStream(Convert.FromBase64String(SavedByVersionOne)), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        zipped.CopyTo(bytes);
        MonitorSettings settings = MonitorSettings.Of(Torque.FromNewtonMeters(900), Duration.FromSeconds(1));
        OverloadMonitor monitor = OverloadMonitor.Restore(settings, bytes.ToArray());
        Assert.Equal(1500, monitor.Counts.Taken);
        Assert.Equal(bytes.ToArray(), monitor.Save(1));
        Assert.Equal(bytes.ToArray(), OverloadMonitor.Restore(settings, monitor.Save()).Save(1));
        Assert.InRange(monitor.Save().Length, 100, bytes.Length / 8);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Save_OfNoSuchVersion_Throws(int version) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Filled(10).Save(version));

    [Fact]
    public void Restore_AnyBytesUnderARightChecksum_NeverThrows()
    {
        byte[] whole = Filled(800).Save();
        TorqueSample[] more = Streams.Work(5, 300);
        var random = new Random(17);
        for (int run = 0; run < 2000; run++)
        {
            byte[] bytes = [.. whole];
            for (int k = random.Next(1, 4); k > 0; k--)
            {
                bytes[random.Next(24, bytes.Length - 4)] ^= (byte)random.Next(1, 256);
            }

            Seal(bytes);
            if (OverloadMonitor.TryRestore(Streams.Settings(), bytes, out OverloadMonitor? monitor, out SnapshotProblem problem))
            {
                Streams.Feed(monitor!, more);
                _ = monitor!.Save();
            }
            else
            {
                Assert.Equal(SnapshotProblem.Impossible, problem);
            }
        }
    }

    private const string SavedByVersionOne =
        "H4sIAAAAAAACA3MJCvPx9fczZGSAAJUk7xsMMJAz3QHC8EGlH2Q7MGADPFMcRJD5QP2MDNjBHVYGqgBGUhTD/AP3FwJsiDaJ7rOa7rCA9f/sc7" +
        "ZQeaB/GAYDgLkXFu4H8jDclQYCn4ocYDSxRsOigQ9KR0NpfigtCKUFoHQBGv0WStsxDA3AiINmoJL4YDFvqPprFIyCUTAKRsEoGAWjYBSMglEw" +
        "CkbBIAawcRIbtHEVoLgamlIU/o8GiPoZjRDaoglC34DSFc0QWqIFQu+A0hGtEPoHlJ7RBtXfDtUPpSs6oPo7ofqhdEQXVD+UntEN1d8D1Q+lK3" +
        "qh+vug+qF0RD9UP5T2mQCh50DpN1DaZiKE7oHSd6C0ziQIXQOlz0BpmckQOgdK74HSSONQ6P3keImmqwAc30QhxBMAAA==";

    private static OverloadMonitor Filled(int samples)
    {
        var monitor = new OverloadMonitor(Streams.Settings());
        Streams.Feed(monitor, Streams.Work(1, samples));
        return monitor;
    }

    private static SnapshotProblem Sealed(byte[] bytes)
    {
        Seal(bytes);
        OverloadMonitor.TryRestore(Streams.Settings(), bytes, out _, out SnapshotProblem problem);
        return problem;
    }

    private static void Seal(byte[] bytes) =>
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(bytes.Length - 4), Crc32.Of(bytes.AsSpan(0, bytes.Length - 4)));
}
