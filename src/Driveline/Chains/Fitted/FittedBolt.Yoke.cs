using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <content>What the bolt sits in: its yoke or flange, and the shaft it passes through.</content>
public sealed partial class FittedBolt
{
    /// <summary>Wall of the yoke or flange around the hole; null when not told.</summary>
    public Length? YokeThickness { get; private set; }

    /// <summary>Yield strength of the yoke or flange; null when not told.</summary>
    public StressBand? YokeYield { get; private set; }

    /// <summary>Tensile strength of the yoke or flange; null when not told.</summary>
    public StressBand? YokeTensile { get; private set; }

    /// <summary>Distance from the middle of the hole to the nearest edge of the yoke or flange; null when not told.</summary>
    public Length? YokeEdge { get; private set; }

    /// <summary>Yield strength of the shaft the bolt passes through; null when not told.</summary>
    public StressBand? ShaftYield { get; private set; }

    /// <summary>The same joint with the wall of its yoke or flange around the hole.</summary>
    public FittedBolt WithYokeThickness(Length wall) => Long(wall, "Yoke thickness", static (f, value) => f.YokeThickness = value);

    /// <summary>The same joint with the yield strength of its yoke or flange.</summary>
    public FittedBolt WithYokeYield(StressBand yield)
    {
        Guard.NotNull(yield, nameof(yield));
        return Changed(yield, static (f, value) => f.YokeYield = value);
    }

    /// <summary>The same joint with the tensile strength of its yoke or flange.</summary>
    public FittedBolt WithYokeTensile(StressBand tensile)
    {
        Guard.NotNull(tensile, nameof(tensile));
        return Changed(tensile, static (f, value) => f.YokeTensile = value);
    }

    /// <summary>The same joint with the distance from the middle of the hole to the nearest edge of the yoke or flange.</summary>
    public FittedBolt WithYokeEdge(Length distance) => Long(distance, "Distance to the edge", static (f, value) => f.YokeEdge = value);

    /// <summary>The same joint with the yield strength of the shaft the bolt passes through.</summary>
    public FittedBolt WithShaftYield(StressBand yield)
    {
        Guard.NotNull(yield, nameof(yield));
        return Changed(yield, static (f, value) => f.ShaftYield = value);
    }
}
