using System.Text.RegularExpressions;
using Driveline.Reports.Documents;

namespace Driveline.Tests.Reports;

public class UnbrokenTests
{
    // The rule as a pattern: a blank between a digit and a whole unit, or between inches and their fraction.
    private static readonly Regex Rule = new(
        @"(?<=\d) (?=(?:N·m|lb·ft|ft·lbf|lbf|lb|mm|cm|m|in|ft|ksi|psi|MPa|kPa|kW|hp|rpm|min⁻¹|s|ms|°C|°F|%|J|N|kg·m²|lb·ft²"
            + @"|USD|EUR)(?![\p{L}\p{N}]))|(?<=\d) (?=\d+/\d)",
        RegexOptions.CultureInvariant);

    private static readonly string[] Pieces =
    [
        "1", "12", "1.5", "/2", "3/4", "N", "N·m", "m", "mm", "min⁻¹", "s", "in", "inches", "lb", "lb·ft", "lb·ft²",
        "%", "°C", "kg·m²", ".",
        ",", "x", "é", "²", "\u00A0", " ", " ", " ", " ",
    ];

    [Theory]
    [InlineData("takes 1390 N·m, at 540 rpm.", "takes 1390\u00A0N·m, at 540\u00A0rpm.")]
    [InlineData("1 3/4 in", "1\u00A03/4\u00A0in")]
    [InlineData("3 inches of 5 shafts", "3 inches of 5 shafts")]
    [InlineData("12 min⁻¹", "12\u00A0min⁻¹")]
    [InlineData("no number m", "no number m")]
    public void Of_NumbersAndUnits_HoldTogether(string text, string held) => Assert.Equal(held, Unbroken.Of(text));

    [Fact]
    public void Of_AnyPiecesInAnyOrder_FollowsTheRule()
    {
        var random = new Random(7);
        for (int n = 0; n < 20_000; n++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(1, 12)).Select(_ => Pieces[random.Next(Pieces.Length)]));
            Assert.Equal(Rule.Replace(text, "\u00A0"), Unbroken.Of(text));
        }
    }
}
