using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Fasteners;

public sealed partial class BoltStrengthTests
{
    [Fact]
    public void Loads_HalfInchGrade5_WorkedByHand()
    {
        BoltStrength strength = BoltStrength.Of(SaeJ429.Grade5, ScrewThread.Parse("1/2-13 UNC"));

        // 0.1419 in² · 120 ksi = 17 028 lbf, to 100 lbf: 17 000; 0.1419 · 85 = 12 061.5, to 100 lbf: 12 100.
        Assert.Equal(17000, strength.MinimumTensileLoadByRule.PoundsForce, 6);
        Assert.Equal(12100, strength.ProofLoadByRule!.Value.PoundsForce, 6);

        // The tensile band is not rounded: 17 028 lbf at the low end; 152 ksi (HRC 34) · 0.1419 in² = 21 569 lbf at the high end, 1 ksi
        // being 142 lbf.
        Assert.Equal(17028, strength.TensileLoad.Low.PoundsForce, 0.01);
        Assert.Equal(21569, strength.TensileLoad.High!.Value.PoundsForce, 71.0);
    }

    [Theory]
    [InlineData("1/4-20 UNC", "SAE 5", 3800, "0.0318 · 120 = 3816 lbf, below 10 000: to 50")]
    [InlineData("3/8-16 UNC", "SAE 5", 9300, "0.0775 · 120 = 9300 lbf")]
    [InlineData("9/16-12 UNC", "SAE 1", 10900, "0.182 · 60 = 10 920 lbf, above 10 000: to 100")]
    [InlineData("3/8-16 UNC", "SAE 8", 11600, "0.0775 · 150 = 11 625 lbf: to 100")]
    public void LoadByRule_OnEachSideOf10000Pounds_TakesTheRightStep(string thread, string grade, double lbf, string working)
    {
        double found = BoltStrength.Of(BoltGrade.Parse(grade), ScrewThread.Parse(thread)).MinimumTensileLoadByRule.PoundsForce;
        Assert.True(Math.Abs(found - lbf) < 1e-6, working);
    }

    [Fact]
    public void ProofLoad_GradeWithoutProofStress_IsNull()
    {
        BoltStrength strength = BoltStrength.Of(AstmBolts.A307A, ScrewThread.Parse("1/2-13 UNC"));
        Assert.Null(strength.ProofLoad);
        Assert.Null(strength.ProofLoadByRule);
        Assert.Null(strength.PublishedMinimumTensileLoad);
    }

    [Fact]
    public void Bases_FinePitch_DoNotRestOnTheRememberedArea()
    {
        BoltStrength strength = BoltStrength.Of(Iso898.Class8_8, ScrewThread.Parse("M12x1.25"));
        Assert.Equal(BasisKind.FromMemory, strength.PublishedMinimumTensileLoad!.Basis.Kind);
        Assert.Equal(BasisKind.Published, strength.MinimumTensileLoadBasis.Kind);

        // π/4 · (12 − 0.938194 · 1.25)² = 92.07 mm², nominal 92.1; · 800 MPa = 73 680 N, to three figures 73 700.
        Assert.Equal(73700, strength.MinimumTensileLoad.Newtons, 6);
    }

    // 9300 lbf stands in a scanned table; a cell that was seen goes before the rule, and says so.
    [Fact]
    public void PrintedLoad_Seen_IsTheLoadWithItsBasis()
    {
        BoltStrength strength = BoltStrength.Of(SaeJ429.Grade5, ScrewThread.Parse("3/8-16 UNC"));
        Assert.Equal(9300, strength.MinimumTensileLoad.PoundsForce, 6);
        Assert.Equal(strength.PublishedMinimumTensileLoad!.Basis, strength.MinimumTensileLoadBasis);
        Assert.NotEqual(Basis.Weakest(strength.Thread.AreaBasis, strength.Strength.Basis), strength.MinimumTensileLoadBasis);
    }

    // 800 MPa · 84.3 mm² = 67 440 N.
    [Fact]
    public void TryOf_SizeHeld_IsTheStrength()
    {
        Assert.True(BoltStrength.TryOf(Iso898.Class8_8, ScrewThread.Parse("M12"), out BoltStrength? strength));
        Assert.Equal(67440, strength.TensileLoad.Low.Newtons, 6);
    }

    [Fact]
    public void Of_WithoutGrade_IsRefused()
    {
        Assert.Throws<ArgumentNullException>(() => BoltStrength.Of(null!, ScrewThread.Parse("M12")));
        Assert.Throws<ArgumentNullException>(() => BoltStrength.TryOf(null!, ScrewThread.Parse("M12"), out _));
    }

    // 800 MPa · 84.3 mm² = 67 440 N, printed 67 400.
    [Fact]
    public void ToString_OfAStrength_HasTheLeastLoad() => Assert.EndsWith(
        "M12: at least 67.4 kN", BoltStrength.Of(Iso898.Class8_8, ScrewThread.Parse("M12")).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Calculation_OfALoad_ListsStressAreaAndLoad()
    {
        IReadOnlyList<CalculationLine> lines = BoltStrength.Of(Iso898.Class8_8, ScrewThread.Parse("M12")).Calculation();

        // 800 MPa · 84.3 mm² = 67 440 N.
        Assert.Equal(["R", "A_s", "F"], lines.Select(l => l.Formula.Symbol));
        Assert.Equal(67440, lines[^1].Value, 6);
    }

    [Fact]
    public void TensileLoad_Stainless_IsUnboundedAbove()
    {
        BoltStrength strength = BoltStrength.Of(BoltGrade.Parse("A2-70"), ScrewThread.Parse("M12"));

        // 700 MPa · 84.3 mm² = 59 010 N.
        Assert.Equal(59010, strength.TensileLoad.Low.Newtons, 6);
        Assert.Null(strength.TensileLoad.High);
    }
}
