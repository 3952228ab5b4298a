using System.Globalization;
using System.Text;

namespace Driveline.Tests.Clutches;

/// <summary>Rows of a reference CSV beside the test assembly, by column name.</summary>
internal static class ReferenceTable
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string pack, string file)
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "reference", pack, file));
        List<List<string>> lines = Parse(text);
        return lines.Skip(1).Where(l => l.Count == lines[0].Count)
            .Select(l => (IReadOnlyDictionary<string, string>)lines[0].Zip(l).ToDictionary(p => p.First, p => p.Second))
            .ToList();
    }

    public static double Number(IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], CultureInfo.InvariantCulture);

    private static List<List<string>> Parse(string text)
    {
        var lines = new List<List<string>> { new() };
        var cell = new StringBuilder();
        bool quoted = false;
        foreach (char c in text.Replace("\"\"", "\u0001", StringComparison.Ordinal))
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                lines[^1].Add(cell.ToString());
                cell.Clear();
            }
            else if (c == '\n' && !quoted)
            {
                lines[^1].Add(cell.ToString().TrimEnd('\r'));
                cell.Clear();
                lines.Add(new List<string>());
            }
            else
            {
                cell.Append(c == '\u0001' ? '"' : c);
            }
        }

        lines[^1].Add(cell.ToString());
        return lines;
    }
}
