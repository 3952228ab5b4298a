using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class RotorPublished
{
    [Theory]
    [InlineData(60, 540, 1.47, 63.34, "WE17 and CI02: 12 468 ft/min of a 60 in circle at 1:1.47")]
    public void TipSpeed_OfACircle_IsAsPublished(double inches, double perMinute, double ratio, double metersPerSecond, string source) =>
        Close.Relative(
        metersPerSecond,
        TipSpeed.Of(Length.FromInches(inches), RotationalSpeed.FromRevolutionsPerMinute(perMinute), ratio).Speed.MetersPerSecond,
        1e-3,
        source);

    [Fact]
    public void TipSpeed_TypicalCutter_Is150MilesAnHour()
    {
        Close.Relative(150 * 1609.344 / 3600, TipSpeed.TypicalCutter.Value, 1e-3, "WE18 and CI01: 150 mph = 13 200 ft/min = 67.06 m/s");
        Close.Relative(19000 * 0.3048 / 60, TipSpeed.LawnMowerLimit.Value, 1e-3, "CI03: 19 000 ft/min");
        Assert.Equal(BasisKind.CommonPractice, TipSpeed.LawnMowerLimit.Basis.Kind);
        Assert.Equal(20, TipSpeed.LeastForCutting.Value);
        Assert.Equal("20-40", Row("CI04")["value_SI"]);
    }

    [Theory]
    [InlineData(1.47, 2.161, "CI09: at 1:1.47 the factor is 2.161")]
    [InlineData(1.93, 3.725, "CI09: at 1:1.93 it is 3.725")]
    public void AtPto_TradeRatios_ReflectByTheSquare(double ratio, double factor, string source) => Close.Absolute(
        factor, RotorInertia.Stated(KgM2(1)).AtPto(ratio).Expected!.Value.KilogramSquareMeters, 5e-4, source);

    // WE03: 8 lb·in·s² run up at once to 220 min⁻¹: 239.9 J. 1 lbf·in·s² = 4.4482216 N × 0.0254 m·s² = 0.112985 kg·m².
    [Fact]
    public void EnergyAt_HomeworkInertia_IsAsWorked()
    {
        InertiaBand inertia = KgM2(8 * 4.4482216152605 * 0.0254);
        EnergyBand energy = RotorInertia.Stated(inertia).EnergyAt(RotationalSpeed.FromRevolutionsPerMinute(220));
        Close.Relative(239.9, energy.Expected!.Value.Joules, 5e-3, "WE03: ½ I ω²");
        Close.Relative(
            239.9, Overrun.Of(inertia, RotationalSpeed.FromRevolutionsPerMinute(220), OverrunClutch.None,
            PtoClutchKind.None).Stored.Expected!.Value.Joules, 5e-3, "WE03");
    }

    private static ReferenceRow Row(string id) => ReferenceTable.Read("pto", "cutter-inertia.csv").Single(r => r["id"] == id);
}
