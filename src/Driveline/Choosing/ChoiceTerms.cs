using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Choosing;

/// <summary>What to choose from and how strictly: stock, holes, policy, and which bolt of the driveline. Immutable.</summary>
public sealed class ChoiceTerms
{
    private ChoiceTerms(StockList stock, BoltHoles holes, ProtectionPolicy policy, string? device)
    {
        Stock = stock;
        Holes = holes;
        Policy = policy;
        Device = device;
    }

    /// <summary>The usual stock, the hole that is there, the default policy, the first shear bolt from the tractor.</summary>
    public static ChoiceTerms Default { get; } = new(StockList.Usual, BoltHoles.AsFitted, ProtectionPolicy.Default, null);

    /// <summary>The bolts to choose from.</summary>
    public StockList Stock { get; }

    /// <summary>The holes that may be used.</summary>
    public BoltHoles Holes { get; }

    /// <summary>How strict the check is.</summary>
    public ProtectionPolicy Policy { get; }

    /// <summary>Name of the shear bolt to replace; null for the first from the tractor.</summary>
    public string? Device { get; }

    /// <summary>The same terms with another stock.</summary>
    public ChoiceTerms WithStock(StockList stock) => new(Guard.NotNull(stock, nameof(stock)), Holes, Policy, Device);

    /// <summary>The same terms with other holes.</summary>
    public ChoiceTerms WithHoles(BoltHoles holes) => new(Stock, Guard.NotNull(holes, nameof(holes)), Policy, Device);

    /// <summary>The same terms with another policy.</summary>
    public ChoiceTerms WithPolicy(ProtectionPolicy policy) => new(Stock, Holes, Guard.NotNull(policy, nameof(policy)), Device);

    /// <summary>The same terms for the shear bolt of that name; null for the first from the tractor.</summary>
    public ChoiceTerms WithDevice(string? name) => new(Stock, Holes, Policy, name);
}
