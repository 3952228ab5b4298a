using Driveline.Loads;
using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Loads;

/// <summary>Sums that rest on remembered parameters: they prove the arithmetic alone.</summary>
public class ImplementPowerRememberedTests
{
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
