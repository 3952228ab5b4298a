using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>The bolt one grade weaker or stronger in the same hole.</summary>
internal static class GradeStepRows
{
    private static readonly ShapeOf<GradeRatio> RatioRows = new ShapeOf<GradeRatio>("gradeRatio", "A torque over that of the fitted bolt.")
        .Number("low", r => r.Low, "Lowest.")
        .Number("expected", r => r.Expected, "Expected.")
        .Number("high", r => r.High, "Highest.");

    private static readonly ShapeOf<GuardedPart> PartOf = new ShapeOf<GuardedPart>("guardedPart", "A part that the bolt is to save.")
        .Text("name", p => p.Name, "Name.")
        .Number("mustStandNm", p => p.MustStand?.NewtonMeters, "Torque that it must take, at its own input, N·m.");

    public static readonly ShapeOf<NeighbourGrade> Shape = new ShapeOf<NeighbourGrade>(
            "gradeStep", "The same bolt one grade weaker or stronger; shown, not recommended.")
        .Text("bolt", n => n.Bolt, "The bolt.")
        .Text("grade", n => n.Grade, "Its grade.")
        .Flag("isStronger", n => n.IsStronger, "True when it is stronger than the fitted one.")
        .Flag("isSpecified", n => n.IsSpecified, "True when the manual specifies it.")
        .Band("tripTorqueNm", n => n.Trip, "Torque at the PTO at which it breaks.")
        .Margin("workMargin", n => n.Verdict.WorkMargin, "Work margin with it.")
        .Margin("guardMargin", n => n.Verdict.GuardMargin, "Guard margin with it.")
        .Choice("guards", n => n.Verdict.Guards, "Would the protection act before a part is damaged?")
        .Choice("quiet", n => n.Verdict.Quiet, "Would it stay quiet in normal work?")
        .Object("ratio", n => n.Ratio, RatioRows, "Its torque over that of the fitted one.")
        .List("parts", n => n.Parts, PartOf, "What each part must then take.")
        .Flag("askMaker", IsAsked, "True when only the maker may allow it.")
        .MaybeWords("caution", (n, texts, _) => IsAsked(n) ? texts.Of("report.grades.caution") : null, "A caution; show it.")
        .MaybeWords("tryBefore", (n, texts, _) => IsAsked(n) ? texts.Of("report.grades.before") : null, "What to try before.");

    private static bool IsAsked(NeighbourGrade neighbour) => neighbour is { IsStronger: true, IsSpecified: false };
}
