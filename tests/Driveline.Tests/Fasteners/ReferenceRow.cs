using System.Globalization;
using System.Text;

namespace Driveline.Tests.Fasteners;

/// <summary>One row of a reference table, by column name. Shown in test names by its key columns.</summary>
public sealed class ReferenceRow
{
    private readonly string file;
    private readonly int line;
    private readonly Dictionary<string, string> cells;

    private ReferenceRow(string file, int line, Dictionary<string, string> cells)
    {
        this.file = file;
        this.line = line;
        this.cells = cells;
    }

    public string this[string column] => cells[column];

    public bool Has(string column) => cells[column].Length > 0;

    public double Number(string column) => double.Parse(cells[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    public override string ToString() => FormattableString.Invariant($"{file}:{line} ") + string.Join(" ", cells.Values.Take(3));

    public static IEnumerable<ReferenceRow> Of(string file)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "reference", "fasteners", file);
        string[] lines = File.ReadAllLines(path, Encoding.UTF8);
        string[] columns = Split(lines[0]);
        for (int i = 1; i < lines.Length; i++)
        {
            string[] cells = Split(lines[i]);
            yield return new ReferenceRow(
                file, i + 1, columns.Select((c, j) => (c, j)).ToDictionary(p => p.c, p => p.j < cells.Length ? cells[p.j] : string.Empty));
        }
    }

    public static TheoryData<ReferenceRow> Where(string file, Func<ReferenceRow, bool> filter)
    {
        var data = new TheoryData<ReferenceRow>();
        foreach (ReferenceRow row in Of(file).Where(filter))
        {
            data.Add(row);
        }

        return data;
    }

    private static string[] Split(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
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
}
