using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class TorsionCapacityTests
{
    private static readonly Basis Stated = Basis.Given("the case");

    // The pack computes these with tau = 300 or 500 MPa at the root circle.
    [Theory]
    [InlineData(29.69, 300, 1542, "type 1, root 0.85 D")]
    [InlineData(29.69, 500, 2569, "type 1, root 0.85 D")]
    [InlineData(28.91, 300, 1423, "type 1, DIN 9611 root, remembered")]
    [InlineData(28.91, 500, 2372, "type 1, DIN 9611 root, remembered")]
    [InlineData(31.19, 300, 1787, "type 2, flat-root involute")]
    [InlineData(31.19, 500, 2979, "type 2, flat-root involute")]
    [InlineData(39.48, 300, 3625, "type 3, flat-root involute")]
    [InlineData(39.48, 500, 6041, "type 3, flat-root involute")]
    [InlineData(51.25, 300, 7929, "type 4, flat root m 2.5")]
    [InlineData(51.25, 500, 13215, "type 4, flat root m 2.5")]
    public void SectionModulus_RootCircle_GivesThePacksTorque(double mm, double mpa, double expectedNm, string source) => Close.Relative(
        expectedNm,
        ShaftSection.Splined(Length.FromMillimeters(mm)).SectionModulus!.Value.CubicMeters * mpa * 1e6,
        1e-3,
        "shaft-strength rows: " + source);

    [Theory]
    [InlineData("1045 hot rolled", 179)]
    [InlineData("1045 cold drawn", 306)]
    [InlineData("4140 quenched, tempered 650 °C", 378)]
    [InlineData("4140 quenched, tempered 540 °C", 481)]
    [InlineData("4140 quenched, tempered 425 °C", 658)]
    public void ShearYield_OfSteel_IsThePacksValue(string steel, double mpa)
    {
        NoSteps none = default;
        double shear = TorsionCapacity.ShearYieldPa(ShaftMaterials.Of(steel).Yield.SiBand.Low, ref none) / 1e6;

        // Half a printed unit, and 0.06 % because the rows used 0.577 for 1/√3.
        Close.Absolute(mpa, shear, 0.5 + (0.0006 * mpa), "shaft-strength rows, note column: shear yield");
        Assert.NotEqual(BasisKind.FromMemory, ShaftMaterials.Of(steel).Basis.Kind);
    }

    [Fact]
    public void Of_SolidBar_FirstYieldAndFullPlastic()
    {
        TorqueBand band = TorsionCapacity.Of(
            ShaftSection.Solid(Length.FromMillimeters(30)), StressBand.Exactly(Pressure.FromMegapascals(310), Stated)).Torque;
        Close.Absolute(948.8, band.Low.NewtonMeters, 0.1, "hand: π 30³/16 mm³ = 5301.4 mm³; × 310/√3 = 178.98 MPa");
        Close.Absolute(1265, band.High!.Value.NewtonMeters, 0.5, "hand: 4/3 × 948.8");
        Assert.Equal(band.Low.NewtonMeters, band.Expected!.Value.NewtonMeters);
        Assert.Equal(BasisKind.Given, band.WeakestBasis.Kind);
    }

    [Fact]
    public void Of_Tube_LosesTheFourthPowerOfTheBore()
    {
        TorqueBand band = TorsionCapacity.Of(
            ShaftSection.Hollow(Length.FromMillimeters(40), Length.FromMillimeters(20)),
            StressBand.Exactly(Pressure.FromMegapascals(100 * Math.Sqrt(3)), Stated)).Torque;
        Close.Absolute(1178.1, band.Low.NewtonMeters, 0.1, "hand: π (40⁴ − 20⁴)/(16 · 40) = 11781 mm³ × 100 MPa");
        Close.Absolute(1466.1, band.High!.Value.NewtonMeters, 0.1, "hand: π (40³ − 20³)/12 = 14661 mm³ × 100 MPa");
    }

    [Fact]
    public void Of_YieldWithoutMaximum_IsUnboundedAbove()
    {
        TorqueBand band = TorsionCapacity.Of(
            ShaftSection.Solid(Length.FromMillimeters(30)), StressBand.AtLeast(Pressure.FromMegapascals(310), Stated)).Torque;
        Assert.Null(band.Expected);
        Assert.Null(band.High);
    }

    [Theory]
    [InlineData(nameof(SectionShape.Square))]
    [InlineData(nameof(SectionShape.Rectangular))]
    [InlineData(nameof(SectionShape.LemonTube))]
    [InlineData(nameof(SectionShape.StarTube))]
    public void Of_Profile_AsksForTheDamageTorque(string shape)
    {
        ShaftSection section = ShaftSection.Profile(Enum.Parse<SectionShape>(shape));
        var error = Assert.Throws<ArgumentException>(() => TorsionCapacity.Of(section, ShaftMaterials.NotKnown));
        Assert.Contains("give the torque at which it is damaged instead", error.Message, StringComparison.Ordinal);
        Assert.Null(section.SectionModulus);
    }

    [Theory]
    [InlineData(nameof(SectionShape.NotKnown))]
    [InlineData(nameof(SectionShape.SolidRound))]
    public void Profile_RoundOrUnknown_IsRefused(string shape) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ShaftSection.Profile(Enum.Parse<SectionShape>(shape)));

    [Theory]
    [InlineData(20, 20)]
    [InlineData(20, 20.001)]
    [InlineData(20, 0)]
    public void Hollow_BoreNotBelowOuter_IsRefused(double outer, double inner) => Assert.Throws<ArgumentOutOfRangeException>(
        () => ShaftSection.Hollow(Length.FromMillimeters(outer), Length.FromMillimeters(inner)));

    [Fact]
    public void Stub_SteelNotKnown_IsAMarkedGuess()
    {
        StubStrength stub = StubStrength.Of(PtoTypes.Of(1));
        Close.Absolute(1149.4, stub.Torque.Low.NewtonMeters, 0.5, "hand: 65 kW / (540 · 2π/60 = 56.549 rad/s)");
        Close.Absolute(
            2386.4, stub.Torque.Expected!.Value.NewtonMeters, 0.5, "hand: π 28.91³/16 = 4744.3 mm³ × 503 MPa, torsional yield at HRC 30");
        Close.Absolute(
            3545.7, stub.Torque.High!.Value.NewtonMeters, 0.5, "hand: π 29.69³/16 = 5138.7 mm³ × 690 MPa, torsional yield at HRC 40");
        Assert.Equal(BasisKind.FromMemory, stub.Torque.WeakestBasis.Kind);
        Assert.Equal(BandEnd.Interval95, stub.Torque.Basis.LowEnd);
        Assert.Equal(PtoFindings.StubSteelNotKnown, Assert.Single(stub.Findings).Code);
    }

    [Fact]
    public void Stub_SteelKnown_HasNoFindingAndIsNarrower()
    {
        StubStrength guess = StubStrength.Of(PtoTypes.Of(1));
        StubStrength known = StubStrength.Of(PtoTypes.Of(1), ShaftMaterials.Tempered540C4140.Yield);
        Assert.Empty(known.Findings);
        Assert.True(known.Torque.SiBand.Low >= guess.Torque.SiBand.Low);
        Assert.True(known.Torque.SiBand.High <= guess.Torque.SiBand.High);
        Assert.Equal(9, known.Sheet().Count);
    }
}
