using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>A part to look over.</summary>
internal static class InspectionRows
{
    public static readonly ShapeOf<InspectionItem> Shape = new ShapeOf<InspectionItem>("inspection", "A part to look over.")
        .Text("code", i => i.Code, "Stable code.")
        .Words("text", (i, texts, units) => texts.Of(i.Code, units), "What to look at.")
        .Words("stop", (i, texts, units) => texts.Of(i.StopCode, units), "What forbids to go on.")
        .Flag("isReachedThroughDriveline", i => i.IsReachedThroughDriveline, "True when the blow reached it through the driveline.")
        .MaybeWords("load", (i, texts, units) => i.Load is { } load ? texts.Of(load, units) : null, "What it carried, in words.");
}
