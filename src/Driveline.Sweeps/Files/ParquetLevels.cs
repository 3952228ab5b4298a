namespace Driveline.Sweeps.Files;

/// <summary>Which rows of a column have a value: one bit each, a run when all are alike, else packed by eights.</summary>
internal static class ParquetLevels
{
    public static void Write(ByteBuffer to, bool[] isThere, int known)
    {
        var runs = new ByteBuffer();
        if (known == 0 || known == isThere.Length)
        {
            Varint(runs, (uint)isThere.Length << 1);
            runs.Byte((byte)(known == 0 ? 0 : 1));
        }
        else
        {
            int eights = (isThere.Length + 7) / 8;
            Varint(runs, ((uint)eights << 1) | 1);
            for (int e = 0; e < eights; e++)
            {
                int bits = 0;
                for (int b = 0; b < 8 && (8 * e) + b < isThere.Length; b++)
                {
                    bits |= isThere[(8 * e) + b] ? 1 << b : 0;
                }

                runs.Byte((byte)bits);
            }
        }

        to.Int32(runs.Length);
        to.Bytes(runs.Written);
    }

    /// <summary>Reads what <see cref="Write"/> wrote, and how many bytes it took.</summary>
    public static bool[] Read(ReadOnlySpan<byte> data, int rows, out int used)
    {
        int length = BitConverter.ToInt32(data);
        ReadOnlySpan<byte> runs = data.Slice(4, length);
        used = 4 + length;
        int at = 0;
        uint head = 0;
        for (int shift = 0; ; shift += 7)
        {
            byte part = runs[at++];
            head |= (uint)(part & 0x7F) << shift;
            if (part < 0x80)
            {
                break;
            }
        }

        bool[] isThere = new bool[rows];
        for (int k = 0; k < rows; k++)
        {
            isThere[k] = (head & 1) == 0 ? runs[at] != 0 : ((runs[at + (k / 8)] >> (k % 8)) & 1) != 0;
        }

        return isThere;
    }

    private static void Varint(ByteBuffer to, uint value)
    {
        while (value >= 0x80)
        {
            to.Byte((byte)(value | 0x80));
            value >>= 7;
        }

        to.Byte((byte)value);
    }
}
