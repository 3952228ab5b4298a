using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>A likely cause.</summary>
internal static class CauseRows
{
    private static readonly ShapeOf<Reason> Reasons = new ShapeOf<Reason>("reason", "Something that speaks for or against a cause.")
        .Text("code", r => r.Finding.Code, "Stable code.")
        .Words("text", (r, texts, units) => texts.Of(r.Finding, units), "It in words.")
        .Number("factor", r => r.Factor, "How many times as likely it makes the cause.");

    public static readonly ShapeOf<LikelyCause> Shape = new ShapeOf<LikelyCause>("cause", "A likely cause of the complaint.")
        .Text("code", c => AdviceCodes.Of(c.Cause), "Stable code.")
        .Words("text", (c, texts, units) => texts.Of(AdviceCodes.Of(c.Cause), units), "It in words.")
        .Number("probability", c => c.Probability.Value, "Its chance, 0 to 1; it puts causes in an order, no more.")
        .Flag("isSeen", c => c.IsSeen, "True when it was seen, not inferred.")
        .List("because", c => c.Because, Reasons, "What speaks for it.")
        .List("against", c => c.Against, Reasons, "What speaks against it.");
}
