using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class LineStiffnessTests
{
    // Hand: 79e9 × π / 32 × 0.02⁴ / 0.25 = 4963.7 N·m/rad.
    [Fact]
    public void Of_SolidShaft_IsShearModulusTimesPolarMomentOverLength()
    {
        LineStiffness steel = LineStiffness.Of(ShaftSection.Solid(Length.FromMillimeters(20)), Length.FromMillimeters(250));
        Close.Relative(4963.7, steel.Stiffness.Expected!.Value.NewtonMetersPerRadian, 1e-5, "hand: 79 GPa");
        Close.Relative(4963.7 * 77.2 / 79, steel.Stiffness.Low.NewtonMetersPerRadian, 1e-5, "hand: 77.2 GPa");
        Close.Relative(4963.7 * 82 / 79, steel.Stiffness.High!.Value.NewtonMetersPerRadian, 1e-5, "hand: 82 GPa");
        Assert.Equal(BasisKind.CommonPractice, steel.Stiffness.WeakestBasis.Kind);
    }

    // Rao's pulley shaft (T13): 1 m × 50 mm, 80 GPa: 49087.5 N·m/rad.
    [Fact]
    public void Of_TextbookShaft_IsAsPublished() => Close.Relative(
        49087.5,
        LineStiffness.Of(
            ShaftSection.Solid(Length.FromMillimeters(50)),
            Length.FromMeters(1),
            StressBand.Exactly(Pressure.FromGigapascals(80), Given)).Stiffness.Expected!.Value.NewtonMetersPerRadian,
        1e-5,
        "T13: k of a shaft 1 m × 50 mm, 80 GPa");

    [Fact]
    public void Of_Tube_LacksItsBore()
    {
        Length outer = Length.FromMillimeters(60), inner = Length.FromMillimeters(50), length = Length.FromMeters(1);
        double tube = Expected(LineStiffness.Of(ShaftSection.Hollow(outer, inner), length));
        double difference = Expected(LineStiffness.Of(ShaftSection.Solid(outer), length)) - Expected(
            LineStiffness.Of(ShaftSection.Solid(inner), length));
        Close.Relative(difference, tube, 1e-12, "a tube is the outer bar less the inner one");
    }

    [Fact]
    public void InSeriesWith_TwoShafts_IsSofterThanEither()
    {
        LineStiffness series = LineStiffness.Stated(NmPerRad(4000)).InSeriesWith(LineStiffness.Stated(NmPerRad(6000)));
        Close.Relative(2400, Expected(series), 1e-12, "hand: 4000 × 6000 / 10000");
        Assert.Equal(0, Expected(series.InSeriesWith(LineStiffness.Stated(NmPerRad(0)))));
    }

    [Fact]
    public void AtPto_BehindARatio_GrowsByItsSquare() =>
        Close.Relative(4000 * 2.1609, Expected(LineStiffness.Stated(NmPerRad(4000)).AtPto(1.47)), 1e-12, "hand: × 1.47²");

    [Fact]
    public void Of_Profile_AsksForAStatedStiffness() => Assert.Contains(
        "State the stiffness",
        Assert.Throws<ArgumentException>(
            () => LineStiffness.Of(ShaftSection.Profile(SectionShape.LemonTube), Length.FromMeters(1))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Of_LengthNotAbove0_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => LineStiffness.Of(ShaftSection.Solid(Length.FromMillimeters(20)), Length.Zero));

    private static double Expected(LineStiffness stiffness) => stiffness.Stiffness.Expected!.Value.NewtonMetersPerRadian;
}
