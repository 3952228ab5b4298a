using Driveline.Findings;

namespace Driveline.Choosing;

/// <summary>A row of a stock file that is not ranked, and why.</summary>
public sealed class StockRow
{
    internal StockRow(StockCells row, string code)
    {
        Line = row.Line;
        Sku = row.Sku.Length > 0 ? row.Sku : null;
        Text = row.Text;
        string name = (row.Designation + " " + row.Grade).Trim();
        Reason = Finding.Of(code, Severity.Note).With("row", Sku is null ? name : Sku + " " + name);
    }

    /// <summary>Its line in the file, from 1.</summary>
    public int Line { get; }

    /// <summary>Its number in the parts system; null when it has none.</summary>
    public string? Sku { get; }

    /// <summary>The row as it stands in the file.</summary>
    public string Text { get; }

    /// <summary>Why it is not ranked: one of the codes <c>choosing.row.…</c>.</summary>
    public Finding Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Text + ": " + Reason.Code;
}
