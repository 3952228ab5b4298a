using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Quantities;

public class BandTests
{
    [Theory]
    [InlineData(2, 1, 3)]
    [InlineData(1, 3, 2)]
    [InlineData(-1, 0, 1)]
    [InlineData(double.NaN, 1, 2)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity)]
    public void Band_OutOfOrder_IsRefused(double low, double expected, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Band(low, expected, high));

    [Fact]
    public void Over_UnboundedDivisorHigh_LeavesNothingAssured()
    {
        Band ratio = new Band(10, 20, 30).Over(new Band(1, 2, double.PositiveInfinity));
        Assert.Equal(new Band(0, 10, 30), ratio);
    }

    [Fact]
    public void Times_ZeroOnUnbounded_IsZero() =>
        Assert.Equal(Band.Exactly(0), new Band(0, double.PositiveInfinity, double.PositiveInfinity).Times(0));

    [Fact]
    public void TorqueBand_DifferentUnitsOfOneValue_AreEqual()
    {
        Basis basis = Basis.Given("the case");
        Assert.Equal(
            TorqueBand.Exactly(Torque.FromNewtonMeters(12), basis),
            TorqueBand.Exactly(Torque.FromNewtonCentimeters(1200), basis));
    }

    [Fact]
    public void AtLeast_HighAndExpected_AreNull()
    {
        TorqueBand band = TorqueBand.AtLeast(Torque.FromNewtonMeters(5), Basis.Given("the case"));
        Assert.Null(band.Expected);
        Assert.Null(band.High);
        Assert.False(band.IsBounded);
    }

    [Fact]
    public void Between_Negative_NamesQuantityRangeAndValue()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(
            () => TorqueBand.Exactly(Torque.FromNewtonMeters(-3), Basis.Given("the case")));
        Assert.Contains("0 N·m or more; got -3 N·m", error.Message, StringComparison.Ordinal);
    }
}
