using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>The three values of a band with their basis; the unit stands in the member's name.</summary>
internal static class BandRows
{
    public static readonly ShapeOf<QuantityBand> Shape = new ShapeOf<QuantityBand>(
            "band", "Lowest, expected and highest value; the unit stands at the end of the member's name, none for a ratio.")
        .Number("low", b => b.SiBand.Low, "Lowest value.")
        .Number("expected", b => b.SiBand.Expected, "Expected value.")
        .Number("high", b => b.SiBand.High, "Highest value.")
        .Object("basis", b => b.WeakestBasis, BasisRows.Shape, "The weakest basis of the three.");
}
