using System.Buffers.Binary;
using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <summary>Walks over the bytes of a snapshot and writes or reads one value after the other: one road for both ways.</summary>
/// <remarks>
/// Wide: little-endian, 8 bytes a value. Packed: bits from the lowest of each byte on; a whole number as its length in 6 bits and the bits
/// below its highest, a number as one bit for 0, else 64 more. What cannot be read, or is out of its range, makes it <see cref="Failed"/>
/// and leaves the value.
/// </remarks>
internal ref partial struct SnapshotCursor
{
    private const int LengthBits = 6;

    private readonly Span<byte> bytes;
    private readonly bool reads;
    private readonly bool isPacked;
    private int bit;

    public SnapshotCursor(Span<byte> bytes, bool reads, bool isPacked)
    {
        this.bytes = bytes;
        this.reads = reads;
        this.isPacked = isPacked;
        bit = 0;
        Failed = false;
    }

    public readonly bool Reads => reads;

    public readonly bool IsPacked => isPacked;

    /// <summary>Bytes walked over, the one begun included.</summary>
    public readonly int Position => (bit + 7) / 8;

    public bool Failed { get; private set; }

    /// <summary>A value from low to high.</summary>
    public void Whole(ref long value, long low, long high)
    {
        if (isPacked)
        {
            PackedWhole(ref value, low, high);
            return;
        }

        if (Failed || Position > bytes.Length - sizeof(long))
        {
            Failed = true;
            return;
        }

        Span<byte> place = bytes.Slice(Position);
        bit += 8 * sizeof(long);
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
        if (isPacked)
        {
            value = Bits(value ? 1UL : 0, 1) != 0;
            return;
        }

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
        if (isPacked)
        {
            bits = Bits(bits != 0 ? 1UL : 0, 1) != 0 ? (long)Bits((ulong)bits, 64) : 0;
        }
        else
        {
            Whole(ref bits, long.MinValue, long.MaxValue);
        }

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

    private void PackedWhole(ref long value, long low, long high)
    {
        ulong above = (ulong)(value - low);
        int length = (int)Bits((ulong)LengthOf(above), LengthBits);
        above = WithLength(above, length);
        if (Failed || above > (ulong)(high - low))
        {
            Failed = true;
        }
        else
        {
            value = low + (long)above;
        }
    }

    // The bits below the highest of a number of so many bits.
    private ulong WithLength(ulong value, int length)
    {
        if (length <= 1)
        {
            return (ulong)length;
        }

        ulong highest = 1UL << (length - 1);
        return highest | Bits(value & (highest - 1), length - 1);
    }

    // Bits up to 64, lowest first; 0 when there are none left to read.
    private ulong Bits(ulong value, int count)
    {
        if (Failed || count > (8L * bytes.Length) - bit)
        {
            Failed = true;
            return 0;
        }

        ulong read = 0;
        for (int done = 0; done < count;)
        {
            int from = bit & 7, some = Math.Min(8 - from, count - done);
            ref byte place = ref bytes[bit >> 3];
            if (reads)
            {
                read |= ((ulong)(place >> from) & ((1UL << some) - 1)) << done;
            }
            else
            {
                place = (byte)((place & ((1 << from) - 1)) | (int)((value >> done) & ((1UL << some) - 1)) << from);
            }

            done += some;
            bit += some;
        }

        return reads ? read : value;
    }

    private static int LengthOf(ulong value)
    {
        int length = 0;
        for (int step = 32; step > 0; step /= 2)
        {
            if (value >> step != 0)
            {
                length += step;
                value >>= step;
            }
        }

        return value != 0 ? length + 1 : length;
    }
}
