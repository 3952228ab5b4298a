using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Choosing;

/// <summary>
/// The bolts to choose from: those of usual shops, or the caller's own. Immutable. Two of one thread and grade must differ in number,
/// length, coating or tag.
/// </summary>
public sealed class StockList
{
    private StockList(IReadOnlyList<StockItem> items, Basis basis)
    {
        Items = items;
        Basis = basis;
    }

    /// <summary>
    /// Common grades and sizes in hardware and farm shops: SAE 2, 5, 8 in coarse inch sizes; ISO 4.6, 8.8, 10.9 in coarse metric sizes.
    /// </summary>
    public static StockList Usual { get; } = new(
        UsualStock.Items, Basis.CommonPractice("grades and coarse sizes that hardware and farm shops carry; prices not held"));

    /// <summary>The bolts, in the order given.</summary>
    public IReadOnlyList<StockItem> Items { get; }

    /// <summary>Where the list comes from.</summary>
    public Basis Basis { get; }

    /// <summary>The caller's own bolts; a list may be empty.</summary>
    /// <exception cref="ArgumentException">A bolt is missing (null) or stands twice with nothing to tell both apart.</exception>
    public static StockList Of(params StockItem[] items) => Of((IReadOnlyList<StockItem>)Guard.NotNull(items, nameof(items)));

    /// <summary>The caller's own bolts; a list may be empty.</summary>
    /// <exception cref="ArgumentException">A bolt is missing (null) or stands twice with nothing to tell both apart.</exception>
    public static StockList Of(IReadOnlyList<StockItem> items)
    {
        Guard.NotNull(items, nameof(items));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (StockItem item in items)
        {
            if (item is null || !seen.Add(item.Identity))
            {
                throw new ArgumentException(
                    item is null ? "A bolt of a stock list is missing (null)."
                        : item.Name + " must stand in a stock list once; got it twice.", nameof(items));
            }
        }

        return new StockList([.. items], Basis.Given("the caller's stock"));
    }

    /// <summary>The bolts in a text: thread, grade and perhaps a price, divided by commas; semicolons between bolts.</summary>
    /// <param name="text">E.g. "3/8-16 UNC, SAE 5, 0.45; M10, 8.8".</param>
    /// <exception cref="ArgumentException">Something in it cannot be read; the message says what is accepted.</exception>
    public static StockList Parse(string text) => TryParse(text, out StockList? list, out string? problem)
        ? list!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The bolts in a text, or what is wrong with it; see <see cref="Parse"/>.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out StockList? list, [NotNullWhen(false)] out string? problem)
    {
        list = StockText.Read(text, out problem) is { } items ? Of(items) : null;
        return list is not null;
    }

    /// <summary>The caller's own rows of a file; see <see cref="StockFile"/>.</summary>
    internal static StockList OfFile(IReadOnlyList<StockItem> items) => new(items, Basis.Given("the caller's stock"));

    /// <inheritdoc/>
    public override string ToString() => string.Join("; ", Items);
}
