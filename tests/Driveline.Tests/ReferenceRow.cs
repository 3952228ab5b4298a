using System.Globalization;

namespace Driveline.Tests;

/// <summary>One row of a reference table, by column name. Shown in test names by its first cells.</summary>
public sealed class ReferenceRow
{
    private readonly string place;
    private readonly IReadOnlyList<string> columns;

    internal ReferenceRow(string place, IReadOnlyList<string> columns, IReadOnlyList<string> cells)
    {
        this.place = place;
        this.columns = columns;
        Cells = cells;
    }

    public IReadOnlyList<string> Cells { get; }

    public IReadOnlyList<string> Columns => columns;

    public string this[string column] => columns.ToList().IndexOf(column) switch
    {
        < 0 => throw new KeyNotFoundException(column + " is no column at " + place),
        int at when at < Cells.Count => Cells[at],
        _ => string.Empty,
    };

    public bool Has(string column) => this[column].Length > 0;

    public double Number(string column) => double.Parse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    public double? NumberOrNull(string column) =>
        double.TryParse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : null;

    public override string ToString() => place + " " + string.Join(" ", Cells.Take(3));
}
