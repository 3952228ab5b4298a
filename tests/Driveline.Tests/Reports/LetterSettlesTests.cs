using Driveline.Advice;
using Driveline.Reports;
using Driveline.Tests.Cases;

namespace Driveline.Tests.Reports;

/// <summary>A letter asks for nothing that its own answers have settled.</summary>
public class LetterSettlesTests
{
    private const string Settle = "To settle it, first:";

    [Theory]
    [InlineData("cranley-baler-flywheel")]     // both answers are Yes
    [InlineData("thornbeck-seized-hub")]       // No: the hub must be freed, whatever else is measured
    [InlineData("hollinmoor-no-bolt-fits")]
    [InlineData("fenwick-auger-plain-bolt")]
    public void SheetD_OfAnsweredQuestions_NamesNothingToSettle(string demo) =>
        Assert.DoesNotContain(Settle, Letter(demo), StringComparison.Ordinal);

    [Theory]
    [InlineData("ashby-lane-facts-missing")]
    [InlineData("millbrook-feed-auger")]
    public void SheetD_OfAnOpenQuestion_SaysWhatSettlesIt(string demo) => Assert.Contains(Settle, Letter(demo), StringComparison.Ordinal);

    [Fact]
    public void Letter_OfAPlainCause_AsksForNoOtherFault()
    {
        string text = Letter("saltmere-oval-holes");
        Assert.Contains("One thing is plain: worn holes", text, StringComparison.Ordinal);
        Assert.DoesNotContain("diameter: as in the manual", text, StringComparison.Ordinal);
        Assert.Contains("what does the manual name?", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("thornbeck-too-soft")]
    [InlineData("wickerby-clutch-oiled")]
    public void Letter_WithoutPricesOfTheCase_NamesTheCurrencyOfItsGuess(string demo)
    {
        OwnerAdvice advice = DemoCases.Advice(demo).Advice!;
        Assert.True(advice.ArePricesGuessed);
        string text = Letter(demo)
            .Replace("an hour of work at $15 to $90, a bolt at 50 cents to $12", string.Empty, StringComparison.Ordinal);
        Assert.DoesNotContain("$", text, StringComparison.Ordinal);
        Assert.Contains("USD", text, StringComparison.Ordinal);
    }

    private static string Letter(string demo) => string.Join(
        " ",
        AdviceText.Of(DemoCases.Advice(demo).Advice!, ReportOptions.Default).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
