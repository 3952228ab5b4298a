using System.Buffers.Binary;
using System.Text;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Files;

/// <summary>Reads back a page of a Parquet file that was written here.</summary>
internal static class ParquetPage
{
    private const int LongestHead = 64;

    /// <summary>Takes a value of a row.</summary>
    public delegate void Taker(RowGroup rows, FileColumn column, int row, double number, string? word);

    /// <summary>The next page; false when it is not all there or has other rows.</summary>
    public static bool TryRead(Stream stream, int rows, out byte[] data, out int size)
    {
        data = [];
        size = 0;
        long start = stream.Position;
        Span<byte> head = stackalloc byte[LongestHead];
        int got = stream.ReadAtLeast(head, LongestHead, throwOnEndOfStream: false);
        if (!TryHead(head[..got], out int used, out int length, out int count) || count != rows
            || length < 0 || start + used + length > stream.Length)
        {
            return false;
        }

        stream.Position = start + used;
        data = new byte[length];
        stream.ReadExactly(data);
        size = used + length;
        return true;
    }

    /// <summary>Reads the values of a page; false when they do not fill it.</summary>
    public static bool TryValues(byte[] data, FileColumn column, RowGroup rows, Taker take)
    {
        int at = 0;
        bool[]? isThere = column.Kind is ColumnKind.MaybeNumber or ColumnKind.MaybeWord
            ? ParquetLevels.Read(data, rows.Count, out at) : null;
        for (int k = 0; k < rows.Count; k++)
        {
            double number = double.NaN;
            string? word = null;
            if (isThere is null || isThere[k])
            {
                if (column.Kind is ColumnKind.Word or ColumnKind.MaybeWord)
                {
                    int length = BinaryPrimitives.ReadInt32LittleEndian(data.AsSpan(at));
                    word = Encoding.UTF8.GetString(data, at + 4, length);
                    at += 4 + length;
                }
                else
                {
                    long bits = BinaryPrimitives.ReadInt64LittleEndian(data.AsSpan(at));
                    at += 8;
                    if (column.Kind == ColumnKind.Row && bits != rows.First + k)
                    {
                        return false;
                    }

                    number = BitConverter.Int64BitsToDouble(bits);
                }
            }

            take(rows, column, k, number, word);
        }

        return at == data.Length;
    }

    private static bool TryHead(ReadOnlySpan<byte> bytes, out int used, out int length, out int rows)
    {
        length = -1;
        rows = -1;
        used = 0;
        try
        {
            var reader = new CompactReader(bytes);
            int id = 0;
            while (reader.TryField(ref id, out int type))
            {
                if (id == 3 && type == CompactWriter.I32)
                {
                    length = (int)reader.Number();
                }
                else if (id == 5 && type == CompactWriter.Struct)
                {
                    int inner = 0;
                    while (reader.TryField(ref inner, out int innerType))
                    {
                        if (inner == 1)
                        {
                            rows = (int)reader.Number();
                        }
                        else
                        {
                            reader.Skip(innerType);
                        }
                    }
                }
                else
                {
                    reader.Skip(type);
                }
            }

            used = reader.At;
            return true;
        }
        catch (InvalidDataException)
        {
            return false;
        }
    }
}
