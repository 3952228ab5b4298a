using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Quantities;

/// <summary>What is no quantity is refused, and the message says why.</summary>
public class QuantityTextRefusalTests
{
    [Theory]
    [InlineData("1,200 N.m", "1200 or 1.200")]
    [InlineData("12", "has no unit: a torque is a number with a unit: N.m, kN.m, lbf.ft, lbf.in, kgf.m")]
    [InlineData("", "got an empty text")]
    [InlineData("   ", "got an empty text")]
    [InlineData("26 kW", "is a power; here a torque is wanted: N.m, kN.m, lbf.ft, lbf.in, kgf.m")]
    [InlineData("12 furlongs", "The unit “furlongs”")]
    [InlineData("NaN N.m", "not a finite number")]
    [InlineData("-Infinity N.m", "not a finite number")]
    [InlineData("∞ N.m", "not a finite number")]
    [InlineData("1e999 N.m", "too large")]
    [InlineData("1e308 kN.m", "too large")]
    [InlineData("1e-999 N.m", "too close to 0")]
    [InlineData("1e-323 N.mm", "too close to 0")]
    [InlineData("N.m", "does not begin with a number")]
    [InlineData("1.2.3 N.m", "more than one decimal point")]
    [InlineData("1,2,3 N.m", "dots and commas")]
    [InlineData("1/0 N.m", "no denominator above 0")]
    [InlineData("1 5/4 N.m", "below 1")]
    [InlineData("3-4 N.m", "unit “-4 N.m”")]
    [InlineData("12, N.m", "nothing follows its decimal comma")]
    [InlineData("5 mN.m", "The unit “mN.m”")]
    [InlineData("١٢ N.m", "does not begin with a number")]
    public void Torque_NotReadable_SaysWhy(string text, string reason)
    {
        Assert.False(QuantityText.TryParse<Torque>(text, out Torque value, out string? problem));
        Assert.Equal(0, value.NewtonMeters);
        Assert.Contains(reason, problem, StringComparison.Ordinal);
        Assert.Equal(problem, Assert.Throws<FormatException>(() => QuantityText.Parse<Torque>(text)).Message);
    }

    [Theory]
    [InlineData("5 mPa")]
    [InlineData("5 mW")]
    public void Prefix_SmallM_IsNeverTakenForMega(string text)
    {
        Assert.False(QuantityText.TryParse<Pressure>(text, out _, out _));
        Assert.False(QuantityText.TryParse<Power>(text, out _, out _));
    }

    [Fact]
    public void Power_BeyondDecimal_IsAProblem()
    {
        Assert.False(QuantityText.TryParse<Power>("1e40 kW", out Power value, out string? problem));
        Assert.Equal(0, (double)value.Value);
        Assert.Contains("too large", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Torque_HundredthCharacter_IsReadAndTheNextIsNot()
    {
        string longest = new string('1', 96) + " N.m";
        Assert.Equal(100, longest.Length);
        Assert.True(QuantityText.TryParse<Torque>(longest, out _, out _));
        Assert.False(QuantityText.TryParse<Torque>("1" + longest, out _, out string? problem));
        Assert.Contains("at most 100 characters; got 101", problem, StringComparison.Ordinal);
    }
}
