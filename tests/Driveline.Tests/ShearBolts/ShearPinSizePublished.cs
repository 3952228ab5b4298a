using Driveline.Provenance;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class ShearPinSizePublished
{
    private const string Homework = "mechanics homework: mower shear pin, 60 hp at 540 min-1, 1.25 in shaft, 26 ksi, answer 0.5238 in";

    private const string Assignment =
        "ME-311 Fundamentals of Machine Design, practice assignment 2024, problem 1: flange of ten 20 mm bolts, answer 25.13 kN·m";

    private const string Examination = "mechanics examination as a physics forum quotes it: 1 kN·m, 200 MPa, answer 11.28 mm";

    private const string Jindal =
        "U. C. Jindal, Machine Design, 1st ed. 2010 (Dorling Kindersley), Ex 14-6 p.404; open textbook-companion transcription";

    private const string Flange = "MecMovies, Example M1.6: four 22 mm bolts of a flange, 20 kN in each, answer 52.6 MPa";

    // 60 hp × 550 ft·lbf/s over 540 min⁻¹ is 583.57 lbf·ft.
    [Fact]
    public void Diameter_MowerShearPin_IsThePublishedAnswer()
    {
        Length pin = ShearPinSize.Diameter(
            Torque.FromPoundForceFeet(583.57), 2, Length.FromInches(1.25 / 2), Pressure.FromKilopoundsForcePerSquareInch(26));
        Close.Relative(0.5238, pin.Inches, 0.001, Homework);
        Close.Relative(13.304, pin.Millimeters, 0.001, Homework);
    }

    [Fact]
    public void BreakTorque_PublishedPin_GivesTheTorqueBack()
    {
        NoSteps none = default;
        double radius = 0.625 * 0.0254, diameter = 0.5238 * 0.0254;
        double nm = BreakTorque.NewtonMeters(2, Math.PI / 4 * diameter * diameter, 26e3 * 6894.757, radius, ref none);
        Close.Relative(791.2, nm, 0.001, Homework + "; torque computed in the pack");
    }

    // Ten bolts of 20 mm on a circle of 400 mm, 40 MPa.
    [Fact]
    public void BreakTorque_FlangeOfTenBolts_IsThePublishedAnswer() =>
        Close.Absolute(25130, TorqueNm(10, 20, 40, 200), 5, Assignment);

    // Two sections 25 mm from the axis, 1 kN·m, 200 MPa.
    [Fact]
    public void Diameter_PinThroughAShaft_IsThePublishedAnswer() => Close.Absolute(
        11.28,
        ShearPinSize.Diameter(
            Torque.FromNewtonMeters(1000), 2, Length.FromMillimeters(25), Pressure.FromMegapascals(200)).Millimeters,
        0.005,
        Examination);

    // 16 kW at 1000 min⁻¹ times 1.4 on four bolts at 48 mm from the axis, then at 45 mm; 40 MPa.
    [Theory]
    [InlineData(48, 5.96)]
    [InlineData(45, 6.15)]
    public void Diameter_BoltsOfAFlange_IsThePublishedAnswer(double radiusMm, double diameterMm) => Close.Absolute(
        diameterMm,
        ShearPinSize.Diameter(
            Torque.FromNewtonMeters(1.4 * 16000 * 60 / (2 * Math.PI * 1000)),
            4,
            Length.FromMillimeters(radiusMm),
            Pressure.FromMegapascals(40)).Millimeters,
        0.005,
        Jindal);

    // On a circle of 250 mm four forces of 20 kN are 10 kN·m; half a unit of the printed stress is 0.1 % of that.
    [Fact]
    public void BreakTorque_FlangeOfFourBolts_AtThePublishedStressIsTheTorque() =>
        Close.Absolute(10000, TorqueNm(4, 22, 52.6, 125), 10, Flange);

    private static double TorqueNm(int planes, double boltMm, double mpa, double radiusMm)
    {
        NoSteps none = default;
        return BreakTorque.NewtonMeters(planes, Math.PI / 4 * boltMm * boltMm * 1e-6, mpa * 1e6, radiusMm / 1000, ref none);
    }
}
