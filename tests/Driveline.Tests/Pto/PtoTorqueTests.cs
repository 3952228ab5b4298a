using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class PtoTorqueTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(-540)]
    public void FromPower_SpeedNotAboveZero_NamesRangeAndValue(double perMinute)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(
            () => PtoTorque.FromPower(Power.FromKilowatts(1), RotationalSpeed.FromRevolutionsPerMinute(perMinute)));
        Assert.Contains("PTO speed must be a finite value above 0 rad/s", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromPower_NegativePower_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => PtoTorque.FromPower(Power.FromKilowatts(-1), RotationalSpeed.FromRevolutionsPerMinute(540)));

    [Fact]
    public void FromPower_ZeroPower_IsZeroTorque() => Assert.Equal(
        0, PtoTorque.FromPower(Power.Zero, RotationalSpeed.FromRevolutionsPerMinute(540)).NewtonMeters);

    [Fact]
    public void ToPower_Example_Matches() => Close.Absolute(
        56.0,
        (double)PtoTorque.ToPower(Torque.FromNewtonMeters(990), RotationalSpeed.FromRevolutionsPerMinute(540)).Kilowatts,
        0.05,
        "hand: 990 N·m × 540 × 2π/60 = 55.98 kW");

    [Fact]
    public void FromPower_Band_KeepsBasisAndUnboundedEnds()
    {
        Basis basis = Basis.Given("the case");
        TorqueBand torque = PtoTorque.FromPower(
            PowerBand.AtLeast(Power.FromKilowatts(60), basis), RotationalSpeed.FromRevolutionsPerMinute(540));
        Close.Absolute(1061.0, torque.Low.NewtonMeters, 0.1, "60 kW at 540 min-1: 1061.0 N·m");
        Assert.Null(torque.High);
        Assert.Equal(basis, torque.WeakestBasis);
    }

    [Fact]
    public void Sheet_Steps_EndWithTheTorque()
    {
        Power power = Power.FromKilowatts(60);
        RotationalSpeed speed = RotationalSpeed.FromRevolutionsPerMinute(540);
        CalculationLine line = Assert.Single(PtoTorque.Sheet(power, speed));
        Assert.Equal("T", line.Formula.Symbol);
        Assert.Equal(PtoTorque.FromPower(power, speed).NewtonMeters, line.Value);
    }
}
