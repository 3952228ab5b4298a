using System.Text.RegularExpressions;
using Driveline.Advice;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>An owner reads one page: its length and its sentences are held to what he reads at a stretch.</summary>
public partial class LetterPageTests
{
    public static TheoryData<string, Language> Letters
    {
        get
        {
            var data = new TheoryData<string, Language>();
            foreach (string name in DemoCases.Names)
            {
                data.Add(name, Language.English);
                data.Add(name, Language.Spanish);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Page_OfADemo_IsShort(string name, Language language)
    {
        string page = Page(name, language, " ");
        int words = Word().Count(page);
        int most = language == Language.English ? 350 : 420;
        Assert.True(words <= most, name + ": " + words + " words; at most " + most);
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Page_OfADemo_HasSentencesThatAreReadAtOnce(string name, Language language)
    {
        string[] sentences = [.. SentenceEnd().Split(Page(name, language, ". ")).Select(s => s.Trim()).Where(s => Word().IsMatch(s))];
        double mean = sentences.Average(s => Word().Count(s));
        Assert.True(mean <= (language == Language.English ? 15 : 18), name + ": on average " + mean + " words a sentence");
        Assert.Empty(sentences.Where(s => Word().Count(s) > 30).Select(s => name + ": " + s));
    }

    // Title and cautions do not count; a list's items are sentences of their own.
    private static string Page(string name, Language language, string between)
    {
        OwnerAdvice advice = DemoCases.Advice(name).Advice!;
        string text = AdviceText.Of(advice, ReportOptions.Default.WithLanguage(language));
        string cautions = "\n" + Texts.In(language).Of("report.cautions") + "\n";
        string page = text.Substring(0, text.IndexOf(cautions, StringComparison.Ordinal));
        return LineBreak().Replace(ListItem().Replace(page, between), " ");
    }

    [GeneratedRegex(@"[\p{L}\p{N}][^\s]*")]
    private static partial Regex Word();

    [GeneratedRegex(@"[.!?](?:\s+|$)")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"\n\s*\n|\n(?:- |\d+\. )|\n-{4,}\n")]
    private static partial Regex ListItem();

    [GeneratedRegex(@"\s*\n\s*")]
    private static partial Regex LineBreak();
}
