using Driveline.Loads;
using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Tests.Loads;

public class ImplementPowerPublished
{
    // Every row of the pack with a figure is held with its numbers and its basis; the two without one are not.
    [Fact]
    public void ImplementPower_EachRowOfThePack_IsHeld()
    {
        Close.Cite("16 printed powers, each with its source in the reference table implement-power.csv");
        int parameters = 0, printed = 0, without = 0;
        foreach (ReferenceRow row in ReferenceTable.Read("pto", "implement-power.csv"))
        {
            bool isHeld = ImplementPower.TryOf(row["machine"], row["variant"], out PowerRow? held);
            if (row.NumberOrNull("a_kW") is { } a)
            {
                parameters++;
                Assert.True(isHeld, row["id"]);
                Assert.Equal(a, held!.ConstantKilowatts);
                Assert.Equal(row.Number("b_kW_per_m"), held.KilowattsPerMeter);
                Assert.Equal(row.Number("c_kWh_per_t"), held.KilowattHoursPerTonne);
                Assert.Equal(row.Number("range_pct_plus_minus"), held.RangePercent);
                Assert.Equal(BasisKind.FromMemory, held.Basis.Kind);
                Assert.Equal(row["note"].Length > 0, held.Remarks.Count > 0);
            }
            else if (row.NumberOrNull("power_low_kW") is { } low)
            {
                printed++;
                Assert.True(isHeld, row["id"]);
                Close.Relative(low, (double)held!.Printed!.Low.Kilowatts, 1e-12, row["id"]);
                Assert.Equal(row.NumberOrNull("width_m"), held.PrintedWidth is { } width ? Math.Round(width.Meters, 9) : null);
                Assert.Equal(row["confidence"] == "seen" ? BasisKind.Published : BasisKind.CommonPractice, held.Basis.Kind);
                bool isMinimum = row["original_value"].Contains("minimum", StringComparison.Ordinal) || row["power_high_kW"].Length == 0;
                Assert.Equal(!isMinimum, held.Printed.IsBounded);
                if (!isMinimum)
                {
                    Close.Relative(row.Number("power_high_kW"), (double)held.Printed.High!.Value.Kilowatts, 1e-12, row["id"]);
                }
            }
            else
            {
                without++;
                Assert.False(isHeld, row["id"]);
            }
        }

        Assert.Equal((27, 16, 2), (parameters, printed, without));
        Assert.Equal(43, ImplementPower.All.Count);
    }

    // The pack prints the power per width beside the power; both come out of one figure here.
    [Fact]
    public void PowerNeed_OneMeterWide_IsThePrintedPowerPerWidth()
    {
        Close.Cite("13 printed powers per width, each with its source in the reference table implement-power.csv");
        int rows = 0;
        foreach (ReferenceRow row in ReferenceTable.Read("pto", "implement-power.csv"))
        {
            if (row.NumberOrNull("power_per_width_low_kW_per_m") is not { } low)
            {
                continue;
            }

            rows++;
            PowerNeed need = PowerNeed.Of(ImplementPower.Of(row["machine"], row["variant"]), Length.FromMeters(1));

            // Power and power per width are both rounded to 0.1: the first weighs more on a narrow machine.
            double tolerance = 0.05 + (0.051 / row.Number("width_m"));
            Close.Absolute(low, (double)need.Power.Low.Kilowatts, tolerance, row["id"] + ", printed to 0.1");
            if (need.Power.High is { } high)
            {
                Close.Absolute(
                    row.Number("power_per_width_high_kW_per_m"), (double)high.Kilowatts, tolerance, row["id"] + ", printed to 0.1");
            }
        }

        Assert.Equal(13, rows);
    }
}
