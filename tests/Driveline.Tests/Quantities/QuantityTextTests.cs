using System.Globalization;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Quantities;

public class QuantityTextTests
{
    // Expectations are worked by hand from exact definitions: lbf·ft = 0.45359237 × 9.80665 × 0.3048 N·m.
    private const double LbfFt = 1.3558179483314004;
    private const double LbfIn = LbfFt / 12;

    [Theory]
    [InlineData("12 Nm", 12)]
    [InlineData("12 N m", 12)]
    [InlineData("12 N·m", 12)]
    [InlineData("12 N⋅m", 12)]
    [InlineData("12 N*m", 12)]
    [InlineData("12 N.m", 12)]
    [InlineData("12N-m", 12)]
    [InlineData("12 nm", 12)]
    [InlineData("650 lbf.ft", 650 * LbfFt)]
    [InlineData("650 lb-ft", 650 * LbfFt)]
    [InlineData("80 ft-lb", 80 * LbfFt)]
    [InlineData("80 ft lbs", 80 * LbfFt)]
    [InlineData("80 ft. lbs.", 80 * LbfFt)]
    [InlineData("80 ft-lbf", 80 * LbfFt)]
    [InlineData("80 FT-LB", 80 * LbfFt)]
    [InlineData("80 lbf·ft", 80 * LbfFt)]
    [InlineData("80 foot-pounds", 80 * LbfFt)]
    [InlineData("80 pound feet", 80 * LbfFt)]
    [InlineData("120 in-lb", 120 * LbfIn)]
    [InlineData("120 lbf.in", 120 * LbfIn)]
    [InlineData("3 kgf.m", 3 * 9.80665)]
    [InlineData("3 daN.m", 30)]
    [InlineData("1.2 kN.m", 1200)]
    [InlineData("1.2e3 N.m", 1200)]
    [InlineData("1.2E+3Nm", 1200)]
    [InlineData("0 N.m", 0)]
    public void Torque_WrittenAsPeopleDo_IsRead(string text, double expectedNm) => AssertClose(expectedNm, Read(text, Dimension.Torque));

    [Theory]
    [InlineData("1 3/4 in", 1.75 * 0.0254)]
    [InlineData("1-3/4\"", 1.75 * 0.0254)]
    [InlineData("1-3/4 in.", 1.75 * 0.0254)]
    [InlineData("1¾ in", 1.75 * 0.0254)]
    [InlineData("1 ¾ in", 1.75 * 0.0254)]
    [InlineData("1 3⁄4 in", 1.75 * 0.0254)]
    [InlineData("¾\"", 0.75 * 0.0254)]
    [InlineData("⅜ in", 0.375 * 0.0254)]
    [InlineData("7/16 in", 7 * 0.0254 / 16)]
    [InlineData("0.5in", 0.0127)]
    [InlineData(".5 in", 0.0127)]
    [InlineData("1.5 m", 1.5)]
    [InlineData("12,5 mm", 0.0125)]
    [InlineData("0,125 mm", 0.000125)]
    [InlineData("1200,500 mm", 1.2005)]
    [InlineData("1,200.5 mm", 1.2005)]
    [InlineData("1.200,5 mm", 1.2005)]
    [InlineData("1,200,000 mm", 1200)]
    [InlineData("1 200 mm", 1.2)]
    [InlineData("1\u202F200 mm", 1.2)]
    [InlineData("12.7\u00A0mm", 0.0127)]
    [InlineData("12.7\u2009mm", 0.0127)]
    [InlineData("  12.7   mm  ", 0.0127)]
    [InlineData("\u22123 mm", -0.003)]
    [InlineData("+3 mm", 0.003)]
    [InlineData("6 ft", 1.8288)]
    [InlineData("12 thou", 0.0003048)]
    public void Length_WrittenAsPeopleDo_IsRead(string text, double expectedM) => AssertClose(expectedM, Read(text, Dimension.Length));

    [Theory]
    [InlineData("540 rpm", 540 * Math.PI / 30)]
    [InlineData("540 min-1", 540 * Math.PI / 30)]
    [InlineData("540 min⁻¹", 540 * Math.PI / 30)]
    [InlineData("540 min^-1", 540 * Math.PI / 30)]
    [InlineData("540 1/min", 540 * Math.PI / 30)]
    [InlineData("540 r/min", 540 * Math.PI / 30)]
    [InlineData("540/min", 540 * Math.PI / 30)]
    [InlineData("540 rev per min", 540 * Math.PI / 30)]
    [InlineData("9 rev/s", 9 * 2 * Math.PI)]
    [InlineData("56.5 rad/s", 56.5)]
    public void RotationalSpeed_WrittenAsPeopleDo_IsRead(string text, double expected) =>
        AssertClose(expected, Read(text, Dimension.RotationalSpeed));

    [Theory]
    [InlineData("26 kW", "Power", 26000)]
    [InlineData("35 PS", "Power", 35 * 75 * 9.80665)]
    [InlineData("35 metric hp", "Power", 35 * 75 * 9.80665)]
    [InlineData("4.2 kg.m2", "Inertia", 4.2)]
    [InlineData("4.2 kg·m²", "Inertia", 4.2)]
    [InlineData("4.2 kgm^2", "Inertia", 4.2)]
    [InlineData("100 lb.ft2", "Inertia", 100 * 0.45359237 * 0.3048 * 0.3048)]
    [InlineData("100 lb-ft²", "Inertia", 100 * 0.45359237 * 0.3048 * 0.3048)]
    [InlineData("3 slug ft2", "Inertia", 3 * LbfFt)]
    [InlineData("25 deg", "Angle", 25 * Math.PI / 180)]
    [InlineData("25°", "Angle", 25 * Math.PI / 180)]
    [InlineData("0.4 rad", "Angle", 0.4)]
    [InlineData("120 ksi", "Stress", 120000 * 6894.757293168361)]
    [InlineData("74000 psi", "Stress", 74000 * 6894.757293168361)]
    [InlineData("800 MPa", "Stress", 800e6)]
    [InlineData("800 N/mm2", "Stress", 800e6)]
    [InlineData("800 N/mm²", "Stress", 800e6)]
    [InlineData("40 %", "Number", 0.4)]
    [InlineData("40%", "Number", 0.4)]
    [InlineData("1.47", "Number", 1.47)]
    [InlineData("1 1/2", "Number", 1.5)]
    [InlineData("2.5 kN", "Force", 2500)]
    [InlineData("100 lbs", "Force", 444.8221615260500)]
    [InlineData("100 lbs", "Mass", 45.359237)]
    [InlineData("2 t", "Mass", 2000)]
    [InlineData("1.5 h", "Time", 5400)]
    [InlineData("12 kJ", "Energy", 12000)]
    [InlineData("10 ft-lbf", "Energy", 10 * LbfFt)]
    [InlineData("180 °C", "Temperature", 453.15)]
    [InlineData("-40 degC", "Temperature", 233.15)]
    [InlineData("-40 °F", "Temperature", 233.15)]
    [InlineData("6 km/h", "Speed", 6 / 3.6)]
    [InlineData("5 mph", "Speed", 5 * 0.44704)]
    [InlineData("20 kN.m/rad", "TorsionalStiffness", 20000)]
    [InlineData("20 N m / rad", "TorsionalStiffness", 20)]
    [InlineData("100 lbf.ft/deg", "TorsionalStiffness", 100 * LbfFt * 180 / Math.PI)]
    [InlineData("50 N/mm", "SpringRate", 50000)]
    [InlineData("285 lb/in", "SpringRate", 285 * 4.4482216152605 / 0.0254)]
    [InlineData("12 N.m.s/rad", "TorsionalDamping", 12)]
    [InlineData("84.3 mm2", "Area", 84.3e-6)]
    [InlineData("0.1419 in²", "Area", 0.1419 * 0.0254 * 0.0254)]
    [InlineData("40 per hour", "Rate", 40 / 3600.0)]
    [InlineData("40/h", "Rate", 40 / 3600.0)]
    [InlineData("12 t/h", "MassFlow", 12000 / 3600.0)]
    [InlineData("500 J/(kg.K)", "SpecificHeat", 500)]
    public void Quantity_OtherDimension_IsRead(string text, string dimension, double expected) =>
        AssertClose(expected, Read(text, Enum.Parse<Dimension>(dimension)));

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void AnyCulture_ReadsAndWritesTheSame(string culture) => InCulture(culture, () =>
    {
        AssertClose(1.5, Read("1.5 m", Dimension.Length));
        AssertClose(0.0125, Read("12,5 mm", Dimension.Length));
        AssertClose(540 * Math.PI / 30, Read("540 1/MIN", Dimension.RotationalSpeed));
        AssertClose(12 * 0.0254, Read("12 IN", Dimension.Length));
        Assert.Equal("12.7 mm", QuantityText.Format(0.0127, Dimension.Length));
        Assert.Equal("-1.5 m", QuantityText.Format(-1.5, Dimension.Length));
    });

    [Fact]
    public void TypedMethods_EachQuantity_GivesItsType()
    {
        Assert.Equal(1.75, QuantityText.Parse<Length>("1 3/4 in").Inches, 12);
        Assert.Equal(540, QuantityText.Parse<RotationalSpeed>("540 rpm").RevolutionsPerMinute, 6);
        Assert.Equal(4.2, QuantityText.Parse<MassMomentOfInertia>("4.2 kg.m2").KilogramSquareMeters, 12);
        Assert.Equal(800, QuantityText.Parse<Pressure>("800 MPa").Megapascals, 9);
        Assert.Equal(2500, QuantityText.Parse<Force>("2.5 kN").Newtons, 9);
        Assert.Equal(25, QuantityText.Parse<Angle>("25 deg").Degrees, 9);
        Assert.Equal(120, QuantityText.Parse<Mass>("120 kg").Kilograms, 9);
        Assert.Equal(1.5, QuantityText.Parse<Duration>("1.5 h").Hours, 9);
        Assert.Equal(12, QuantityText.Parse<Energy>("12 kJ").Kilojoules, 9);
        Assert.Equal(180, QuantityText.Parse<Temperature>("180 degC").DegreesCelsius, 9);
        Assert.Equal(6, QuantityText.Parse<Speed>("6 km/h").KilometersPerHour, 9);
        Assert.Equal(20, QuantityText.Parse<RotationalStiffness>("20 kN.m/rad").KilonewtonMetersPerRadian, 9);
        Assert.Equal(50, QuantityText.Parse<ForcePerLength>("50 N/mm").NewtonsPerMillimeter, 9);
        Assert.Equal(84.3, QuantityText.Parse<Area>("84.3 mm2").SquareMillimeters, 9);
        Assert.Equal(40, QuantityText.Parse<Frequency>("40 per hour").Hertz * 3600, 9);
        Assert.Equal(12, QuantityText.Parse<MassFlow>("12 t/h").TonnesPerHour, 9);
        Assert.Equal(35, (double)QuantityText.Parse<Power>("35 hp").Watts / 745.69987158227022, 9);
        Assert.Equal(0.4, QuantityText.Parse<double>("40 %"), 12);
    }

    internal static double Read(string text, Dimension dimension)
    {
        Assert.True(QuantityText.TryParse(text, dimension, out double si, out string? problem), problem);
        Assert.Null(problem);
        return si;
    }

    internal static void AssertClose(double expected, double actual) =>
        Assert.True(Math.Abs(actual - expected) <= 1e-12 * Math.Abs(expected),
            FormattableString.Invariant($"expected {expected:R}, got {actual:R}"));

    internal static void InCulture(string culture, Action test)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            test();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
