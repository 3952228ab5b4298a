using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

/// <summary>How an American shop writes quantities.</summary>
public class UsWordsTests
{
    [Theory]
    [InlineData(1.75, "1 3/4 in", "exact")]
    [InlineData(0.375, "3/8 in", "exact")]
    [InlineData(0.5, "1/2 in", "exact")]
    [InlineData(2, "2 in", "exact")]
    [InlineData(0.015625, "1/64 in", "below a quarter of an inch 64ths count")]
    [InlineData(0.09375, "3/32 in", "6/64")]
    [InlineData(0.589, "0.589 in", "9/16 is 0.5625, 4.5 % off")]
    [InlineData(1.18110236, "1.18 in", "30 mm; 1 3/16 is 0.5 % off")]
    [InlineData(0.3149606, "0.315 in", "8 mm; 5/16 is 0.8 % off")]
    [InlineData(0, "0 in", "nothing")]
    public void Length_InInches_IsAFractionWhereOneIsNear(double inches, string expected, string working) =>
        Assert.True(expected == Words(inches * 0.0254, QuantityKind.Length), working + ": " + Words(inches * 0.0254, QuantityKind.Length));

    [Theory]
    [InlineData(1390, "1,390 lb·ft")]
    [InlineData(999, "999 lb·ft")]
    [InlineData(12345, "12,300 lb·ft")]
    [InlineData(82.1, "82.1 lb·ft")]
    public void Torque_InUsUnits_IsGroupedByThousands(double poundFeet, string expected) =>
        Assert.Equal(expected, Words(poundFeet * 1.3558179483314, QuantityKind.Torque));

    // In Spanish the comma of 1,390 would be the decimal sign.
    [Fact]
    public void Torque_InSpanish_HasNoComma() => Assert.Equal(
        "1390 lb·ft", QuantityWords.Of(1390 * 1.3558179483314, QuantityKind.Torque, DisplayUnits.UsCustomary, Language.Spanish));

    [Theory]
    [InlineData(0.000374, "0.374 ms")]
    [InlineData(0.0999, "99.9 ms")]
    [InlineData(0.1, "0.100 s")]
    [InlineData(0, "0 s")]
    public void Time_Short_IsInMilliseconds(double seconds, string expected) => Assert.Equal(expected, Words(seconds, QuantityKind.Time));

    [Fact]
    public void Probability_InEnglish_HasNoBlank() => Assert.Equal("54%", Words(0.54, QuantityKind.Probability));

    [Fact]
    public void CodeWithAFigure_InUsUnits_HasItsOwnText()
    {
        Assert.Contains("300 ft", Texts.English.Of("caution.thrownObjects", DisplayUnits.UsCustomary), StringComparison.Ordinal);
        Assert.Contains("90 m", Texts.English.Of("caution.thrownObjects", DisplayUnits.Metric), StringComparison.Ordinal);
        Assert.Contains("300 ft", Texts.English.Of(
            Finding.Of("caution.thrownObjects", Severity.Note), DisplayUnits.UsCustomary), StringComparison.Ordinal);
        Assert.Equal(Texts.English.Of("caution.guardsOn"), Texts.English.Of("caution.guardsOn", DisplayUnits.UsCustomary));
    }

    private static string Words(double si, QuantityKind kind) => QuantityWords.Of(si, kind, DisplayUnits.UsCustomary);
}
