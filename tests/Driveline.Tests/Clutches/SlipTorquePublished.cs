using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class SlipTorquePublished
{
    private const string Khurmi = "R. S. Khurmi & J. K. Gupta, Theory of Machines, 14th ed. 2009, ";
    private const string Copy = "; open textbook-companion transcription";

    // Torque of a clutch described through the public door; tolerance = printed precision.
    // Khurmi's are thrust collars, the same ring: power absorbed 26.4 and 25.45 kW at 90, 13.64 kW at 105 min⁻¹.
    [Theory]
    [InlineData("wear", 0.2, 0.1, 0.05, 1, 15707.96, 235.62, 0.006, "CL01 Bhandari, Design of Machine Elements, Ex 11.1")]
    [InlineData("pressure", 0.2, 0.1, 0.05, 1, 23561.94, 366.52, 0.006, "CL02 Bhandari, Design of Machine Elements, Ex 11.2")]
    [InlineData("pressure", 0.35, 0.125, 0.0875, 2, 7200, 541.0, 0.126, "CL04 Bhandari, Ex 11.6: factor of safety 2.164 on 250 N·m, new")]
    [InlineData("wear", 0.35, 0.125, 0.0875, 2, 7200, 535.5, 0.126, "CL04 Bhandari, Ex 11.6: factor of safety 2.142 on 250 N·m, run in")]
    [InlineData("wear", 0.1, 0.075, 0.0375, 8, 2650.72, 119.28, 0.006, "CL06 Bhandari, Ex 11.8")]
    [InlineData("wear", 0.3, 0.3048, 0.2286, 1, 533.787, 42.708, 0.0005, "CL16 Wentzell, Machine Design, Ex 16.1: 378 in·lb")]
    [InlineData("wear", 0.35, 0.12, 0.08, 4, 3500, 490.0, 0.05, "CL20 agricultural-engineering question bank")]
    [InlineData("wear", 0.25, 0.125, 0.0870830905, 2, 10373.292814, 550.0, 0.0005, "CL21 Bhandari, Ex 11.3: d found for 550 N·m")]
    [InlineData("pressure", 0.12, 0.3, 0.15, 1, 100000, 2801.13, 5.4, Khurmi + "Ex 10.19 p.295" + Copy)]
    [InlineData("wear", 0.12, 0.3, 0.15, 1, 100000, 2700.33, 0.54, Khurmi + "Ex 10.19 p.295" + Copy)]
    [InlineData("pressure", 0.05, 0.2, 0.125, 1, 150000, 1240.5, 0.46, Khurmi + "Ex 10.20 p.296" + Copy)]
    public void SlipTorque_PrintedExample_Matches(
        string model, double mu, double outerM, double innerM, int faces, double forceN, double expectedNm, double toleranceNm,
            string source)
    {
        RunInState runIn = model == "wear" ? RunInState.RunIn : RunInState.New;
        SlipTorque torque = SlipTorque.Of(Build.Pressed(mu, outerM, innerM, faces, forceN), Build.Trusted(runIn));
        double nm = Build.Expected(torque.Running);
        Close.Absolute(expectedNm, nm, toleranceNm, source);
    }

    // Clamp force from the permitted pressure at the inner radius, F = 2π · p · Ri · (Ro - Ri).
    [Theory]
    [InlineData(1.0e6, 0.1, 0.05, 15707.96, 0.005, "CL01 Bhandari, Ex 11.1")]
    [InlineData(0.1e6, 0.0475, 0.0325, 306.31, 0.006, "CL05 Bhandari, Ex 11.7")]
    [InlineData(0.3e6, 0.075, 0.0375, 2650.72, 0.005, "CL06 Bhandari, Ex 11.8")]
    [InlineData(0.07e6, 0.2375, 0.19, 3969.4, 0.05, "CL10 recomputed; the book's answer is called wrong")]
    [InlineData(0.127e6, 0.125, 0.075, 2992.37, 0.06, "CL11 Khurmi & Gupta, Ex 10.28, through P 18.8 kW")]
    [InlineData(0.4e6, 0.0625, 0.0375, 2356.2, 0.05, "CL13 Jindal, Machine Design, Ex 22-6")]
    [InlineData(0.5e6, 0.125, 0.0870830905, 10373.292814, 0.0005, "CL21 Bhandari, Ex 11.3")]
    [InlineData(0.5e6, 0.05, 0.02885, 1916.929151, 0.0000006, "CL22 Bhandari, Ex 11.9")]
    public void ClampForPeakPressure_PrintedExample_Matches(
        double peakPa, double outerM, double innerM, double expectedN, double toleranceN, string source)
    {
        double newtons = DiscClutchKernel.ClampForPeakN(peakPa, outerM, innerM);
        Close.Absolute(expectedN, newtons, toleranceN, source);
    }

    [Fact]
    public void ClampForce_UniformPressure_MatchesPrinted()
    {
        Close.Cite("CL02");
        // CL02 Bhandari, Ex 11.2: F = π · 1 MPa · (100² - 50²) mm² = 23561.94 N.
        Close.Within(23561.94, 1.0e6 * DiscClutchKernel.AreaM2(0.1, 0.05), 0.005);
    }

    // Power through the clutch at its slip torque, uniform wear, clamp from the pressure at the inner radius.
    [Theory]
    [InlineData(0.2, 0.1, 0.05, 1, 1.0e6, 750, 18.51, 0.006, "CL01 Bhandari, Ex 11.1")]
    [InlineData(0.1, 0.075, 0.0375, 8, 0.3e6, 750, 9.368, 0.0006, "CL06 Bhandari, Ex 11.8")]
    [InlineData(0.3, 0.15, 0.1, 2, 0.1e6, 2500, 61.685, 0.0006, "CL08 Khurmi & Gupta, Theory of Machines, Ex 10.23")]
    [InlineData(0.3, 0.125, 0.075, 4, 0.127e6, 500, 18.8, 0.05, "CL11 Khurmi & Gupta, Ex 10.28")]
    [InlineData(0.3, 0.08125, 0.05803, 2, 0.09e6, 3000, 10.0, 0.01, "CL14 Sarkar, Theory of Machines, p. 110: radii to 0.01 mm")]
    public void Power_PrintedExample_Matches(
        double mu, double outerM, double innerM, int faces, double peakPa, double rpm, double expectedKw, double toleranceKw, string source)
    {
        double force = DiscClutchKernel.ClampForPeakN(peakPa, outerM, innerM);
        double nm = Build.Expected(SlipTorque.Of(Build.Pressed(mu, outerM, innerM, faces, force), Build.Trusted(RunInState.RunIn)).Running);
        double kw = nm * rpm * Math.PI / 30 / 1000;
        Close.Absolute(expectedKw, kw, toleranceKw, source);
    }

    // Faces needed = torque / torque of one face at the permitted pressure.
    [Theory]
    [InlineData(10, 0.2, 0.0475, 0.0325, 0.1e6, 4.081, 0.0006, "CL05 Bhandari, Ex 11.7: 4.081, with 5 % slots 4.285, so 5 faces")]
    [InlineData(47.7465, 0.1, 0.0625, 0.0375, 0.4e6, 4.053, 0.0006, "CL13 Jindal, Ex 22-6")]
    public void Faces_Needed_MatchPrinted(
        double nm, double mu, double outerM, double innerM, double peakPa, double expected, double tolerance, string source)
    {
        var log = default(NoSteps);
        double radius = DiscClutchKernel.UniformWearRadiusM(outerM, innerM, ref log);
        double faces = nm / DiscClutchKernel.SlipTorqueNm(1, mu, DiscClutchKernel.ClampForPeakN(peakPa, outerM, innerM), radius, ref log);
        Close.Absolute(expected, faces, tolerance, source);
    }

    [Fact]
    public void UniformWearTorque_AtFixedPressure_PeaksAtPrintedRatio()
    {
        Close.Cite("CL03");
        // CL03 Bhandari, Ex 11.5: d 123.22, D 213.55 mm, one pair of faces, μ 0.35, 350 kPa: 180 N·m, d/D 0.577.
        double best = Nm(123.22e-3 / 2);
        Close.Within(180, best, 0.5);
        Close.Within(0.577, 123.22 / 213.55, 0.0005);
        Assert.True(best > Nm(0.98 * 123.22e-3 / 2) && best > Nm(1.02 * 123.22e-3 / 2));

        static double Nm(double innerM)
        {
            const double Outer = 213.55e-3 / 2;
            double force = DiscClutchKernel.ClampForPeakN(350e3, Outer, innerM);
            return Build.Expected(SlipTorque.Of(Build.Pressed(0.35, Outer, innerM, 1, force), Build.Trusted(RunInState.RunIn)).Running);
        }
    }

    [Fact]
    public void CoilSprings_WearToSlip_MatchesPrinted()
    {
        Close.Cite("CL04");
        // CL04 Bhandari, Ex 11.6: 9 springs of 160 N/mm at 5 mm slip at 250 N·m after 2.666 mm of wear (107.1 N·m for a millimeter).
        ClutchCondition worn = Build.Trusted(RunInState.RunIn).WithWear(LengthBand.Exactly(Length.FromMillimeters(2.666), Build.Stated));
        Close.Within(250, Build.Expected(SlipTorque.Of(Build.NineSprings(), worn).Running), 0.0005 * 107.1);
    }

    [Fact]
    public void FacingPressures_MatchPrinted()
    {
        Close.Cite("CL07");
        // CL07 Khurmi & Gupta, Ex 10.22: 4 kN on 100/50 mm radii: 0.2546 at the inside, 0.17 N/mm² on the mean.
        SlipTorque torque = SlipTorque.Of(Build.Pressed(0.3, 0.1, 0.05, 1, 4000), Build.Trusted(RunInState.RunIn));
        Close.Within(0.2546, torque.PeakPressure!.Expected!.Value.Megapascals, 0.00006);
        Close.Within(0.17, torque.MeanPressure!.Expected!.Value.Megapascals, 0.0005);

        // CL15 Sarkar, Illustration 14: 1178.9 N on 300/150 mm: 0.033 N/mm².
        Close.Within(
            0.033, SlipTorque.Of(Build.Pressed(0.3, 0.15, 0.075, 4, 1178.93),
            Build.Trusted(RunInState.RunIn)).PeakPressure!.Expected!.Value.Megapascals, 0.0005);
    }

    [Fact]
    public void UniformPressureIntensity_OnMeanRadius_MatchesPrinted()
    {
        Close.Cite("CL09");
        // CL09 Khurmi & Gupta, Ex 10.25: r 127.26/98.98 mm, 0.07 N/mm² on the mean, μ 0.25, 2 faces: 7.5 kW at 900 rpm = 79.58 N·m.
        double force = 0.07e6 * DiscClutchKernel.AreaM2(0.12726, 0.09898);
        SlipTorque torque = SlipTorque.Of(Build.Pressed(0.25, 0.12726, 0.09898, 2, force), Build.Trusted(RunInState.RunIn));
        Close.Within(79.58, Build.Expected(torque.Running), 0.03);

        // CL12 Jindal, Ex 22-2: an annulus 50 mm wide about 100 mm, 0.2 MPa: 6283 N.
        Close.Within(6283, 0.2e6 * DiscClutchKernel.AreaM2(0.125, 0.075), 0.5);
    }

    [Fact]
    public void Springs_ForcePrinted_MatchesDeflection()
    {
        Close.Cite("CL10");
        // CL10: 3969.4 N on 8 springs of 40 N/mm: 12.404 mm. CL12: 800 N at 10 mm is 80 N/mm.
        SpringPack eight = SpringPack.Of(
            CoilSpring.OfRate(
                ForcePerLength.FromNewtonsPerMillimeter(40), Length.FromMillimeters(60), Length.FromMillimeters(30), Build.Stated), 8);
        Close.Within(12.404, eight.DeflectionFor(Force.FromNewtons(3969.4)).Millimeters, 0.0006);
        Close.Within(800 * 8, SpringPack.Of(
            CoilSpring.OfRate(
                ForcePerLength.FromNewtonsPerMillimeter(80), Length.FromMillimeters(60), Length.FromMillimeters(30), Build.Stated), 8)
            .ForceAtDeflection(Length.FromMillimeters(10)).Expected!.Value.Newtons, 1e-6);
    }

    // The README table: run-in over new torque, 0.75 · (1 + x)² / (1 + x + x²).
    [Theory]
    [InlineData(0.5, 0.964, 0.0006, "reference pack, section 1")]
    [InlineData(0.6, 0.980, 0.0006, "reference pack, section 1")]
    [InlineData(0.7, 0.990, 0.0006, "reference pack, section 1")]
    [InlineData(0.8, 0.996, 0.0006, "reference pack, section 1")]
    [InlineData(0.2, 0.871, 0.0006, "CL19 examination question: Do 250, Di 50 mm")]
    public void RunInOverNew_Ratio_MatchesPrinted(double ratio, double expected, double tolerance, string source)
    {
        DiscClutch clutch = Build.Pressed(0.3, 0.125, 0.125 * ratio, 2, 5000);
        double quotient = Build.Expected(SlipTorque.Of(clutch, Build.Trusted(RunInState.RunIn)).Running)
            / Build.Expected(SlipTorque.Of(clutch, Build.Trusted(RunInState.New)).Running);
        Close.Absolute(expected, quotient, tolerance, source);
    }

    [Theory]
    [InlineData(5, 4, 8, "CL06: z = 8")]
    [InlineData(6, 5, 10, "CL22: 11 discs for 9.924 faces, 6 plain and 5 lined")]
    public void FacesOf_PrintedDiscs_IsThePrinted(int driving, int driven, int faces, string source)
    {
        Close.Cite(source);
        Assert.Equal(faces, DiscClutch.FacesOf(driving, driven));
    }
}
