using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

public class SpanishQuantityTests
{
    [Theory]
    [InlineData(double.PositiveInfinity, QuantityKind.Torque, "sin límite conocido", "docstring")]
    [InlineData(0.0127, QuantityKind.Length, "12,7 mm", "docstring; 0.0127 m × 1000")]
    [InlineData(1234.5, QuantityKind.Torque, "1230 N·m", "three digits, no group sign")]
    [InlineData(1.5, QuantityKind.Number, "1,50", "three digits")]
    [InlineData(7, QuantityKind.Number, "7", "a whole number has no decimals")]
    [InlineData(3, QuantityKind.Count, "3", "a count has no decimals")]
    [InlineData(293.15, QuantityKind.Temperature, "20,0 °C", "293.15 K − 273.15")]
    [InlineData(0.0009999, QuantityKind.Probability, "menos de 1 de cada 1000", "below 0.001")]
    [InlineData(0.001, QuantityKind.Probability, "0,10 %", "at 0.001 the number is shown")]
    [InlineData(0.999, QuantityKind.Probability, "100 %", "at 0.999 the number is shown, two digits of 99.9")]
    [InlineData(0.9991, QuantityKind.Probability, "más de 999 de cada 1000", "above 0.999")]
    [InlineData(0.25, QuantityKind.Probability, "25 %", "0.25 × 100")]
    public void QuantityWords_Spanish_ReadsAsPeopleDo(double si, QuantityKind kind, string expected, string working)
    {
        Assert.NotEmpty(working);
        Assert.Equal(expected, QuantityWords.Of(si, kind, DisplayUnits.Metric, Language.Spanish));
    }

    [Fact]
    public void QuantityWords_UsCustomary_KeepsTheSymbols() =>
        // 0.0127 m / 0.0254
        Assert.Equal("1/2 in", QuantityWords.Of(0.0127, QuantityKind.Length, DisplayUnits.UsCustomary, Language.Spanish));

    [Theory]
    [InlineData(1.5, "F2", Language.Spanish, "1,50")]
    [InlineData(1.5, "F2", Language.English, "1.50")]
    [InlineData(1500000, "G6", Language.Spanish, "1,5E+06")]
    [InlineData(2, "0.#", Language.Spanish, "2")]
    public void Number_Format_HasTheLanguagesDecimalSign(double value, string format, Language language, string expected) =>
        Assert.Equal(expected, QuantityWords.Number(value, format, language));

    [Fact]
    public void Of_FindingWithoutTemplate_KeepsCodeAndParameters()
    {
        Finding finding = Finding.Of("madeUp", Severity.Note).With("trip", QuantityKind.Length, 0.0127);
        Assert.Equal("madeUp, trip 12,7 mm", Texts.Spanish.Of(finding));
    }

    [Fact]
    public void QuantityWords_NotALanguage_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityWords.Of(1, QuantityKind.Torque, DisplayUnits.Metric, (Language)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Texts.In((Language)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Languages.CodeOf((Language)99));
    }

    [Theory]
    [InlineData(Language.English, "en")]
    [InlineData(Language.Spanish, "es")]
    public void Languages_Code_GoesBothWays(Language language, string code)
    {
        Assert.Equal(code, Languages.CodeOf(language));
        Assert.Equal(language, Languages.Parse(code));
        Assert.Equal(language, Texts.In(language).Language);
    }

    [Fact]
    public void Languages_All_IsTheEnumeration() => Assert.Equal(Enum.GetValues<Language>(), Languages.All);

    [Theory]
    [InlineData("ES")]
    [InlineData("tlh")]
    [InlineData("")]
    public void Languages_UnknownCode_IsRefusedWithTheHeld(string code)
    {
        Assert.False(Languages.TryParse(code, out _));
        Assert.Contains("held: en, es", Assert.Throws<ArgumentException>(() => Languages.Parse(code)).Message, StringComparison.Ordinal);
    }
}
