using System.Buffers.Binary;
using Driveline.Cases.Results;

namespace Driveline.Sweeps.Files;

/// <summary>The metadata at the end of a Parquet file: columns, where each group lies, and what study it is.</summary>
internal sealed class ParquetFoot
{
    private const int Double = 5;
    private const int Long = 2;
    private const int Binary = 6;

    private ParquetFoot(
        IReadOnlyList<FileColumn> columns, IReadOnlyList<GroupSizes> groups, IReadOnlyList<KeyValuePair<string, string>> words)
    {
        Columns = columns;
        Groups = groups;
        Words = words;
    }

    public IReadOnlyList<FileColumn> Columns { get; }

    public IReadOnlyList<GroupSizes> Groups { get; }

    public IReadOnlyList<KeyValuePair<string, string>> Words { get; }

    public string? Word(string key) => Words.Where(w => w.Key == key).Select(w => w.Value).FirstOrDefault();

    /// <summary>The foot with its length and the mark behind it.</summary>
    public static byte[] Bytes(
        IReadOnlyList<FileColumn> columns, IReadOnlyList<GroupSizes> groups, IReadOnlyList<KeyValuePair<string, string>> words)
    {
        var to = new ByteBuffer();
        var thrift = new CompactWriter(to);
        thrift.Begin();
        thrift.Number(1, CompactWriter.I32, 1);
        thrift.Items(2, CompactWriter.Struct, columns.Count + 1);
        thrift.Begin();
        thrift.Text(4, "study");
        thrift.Number(5, CompactWriter.I32, columns.Count);
        thrift.End();
        foreach (FileColumn column in columns)
        {
            Column(thrift, column);
        }

        thrift.Number(3, CompactWriter.I64, groups.Sum(g => (long)g.Rows));
        thrift.Items(4, CompactWriter.Struct, groups.Count);
        long at = 4;
        foreach (GroupSizes group in groups)
        {
            Group(thrift, columns, group, ref at);
        }

        thrift.Items(5, CompactWriter.Struct, words.Count);
        foreach (KeyValuePair<string, string> word in words)
        {
            thrift.Begin();
            thrift.Text(1, word.Key);
            thrift.Text(2, word.Value);
            thrift.End();
        }

        thrift.Text(6, "driveline contract " + ResultDocument.Contract.ToString(System.Globalization.CultureInfo.InvariantCulture));
        thrift.End();
        to.Int32(to.Length);
        to.Bytes("PAR1"u8);
        return to.Written.ToArray();
    }

    /// <summary>Reads the foot of a file.</summary>
    /// <exception cref="InvalidDataException">It is no whole Parquet file, or one that was not written here.</exception>
    public static ParquetFoot Read(Stream stream)
    {
        Span<byte> tail = stackalloc byte[8];
        if (stream.Length < 12)
        {
            throw new InvalidDataException("It is no whole Parquet file.");
        }

        stream.Position = stream.Length - 8;
        stream.ReadExactly(tail);
        int length = BinaryPrimitives.ReadInt32LittleEndian(tail);
        if (!tail[4..].SequenceEqual("PAR1"u8) || length <= 0 || length > stream.Length - 12)
        {
            throw new InvalidDataException("It is no whole Parquet file.");
        }

        byte[] bytes = new byte[length];
        stream.Position = stream.Length - 8 - length;
        stream.ReadExactly(bytes);
        return Parsed(bytes);
    }

    private static ParquetFoot Parsed(byte[] bytes)
    {
        var columns = new List<FileColumn>();
        var groups = new List<GroupSizes>();
        var words = new List<KeyValuePair<string, string>>();
        var reader = new CompactReader(bytes);
        int id = 0;
        while (reader.TryField(ref id, out int type))
        {
            if (type != CompactWriter.List || id is not (2 or 4 or 5))
            {
                reader.Skip(type);
                continue;
            }

            int count = reader.Items(out _);
            for (int k = 0; k < count; k++)
            {
                switch (id)
                {
                    case 2 when ParquetFootParts.Column(ref reader) is { } column:
                        columns.Add(column);
                        break;
                    case 2:
                        break;
                    case 4:
                        groups.Add(ParquetFootParts.Group(ref reader));
                        break;
                    default:
                        words.Add(ParquetFootParts.Word(ref reader));
                        break;
                }
            }
        }

        return new ParquetFoot(columns, groups, words);
    }

    private static void Column(CompactWriter thrift, FileColumn column)
    {
        bool isWord = column.Kind is ColumnKind.Word or ColumnKind.MaybeWord;
        thrift.Begin();
        thrift.Number(1, CompactWriter.I32, TypeOf(column));
        thrift.Number(3, CompactWriter.I32, column.Kind is ColumnKind.MaybeWord or ColumnKind.MaybeNumber ? 1 : 0);
        thrift.Text(4, column.Name);
        if (isWord)
        {
            thrift.Number(6, CompactWriter.I32, 0);
        }

        thrift.End();
    }

    private static int TypeOf(FileColumn column) => column.Kind switch
    {
        ColumnKind.Row => Long,
        ColumnKind.Number or ColumnKind.MaybeNumber => Double,
        _ => Binary,
    };

    private static void Group(CompactWriter thrift, IReadOnlyList<FileColumn> columns, GroupSizes group, ref long at)
    {
        thrift.Begin();
        thrift.Items(1, CompactWriter.Struct, columns.Count);
        for (int c = 0; c < columns.Count; c++)
        {
            thrift.Begin();
            thrift.Number(2, CompactWriter.I64, at);
            thrift.Field(3, CompactWriter.Struct);
            thrift.Begin();
            thrift.Number(1, CompactWriter.I32, TypeOf(columns[c]));
            thrift.Items(2, CompactWriter.I32, 2);
            thrift.Number(0);
            thrift.Number(3);
            thrift.Items(3, CompactWriter.Binary, 1);
            thrift.Text(columns[c].Name);
            thrift.Number(4, CompactWriter.I32, 0);
            thrift.Number(5, CompactWriter.I64, group.Rows);
            thrift.Number(6, CompactWriter.I64, group.Columns[c]);
            thrift.Number(7, CompactWriter.I64, group.Columns[c]);
            thrift.Number(9, CompactWriter.I64, at);
            thrift.End();
            thrift.End();
            at += group.Columns[c];
        }

        thrift.Number(2, CompactWriter.I64, group.Bytes);
        thrift.Number(3, CompactWriter.I64, group.Rows);
        thrift.End();
    }
}
