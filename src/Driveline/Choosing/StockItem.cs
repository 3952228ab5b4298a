using Driveline.Fasteners;
using Driveline.Quantities;

namespace Driveline.Choosing;

/// <summary>A bolt somebody can buy or has in the box: thread, grade, perhaps a price. Immutable.</summary>
public sealed class StockItem
{
    private StockItem(ScrewThread thread, BoltGrade grade, double? price)
    {
        Thread = thread;
        Grade = grade;
        Price = price;
    }

    /// <summary>Its thread.</summary>
    public ScrewThread Thread { get; }

    /// <summary>Its grade, as marked on its head or on its certificate.</summary>
    public BoltGrade Grade { get; }

    /// <summary>Price of one bolt in the caller's currency; null when not stated.</summary>
    public double? Price { get; }

    /// <summary>The bolt in a few words, e.g. "3/8-16 UNC SAE 5".</summary>
    public string Name => Thread.Designation + " " + Grade.Designation;

    /// <summary>A bolt of a thread and grade, without a price.</summary>
    /// <exception cref="ArgumentException">The grade's standard does not hold that size.</exception>
    public static StockItem Of(ScrewThread thread, BoltGrade grade)
    {
        Guard.NotNull(thread, nameof(thread));
        Guard.NotNull(grade, nameof(grade)).At(thread);
        return new StockItem(thread, grade, null);
    }

    /// <summary>The same bolt with the price of one, in the caller's currency; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative or not finite.</exception>
    public StockItem WithPrice(double price) =>
        new(Thread, Grade, Guard.NotNegative(price, "Price of a bolt", string.Empty, nameof(price)));

    /// <inheritdoc/>
    public override string ToString() => Name;
}
