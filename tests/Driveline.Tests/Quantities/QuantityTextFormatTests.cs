using Driveline.Quantities;

namespace Driveline.Tests.Quantities;

/// <summary>A quantity written by the library.</summary>
public class QuantityTextFormatTests
{
    [Theory]
    [InlineData("12.7 mm", "Length")]
    [InlineData("1.5 m", "Length")]
    [InlineData("35 hp", "Power")]
    [InlineData("26 kW", "Power")]
    [InlineData("540 rpm", "RotationalSpeed")]
    [InlineData("12 deg", "Angle")]
    [InlineData("2300 N.m", "Torque")]
    [InlineData("650 lbf.ft", "Torque")]
    [InlineData("120 ksi", "Stress")]
    [InlineData("800 MPa", "Stress")]
    [InlineData("4.2 kg.m2", "Inertia")]
    [InlineData("6 km/h", "Speed")]
    [InlineData("0", "Number")]
    public void Format_ShortValue_StaysInItsUnit(string text, string dimension)
    {
        var d = Enum.Parse<Dimension>(dimension);
        Assert.Equal(text, QuantityText.Format(QuantityTextTests.Read(text, d), d));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Format_NotFinite_IsRefused(double si) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityText.Format(si, Dimension.Torque));
}
