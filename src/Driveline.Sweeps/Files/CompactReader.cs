using System.Text;

namespace Driveline.Sweeps.Files;

/// <summary>Reads Thrift's compact protocol, as far as Parquet's metadata needs it.</summary>
/// <exception cref="InvalidDataException">The bytes are something else.</exception>
internal ref struct CompactReader(ReadOnlySpan<byte> bytes)
{
    private readonly ReadOnlySpan<byte> bytes = bytes;

    public int At { get; private set; }

    /// <summary>The next field of a struct: its id and type; false at its end.</summary>
    public bool TryField(ref int id, out int type)
    {
        byte head = Byte();
        type = head & 0x0F;
        if (head == 0)
        {
            return false;
        }

        id = head >> 4 == 0 ? (int)Number() : id + (head >> 4);
        return true;
    }

    public long Number()
    {
        ulong value = Varint();
        return (long)(value >> 1) ^ -(long)(value & 1);
    }

    public string Text()
    {
        int length = Size(Varint());
        string text = Encoding.UTF8.GetString(bytes.Slice(At, length));
        At += length;
        return text;
    }

    /// <summary>The head of a list: how many items, of which type.</summary>
    public int Items(out int type)
    {
        byte head = Byte();
        type = head & 0x0F;
        return head >> 4 == 15 ? Size(Varint()) : head >> 4;
    }

    public void Skip(int type)
    {
        switch (type)
        {
            case 1 or 2:
                break;
            case 3:
                Byte();
                break;
            case 4 or CompactWriter.I32 or CompactWriter.I64:
                Varint();
                break;
            case 7:
                At += 8;
                break;
            case CompactWriter.Binary:
                int length = Size(Varint());
                At += length;
                break;
            case CompactWriter.List:
                int count = Items(out int item);
                for (int k = 0; k < count; k++)
                {
                    Skip(item);
                }

                break;
            case CompactWriter.Struct:
                int id = 0;
                while (TryField(ref id, out int inner))
                {
                    Skip(inner);
                }

                break;
            default:
                throw new InvalidDataException("The metadata of the Parquet file cannot be read.");
        }
    }

    private readonly int Size(ulong size) => size <= (ulong)(bytes.Length - At) ? (int)size
        : throw new InvalidDataException("The metadata of the Parquet file is cut off.");

    private ulong Varint()
    {
        ulong value = 0;
        for (int shift = 0; shift < 64; shift += 7)
        {
            byte part = Byte();
            value |= (ulong)(part & 0x7F) << shift;
            if (part < 0x80)
            {
                return value;
            }
        }

        throw new InvalidDataException("The metadata of the Parquet file cannot be read.");
    }

    private byte Byte() => At < bytes.Length ? bytes[At++]
        : throw new InvalidDataException("The metadata of the Parquet file is cut off.");
}
