using System.Buffers.Binary;
using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <summary>Walks over the bytes of a snapshot and writes or reads one value after the other: one road for both ways.</summary>
/// <remarks>
/// Little-endian, 8 bytes a value. What cannot be read, or is out of its range, makes it <see cref="Failed"/> and leaves the
/// value.
/// </remarks>
internal ref struct SnapshotCursor
{
    private readonly Span<byte> bytes;
    private readonly bool reads;

    public SnapshotCursor(Span<byte> bytes, bool reads)
    {
        this.bytes = bytes;
        this.reads = reads;
        Position = 0;
        Failed = false;
    }

    public int Position { get; private set; }

    public bool Failed { get; private set; }

    /// <summary>A value from low to high.</summary>
    public void Whole(ref long value, long low, long high)
    {
        if (Failed || Position > bytes.Length - sizeof(long))
        {
            Failed = true;
            return;
        }

        Span<byte> place = bytes.Slice(Position);
        Position += sizeof(long);
        if (!reads)
        {
            BinaryPrimitives.WriteInt64LittleEndian(place, value);
            return;
        }

        long read = BinaryPrimitives.ReadInt64LittleEndian(place);
        if (read < low || read > high)
        {
            Failed = true;
        }
        else
        {
            value = read;
        }
    }

    public void Count(ref long value) => Whole(ref value, 0, long.MaxValue);

    public void Index(ref int value, int low, int high)
    {
        long whole = value;
        Whole(ref whole, low, high);
        value = (int)whole;
    }

    public void Flag(ref bool value)
    {
        long whole = value ? 1 : 0;
        Whole(ref whole, 0, 1);
        value = whole == 1;
    }

    /// <summary>A finite number.</summary>
    public void Number(ref double value)
    {
        double read = value;
        NumberOrNone(ref read);
        if (!Guard.IsFinite(read))
        {
            Failed = true;
        }
        else
        {
            value = read;
        }
    }

    /// <summary>A finite number, or NaN for none.</summary>
    public void NumberOrNone(ref double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        Whole(ref bits, long.MinValue, long.MaxValue);
        double read = BitConverter.Int64BitsToDouble(bits);
        if (double.IsInfinity(read))
        {
            Failed = true;
        }
        else
        {
            value = read;
        }
    }
}
