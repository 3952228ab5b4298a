using Driveline.Findings;

namespace Driveline.Cases.Results;

/// <summary>A caution; every one is always written, and no page may drop it.</summary>
internal static class CautionRows
{
    public static readonly ShapeOf<Caution> Shape = new ShapeOf<Caution>("caution", "A caution that belongs to the result; show it.")
        .Text("code", c => c.Code, "Stable code.")
        .Words("text", (c, texts, units) => texts.Of(c.Code, units), "It in words.")
        .Object("source", c => c.Source, BasisRows.Shape, "Where it comes from.")
        .Fixed();
}
