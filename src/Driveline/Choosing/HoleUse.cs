namespace Driveline.Choosing;

/// <summary>The hole a bolt would use.</summary>
internal readonly struct HoleUse(double holeM, double inShaftM, bool isRedrilled, bool isLoose)
{
    /// <summary>Its diameter, m.</summary>
    public double HoleM { get; } = holeM;

    /// <summary>The widest hole then in the shaft, m: a bush or a second hole leaves the old one there.</summary>
    public double InShaftM { get; } = inShaftM;

    public bool IsRedrilled { get; } = isRedrilled;

    /// <summary>True when the hole is wider than the normal one for the bolt.</summary>
    public bool IsLoose { get; } = isLoose;

    /// <summary>A new hole of the bolt's own size.</summary>
    public static HoleUse Own(StockItem item) => new(item.Bolt.DiameterM, item.Bolt.DiameterM, true, false);
}
