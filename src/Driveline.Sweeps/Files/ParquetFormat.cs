using System.Text;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Files;

/// <summary>Parquet: a row group a group, a column chunk with one plain page a column, not compressed, no statistics.</summary>
/// <remarks>
/// Written here rather than by a library, since the bytes must not depend on threads, shards, or where a run was broken off, and since
/// groups that are whole must be found again in a file that has no foot yet. Format: Apache Parquet, version 1 pages, parquet.thrift.
/// </remarks>
internal sealed class ParquetFormat(StudyPlan plan) : RowFormat(plan)
{
    public override byte[] Head() => "PAR1"u8.ToArray();

    public override byte[] Foot(IReadOnlyList<GroupSizes> groups) => ParquetFoot.Bytes(
        Columns, groups, [new("driveline.study", Plan.Mark), new("driveline.rows", FormattableString.Invariant($"{Plan.Count}"))]);

    public override void Encode(GroupSlot slot)
    {
        ByteBuffer to = slot.Bytes;
        ByteBuffer values = slot.Page;
        to.Clear();
        for (int c = 0; c < Columns.Length; c++)
        {
            int before = to.Length;
            values.Clear();
            Values(values, slot.Rows, Columns[c]);
            PageHead(to, values.Length, slot.Rows.Count);
            to.Bytes(values.Written);
            slot.Sizes[c] = to.Length - before;
        }
    }

    public override bool TryRead(Stream stream, GroupSlot slot)
    {
        long start = stream.Position;
        try
        {
            for (int c = 0; c < Columns.Length; c++)
            {
                if (!ParquetPage.TryRead(stream, slot.Rows.Count, out byte[] data, out int size))
                {
                    stream.Position = start;
                    return false;
                }

                slot.Sizes[c] = size;
                if (!ParquetPage.TryValues(data, Columns[c], slot.Rows, Read))
                {
                    stream.Position = start;
                    return false;
                }
            }

            return true;
        }
        catch (Exception broken) when (broken is InvalidDataException or ArgumentException or IndexOutOfRangeException)
        {
            stream.Position = start;
            return false;
        }
    }

    private static void PageHead(ByteBuffer to, int size, int rows)
    {
        var thrift = new CompactWriter(to);
        thrift.Begin();
        thrift.Number(1, CompactWriter.I32, 0);
        thrift.Number(2, CompactWriter.I32, size);
        thrift.Number(3, CompactWriter.I32, size);
        thrift.Field(5, CompactWriter.Struct);
        thrift.Begin();
        thrift.Number(1, CompactWriter.I32, rows);
        thrift.Number(2, CompactWriter.I32, 0);
        thrift.Number(3, CompactWriter.I32, 3);
        thrift.Number(4, CompactWriter.I32, 3);
        thrift.End();
        thrift.End();
    }

    private void Values(ByteBuffer to, RowGroup rows, FileColumn column)
    {
        switch (column.Kind)
        {
            case ColumnKind.Row:
                for (int k = 0; k < rows.Count; k++)
                {
                    to.Int64(rows.First + k);
                }

                break;
            case ColumnKind.Number:
                to.Doubles(rows.Factors[column.Place].AsSpan(0, rows.Count));
                break;
            case ColumnKind.Word:
                IReadOnlyList<string> words = Plan.Study.Factors[column.Place].Words!;
                for (int k = 0; k < rows.Count; k++)
                {
                    Word(to, words[(int)rows.Factors[column.Place][k]]);
                }

                break;
            case ColumnKind.MaybeNumber:
                Numbers(to, rows.Numbers[-1 - column.Place].AsSpan(0, rows.Count));
                break;
            default:
                Words(to, (column.Place == int.MinValue ? rows.Errors : rows.Words[-1 - column.Place]).AsSpan(0, rows.Count));
                break;
        }
    }

    private static void Numbers(ByteBuffer to, ReadOnlySpan<double> values)
    {
        bool[] isThere = new bool[values.Length];
        int known = 0;
        for (int k = 0; k < values.Length; k++)
        {
            isThere[k] = !double.IsNaN(values[k]);
            known += isThere[k] ? 1 : 0;
        }

        ParquetLevels.Write(to, isThere, known);
        if (known == values.Length)
        {
            to.Doubles(values);
            return;
        }

        foreach (double value in values)
        {
            if (!double.IsNaN(value))
            {
                to.Int64(BitConverter.DoubleToInt64Bits(value));
            }
        }
    }

    private static void Words(ByteBuffer to, ReadOnlySpan<string?> words)
    {
        bool[] isThere = new bool[words.Length];
        int known = 0;
        for (int k = 0; k < words.Length; k++)
        {
            isThere[k] = words[k] is not null;
            known += isThere[k] ? 1 : 0;
        }

        ParquetLevels.Write(to, isThere, known);
        foreach (string? word in words)
        {
            if (word is not null)
            {
                Word(to, word);
            }
        }
    }

    private static void Word(ByteBuffer to, string word)
    {
        to.Int32(Encoding.UTF8.GetByteCount(word));
        to.Text(word);
    }
}
