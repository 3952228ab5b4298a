namespace Driveline.Cases.Results;

/// <summary>A code with its words.</summary>
internal static class CodeRows
{
    public static readonly ShapeOf<string> Shape = new ShapeOf<string>("said", "A code with its words.")
        .Text("code", c => c, "Stable code.")
        .Words("text", (c, texts, units) => texts.Of(c, units), "It in words.");
}
