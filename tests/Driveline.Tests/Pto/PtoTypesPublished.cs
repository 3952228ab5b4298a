using Driveline.Provenance;
using Driveline.Pto;

namespace Driveline.Tests.Pto;

public class PtoTypesPublished
{
    [Theory]
    [InlineData(1, 35, 6, nameof(SplineForm.Straight), 540, "ISO 500-1:2014, 4.1-4.3, as read in public copies")]
    [InlineData(2, 35, 21, nameof(SplineForm.Involute), 1000, "ISO 500-1:2014, 4.1-4.3, as read in public copies")]
    [InlineData(3, 45, 20, nameof(SplineForm.Involute), 1000, "ISO 500-1:2014, 4.1-4.3, as read in public copies")]
    [InlineData(4, 57.5, 22, nameof(SplineForm.Involute), 1300, "ISO 500-1:2014, 4.1-4.3; the copy prints 57.5 cm, a misprint")]
    public void PtoType_Geometry_IsAsPublished(int number, double mm, int splines, string form, double perMinute, string source)
    {
        PtoType type = PtoTypes.Of(number);
        Close.Absolute(mm, type.NominalDiameter.Millimeters, 1e-9, source);
        Assert.Equal(splines, type.SplineCount);
        Assert.Equal(form, type.SplineForm.ToString());
        Close.Absolute(perMinute, type.RatedSpeed.RevolutionsPerMinute, 1e-6, source);
        Assert.Equal(BasisKind.Published, type.GeometryBasis.Kind);
    }

    // Every row of the pack that gives a power for a numbered type stands in the catalogue, with its conflict kept.
    [Fact]
    public void PtoType_EachPowerRowOfThePack_IsHeld()
    {
        int rows = 0;
        foreach (ReferenceRow row in ReferenceTable.Read("pto", "pto-types.csv"))
        {
            if (row.NumberOrNull("power_limit_kW") is not { } kilowatts || row.NumberOrNull("pto_type") is not { } number)
            {
                continue;
            }

            rows++;
            PtoLimit limit = Assert.Single(
                PtoTypes.Of((int)number).Limits,
                l => l.PrintedPower.Value == kilowatts && Matches(l, row));
            Close.Relative(row.Number("torque_at_limit_Nm_derived"), limit.TorqueAtLimit.NewtonMeters, 1e-3, row["id"]);
            Assert.Equal(row["confidence"].Contains("conflicting", StringComparison.Ordinal) || limit.Conflicts, limit.Conflicts);
        }

        Assert.Equal(16, rows);
    }

    [Fact]
    public void PtoLimit_OfAStandard_IsFromMemoryUntilThePageIsRead()
    {
        Assert.All(
            PtoTypes.All.SelectMany(t => t.Limits).Where(l => l.Kind == PtoLimitKind.Standard),
            l => Assert.Equal(BasisKind.FromMemory, l.Basis.Kind));
        Assert.All(
            PtoTypes.All.SelectMany(t => t.Limits).Where(l => l.Kind == PtoLimitKind.TractorManual),
            l => Assert.Equal(BasisKind.Published, l.Basis.Kind));
    }

    private static bool Matches(PtoLimit limit, ReferenceRow row) => row["standard"]
        .StartsWith("tractor manual", StringComparison.Ordinal)
        ? limit.Kind == PtoLimitKind.TractorManual
            && limit.Basis.Document.EndsWith(row["mounting"] == "rear" ? Manual(row) : "?", StringComparison.Ordinal)
        : limit.Kind == PtoLimitKind.Standard && limit.Basis.Document.Contains(Edition(row), StringComparison.Ordinal);

    private static string Manual(ReferenceRow row) => row["source"]
        .Replace("operator manual, ", string.Empty, StringComparison.Ordinal);

    private static string Edition(ReferenceRow row) => row["standard"] == "ASAE S203" ? "S203" : ":" + row["edition"][..4];
}
