using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Loads;

public class ImplementPowerPublished
{
    // Every row of the pack with a figure is held with its numbers and its basis; the two without one are not.
    [Fact]
    public void ImplementPower_EachRowOfThePack_IsHeld()
    {
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

    [Theory]
    [InlineData("baler", "large round, variable chamber", 15, 10.25, 20.5, 30.75, "WE25: 4.0 kW + 1.1 kWh/t × 15 t/h, ± 50 %")]
    [InlineData("baler", "small rectangular", 10, 7.8, 12, 16.2, "LP65: D497 small baler at 10 t/h is 12 kW; ± 35 %")]
    public void PowerNeed_ByFeed_IsAsWorked(
        string machine, string variant, double tonnesPerHour, double low, double expected, double high, string source)
    {
        PowerNeed need = PowerNeed.Of(ImplementPower.Of(machine, variant), MassFlow.FromTonnesPerHour(tonnesPerHour));
        Close.Relative(low, (double)need.Power.Low.Kilowatts, 1e-9, source);
        Close.Relative(expected, (double)need.Power.Expected!.Value.Kilowatts, 1e-9, source);
        Close.Relative(high, (double)need.Power.High!.Value.Kilowatts, 1e-9, source);
    }

    // WE32: 550 N·m coupling of a 4.6 m rotary rake at 2.0 kW/m and 540 min⁻¹: slip over mean torque 3.38, 1 %.
    [Fact]
    public void PowerNeed_RotaryRake_GivesThePublishedSlipRatio()
    {
        PowerNeed need = PowerNeed.Of(ImplementPower.Of("rake", "rotary"), Length.FromMeters(4.6));
        double mean = PtoTorque.FromPower(need.Power.Expected!.Value, RotationalSpeed.FromRevolutionsPerMinute(540)).NewtonMeters;
        Close.Relative(3.38, 550 / mean, 0.01, "WE32, LP39 and LP66");
    }
}
