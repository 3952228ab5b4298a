using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>
/// A bolt, pin or rod somebody can buy or has in the box, and what a parts system says of it. Two of one kind may differ in length, coating
/// or number. Immutable.
/// </summary>
public sealed class StockItem
{
    private StockItem(ShearBolt bolt)
    {
        Bolt = bolt;
        Name = bolt.ToString();
    }

    private StockItem(StockItem other)
    {
        Bolt = other.Bolt;
        Name = other.Name;
        Price = other.Price;
        Currency = other.Currency;
        Sku = other.Sku;
        Length = other.Length;
        Coating = other.Coating;
        Tag = other.Tag;
    }

    /// <summary>The bolt, pin or rod itself; which part of it is cut, the joint decides.</summary>
    public ShearBolt Bolt { get; }

    /// <summary>Its thread; null for a pin or rod.</summary>
    public ScrewThread? Thread => Bolt.Thread;

    /// <summary>Its grade, as marked on its head or on its certificate; null for a pin, a rod, or a bolt of a rod material.</summary>
    public BoltGrade? Grade => Bolt.Grade;

    /// <summary>Price of one bolt in its currency; null when not stated.</summary>
    public double? Price { get; private init; }

    /// <summary>Currency of the price as the caller writes it, e.g. "USD"; null when not stated.</summary>
    public string? Currency { get; private init; }

    /// <summary>Its number in the parts system; null when not stated.</summary>
    public string? Sku { get; private init; }

    /// <summary>Its length below the head; null when not stated. It decides nothing here: compare it with the old bolt.</summary>
    public Length? Length { get; private init; }

    /// <summary>Its coating as the caller writes it, e.g. "zinc"; null when not stated. It decides nothing here.</summary>
    public string? Coating { get; private init; }

    /// <summary>Anything of the caller's that goes with it, e.g. a row of a database; never looked at.</summary>
    public object? Tag { get; private init; }

    /// <summary>It in a few words, e.g. "3/8-16 UNC SAE 5", "pin 8 mm HRC 28".</summary>
    public string Name { get; }

    /// <summary>A bolt of a thread and grade, without a price.</summary>
    /// <exception cref="ArgumentException">The grade's standard does not hold that size.</exception>
    public static StockItem Of(ScrewThread thread, BoltGrade grade)
    {
        Guard.NotNull(thread, nameof(thread));
        return new StockItem(ShearBolt.Of(thread, Guard.NotNull(grade, nameof(grade))));
    }

    /// <summary>A bolt, pin, spring pin or rod, without a price.</summary>
    /// <remarks>One whose strength has no assured upper end can be listed; it is never offered.</remarks>
    /// <exception cref="ArgumentException">It has a neck, step or taper: a maker's special fits its own joint only.</exception>
    public static StockItem Of(ShearBolt bolt) =>
        Guard.NotNull(bolt, nameof(bolt)) is { NeedsNeck: false, NeckDiameter: null, IsSpecial: false }
        ? new StockItem(bolt)
        : throw new ArgumentException("A bolt of a stock must have no neck, step or taper; got " + bolt + ".", nameof(bolt));

    /// <summary>The same bolt with the price of one, in the caller's currency; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative or not finite.</exception>
    public StockItem WithPrice(double price) =>
        new(this) { Price = Guard.NotNegative(price, "Price of a bolt", string.Empty, nameof(price)) };

    /// <summary>The same bolt with the price of one and its currency.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The price is negative or not finite.</exception>
    /// <exception cref="ArgumentException">The currency is blank.</exception>
    public StockItem WithPrice(double price, string currency) =>
        new(WithPrice(price)) { Currency = Guard.NotBlank(currency, "Currency", nameof(currency)) };

    /// <summary>The same bolt with its number in the parts system; null for none.</summary>
    public StockItem WithSku(string? sku) => new(this) { Sku = sku };

    /// <summary>The same bolt with its length below the head.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0 or not finite.</exception>
    public StockItem WithLength(Length length) => length.Meters is > 0 and < double.PositiveInfinity
        ? new StockItem(this) { Length = length }
        : throw new ArgumentOutOfRangeException(nameof(length), length, "must be above 0 and finite");

    /// <summary>The same bolt with its coating; null for none.</summary>
    public StockItem WithCoating(string? coating) => new(this) { Coating = coating };

    /// <summary>The same bolt with something of the caller's.</summary>
    public StockItem WithTag(object? tag) => new(this) { Tag = tag };

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>What tells two bolts of one thread and grade apart.</summary>
    internal string Identity => string.Join("|", Name, Sku, Length?.Meters, Coating, Tag?.GetHashCode());
}
