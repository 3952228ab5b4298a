using Driveline.Quantities;

namespace Driveline.Tests.Quantities;

public class QuantityTextPublished
{
    [Theory]
    [InlineData("1 hp", "Power", 745.69987158227022,
        "550 ft·lbf/s from the exact foot and pound-force; NIST SP 811, B.8 prints 7.456999 E+02")]
    [InlineData("1 PS", "Power", 735.49875, "75 kgf·m/s; NIST SP 811, B.8 prints 7.354988 E+02")]
    [InlineData("1 lbf.ft", "Torque", 1.3558179483314004, "NIST SP 811, B.8: 1.355818")]
    [InlineData("1 lbf.in", "Torque", 0.1129848290276167, "NIST SP 811, B.8: 1.129848 E-01")]
    [InlineData("1 kgf.m", "Torque", 9.80665, "NIST SP 811, B.8: 9.80665 exact")]
    [InlineData("1 lbf", "Force", 4.4482216152605, "NIST SP 811, B.8: 4.448222")]
    [InlineData("1 kip", "Force", 4448.2216152605, "NIST SP 811, B.8: 4.448222 E+03")]
    [InlineData("1 psi", "Stress", 6894.757293168361, "NIST SP 811, B.8: 6.894757 E+03")]
    [InlineData("1 ksi", "Stress", 6894757.293168361, "NIST SP 811, B.8: 6.894757 E+06")]
    [InlineData("1 in", "Length", 0.0254, "international yard of 1959; NIST SP 811, B.8: 2.54 E-02 exact")]
    [InlineData("1 ft", "Length", 0.3048, "international yard of 1959; NIST SP 811, B.8: 3.048 E-01 exact")]
    [InlineData("1 lb", "Mass", 0.45359237, "international pound of 1959; NIST SP 811, B.8: 4.535924 E-01")]
    [InlineData("1 slug", "Mass", 14.593902937206364, "NIST SP 811, B.8: 1.459390 E+01")]
    [InlineData("1 lb.ft2", "Inertia", 0.0421401100938048, "NIST SP 811, B.8: 4.214011 E-02")]
    [InlineData("1 lb.in2", "Inertia", 2.9263965343e-4, "NIST SP 811, B.8: 2.926397 E-04")]
    [InlineData("1 mph", "Speed", 0.44704, "NIST SP 811, B.8: 4.4704 E-01 exact")]
    [InlineData("1 rpm", "RotationalSpeed", 0.10471975511965977, "2π/60; NIST SP 811, B.8: 1.047198 E-01")]
    [InlineData("1 deg", "Angle", 0.017453292519943295, "π/180; NIST SP 811, B.8: 1.745329 E-02")]
    [InlineData("32 degF", "Temperature", 273.15, "definition of the scale, 32 °F = 0 °C")]
    [InlineData("1 lbf/in", "SpringRate", 175.12683524647635, "NIST SP 811, B.8: 1.751268 E+02")]
    public void Unit_ExactFactor_Matches(string text, string dimension, double expected, string source)
    {
        double si = QuantityTextTests.Read(text, Enum.Parse<Dimension>(dimension));
        Assert.True(Math.Abs(si - expected) <= 4e-11 * expected,
            FormattableString.Invariant($"{text}: expected {expected:R}, got {si:R}; {source}"));
    }

    [Theory]
    [InlineData("1 hp", "Power", 745.69987158227022)]
    [InlineData("1 lbf.ft", "Torque", 1.3558179483314004)]
    [InlineData("12.7 mm", "Length", 0.0127)]
    [InlineData("1 PS", "Power", 735.49875)]
    public void Unit_ExactFactor_MatchesToTheLastBit(string text, string dimension, double expected)
    {
        Close.Cite("exact definitions of foot, pound and kilogram-force; NIST SP 811, B.8");
        Assert.Equal(expected, QuantityTextTests.Read(text, Enum.Parse<Dimension>(dimension)));
    }
}
