using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class StrikePublished
{
    private const string Wentzell =
        "T. H. Wentzell, Machine Design, 1st ed. 2007 (Cengage), Ex 7.2 p.139; open textbook-companion transcription";

    private const string Flywheels = "Theory of Machines, Ex 2.3 (author not named in the record); open textbook-companion copy";

    [Theory]
    [InlineData(0, 56.548668, 2.0, 5000, 5655.0, 1e-3, "WE28: 540 min⁻¹, machine side stops dead")]
    [InlineData(0, 56.548668, 0.5, 2000, 1788.2259, 1e-7, "T02")]
    [InlineData(300, 56.548668, 0.5, 2000, 2088.2259, 1e-7, "T04: preloaded to T_d")]
    [InlineData(0, 56.548668, 0.8, 2000, 2261.9467, 1e-7, "T15")]
    public void Peak_StoppedDead_IsAsPublished(
        double steady, double radPerS, double kgM2, double nmPerRad, double peak, double tolerance, string source)
    {
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(radPerS), Nm(steady))
            .WithEngineInertia(KgM2(0)).WithLineInertia(KgM2(kgM2)).WithStiffness(NmPerRad(nmPerRad));
        StrikeEstimate strike = StrikeEstimate.Of(StrikePlace.Driveline, side).WithDeadStop();
        Close.Relative(peak, strike.Peak.Expected!.Value.NewtonMeters, tolerance, source);
        Close.Relative(peak, strike.Peak.Low.NewtonMeters, tolerance, source);
        Assert.Contains(strike.Findings, f => f.Code == LoadsFindings.StrikeCapacityNotKnown);
    }

    // T14: 321.7 MPa in the 20 mm shaft; π / 16 × 0.02³ × 321.7e6 = 505.3 N·m.
    [Fact]
    public void Peak_GrindingWheel_TwistsItsShaftAsPrinted()
    {
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRevolutionsPerMinute(2400), Nm(0))
            .WithEngineInertia(KgM2(0)).WithLineInertia(KgM2(8.143e-4))
            .WithStiffness(LineStiffness.Of(
                ShaftSection.Solid(Length.FromMillimeters(20)),
                Length.FromMillimeters(250),
                StressBand.Exactly(Pressure.FromGigapascals(79), Given)));
        double nm = StrikeEstimate.Of(StrikePlace.Driveline, side).Peak.Expected!.Value.NewtonMeters;
        Close.Relative(321.7, nm * 16 / Math.PI / 8e-6 / 1e6, 1e-3, "T14, printed 322 MPa");
    }

    // 500 and 1500 lb·ft² on a spring of 150 lbf·ft/rad, the first at 150 min⁻¹: 375 lb·ft² to stop. Printed 1435 lbf·ft, as 1915 less 480,
    // each rounded (1915.7 and 478.9); printed 250°, cut from the 250.6° of that.
    [Fact]
    public void Peak_TwoFlywheelsOnASpring_WindsItAsPrinted()
    {
        NoSteps none = default;
        double peak = StrikeKernel.ImpactNm(0, 150 * Math.PI / 30, 500.0 * 1500 / 2000 / 32.2, 150, ref none);
        Close.Absolute(1435, peak * peak / 2 / 150, 2, Flywheels);
        Close.Absolute(250, peak / 150 * 180 / Math.PI, 1, Flywheels);
    }

    // The same square root of mass and stiffness: 2000 lb at 5 mph (88 in/s) against a bar of 2 in, 36 in long, 30 Mpsi, g 386 in/s².
    [Fact]
    public void Peak_CarAgainstABar_PressesItAsPrinted()
    {
        NoSteps none = default;
        double stiffness = Math.PI * 30e6 / 36;
        Close.Absolute(0.124, StrikeKernel.ImpactNm(0, 88, 2000.0 / 386, stiffness, ref none) / stiffness, 0.0005, Wentzell);
    }

    [Fact]
    public void ImpactNm_ZeroFactors_AddNothing()
    {
        NoSteps none = default;
        Assert.Equal(250, StrikeKernel.ImpactNm(250, 56, 0, double.PositiveInfinity, ref none));
        Assert.Equal(250, StrikeKernel.ImpactNm(250, 56, double.PositiveInfinity, 0, ref none));
        Assert.Equal(double.PositiveInfinity, StrikeKernel.ImpactNm(250, 56, double.PositiveInfinity, 5000, ref none));
    }
}
