using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

public class LetterHeadTests
{
    private const string Case = """
        {
          "notes": "It broke.", "date": "2026-05-04",
          "letter": { "to": "Ms Hale", "from": "The yard", "machine": "Cutter 60", "serial": "A-17", "reference": "L-9" },
          "complaint": { "symptom": "breaksOften", "asks": ["oneGradeUp", "otherMachine"] }
        }
        """;

    [Theory]
    [InlineData(Language.English, DisplayUnits.Metric, "4 May 2026. Our reference: L-9. Machine: Cutter 60. Serial number: A-17.",
        "Dear Ms Hale,", "You wrote: “It broke.”", "Yours sincerely, The yard")]
    [InlineData(Language.English, DisplayUnits.UsCustomary, "May 4, 2026.", "Dear Ms Hale,", "No. A stronger bolt",
        "Would another machine pay?")]
    [InlineData(Language.Spanish, DisplayUnits.Metric, "4 de mayo de 2026. Nuestra referencia: L-9.", "Para Ms Hale:",
        "Usted escribe: «It broke.»", "Un cordial saludo, The yard")]
    public void Letter_WhatIsStated_IsUsed(Language language, DisplayUnits units, params string[] expected)
    {
        string text = AdviceText.Of(Advice(Case), ReportOptions.Default.WithLanguage(language).WithUnits(units));
        Assert.All(expected, e => Assert.Contains(e, text.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal));
    }

    [Fact]
    public void Letter_NothingStated_HasNoHead()
    {
        string text = AdviceText.Of(Advice("""{ "complaint": { "symptom": "breaksOften" } }"""));
        Assert.All(new[] { "Dear", "You wrote", "Machine:", "Yours", "You also asked" },
            w => Assert.DoesNotContain(w, text, StringComparison.Ordinal));
    }

    [Fact]
    public void OwnWords_Long_EndWithASentenceAndStayShort()
    {
        string words = string.Join(" ", Enumerable.Repeat("The bolt broke once more in grass.", 40));
        string text = AdviceText.Of(OwnerAdvice.On(Complaint.Of(Symptom.BreaksOften)).WithHead(LetterHead.Empty.WithOwnWords(words)));
        // Seven words a sentence: six sentences are 42 words, a seventh would pass 45.
        Assert.Equal(6, text.Split("The bolt broke").Length - 1);
        Assert.Contains("grass.”", text, StringComparison.Ordinal);
    }

    // Markup, line breaks, an escape sequence, an override of the writing direction and a lone surrogate.
    [Fact]
    public void HostileTexts_InEveryForm_StayPlainText()
    {
        const string Hostile = "<b>*x*</b>\u001b[31m\n# h [a](b) \u202Egnp\u2066 \uD800 &amp; |";
        OwnerAdvice advice = OwnerAdvice.On(Complaint.Of(Symptom.BreaksOften)).WithHead(LetterHead.Empty
            .WithTo(Hostile).WithFrom(Hostile).WithMachine(Hostile).WithSerial(Hostile).WithReference(Hostile).WithOwnWords(Hostile));
        string text = AdviceText.Of(advice);
        string html = AdviceHtml.Of(advice);
        string markdown = AdviceMarkdown.Of(advice);
        Assert.All(new[] { text, html, markdown }, t => Assert.DoesNotMatch("[\u001b\u202E\u2066\uD800]", t));
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;*x*&lt;/b&gt;", html, StringComparison.Ordinal);
        Assert.Contains("&amp;amp;", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"(?<!\\)\[a\]|(?<!\\)\*x|<b>|\n# h", markdown);
        Assert.DoesNotContain("\n# h", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Asks_OneGradeUp_IsNeverAllowedBeyondTheManual()
    {
        OwnerAdvice soft = OwnerAdvice.On(Complaint.Of(Symptom.BreaksOften).With(OwnerFacts.GradeAgainstManual.Softer))
            .WithAsks([OwnerAsk.OneGradeUp]);
        Assert.Equal("answer.oneGradeUp.toTheManuals", Assert.Single(soft.Answers).Answer.Code);
        OwnerAdvice other = OwnerAdvice.On(Complaint.Of(Symptom.BreaksOften))
            .WithAsks([OwnerAsk.OneGradeUp, OwnerAsk.NotKnown, OwnerAsk.OneGradeUp]);
        Assert.Equal("answer.oneGradeUp.no", Assert.Single(other.Answers).Answer.Code);
    }

    [Theory]
    [InlineData("[\"oneGradUp\"]", "did you mean \"oneGradeUp\"?")]
    [InlineData("\"oneGradeUp\"", "a list, each one of tractorHurt")]
    [InlineData("[3]", "one of tractorHurt")]
    public void Asks_NotAListOfChoices_IsRefused(string asks, string problem)
    {
        CaseReadResult read = CaseReader.Read("{ \"complaint\": { \"asks\": " + asks + " } }");
        Assert.Contains(problem, Assert.Single(read.Errors).Message, StringComparison.Ordinal);
    }

    private static OwnerAdvice Advice(string json) => CaseAdvice.Of(CaseReader.Read(json).Case!).Advice!;
}
