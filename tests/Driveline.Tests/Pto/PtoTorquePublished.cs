using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class PtoTorquePublished
{
    [Theory]
    [InlineData(60, 540, 791.2, 0.001, "homework on a mower shear pin: 60 hp, 540 min-1; answer computed in the pack")]
    [InlineData(38, 900, 299.6, 0.005, "tractor forum: 38 hp at 900 min-1 is 221 lb ft (5252 rule)")]
    [InlineData(35, 540, 460, 0.005, "retail driveline data: 35 hp, 460 N m")]
    [InlineData(94, 540, 1239.6, 0.001, "repower article citing a test report: 94 hp, 914.3 lb ft")]
    public void FromPower_Horsepower_Matches(double hp, double perMinute, double expectedNm, double tolerance, string source) =>
        Close.Relative(
            expectedNm,
            PtoTorque.FromPower(Power.FromMechanicalHorsepower(hp), RotationalSpeed.FromRevolutionsPerMinute(perMinute)).NewtonMeters,
            tolerance,
            source);

    [Theory]
    [InlineData(60, 540, 1061.0, "60 kW at 540 min-1, remembered limit; derived")]
    [InlineData(48, 540, 849, "48 kW at 540 min-1, remembered limit; derived")]
    [InlineData(56, 540, 990, "utility tractor manual: 56 kW at 540 min-1")]
    [InlineData(86, 1000, 821, "utility tractor manual: 86 kW at 1000 min-1")]
    [InlineData(1, 1, 9549, "textbook rule: kW = N m x min-1 / 9549")]
    public void FromPower_Kilowatts_Matches(double kilowatts, double perMinute, double expectedNm, string source) =>
        Close.Relative(
            expectedNm,
            PtoTorque.FromPower(Power.FromKilowatts(kilowatts), RotationalSpeed.FromRevolutionsPerMinute(perMinute)).NewtonMeters,
            0.001,
            source);

    [Fact]
    public void FromPower_HorsepowerRule_Is5252() => Close.Absolute(
        5252,
        PtoTorque.FromPower(Power.FromMechanicalHorsepower(1), RotationalSpeed.FromRevolutionsPerMinute(1)).PoundForceFeet,
        0.5,
        "agricultural engineering textbook: hp = T N / 5252");

    [Fact]
    public void FromPower_SamePowerAt540And1000_RatioIs1852() => Close.Absolute(
        1.852,
        PtoTorque.FromPower(Power.FromKilowatts(50), RotationalSpeed.FromRevolutionsPerMinute(540)).NewtonMeters
            / PtoTorque.FromPower(Power.FromKilowatts(50), RotationalSpeed.FromRevolutionsPerMinute(1000)).NewtonMeters,
        0.0005,
        "1000 / 540, three decimals");
}
