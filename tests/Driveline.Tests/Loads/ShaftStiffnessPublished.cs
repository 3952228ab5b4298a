using Driveline.Loads;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

/// <summary>Twist of shafts, from the sample problems of an open university course; G is 77 GPa in all of them.</summary>
public class ShaftStiffnessPublished
{
    private const string Notes = "ENGN 0310 course notes, Applied Mechanics Lab, 2021, Torsion, ";

    // Polar moment, printed to six figures: half a unit of the last is at most 5 millionths.
    [Theory]
    [InlineData(60, 44, 9.04377e-7, Notes + "SP3")]
    [InlineData(60, 0, 1.27235e-6, Notes + "SP3")]
    [InlineData(30, 0, 7.95216e-8, Notes + "SP1 and SP3")]
    public void PolarMoment_PrintedSection_Matches(double outerMm, double innerMm, double expectedM4, string source) =>
        Close.Relative(expectedM4, Stiffness(outerMm, innerMm, 1) / 77e9, 4e-6, source);

    [Fact]
    public void Twist_SolidShaft_MatchesPrinted() => Close.Relative(0.0163314, 250 / Stiffness(30, 0, 0.4), 4e-6, Notes + "SP1");

    // 250 N·m through a tube, a thick and a thin part, one after the other.
    [Fact]
    public void Twist_ThreePartsInSeries_MatchesPrinted()
    {
        LineStiffness line = Part(60, 44, 0.6).InSeriesWith(Part(60, 0, 0.2)).InSeriesWith(Part(30, 0, 0.4));
        Close.Relative(0.0189958, 250 / Nm(line), 4e-6, Notes + "SP3");
    }

    // 2000 N·m more on the tube and the thick part.
    [Fact]
    public void Twist_TorqueOnPartOfTheLine_MatchesPrinted() => Close.Relative(
        0.0403109, (2250 / Nm(Part(60, 44, 0.6).InSeriesWith(Part(60, 0, 0.2)))) + (250 / Stiffness(30, 0, 0.4)), 4e-6, Notes + "SP4");

    private static LineStiffness Part(double outerMm, double innerMm, double lengthM) => LineStiffness.Of(
        innerMm > 0 ? ShaftSection.Hollow(Length.FromMillimeters(outerMm), Length.FromMillimeters(innerMm))
            : ShaftSection.Solid(Length.FromMillimeters(outerMm)),
        Length.FromMeters(lengthM),
        StressBand.Exactly(Pressure.FromGigapascals(77), Given));

    private static double Stiffness(double outerMm, double innerMm, double lengthM) => Nm(Part(outerMm, innerMm, lengthM));

    private static double Nm(LineStiffness line) => line.Stiffness.Expected!.Value.NewtonMetersPerRadian;
}
