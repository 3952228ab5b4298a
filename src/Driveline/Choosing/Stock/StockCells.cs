using System.Text;

namespace Driveline.Choosing;

/// <summary>The cells of one row of a stock file, by the name of their column; one that is missing is empty.</summary>
internal sealed class StockCells
{
    private static readonly string[] Usual = ["sku", "designation", "grade", "length", "coating", "price", "currency"];

    private readonly string[] heads;
    private readonly IReadOnlyList<string> cells;

    private StockCells(int line, string text, string[] heads, IReadOnlyList<string> cells)
    {
        Line = line;
        Text = text;
        this.heads = heads;
        this.cells = cells;
    }

    public int Line { get; }

    public string Text { get; }

    public string Sku => Of("sku");

    public string Designation => Of("designation");

    public string Grade => Of("grade");

    public string Length => Of("length");

    public string Coating => Of("coating");

    public string Price => Of("price");

    public string Currency => Of("currency");

    /// <summary>The rows of a text, at most so many.</summary>
    public static IReadOnlyList<StockCells> Of(string text, int most)
    {
        var rows = new List<StockCells>();
        string[] heads = Usual;
        char divider = ',';
        int line = 0;
        foreach (string raw in text.TrimStart('\uFEFF').Split('\n'))
        {
            line++;
            string row = raw.Trim();
            if (row.Length == 0)
            {
                continue;
            }

            if (rows.Count == 0 && ReferenceEquals(heads, Usual))
            {
                divider = row.Contains('\t') ? '\t' : row.Contains(';') ? ';' : ',';
                string[] names = [.. Cells(row, divider).Select(c => c.ToLowerInvariant())];
                if (names.Contains("designation"))
                {
                    heads = names;
                    continue;
                }
            }

            if (rows.Count < most)
            {
                rows.Add(new StockCells(line, row, heads, Cells(row, divider)));
            }
        }

        return rows;
    }

    private string Of(string head)
    {
        int k = Array.IndexOf(heads, head);
        return k >= 0 && k < cells.Count ? cells[k] : string.Empty;
    }

    // A quote opens a text where a cell begins; elsewhere it is the sign for inches.
    private static List<string> Cells(string row, char divider)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        bool isQuoted = false;
        for (int k = 0; k < row.Length; k++)
        {
            char c = row[k];
            if (c == '"' && !isQuoted && cell.ToString().Trim().Length == 0)
            {
                cell.Clear();
                isQuoted = true;
            }
            else if (c == '"' && isQuoted && k + 1 < row.Length && row[k + 1] == '"')
            {
                cell.Append(c);
                k++;
            }
            else if (c == '"' && isQuoted)
            {
                isQuoted = false;
            }
            else if (c == divider && !isQuoted)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        cells.Add(cell.ToString().Trim());
        return cells;
    }
}
