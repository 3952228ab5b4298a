using System.Reflection;
using System.Xml.Linq;
using Driveline.Provenance;
using Driveline.Reports.Sheets;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>The formula of a step becomes mathematics, or is words that both languages have.</summary>
public class StepFormulaTests
{
    private static readonly CalculationStep[] Steps =
    [
        .. typeof(CalculationStep).Assembly.GetTypes().SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public
            | BindingFlags.NonPublic)).Where(f => f.FieldType == typeof(CalculationStep) && !f.DeclaringType!.ContainsGenericParameters)
            .Select(f => (CalculationStep)f.GetValue(null)!),
    ];

    [Theory]
    [InlineData("m · A · τ · r", "<mi>m</mi><mo>·</mo><mi>A</mi><mo>·</mo><mi>τ</mi><mo>·</mo><mi>r</mi>")]
    [InlineData("T / (m · A)",
        "<mfrac><mrow><mi>T</mi></mrow><mrow><mi>m</mi><mo>·</mo><mi>A</mi></mrow></mfrac>")]
    [InlineData("m · k²", "<mi>m</mi><mo>·</mo><msup><mrow><mi>k</mi></mrow><mn>2</mn></msup>")]
    [InlineData("κ · R_m", "<mi>κ</mi><mo>·</mo><msub><mi>R</mi><mtext>m</mtext></msub>")]
    public void Formula_OfAStep_BecomesMathematics(string formula, string math) => Assert.Equal(math, MathText.Read(formula, _ => null));

    [Theory]
    [InlineData("of the bolt")]
    [InlineData("area of one shear plane")]
    [InlineData("by grade and size")]
    [InlineData("hub and flange drag, high end only")]
    [InlineData("(m")]
    [InlineData("")]
    public void Words_OfAStep_AreNoMathematics(string formula) => Assert.Null(MathText.Read(formula, _ => null));

    [Fact]
    public void EveryFormula_OfTheLibrary_IsWellFormedMathematicsOrWords()
    {
        string[] formulas = [.. Steps.Select(s => s.Formula)];
        Assert.True(formulas.Length > 50, "the search must see the steps");
        string[] math = [.. formulas.Select(f => MathText.Read(f, _ => null)).OfType<string>()];
        Assert.True(math.Length > formulas.Length / 2, math.Length + " of " + formulas.Length);
        Assert.All(math, m => XElement.Parse("<math>" + m + "</math>"));
    }

    [Fact]
    public void EveryWord_OfAStep_HasSpanish()
    {
        string[] open =
        [
            .. Steps.Where(s => MathText.Symbols(s.Formula) is null && s.IsInput).Select(s => s.Formula).Concat(Steps.Select(s => s.Source))
                .Distinct().Where(w => Texts.Spanish.Name(w) == w && !IsCitation(w)),
        ];
        Assert.True(open.Length == 0, string.Join("\n", open));
    }

    private static bool IsCitation(string words) => words is "Wahl" or "Banno and Ogawa 1979" or ""
        || words.StartsWith("EN ", StringComparison.Ordinal) || words.StartsWith("ISO ", StringComparison.Ordinal);
}
