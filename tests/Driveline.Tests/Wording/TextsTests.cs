using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

public class TextsTests
{
    [Fact]
    public void English_CautionCode_HasWords() =>
        Assert.Contains("stop the engine", Texts.English.Of("caution.stopAndKeyOut"), StringComparison.Ordinal);

    [Fact]
    public void Of_FindingWithoutTemplate_KeepsCodeAndParameters()
    {
        Finding finding = Finding.Of("madeUp", Severity.Note).With("trip", QuantityKind.Torque, 1234.5);
        Assert.Equal("madeUp, trip 1230 N·m", Texts.English.Of(finding));
        Assert.Equal("madeUp, trip 911 lb·ft", Texts.English.Of(finding, DisplayUnits.UsCustomary));
    }

    [Theory]
    [InlineData(double.PositiveInfinity, QuantityKind.Torque, "no known limit")]
    [InlineData(0.0127, QuantityKind.Length, "12.7 mm")]
    [InlineData(0.0004, QuantityKind.Probability, "less than 1 in 1000")]
    [InlineData(293.15, QuantityKind.Temperature, "20.0 °C")]
    public void QuantityWords_Value_ReadsAsPeopleDo(double si, QuantityKind kind, string expected) =>
        Assert.Equal(expected, QuantityWords.Of(si, kind, DisplayUnits.Metric));
}
