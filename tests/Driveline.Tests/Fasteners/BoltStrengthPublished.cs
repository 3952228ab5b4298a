using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Fasteners;

/// <summary>Area × stress under the standards' rounding rules against the loads they print: one rounding step allowed.</summary>
public sealed class BoltStrengthPublished
{
    private const double PoundForce = 4.4482216152605;

    public static TheoryData<ReferenceRow> InchSeen =>
        ReferenceTable.Where("fasteners", "published-loads-inch.csv", r => r["table"].StartsWith("SAE", StringComparison.Ordinal)
            && r["confidence"] is "seen" or "conflicting");

    public static TheoryData<ReferenceRow> InchGrade1Class =>
        ReferenceTable.Seen("fasteners", "published-loads-inch.csv", r => r["grade"] == "1 (60 ksi)");

    public static TheoryData<ReferenceRow> InchClamp =>
        ReferenceTable.Seen("fasteners", "published-loads-inch.csv", r => r.Has("clamp_load_lbf"));

    public static TheoryData<ReferenceRow> MetricTensileSeen =>
        ReferenceTable.Where("fasteners", "published-loads-metric.csv", r => r["confidence_tensile"] == "seen");

    public static TheoryData<ReferenceRow> MetricProofSeen =>
        ReferenceTable.Where("fasteners", "published-loads-metric.csv", r => r["confidence_proof"] == "seen");

    [Fact]
    public void SeenLoads_AreAtLeast250()
    {
        int cells = (2 * Count(InchSeen)) + (2 * Count(InchGrade1Class)) + Count(InchClamp) + Count(MetricTensileSeen)
            + Count(MetricProofSeen);
        Assert.True(cells >= 250, FormattableString.Invariant($"{cells} printed cells are checked."));
    }

    [Theory]
    [MemberData(nameof(InchSeen))]
    public void InchLoads_SeenRows_FollowTheRuleToOneStep(ReferenceRow row) => CheckInch(row);

    [Theory]
    [MemberData(nameof(InchGrade1Class))]
    public void InchLoads_Grade1Class_AreAreaTimesStressToOnePound(ReferenceRow row)
    {
        ScrewThread thread = ScrewThread.Parse(row["thread"]);
        double squareInches = row.Number("stress_area_in2");
        Close.Within(thread.StressAreaM2 / (0.0254 * 0.0254), squareInches, 0.0001);
        GradeStrength grade = SaeJ429.Grade1.Ranges[0].Strength;
        Close.Within(row.Number("tensile_load_lbf"), squareInches * grade.MinimumTensile.Value * 1000, 1.0);
        Close.Within(row.Number("proof_load_lbf"), squareInches * grade.PublishedProofStress!.Value * 1000, 1.0);
    }

    [Theory]
    [MemberData(nameof(InchClamp))]
    public void InchLoads_ClampRows_AreThreeQuartersOfProofStressTimesArea(ReferenceRow row)
    {
        ScrewThread thread = ScrewThread.Parse(row["thread"] + " " + row["series"]);
        double lbf = 0.75 * SaeJ429.Grade2.At(thread).PublishedProofStress!.Value * 1000 * thread.StressAreaM2 / (0.0254 * 0.0254);

        // Two cells rest on areas of their own: 5/16-24 on 0.0581 in² (tabulated 0.0580), 3/4-16 on 0.3725 in² (tabulated 0.373).
        double tolerance = thread.Designation switch
        {
            "5/16-24 UNF" => 0.75 * 55000 * 0.00011,
            "3/4-16 UNF" => 0.75 * 55000 * 0.00051,
            _ => 1.0,
        };
        Close.Within(row.Number("clamp_load_lbf"), lbf, tolerance);
    }

    [Theory]
    [MemberData(nameof(MetricTensileSeen))]
    public void MetricTensileLoads_SeenRows_FollowTheRuleToOneStep(ReferenceRow row)
    {
        BoltStrength strength = Metric(row);
        double printed = row.Number("min_ultimate_tensile_load_N");

        // M16 in class 6.8 is printed 94 000 N, rounded to the nearest thousand: 157 mm² × 600 MPa = 94 200 N. Every other cell is within
        // one step.
        int steps = row["thread"] == "M16" && row["property_class"] == "6.8" ? 2 : 1;
        AssertWithin(printed, strength.MinimumTensileLoadByRule.Newtons, steps * ThirdFigure(printed));
        Assert.Equal(printed, strength.PublishedMinimumTensileLoad!.Value);
        Close.Digits(printed, strength.MinimumTensileLoad.Newtons, 6);
        Assert.Equal(BasisKind.Published, strength.MinimumTensileLoadBasis.Kind);
    }

    [Theory]
    [MemberData(nameof(MetricProofSeen))]
    public void MetricProofLoads_SeenRows_FollowTheRuleToOneStep(ReferenceRow row)
    {
        BoltStrength strength = Metric(row);
        double printed = row.Number("proof_load_N");
        AssertWithin(printed, strength.ProofLoadByRule!.Value.Newtons, ThirdFigure(printed));
        Close.Digits(printed, strength.ProofLoad!.Value.Newtons, 6);
    }

    private static int Count(TheoryData<ReferenceRow> rows) => rows.Cast<object>().Count();

    internal static void CheckInch(ReferenceRow row)
    {
        BoltStrength strength = Inch(row);
        double tensile = row.Number("tensile_load_lbf");
        double proof = row.Number("proof_load_lbf");
        AssertWithin(tensile, strength.MinimumTensileLoadByRule.Newtons / PoundForce, SaeStep(tensile));
        AssertWithin(proof, strength.ProofLoadByRule!.Value.Newtons / PoundForce, SaeStep(proof));
        Assert.Equal(tensile, strength.PublishedMinimumTensileLoad!.Value);
        Assert.Equal(proof, strength.PublishedProofLoad!.Value);
    }

    internal static BoltStrength Inch(ReferenceRow row) =>
        BoltStrength.Of(BoltGrade.Parse("SAE " + row["grade"]), ScrewThread.Parse(row["thread"] + " " + row["series"]));

    internal static BoltStrength Metric(ReferenceRow row) =>
        BoltStrength.Of(BoltGrade.Parse("ISO " + row["property_class"]), ScrewThread.Parse(row["thread"]));

    // README of the reference folder: 50 lbf up to 10 000 lbf, 100 lbf above.
    private static double SaeStep(double lbf) => lbf <= 10000 ? 50 : 100;

    internal static double ThirdFigure(double newtons) => newtons < 1e4 ? 10 : newtons < 1e5 ? 100 : newtons < 1e6 ? 1000 : 10000;

    internal static void AssertWithin(double printed, double computed, double step) =>
        Close.Within(printed, computed, step + 1e-6);
}
