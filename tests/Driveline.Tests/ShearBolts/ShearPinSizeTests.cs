using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class ShearPinSizeTests
{
    [Theory]
    [InlineData(0, 2, 15, 200)]
    [InlineData(100, 0, 15, 200)]
    [InlineData(100, 2, 0, 200)]
    [InlineData(100, 2, 15, -1)]
    public void Diameter_ValueOutOfRange_IsRefused(double nm, int planes, double mm, double mpa) =>
        Assert.Throws<ArgumentOutOfRangeException>(
        () => ShearPinSize.Diameter(Torque.FromNewtonMeters(nm), planes, Length.FromMillimeters(mm), Pressure.FromMegapascals(mpa)));

    [Fact]
    public void Diameter_WorkedCase_Matches() => Close.Absolute(
        7.979,
        ShearPinSize.Diameter(Torque.FromNewtonMeters(1800), 2, Length.FromMillimeters(60), Pressure.FromMegapascals(300)).Millimeters,
        0.001,
        "hand: 50 mm² from 1800 N·m, 2 planes, 300 MPa, 60 mm; √(4 · 50/π)");
}
