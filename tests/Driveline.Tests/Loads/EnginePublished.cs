using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class EnginePublished
{
    // WE08: engine 102 hp at 2400, PTO 94 hp at 540: 0.9216; held as 0.922 (TS02).
    [Fact]
    public void PtoPowerRatios_EachSource_IsKept()
    {
        Close.Absolute(94.0 / 102, PtoPowerRatios.All[1].Value, 5e-4, "WE08 and TS02: 0.922");
        Assert.Equal([0.86, 0.922, 0.80, 0.90, 0.90], PtoPowerRatios.All.Select(r => r.Value));
        foreach (ReferenceRow row in ReferenceTable.Read("pto", "tractor-side.csv").Where(r => r["topic"] == "power"))
        {
            foreach (string value in row["value_SI"].Split('-'))
            {
                double number = double.Parse(value, System.Globalization.CultureInfo.InvariantCulture);
                Assert.Contains(PtoPowerRatios.All, r => r.Value == number);
            }
        }

        Assert.Equal(0.80, PtoPowerRatios.Band.Low);
        Assert.Equal(0.86, PtoPowerRatios.Band.Expected);
        Assert.Equal(0.922, PtoPowerRatios.Band.High);
        Assert.Equal(BasisKind.FromMemory, PtoPowerRatios.Band.WeakestBasis.Kind);
    }

    // WE09: 125 engine hp by the 86 % rule: 107.5 hp, 80.16 kW.
    [Fact]
    public void PtoPower_EightySixPercentRule_IsAsPublished()
    {
        PowerBand engine = PowerBand.Exactly(Power.FromMechanicalHorsepower(125), Given);
        Close.Relative(80.16, (double)EngineSide.PtoPower(engine, Ratio(0.86)).Expected!.Value.Kilowatts, 1e-3, "WE09");
    }

    // WE10: 784 N·m at 1864 min⁻¹ gives 1460 N·m at 1000 min⁻¹, no loss assumed.
    [Fact]
    public void RatedTorque_OfEngineTorque_IsAsPublished() => Close.Relative(
        1460, EngineSide.OfEngineTorque(Nm(784), 1.864, Ratio(1)).RatedTorque.Expected!.Value.NewtonMeters, 2e-3, "WE10 and TS08");

    [Fact]
    public void EngineSpeedRatio_EachTractor_IsAsPrinted()
    {
        double[] printed = [.. ReferenceTable.Read("pto", "tractor-side.csv")
            .Where(r => r["quantity"].StartsWith("engine / PTO", StringComparison.Ordinal)).Select(r => r.Number("value_SI"))];
        Assert.Equal(EngineSpeedRatio.All.Count, printed.Length);
        for (int k = 0; k < printed.Length; k++)
        {
            Close.Absolute(printed[k], EngineSpeedRatio.All[k].Ratio, 5.1e-4, "TS05 to TS09, in order");
        }
    }

    [Theory]
    [InlineData(0, 630, 1.167, "TS10: 540 setting")]
    [InlineData(1, 687, 1.272, "TS11: 540 economy setting")]
    [InlineData(2, 1170, 1.170, "TS12: 1000 setting")]
    public void PtoOverSpeed_EachSetting_IsAsPrinted(int index, double perMinute, double ratio, string source)
    {
        PtoOverSpeed setting = PtoOverSpeed.All[index];
        Close.Absolute(perMinute, setting.Highest.RevolutionsPerMinute, 1e-9, source);
        Close.Absolute(ratio, setting.Ratio, 5e-4, source);
        Assert.Equal(index == 1, setting.IsEconomy);
    }

    // WE23: 38 %, 13 % and 0 % of 800 N·m at 1605.5 min⁻¹, PTO 540 min⁻¹: 594.6 N·m at most.
    [Fact]
    public void EngineTorqueReading_PublicLog_IsAsWorked()
    {
        TorqueBand torque = EngineTorqueReading.Of(
            38, 13, 0, Torque.FromNewtonMeters(800), RotationalSpeed.FromRevolutionsPerMinute(1605.5))
            .AtPto(Rated, Ratio(1));
        Close.Relative(594.6, torque.High!.Value.NewtonMeters, 1e-3, "WE23");
        Assert.Equal(0, torque.Low.NewtonMeters);
    }
}
