using Driveline.Clutches;
using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class CoilSpringPublished
{
    // Rate and solid length from the measures. 0 for a value that is not printed.
    [Theory]
    [InlineData(7, 42, 10, "SquaredGround", 81.37, 110, 41.2, 0.05, 70, "CS01 Bhandari, Ex 10.1")]
    [InlineData(11, 55, 7, "SquaredGround", 81.37, 100, 179.01, 0.006, 77, "CS02 Bhandari, Ex 10.2")]
    [InlineData(4.25, 34, 16, "SquaredGround", 84, 124, 6.25, 0.03, 68,
        "CS04 Singh, Machine Design I, Ex 8.1: wanted 6.25, Na 13.95 rounded to 14")]
    [InlineData(3, 18, 17, "SquaredGround", 84, 80, 9.72, 0.006, 0, "CS05 Singh, Ex 8.3: Na 15")]
    [InlineData(4, 19.36, 32, "SquaredGround", 85, 250, 12.5, 0.01, 0, "CS06 Singh, Ex 8.8: Na 30")]
    [InlineData(5, 30, 17, "SquaredGround", 84, 150, 16.20, 0.006, 0,
        "CS07 Jindal, Ex 8-1, recomputed: the transcription divided integers")]
    [InlineData(2, 18, 11, "SquaredGround", 81, 60, 3.086, 0.0006, 0,
        "CS08 Jindal, Ex 8-8, recomputed: transcription and print both unreliable")]
    [InlineData(2.667, 15.748, 12.79, "SquaredGround", 81.7, 60, 12.259, 0.02, 0, "CS09 Wentzell, Ex 8.2: 70 lb/in, 12.79 coils")]
    [InlineData(7, 42, 24, "SquaredGround", 81.37, 300, 14.9829, 0.00006, 0, "CS12 Bhandari, Ex 10.5: Na 22")]
    [InlineData(20, 120, 15, "SquaredGround", 81.37, 484, 72.4448, 0.00006, 0, "CS13 Bhandari, Ex 10.6: Na 13")]
    public void CoilSpring_PrintedExample_Matches(
        double wireMm, double meanMm, double coils, string ends, double gpa, double freeMm, double nPerMm, double tolerance, double solidMm,
            string source)
    {
        CoilSpring spring = CoilSpring.OfWire(
            Length.FromMillimeters(wireMm), Length.FromMillimeters(meanMm), coils, Enum.Parse<CoilEnds>(ends),
                Pressure.FromGigapascals(gpa), Length.FromMillimeters(freeMm));
        Close.Absolute(nPerMm, spring.Rate.NewtonsPerMillimeter, tolerance, source);
        if (solidMm > 0)
        {
            Assert.True(Math.Abs(spring.SolidLength.Millimeters - solidMm) <= 0.02, $"{spring.SolidLength.Millimeters} mm; {source}");
        }
    }

    // Inches and pounds as printed: wire, mean diameter, active coils, modulus in Mpsi, rate in lbf/in.
    [Theory]
    [InlineData(0.037, 0.400, 10.5, 11.85, 4.13, 0.005, "Mechanical Engineering Design, 10th ed., 2015, Example 10-1, p. 519")]
    [InlineData(0.035, 0.213, 12.574, 11.6, 17.91, 0.005, "Mechanical Engineering Design, 10th ed., 2015, Example 10-6, p. 561")]
    [InlineData(0.250, 1.69, 13, 11.5, 89, 0.5, "Comprehensive Spring Design, 7.13.1, calculation examples")]
    public void Rate_PrintedInchExample_Matches(
        double wire, double mean, double active, double megapsi, double expected, double tolerance, string source)
    {
        var log = default(NoSteps);
        double newtonsPerMeter = CoilSpringKernel.RateNPerM(megapsi * 6894.757293e6, wire * 0.0254, mean * 0.0254, active, ref log);
        Close.Absolute(expected, newtonsPerMeter / 175.126835, tolerance, source);
    }

    [Fact]
    public void SolidLength_SquaredEnds_MatchesPrinted()
    {
        // 12.5 turns of 0.037 in: 13.5 · 0.037 = 0.4995, printed 0.500 in.
        Close.Cite("Mechanical Engineering Design, 10th ed., 2015, Example 10-1, p. 519");
        Close.Within(0.500, CoilSpringKernel.SolidLengthM(0.037, 12.5, CoilEnds.Squared), 0.0006);
    }

    [Fact]
    public void ActiveCoils_ForWantedRate_MatchPrinted()
    {
        // CS03 Bhandari, Ex 10.4: d 4, D 24 mm, G 81.37 GPa, 150 N over 5 mm: Na 6.28, 7 taken, Nt 9, solid 36 mm.
        Close.Cite("CS03");
        var log = default(NoSteps);
        double oneCoil = CoilSpringKernel.RateNPerM(81.37e9, 0.004, 0.024, 1, ref log);
        Close.Within(6.28, oneCoil / 30e3, 0.006);
        Assert.Equal(7, CoilSpringKernel.ActiveCoils(9, CoilEnds.SquaredGround));
        Close.Within(0.036, CoilSpringKernel.SolidLengthM(0.004, 9, CoilEnds.SquaredGround), 1e-12);
    }

    // Rate wanted over that of one coil; ends and solid length of the coils taken, 0 where none is printed.
    [Theory]
    [InlineData(21, 150, 75, 7.814775, 10, 0, "CS11 Bhandari, Ex 10.3")]
    [InlineData(7, 42, 15, 21.974923, 24, 0, "CS12 Bhandari, Ex 10.5: 1500 N over 100 mm")]
    [InlineData(20, 120, 75, 12.557099, 15, 0, "CS13 Bhandari, Ex 10.6: 11 250 N over 150 mm")]
    [InlineData(14, 84, 117.809725, 5.595868, 8, 112, "CS14 Bhandari, Ex 10.9: 1.5 MPa on 50 mm, 2945.2431 N over 25 mm")]
    [InlineData(18, 108, 90.9090909, 9.323646, 12, 216, "CS15 Bhandari, Ex 10.10: 250 J between 30 and 80 mm")]
    public void ActiveCoils_PrintedExample_Match(
        double wireMm, double meanMm, double nPerMm, double active, double turns, double solidMm, string source)
    {
        var log = default(NoSteps);
        double oneCoil = CoilSpringKernel.RateNPerM(81.37e9, wireMm / 1000, meanMm / 1000, 1, ref log);
        Close.Absolute(active, oneCoil / (nPerMm * 1000), 0.0000006, source);
        Assert.Equal(Math.Ceiling(active), CoilSpringKernel.ActiveCoils(turns, CoilEnds.SquaredGround));
        if (solidMm > 0)
        {
            Close.Absolute(solidMm / 1000, CoilSpringKernel.SolidLengthM(wireMm / 1000, turns, CoilEnds.SquaredGround), 1e-9, source);
        }
    }

    [Theory]
    [InlineData(6, 1.2525, 0.00006, "CS01, CS05")]
    [InlineData(5, 1.3105, 0.00006, "CS02")]
    [InlineData(8, 1.184, 0.0006, "CS04")]
    [InlineData(4.84, 1.322, 0.0006, "CS06")]
    [InlineData(6.76, 1.221, 0.0006, "Comprehensive Spring Design, 7.13.1, calculation examples")]
    public void Wahl_PrintedIndex_Matches(double index, double expected, double tolerance, string source) =>
        Assert.True(Math.Abs(CoilSpringKernel.Wahl(index) - expected) <= tolerance, source);

    [Fact]
    public void Bergstrasser_PrintedIndex_Matches()
    {
        Close.Cite("CS10");
        Close.Within(1.124, CoilSpringKernel.Bergstrasser(10.16 / 0.9398), 0.0006);
    }

    [Theory]
    [InlineData(40, 3, 18, 85.05, 0.006, "CS05 Singh, Ex 8.3")]
    [InlineData(1000, 4, 19.36, 1018.5, 0.2, "CS06 Singh, Ex 8.8: index rounded to 4.84")]
    [InlineData(1583.567, 6.35, 42.926, 825.27, 0.35, "Comprehensive Spring Design, 7.13.1, calculation examples")]
    public void ShearStress_PrintedExample_Matches(
        double newtons, double wireMm, double meanMm, double mpa, double tolerance, string source)
    {
        var log = default(NoSteps);
        double tau = CoilSpringKernel.ShearStressPa(newtons, wireMm / 1000, meanMm / 1000, ref log) / 1e6;
        Close.Absolute(mpa, tau, tolerance, source);
    }

    // Wire diameter for a permitted stress: d³ scales the stress, so check the stress at the unrounded wire.
    [Theory]
    [InlineData(1250, 6.625, 6, 545, 0.2, "CS01: d 6.625 mm at 0.5 · 1090 MPa")]
    [InlineData(3500, 10.55, 5, 525, 0.5, "CS02: d 10.55 mm at 0.5 · 1050 MPa")]
    [InlineData(300, 4.15, 8, 420, 0.5, "CS04: d 4.15 mm at 420 MPa")]
    [InlineData(1500, 6.497192, 6, 680, 0.0003, "CS12: d 6.497192 mm at 0.5 · 1360 MPa")]
    [InlineData(11250, 18.559694, 6, 625, 0.0003, "CS13: d 18.559694 mm at 0.5 · 1250 MPa")]
    [InlineData(4123.340358, 13.241979, 6, 450, 0.0003, "CS14: d 13.241979 mm at 0.3 · 1500 MPa, 117.81 N/mm over 35 mm")]
    [InlineData(7272.727273, 17.586400, 6, 450, 0.0003, "CS15: d 17.586400 mm at 0.3 · 1500 MPa, 90.909 N/mm over 80 mm")]
    public void ShearStress_AtPrintedWire_IsThePermittedOne(
        double newtons, double wireMm, double index, double mpa, double tolerance, string source)
    {
        var log = default(NoSteps);
        double tau = CoilSpringKernel.ShearStressPa(newtons, wireMm / 1000, index * wireMm / 1000, ref log) / 1e6;
        Close.Absolute(mpa, tau, tolerance, source);
    }
}
