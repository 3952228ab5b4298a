using System.Globalization;
using System.Text;

namespace Driveline.Tests;

/// <summary>A table of reference rows beside the tests, read as printed: header row, quoted cells, UTF-8.</summary>
internal sealed class ReferenceTable
{
    private readonly Dictionary<string, int> columns;

    private ReferenceTable(string[] header, List<string[]> rows)
    {
        columns = header.Select((name, i) => (name, i)).ToDictionary(c => c.name, c => c.i, StringComparer.Ordinal);
        Rows = rows.ConvertAll(cells => new Row(this, cells));
    }

    public IReadOnlyList<Row> Rows { get; }

    public static ReferenceTable Read(string pack, string file)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "reference", pack, file);
        List<string[]> lines = [.. File.ReadLines(path, Encoding.UTF8).Where(l => l.Length > 0).Select(Cells)];
        string[] header = lines[0];
        lines.RemoveAt(0);
        return new ReferenceTable(header, lines);
    }

    private static string[] Cells(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (c == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
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
        return [.. cells];
    }

    internal sealed class Row(ReferenceTable table, string[] cells)
    {
        public string this[string column] => cells[table.columns[column]];

        public double Number(string column) => double.Parse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture);

        public double? NumberOrNull(string column) =>
            double.TryParse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : null;

        public override string ToString() => string.Join(" | ", cells);
    }
}
