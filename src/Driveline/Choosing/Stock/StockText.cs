using System.Globalization;
using Driveline.Fasteners;
using Driveline.ShearBolts;

namespace Driveline.Choosing;

/// <summary>Reads a stock list as people write it.</summary>
internal static class StockText
{
    private const int MostItems = 500;

    private const string Accepted =
        " Accepted: bolts divided by semicolons, each a thread, a grade and perhaps a price, such as 3/8-16 UNC, SAE 5, 0.45; M10, 8.8.";

    /// <summary>The bolts; null with a problem.</summary>
    public static List<StockItem>? Read(string? text, out string? problem)
    {
        var items = new List<StockItem>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (string part in (text ?? string.Empty).Split(';').Select(p => p.Trim()).Where(p => p.Length > 0))
        {
            if (items.Count == MostItems)
            {
                problem = FormattableString.Invariant($"A stock list holds at most {MostItems} bolts; got more.");
                return null;
            }

            if (ReadItem(part, out problem) is not { } item)
            {
                return null;
            }

            if (!names.Add(item.Name))
            {
                problem = item.Name + " must stand in a stock list once; got it twice.";
                return null;
            }

            items.Add(item);
        }

        problem = items.Count > 0 ? null : "A stock list must name at least one bolt; got none." + Accepted;
        return items.Count > 0 ? items : null;
    }

    private static StockItem? ReadItem(string text, out string? problem)
    {
        string[] fields = [.. text.Split(',').Select(f => f.Trim())];
        if (fields.Length is < 2 or > 3)
        {
            problem = "\"" + text + "\" is not a thread, a grade and perhaps a price." + Accepted;
            return null;
        }

        if (ReadPart(fields[0], fields[1], out problem) is not { } part)
        {
            return null;
        }

        StockItem item = StockItem.Of(part);
        if (fields.Length == 2)
        {
            return item;
        }

        const NumberStyles Plain = NumberStyles.AllowDecimalPoint;
        bool isPrice = double.TryParse(fields[2], Plain, CultureInfo.InvariantCulture, out double price) && price <= 1e9;
        problem = isPrice ? null : "\"" + fields[2] + "\" is not a price: a number of 0 or more with a decimal point." + Accepted;
        return isPrice ? item.WithPrice(price) : null;
    }

    private static ShearBolt? ReadPart(string size, string grade, out string? problem)
    {
        problem = null;
        if (StockPinText.IsNamed(size, string.Empty) && StockPinText.Read(size, grade, out _, out _) is { } pin)
        {
            return pin;
        }

        if (!ScrewThread.TryParse(size, out ScrewThread? thread, out problem)
            || !BoltGrade.TryParse(grade, out BoltGrade? named, out problem))
        {
            return null;
        }

        problem = named.TryAt(thread, out _) ? null : named.NotHeldText(thread);
        return problem is null ? ShearBolt.Of(thread, named) : null;
    }
}
