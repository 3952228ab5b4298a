using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

/// <summary>Worked examples and ranges that are remembered: they agree with the code, and validate nothing.</summary>
public class RememberedExamplesTests
{
    [Theory]
    [InlineData(0.9398, 10.16, 12.5, "Squared", 81.7, 52.3, 0.72327, 0.0006, 12.7, "CS10 Shigley, Example 10-1 (memory)")]
    public void CoilSpring_RememberedExample_Matches(
        double wireMm, double meanMm, double coils, string ends, double gpa, double freeMm, double nPerMm, double tolerance, double solidMm,
        string source) => new CoilSpringPublished().CoilSpring_PrintedExample_Matches(
            wireMm, meanMm, coils, ends, gpa, freeMm, nPerMm, tolerance, solidMm, source);

    [Theory]
    [InlineData("wear", 0.3, 0.125, 0.0875, 1, 4000, 127.5, 0.05, "CL17 Shigley, ch. 16 problem, uniform wear (memory)")]
    [InlineData("wear", 0.06, 0.05, 0.029, 8, 4483, 85, 0.02, "CL18 Juvinall & Marshek, Sample Problem 18.1 (memory)")]
    public void SlipTorque_RememberedExample_Matches(
        string model, double mu, double outerM, double innerM, int faces, double forceN, double expectedNm, double toleranceNm,
        string source) => new SlipTorquePublished().SlipTorque_PrintedExample_Matches(
            model, mu, outerM, innerM, faces, forceN, expectedNm, toleranceNm, source);

    [Theory]
    [InlineData(85, 0.06, 0.05, 0.029, 1.4e6, 6.69, 0.006, "CL18 Juvinall & Marshek, 18.1: 6.69, so 8 (memory)")]
    public void Faces_RememberedExample_Match(
        double nm, double mu, double outerM, double innerM, double peakPa, double expected, double tolerance, string source) =>
        new SlipTorquePublished().Faces_Needed_MatchPrinted(nm, mu, outerM, innerM, peakPa, expected, tolerance, source);

    // CL17 (memory): 4 kN on 250/175 mm diameters: 0.194 MPa.
    [Fact]
    public void FacingPressure_RememberedExample_Matches() => Close.Within(
        0.194,
        SlipTorque.Of(Build.Pressed(0.3, 0.125, 0.0875, 1, 4000), Build.Trusted(RunInState.RunIn))
            .PeakPressure!.Expected!.Value.Megapascals,
        0.0005);

    [Fact]
    public void RepeatedSlips_RememberedExample_Matches()
    {
        // SH08 Shigley, Example 16-5 (memory): 289 lbf·in·s² from 250 rpm every 150 s into a steel disc 6 × 1/4 in,
        // 0.282 lb/in³, c 0.108 Btu/(lb·°F), h 12.6e-6 Btu/(in²·s·°F) on 50 in², 70 °F: rise 49.3 °F, 209 and 160 °F.
        const double Btu = 1055.056;
        double joules = 0.5 * 289 * 0.1129848 * Math.Pow(250 * Math.PI / 30, 2);
        RepeatedSlips disc = RepeatedSlips.Of(
            Energy.FromJoules(joules),
            Mass.FromPounds(Math.PI / 4 * 36 * 0.25 * 0.282),
            SlipHeatPublished.Material(0.108 * Btu / (0.45359237 / 1.8)),
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(12.6e-6 * Btu / (0.0254 * 0.0254 / 1.8)),
            Area.FromSquareInches(50),
            Temperature.FromDegreesFahrenheit(70),
            Duration.FromSeconds(150));
        Close.Within(10.6, joules / Btu, 0.05);
        Close.Within(49.3, disc.RisePerSlip.Kelvins * 1.8, 0.05);
        Close.Within(2.93e-3, 1 / disc.TimeConstant.Seconds, 0.006e-3);
        Close.Within(209, disc.Highest.DegreesFahrenheit, 0.5);
        Close.Within(160, disc.Lowest.DegreesFahrenheit, 0.7); // printed as 209 less 49.3, both rounded
    }

    // Facings known from memory only: friction range against the reference rows.
    [Theory]
    [InlineData("rigid moulded non-asbestos", "rigid moulded non-asbestos")]
    [InlineData("rigid moulded asbestos (old machines)", "rigid moulded asbestos (dry)")]
    [InlineData("rigid moulded asbestos pads (old machines)", "rigid moulded asbestos pads")]
    [InlineData("semi-rigid moulded asbestos (old machines)", "semirigid moulded asbestos")]
    [InlineData("flexible moulded asbestos (old machines)", "flexible moulded asbestos")]
    [InlineData("sintered metal, textbook range", "sintered metal (dry)")]
    [InlineData("cast iron on cast iron", "cast iron on cast iron")]
    [InlineData("powdered metal on cast iron", "powdered metal on cast iron")]
    [InlineData("powdered metal on hard steel", "powdered metal on hard steel")]
    public void Facing_RememberedRow_IsHeldAsRemembered(string name, string material)
    {
        ReferenceRow row = ReferenceTable.Read("clutch", "friction-materials.csv")
            .Single(r => r["material"] == material);
        string[] ends = row["mu_dynamic_min_max"].Split('-');
        RatioBand dry = Facings.Named(name).Friction(SurfaceState.Dry).Running;
        Close.Within(double.Parse(ends[0], System.Globalization.CultureInfo.InvariantCulture), dry.Low, 1e-12);
        Close.Within(double.Parse(ends[^1], System.Globalization.CultureInfo.InvariantCulture), dry.High!.Value, 1e-12);
        Assert.Equal(BasisKind.FromMemory, dry.WeakestBasis.Kind);
    }
}
