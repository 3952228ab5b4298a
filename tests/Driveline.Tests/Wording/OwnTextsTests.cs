using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

public class OwnTextsTests
{
    [Fact]
    public void InLanguage_WithADecimalSign_WritesItAndKeepsTheRest()
    {
        Texts german = Texts.English.InLanguage("de", [new("quantity.decimalSign", ","), new("name.shear bolt", "Scherschraube")]);
        Assert.Equal("de", german.LanguageCode);
        Assert.Equal("1,25 mm", QuantityWords.Of(0.00125, QuantityKind.Length, DisplayUnits.Metric, german));
        Assert.Equal("Scherschraube", german.Name("shear bolt"));
        Assert.Equal(Texts.English.Of("caution.guardsOn"), german.Of("caution.guardsOn"));
        Assert.Equal("1.25 mm", QuantityWords.Of(0.00125, QuantityKind.Length, DisplayUnits.Metric, Texts.English));
    }

    [Fact]
    public void With_CodeOfTheCallers_FillsItsPlaces()
    {
        Texts own = Texts.English.With([new("ourShop.seen", "{name} seen at {torque}")]);
        Finding seen = Finding.Of("ourShop.seen", Severity.Note).With("name", "bolt").With("torque", QuantityKind.Torque, 650);
        Assert.Equal("bolt seen at 650 N·m", own.Of(seen));
    }

    [Theory]
    [InlineData("en", "quantity.decimalSign", ",", "none that is held here (en, es); got \"en\"")]
    [InlineData("DE", "quantity.decimalSign", ",", "got \"DE\"")]
    [InlineData("de", "decimalSign", ",", "area.name in letters and digits; got \"decimalSign\"")]
    [InlineData("de", "caution.guardsOn", " ", "must be 1 to 4000 characters")]
    [InlineData("de", "caution.guardsOn", "a\nb", "none of them control characters")]
    [InlineData("de", "caution.guardsOn", "Schutz an {wo}", "must have the places none; got {wo}")]
    public void InLanguage_NotAsWanted_SaysWhatIsWantedAndReceived(string language, string code, string text, string words)
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Texts.English.InLanguage(language, [new(code, text)]));
        Assert.Contains(words, refused.Message, StringComparison.Ordinal);
    }
}
