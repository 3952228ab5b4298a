using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

/// <summary>A margin is cut, never rounded up: two decimals, from 2 on one, from 20 on none.</summary>
public class MarginDigitsTests
{
    [Theory]
    [InlineData(1.0358, "1.03")]
    [InlineData(0.9999, "0.99")]
    [InlineData(1.15, "1.15")]       // 1.15 * 100 is 114.99999999999999 in binary
    [InlineData(1.9999, "1.99")]
    [InlineData(2.0, "2.0")]
    [InlineData(2.389, "2.3")]
    [InlineData(19.99, "19.9")]
    [InlineData(20.9, "20")]
    [InlineData(0.004, "0.00")]
    public void Margin_OfAnySize_IsCut(double margin, string shown) =>
        Assert.Equal(shown, QuantityWords.Of(margin, QuantityKind.Margin, DisplayUnits.Metric));
}
