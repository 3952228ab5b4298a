using System.Diagnostics.CodeAnalysis;

namespace Driveline.Choosing;

/// <summary>
/// A stock as a parts system writes it: a row a part, each with number, designation, grade, length, coating, price and currency. Rows that
/// cannot be ranked are kept with the reason. Immutable.
/// </summary>
/// <remarks>
/// The first line names the columns in any order: <c>sku,designation,grade,length,coating,price,currency</c>; without such a line this is
/// the order. Columns are divided by commas, semicolons or tabs; a text in quotes may hold them. A designation may hold the length:
/// <c>1/2-13 x 2-1/2</c>, <c>M12x1.75x60</c>. A length without a unit is in the unit of its thread. A pin is the standard and size
/// of a spring pin, or a diameter with a rod material or a measured hardness: <c>pin 10 x 60</c>, <c>3/8 rod</c>. No row stops the reading
/// of the others.
/// </remarks>
public sealed class StockFile
{
    /// <summary>Rows at most.</summary>
    public const int MostRows = 20000;

    private StockFile(StockList list, IReadOnlyList<StockRow> leftOut)
    {
        List = list;
        LeftOut = leftOut;
    }

    /// <summary>The bolts, pins and rods, in the order of the rows.</summary>
    public StockList List { get; }

    /// <summary>The rows that are not understood, or of a part of unknown strength, each with its reason.</summary>
    public IReadOnlyList<StockRow> LeftOut { get; }

    /// <summary>The stock in a text.</summary>
    /// <exception cref="ArgumentException">It holds no row, or too many.</exception>
    public static StockFile Parse(string text) => TryParse(text, out StockFile? file, out string? problem)
        ? file
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The stock in a text, or what is wrong with it as a whole.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out StockFile? file, [NotNullWhen(false)] out string? problem)
    {
        file = null;
        IReadOnlyList<StockCells> rows = StockCells.Of(text ?? string.Empty, MostRows + 1);
        if (rows.Count is 0 or > MostRows)
        {
            string got = rows.Count == 0 ? "none" : "more";
            problem = FormattableString.Invariant($"A stock file holds 1 to {MostRows} rows of parts; got {got}.")
                + " Its columns are sku,designation,grade,length,coating,price,currency.";
            return false;
        }

        var items = new List<StockItem>();
        var leftOut = new List<StockRow>();
        foreach (StockCells row in rows)
        {
            if (StockRowText.Read(row, out string? code) is { } item)
            {
                items.Add(item);
            }
            else
            {
                leftOut.Add(new StockRow(row, code!));
            }
        }

        problem = null;
        file = new StockFile(StockList.OfFile(items.AsReadOnly()), leftOut.AsReadOnly());
        return true;
    }
}
