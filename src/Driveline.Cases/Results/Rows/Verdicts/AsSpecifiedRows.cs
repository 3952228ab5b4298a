using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>Whether what is fitted is what the manual names.</summary>
internal static class AsSpecifiedRows
{
    public static readonly ShapeOf<AsSpecified> Shape = new ShapeOf<AsSpecified>(
            "asSpecified", "Whether what is fitted is what the manual names.")
        .Choice("answer", a => a.Answer, "The answer.")
        .List("for", a => a.For, FindingRows.Shape, "What speaks for it.")
        .List("against", a => a.Against, FindingRows.Shape, "What speaks against it.")
        .List("open", a => a.Open, FindingRows.Shape, "What is open.");
}
