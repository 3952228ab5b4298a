using System.Text;

namespace Driveline.Tests;

/// <summary>A table of reference rows beside the tests, read as printed: header row, quoted cells, UTF-8.</summary>
internal static class ReferenceTable
{
    public static IReadOnlyList<ReferenceRow> Read(string pack, string file)
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "reference", pack, file), Encoding.UTF8);
        List<(int Line, List<string> Cells)> lines = Lines(text);
        return [.. lines.Skip(1).Select(l => new ReferenceRow(
            FormattableString.Invariant($"{file}:{l.Line}"), lines[0].Cells, l.Cells))];
    }

    /// <summary>Rows that somebody read in a copy; none from memory.</summary>
    public static TheoryData<ReferenceRow> Seen(string pack, string file, Func<ReferenceRow, bool> filter) =>
        Where(pack, file, r => filter(r) && !IsRemembered(r));

    /// <summary>Rows from memory.</summary>
    public static TheoryData<ReferenceRow> Remembered(string pack, string file, Func<ReferenceRow, bool> filter) =>
        Where(pack, file, r => filter(r) && IsRemembered(r));

    public static bool IsRemembered(ReferenceRow row) => row["confidence"].StartsWith("memory", StringComparison.Ordinal);

    public static TheoryData<ReferenceRow> Where(string pack, string file, Func<ReferenceRow, bool> filter)
    {
        var data = new TheoryData<ReferenceRow>();
        foreach (ReferenceRow row in Read(pack, file).Where(filter))
        {
            data.Add(row);
        }

        return data;
    }

    private static List<(int Line, List<string> Cells)> Lines(string text)
    {
        var lines = new List<(int Line, List<string> Cells)>();
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool isQuoted = false;
        int line = 1, began = 1;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (c == '"' && isQuoted && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (c == ',' && !isQuoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else if (c == '\n' && !isQuoted)
            {
                EndLine();
                line++;
                began = line;
            }
            else if (c != '\r' || isQuoted)
            {
                line += c == '\n' ? 1 : 0;
                cell.Append(c);
            }
        }

        EndLine();
        return lines;

        void EndLine()
        {
            cells.Add(cell.ToString());
            cell.Clear();
            if (cells.Count > 1 || cells[0].Length > 0)
            {
                lines.Add((began, cells));
            }

            cells = [];
        }
    }
}
