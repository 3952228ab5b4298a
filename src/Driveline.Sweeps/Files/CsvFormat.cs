using System.Buffers.Text;
using System.Globalization;
using System.Text;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Files;

/// <summary>
/// CSV: UTF-8 without a mark, a comma between cells, a line feed behind rows, numbers with 17 digits, nothing where nothing is known.
/// </summary>
internal sealed class CsvFormat(StudyPlan plan) : RowFormat(plan)
{
    private const int LongestNumber = 32;
    private const int LongestLine = 1 << 20;
    private const double LastBits = 1e-12;

    public static string Quoted(string text) => text.AsSpan().ContainsAny(",\"\n\r")
        ? "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : text;

    public override byte[] Head() => Encoding.UTF8.GetBytes(string.Join(',', Columns.Select(c => Quoted(c.Name))) + "\n");

    public override byte[] Foot(IReadOnlyList<GroupSizes> groups) => [];

    public override void Encode(GroupSlot slot)
    {
        RowGroup rows = slot.Rows;
        ByteBuffer to = slot.Bytes;
        to.Clear();
        for (int k = 0; k < rows.Count; k++)
        {
            for (int c = 0; c < Columns.Length; c++)
            {
                if (c > 0)
                {
                    to.Byte((byte)',');
                }

                Cell(to, rows, Columns[c], k);
            }

            to.Byte((byte)'\n');
        }
    }

    public override bool TryRead(Stream stream, GroupSlot slot)
    {
        RowGroup rows = slot.Rows;
        long start = stream.Position;
        var line = new List<byte>(256);
        int read = 0;
        for (int k = 0; k < rows.Count; k++)
        {
            line.Clear();
            bool isQuoted = false;
            int next;
            while ((next = stream.ReadByte()) >= 0 && (next != '\n' || isQuoted) && line.Count < LongestLine)
            {
                isQuoted ^= next == '"';
                line.Add((byte)next);
            }

            read += line.Count + 1;
            if (next != '\n' || !TryLine(Encoding.UTF8.GetString([.. line]), rows, k))
            {
                stream.Position = start;
                return false;
            }
        }

        slot.Bytes.Clear();
        Array.Clear(slot.Sizes);
        slot.Sizes[0] = read;
        return true;
    }

    /// <summary>The cells of a line, quotes taken away.</summary>
    public static List<string> Cells(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool isQuoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (c == '"')
            {
                bool isDoubled = isQuoted && i + 1 < line.Length && line[i + 1] == '"';
                if (isDoubled)
                {
                    cell.Append('"');
                    i++;
                }
                else
                {
                    isQuoted = !isQuoted;
                }
            }
            else if (c == ',' && !isQuoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }

    private bool TryLine(string line, RowGroup rows, int k)
    {
        List<string> cells = Cells(line);
        if (cells.Count != Columns.Length
            || !long.TryParse(cells[0], NumberStyles.None, CultureInfo.InvariantCulture, out long row) || row != rows.First + k)
        {
            return false;
        }

        for (int c = 1; c < cells.Count; c++)
        {
            double number = double.NaN;
            bool isNumber = Columns[c].Kind is ColumnKind.Number or ColumnKind.MaybeNumber;
            if ((isNumber && cells[c].Length > 0 && !TryNumber(cells[c], out number)) || !IsOfRow(rows, Columns[c], k, number, cells[c]))
            {
                return false;
            }

            Read(rows, Columns[c], k, number, isNumber || cells[c].Length == 0 ? null : cells[c]);
        }

        return true;
    }

    // A factor is that of the study; another kind of processor may have had another last bit.
    private bool IsOfRow(RowGroup rows, FileColumn column, int k, double number, string cell)
    {
        if (column.Kind == ColumnKind.Word)
        {
            return cell == Plan.Study.Factors[column.Place].Words![(int)rows.Factors[column.Place][k]];
        }

        double sampled = column.Kind == ColumnKind.Number ? rows.Factors[column.Place][k] : number;
        return sampled.Equals(number) || Math.Abs(sampled - number) <= LastBits * Math.Max(Math.Abs(sampled), Math.Abs(number));
    }

    private static bool TryNumber(string cell, out double number)
    {
        number = cell == "inf" ? double.PositiveInfinity : double.NegativeInfinity;
        return cell is "inf" or "-inf" || double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out number);
    }

    private void Cell(ByteBuffer to, RowGroup rows, FileColumn column, int k)
    {
        switch (column.Kind)
        {
            case ColumnKind.Row:
                Utf8Formatter.TryFormat(rows.First + k, to.Room(LongestNumber), out int digits);
                to.Advance(digits);
                break;
            case ColumnKind.Number:
                Number(to, rows.Factors[column.Place][k]);
                break;
            case ColumnKind.MaybeNumber:
                Number(to, rows.Numbers[-1 - column.Place][k]);
                break;
            case ColumnKind.Word:
                to.Text(Quoted(Plan.Study.Factors[column.Place].Words![(int)rows.Factors[column.Place][k]]));
                break;
            default:
                string? word = column.Place == int.MinValue ? rows.Errors[k] : rows.Words[-1 - column.Place][k];
                to.Text(word is null ? string.Empty : Quoted(word));
                break;
        }
    }

    private static void Number(ByteBuffer to, double value)
    {
        if (double.IsFinite(value))
        {
            value.TryFormat(to.Room(LongestNumber), out int length, "G17", CultureInfo.InvariantCulture);
            to.Advance(length);
        }
        else if (!double.IsNaN(value))
        {
            to.Bytes(value > 0 ? "inf"u8 : "-inf"u8);
        }
    }
}
