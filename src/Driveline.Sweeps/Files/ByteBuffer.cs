using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Driveline.Sweeps.Files;

/// <summary>Bytes that grow as they are written; kept and used again.</summary>
internal sealed class ByteBuffer
{
    private byte[] bytes = new byte[256];

    public int Length { get; private set; }

    public ReadOnlySpan<byte> Written => bytes.AsSpan(0, Length);

    public void Clear() => Length = 0;

    /// <summary>Room for at least so many more bytes; <see cref="Advance"/> takes those that were used.</summary>
    public Span<byte> Room(int size)
    {
        if (bytes.Length - Length < size)
        {
            Array.Resize(ref bytes, Math.Max(bytes.Length * 2, Length + size));
        }

        return bytes.AsSpan(Length);
    }

    public void Advance(int count) => Length += count;

    public void Byte(byte value)
    {
        Room(1)[0] = value;
        Length++;
    }

    public void Bytes(ReadOnlySpan<byte> value)
    {
        value.CopyTo(Room(value.Length));
        Length += value.Length;
    }

    public void Int32(int value)
    {
        BinaryPrimitives.WriteInt32LittleEndian(Room(4), value);
        Length += 4;
    }

    public void Int64(long value)
    {
        BinaryPrimitives.WriteInt64LittleEndian(Room(8), value);
        Length += 8;
    }

    public void Doubles(ReadOnlySpan<double> values)
    {
        if (BitConverter.IsLittleEndian)
        {
            Bytes(MemoryMarshal.AsBytes(values));
            return;
        }

        foreach (double value in values)
        {
            Int64(BitConverter.DoubleToInt64Bits(value));
        }
    }

    public void Text(string value)
    {
        int most = System.Text.Encoding.UTF8.GetMaxByteCount(value.Length);
        Length += System.Text.Encoding.UTF8.GetBytes(value, Room(most));
    }
}
