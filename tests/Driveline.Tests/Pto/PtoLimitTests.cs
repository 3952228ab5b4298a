using Driveline.Provenance;
using Driveline.Pto;

namespace Driveline.Tests.Pto;

public class PtoLimitTests
{
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
