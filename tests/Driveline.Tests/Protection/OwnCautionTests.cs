using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Protection;

public class OwnCautionTests
{
    private static readonly Caution Signed = Caution.Of("ourShop.signed", Basis.Given("our terms"));

    [Theory]
    [InlineData("")]
    [InlineData("signed")]
    [InlineData("caution.guardsOn")]
    [InlineData("ourShop.signed\n")]
    [InlineData("our shop.signed")]
    public void Caution_OfNoSuchCode_IsRefused(string code) =>
        Assert.Throws<ArgumentException>(() => Caution.Of(code, Basis.Given("our terms")));

    [Fact]
    public void Policy_WithCaution_StandsAfterThoseOfTheLibrary()
    {
        CaseAssessment usual = CaseAssessment.Of(DemoCases.Json("thornbeck-bolt-right"));
        CaseAssessment ours = usual.WithPolicy(ProtectionPolicy.Default.WithCaution(Signed));
        Assert.Equal([.. usual.Verdict().Cautions, Signed], ours.Verdict().Cautions);
        Assert.Equal([.. usual.Choice().Cautions, Signed], ours.Choice().Cautions);
    }

    [Fact]
    public void VerdictJson_WithOwnTexts_WritesTheOwnCaution()
    {
        ProtectionVerdict verdict = CaseAssessment.Of(DemoCases.Json("thornbeck-bolt-right"))
            .WithPolicy(ProtectionPolicy.Default.WithCaution(Signed)).Verdict();
        Texts texts = Texts.Spanish.With(new Dictionary<string, string> { ["ourShop.signed"] = "Con firma del taller." });
        string json = VerdictJson.Of(verdict, ResultOptions.Default.WithTexts(texts)).ToJson();
        Assert.Contains("\"Con firma del taller.\"", json, StringComparison.Ordinal);
    }
}
