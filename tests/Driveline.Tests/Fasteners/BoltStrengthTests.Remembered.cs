using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Fasteners;

/// <content>Loads from memory follow the rule too, and the rule comes before them.</content>
public sealed partial class BoltStrengthTests
{
    public static TheoryData<ReferenceRow> InchFromMemory => ReferenceTable.Remembered(
        "fasteners", "published-loads-inch.csv", r => r["series"] != "UNS" && r.Has("tensile_load_lbf"));

    public static TheoryData<ReferenceRow> MetricFromMemory =>
        ReferenceTable.Remembered("fasteners", "published-loads-metric.csv", _ => true);

    [Theory]
    [MemberData(nameof(InchFromMemory))]
    public void InchLoads_RowsFromMemory_FollowTheRuleToOneStep(ReferenceRow row)
    {
        BoltStrengthPublished.CheckInch(row);
        BoltStrength strength = BoltStrengthPublished.Inch(row);
        Assert.Equal(BasisKind.FromMemory, strength.PublishedMinimumTensileLoad!.Basis.Kind);
        Assert.Equal(strength.MinimumTensileLoadByRule, strength.MinimumTensileLoad);
    }

    [Theory]
    [MemberData(nameof(MetricFromMemory))]
    public void MetricLoads_RowsFromMemory_FollowTheRuleToOneStep(ReferenceRow row)
    {
        BoltStrength strength = BoltStrengthPublished.Metric(row);
        BoltStrengthPublished.AssertWithin(row.Number("min_ultimate_tensile_load_N"), strength.MinimumTensileLoadByRule.Newtons,
            BoltStrengthPublished.ThirdFigure(row.Number("min_ultimate_tensile_load_N")));
        BoltStrengthPublished.AssertWithin(
            row.Number("proof_load_N"),
            strength.ProofLoadByRule!.Value.Newtons,
            BoltStrengthPublished.ThirdFigure(row.Number("proof_load_N")));
        Assert.Equal(strength.ProofLoadByRule, strength.ProofLoad);
    }
}
