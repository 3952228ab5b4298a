using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.Tests.ShearBolts;

namespace Driveline.Tests.Fasteners;

/// <summary>Rows of the tables that are remembered: they stand in the code as in the table, and validate nothing.</summary>
public sealed class RememberedTablesTests
{
    public static TheoryData<ReferenceRow> Hardnesses =>
        ReferenceTable.Remembered("fasteners", "hardness-to-tensile.csv", r => r.Has("Rm_MPa"));

    public static TheoryData<ReferenceRow> SoftHardnesses =>
        ReferenceTable.Remembered("fasteners", "hardness-to-tensile.csv", r => !r.Has("Rm_MPa"));

    public static TheoryData<ReferenceRow> Rods => ReferenceTable.Remembered("fasteners", "other-specs.csv",
        r => r["spec"] is "aluminium rod" or "brass rod" or "low-carbon steel rod" or "ISO 8839");

    public static TheoryData<ReferenceRow> MetricThreads =>
        ReferenceTable.Remembered("fasteners", "threads-metric.csv", r => r["series"] is "coarse" or "fine");

    public static TheoryData<ReferenceRow> Bodies => ReferenceTable.Remembered("fasteners", "body-diameters.csv", _ => true);

    public static TheoryData<string> ShearLoads() =>
        [.. PublishedShear.All().Where(r => r.Confidence == "memory").Select(r => r.ToString())];

    [Theory]
    [MemberData(nameof(Hardnesses))]
    public void Hardness_RememberedRow_IsHeld(ReferenceRow row) =>
        new HardnessPublished().Table_EveryRowAndScale_GivesThePrintedTensile(row);

    [Theory]
    [MemberData(nameof(SoftHardnesses))]
    public void RockwellB_BelowTheTable_HasNoTensile(ReferenceRow row)
    {
        Hardness hardness = Hardness.Parse("HRB " + row["HRB"]);
        Assert.False(hardness.TryToTensile(out StressBand? tensile));
        Assert.Null(tensile);
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(hardness.ToTensile);
        Assert.Contains("HRB 65 to HRB 100; got HRB " + row["HRB"], thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Rods))]
    public void RodMaterial_RememberedRow_IsHeld(ReferenceRow row) =>
        new GradePublished().RodMaterial_EveryRow_IsHeldOrKeptAsAConflict(row);

    [Theory]
    [MemberData(nameof(MetricThreads))]
    public void MetricThread_RememberedRow_IsHeld(ReferenceRow row) =>
        new ScrewThreadPublished().MetricThread_EveryRow_HasThePrintedSizesAndAreas(row);

    [Theory]
    [MemberData(nameof(Bodies))]
    public void BodyDiameter_RememberedRow_IsHeld(ReferenceRow row) =>
        new ScrewThreadPublished().BodyDiameter_EveryRow_HasThePrintedLimits(row);

    // AISC 16.
    [Fact]
    public void ShearLoads_Remembered_AreAllThere() => Assert.Equal(16, ShearLoads().Count);

    [Theory]
    [MemberData(nameof(ShearLoads))]
    public void ShearLoad_RememberedMinimum_LiesBetweenLowAndHigh(string row) =>
        new ShearPlanePublished().Load_PublishedMinimumStripped_LiesBetweenLowAndHigh(row);
}
