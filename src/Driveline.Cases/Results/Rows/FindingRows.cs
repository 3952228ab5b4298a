using Driveline.Findings;

namespace Driveline.Cases.Results;

/// <summary>Something that a caller must notice.</summary>
internal static class FindingRows
{
    private static readonly string[] Parts = ["part", "device", "name"];

    public static readonly ShapeOf<Finding> Shape = new ShapeOf<Finding>("finding", "Something that a caller must notice.")
        .Text("code", f => f.Code, "Stable code, area.name.")
        .Choice("severity", f => f.Severity, "How much it matters, worst first.")
        .Words("text", (f, texts, units) => texts.Of(f, units), "It in words.")
        .MaybeText("part", PartOf, "The part or device it is about; null when it is about none.")
        .Choice("bars", f => f.Bars, "Which answer is no Yes while it holds.")
        .MaybeText("settledBy", f => f.SettledBy, "Code of the measurement that would settle it; null when none is named.")
        .Texts("because", f => f.AllBecause, "Paths of the facts of the case that it rests on.")
        .List("parameters", f => f.AllParameters, ParameterRows.Shape, "Its values.");

    private static string? PartOf(Finding finding)
    {
        foreach (string name in Parts)
        {
            if (finding.Parameter(name)?.Text is { } part)
            {
                return part;
            }
        }

        return null;
    }
}
