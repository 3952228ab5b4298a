using Driveline.Loads;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

/// <summary>Twist of shafts, from the problems of an open university course (G is 77 GPa in all of them) and of two textbooks.</summary>
public class ShaftStiffnessPublished
{
    private const string Notes = "ENGN 0310 course notes, Applied Mechanics Lab, 2021, Torsion, ";

    private const string Textbook =
        "Mechanics of Materials (author not named in the record), ch. 3, {0}; open textbook-companion transcription";

    private const string Pytel =
        "Pytel & Kiusalaas, Mechanics of Materials, Indian ed. 2011, Sample Problem 3.3, p. 80; open textbook-companion transcription";

    private const double Degrees = 180 / Math.PI;
    private const double PoundFoot = 1.3558179483;
    private const double Megapsi = 6.894757293;

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

    // 250 lbf·ft on 54 in of 1.5 in bar, 11.5 Mpsi.
    [Fact]
    public void Twist_InchBar_MatchesPrinted() => Close.Absolute(
        1.62, 250 * PoundFoot / Bar(38.1, 54 * 0.0254, 11.5 * Megapsi) * Degrees, 0.005, Of("Example 3.1, p. 196"));

    // 50 kW at 10 Hz through 1 m, 15 kW of it through 1.2 m more, 50 mm, 80 GPa.
    [Fact]
    public void Twist_PowerTakenOffOnTheWay_MatchesPrinted() => Close.Absolute(
        1.26, (50e3 / (20 * Math.PI) / Bar(50, 1, 80) * Degrees) + (15e3 / (20 * Math.PI) / Bar(50, 1.2, 80) * Degrees), 0.005,
        Of("Example 3.8, p. 221"));

    // ½ T² / k: 100 N·m at the end of 1.6 m, 150 N·m at its middle, 30 mm, 80 GPa.
    [Theory]
    [InlineData(100, 1.6, 1.26)]
    [InlineData(150, 0.8, 1.41)]
    public void StrainEnergy_OfATwistedBar_MatchesPrinted(double nm, double lengthM, double joules) =>
        Close.Absolute(joules, nm * nm / 2 / Bar(30, lengthM, 80), 0.005, Of("Example 3.10, p. 230"));

    // 500 lbf·ft on 5 ft, −400 on 3 ft, 600 on 4 ft, 2 in, 12 Mpsi.
    [Fact]
    public void Twist_ThreeTorquesOnAnInchShaft_MatchesPrinted() => Close.Absolute(
        1.62,
        ((500 / Bar(50.8, 5 * 0.3048, 12 * Megapsi)) - (400 / Bar(50.8, 3 * 0.3048, 12 * Megapsi))
            + (600 / Bar(50.8, 4 * 0.3048, 12 * Megapsi))) * PoundFoot * Degrees,
        0.005,
        Pytel);

    private static string Of(string example) => Textbook.Replace("{0}", example, StringComparison.Ordinal);

    private static LineStiffness Part(double outerMm, double innerMm, double lengthM) => Part(outerMm, innerMm, lengthM, 77);

    private static LineStiffness Part(double outerMm, double innerMm, double lengthM, double gpa) => LineStiffness.Of(
        innerMm > 0 ? ShaftSection.Hollow(Length.FromMillimeters(outerMm), Length.FromMillimeters(innerMm))
            : ShaftSection.Solid(Length.FromMillimeters(outerMm)),
        Length.FromMeters(lengthM),
        StressBand.Exactly(Pressure.FromGigapascals(gpa), Given));

    private static double Bar(double mm, double lengthM, double gpa) => Nm(Part(mm, 0, lengthM, gpa));

    private static double Stiffness(double outerMm, double innerMm, double lengthM) => Nm(Part(outerMm, innerMm, lengthM));

    private static double Nm(LineStiffness line) => line.Stiffness.Expected!.Value.NewtonMetersPerRadian;
}
