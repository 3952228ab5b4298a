using Driveline.Fasteners;

namespace Driveline.Tests.Fasteners;

/// <summary>Stress area × stress of socket head cap screws against the loads that two suppliers' pages of ASTM A574 print alike.</summary>
public sealed class SocketScrewLoadPublished
{
    private const string Pages = "ASTM A574, tensile requirements for coarse thread screws, data pages of two suppliers";

    // Pounds, three figures: one unit of the third is allowed, because the areas of the pages have more figures than the tabulated ones
    // (1/4 in: 0.03182 in² × 180 ksi = 5728, printed 5730) and some cells are cut off (1-1/8 in: 0.763 × 170 = 129 710, printed 129 000).
    [Theory]
    [InlineData("No. 10-24 UNC", 3150, 2450)]
    [InlineData("1/4-20 UNC", 5730, 4450)]
    [InlineData("5/16-18 UNC", 9440, 7340)]
    [InlineData("3/8-16 UNC", 13900, 10800)]
    [InlineData("7/16-14 UNC", 19100, 14900)]
    [InlineData("1/2-13 UNC", 25500, 19900)]
    [InlineData("5/8-11 UNC", 38400, 30500)]
    [InlineData("3/4-10 UNC", 56800, 45100)]
    [InlineData("7/8-9 UNC", 78500, 62400)]
    [InlineData("1-8 UNC", 103000, 81800)]
    [InlineData("1 1/8-7 UNC", 129000, 103000)]
    [InlineData("1 1/4-7 UNC", 165000, 131000)]
    [InlineData("1 3/8-6 UNC", 196000, 156000)]
    [InlineData("1 1/2-6 UNC", 239000, 190000)]
    public void Loads_OfASocketScrew_AreThePrinted(string thread, double tensile, double proof)
    {
        Close.Cite(Pages);
        ScrewThread screw = ScrewThread.Parse(thread);
        GradeStrength strength = AstmBolts.A574.At(screw);
        double thousandths = screw.StressAreaM2 / (0.0254 * 0.0254) * 1000;
        Close.Absolute(tensile, strength.MinimumTensile.Value * thousandths, ThirdFigure(tensile), Pages);
        Close.Absolute(proof, strength.PublishedProofStress!.Value * thousandths, ThirdFigure(proof), Pages);
    }

    private static double ThirdFigure(double printed) => Math.Pow(10, Math.Floor(Math.Log10(printed)) - 2);
}
