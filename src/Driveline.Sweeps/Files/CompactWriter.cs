using System.Text;

namespace Driveline.Sweeps.Files;

/// <summary>Thrift's compact protocol, as far as Parquet's metadata needs it.</summary>
internal sealed class CompactWriter(ByteBuffer to)
{
    public const int I32 = 5;
    public const int I64 = 6;
    public const int Binary = 8;
    public const int List = 9;
    public const int Struct = 12;

    private readonly Stack<int> fields = new();
    private int last;

    public void Begin()
    {
        fields.Push(last);
        last = 0;
    }

    public void End()
    {
        to.Byte(0);
        last = fields.Pop();
    }

    public void Field(int id, int type)
    {
        int step = id - last;
        if (step is > 0 and <= 15)
        {
            to.Byte((byte)((step << 4) | type));
        }
        else
        {
            to.Byte((byte)type);
            Number(id);
        }

        last = id;
    }

    public void Number(int id, int type, long value)
    {
        Field(id, type);
        Number(value);
    }

    public void Text(int id, string value)
    {
        Field(id, Binary);
        Text(value);
    }

    public void Items(int id, int type, int count)
    {
        Field(id, List);
        if (count < 15)
        {
            to.Byte((byte)((count << 4) | type));
        }
        else
        {
            to.Byte((byte)(0xF0 | type));
            Varint((ulong)count);
        }
    }

    public void Number(long value) => Varint((ulong)((value << 1) ^ (value >> 63)));

    public void Text(string value)
    {
        Varint((ulong)Encoding.UTF8.GetByteCount(value));
        to.Text(value);
    }

    private void Varint(ulong value)
    {
        while (value >= 0x80)
        {
            to.Byte((byte)(value | 0x80));
            value >>= 7;
        }

        to.Byte((byte)value);
    }
}
