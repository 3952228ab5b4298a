using System.Text.RegularExpressions;
using Driveline.Advice;
using Driveline.Findings;
using Driveline.Protection;
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

    [Theory]
    [MemberData(nameof(Letters))]
    public void Page_OfADemo_SaysThatItProtectsOfAYesAlone(string name, Language language)
    {
        int said = Regex.Count(Page(name, language, " "), Regex.Escape(Texts.In(language).Of("letter.after.guards")));
        Assert.True(said <= DemoCases.Advice(name).Advice!.Remedies.Count(r => r.After?.Guards == Answer.Yes));
    }

    [Fact]
    public void Page_WithoutAComplaint_NamesTheSeenFaultAndMendsIt()
    {
        string page = Page("wickerby-clutch-oiled", Language.English, " ");
        Assert.Contains("One thing is plain: oil on the clutch facings.", page, StringComparison.Ordinal);
        Assert.Contains("Clean or renew the linings.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("change nothing", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("Don't change anything", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Page_ThatIsNoGoOn_NeverSaysThatNothingNeedsToChange(string name, Language language)
    {
        bool goesOn = GoodAdvice.Of(name).Standing.State == StandingState.GoOn;
        string calm = Texts.In(language).Of("letter.do.noSymptom");
        Assert.True(goesOn || !Page(name, language, " ").Contains(calm, StringComparison.Ordinal), name + ": \"" + calm + "\"");
    }

    [Theory]
    [InlineData("dunmarsh-clutch-rusted")]
    [InlineData("hay-bottom-smoking-clutch")]
    public void Page_OfAStop_NeverSaysToChangeNothing(string name)
    {
        Assert.Equal(StandingState.Stop, DemoCases.Advice(name).Advice!.Standing.State);
        string page = Page(name, Language.English, " ");
        Assert.Contains("Leave it standing until what is named above is put right.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Don't change anything yet", page, StringComparison.Ordinal);
        Assert.DoesNotContain("It may be a clutch stuck", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Letter_ThatSpeaksOfADanger_NamesEveryDanger(string name, Language language)
    {
        OwnerAdvice advice = DemoCases.Advice(name).Advice!;
        string text = LineBreak().Replace(AdviceText.Of(advice, ReportOptions.Default.WithLanguage(language)), " ");
        Assert.All(
            advice.Verdict?.Findings.Where(f => f.Severity == Severity.Danger) ?? [],
            f => Assert.True(
                text.Contains(CleanText(Texts.In(language).Of(f)), StringComparison.Ordinal)
                || text.Contains(CleanText(Texts.In(language).Of(AsOneOfSeveral(f))), StringComparison.Ordinal),
                name + ": " + Texts.In(language).Of(f)));
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Page_OfADemo_NamesAllThatMustBeSettled(string name, Language language)
    {
        Standing standing = DemoCases.Advice(name).Advice!.Standing;
        string page = Page(name, language, " ");
        Assert.All(
            standing.Reasons.Where(r => r.Why.Code is not (StandingFindings.Complaint or StandingFindings.Dangers)),
            r => Assert.Contains(Texts.In(language).Of(LiftOf(r, name)), page, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Page_WithADangerBesideItsStanding_SaysTheDangerOrWhereItIs(string name, Language language)
    {
        OwnerAdvice advice = DemoCases.Advice(name).Advice!;
        string page = Page(name, language, " ");
        Texts texts = Texts.In(language);
        Assert.True(
            !advice.Standing.Has(StandingFindings.Dangers)
                || advice.Verdict!.Findings.Where(f => f.Severity == Severity.Danger).All(f => page.Contains(
                    texts.Of("severity.Danger") + ": " + CleanText(texts.Of(f)), StringComparison.Ordinal))
                || page.Contains(texts.Of("letter.standing.dangers"), StringComparison.Ordinal),
            page);
    }

    [Fact]
    public void Page_OfAnAugerWhoseBoltStandsOut_SaysSo() => Assert.Contains(
        "The bolt stands out of its hub", Page("fenwick-auger-plain-bolt", Language.English, " "), StringComparison.Ordinal);

    // The owner is told to leave it as it is; what a stronger one would have to hold would contradict that.
    [Theory]
    [InlineData("larkfield-soft-root")]
    [InlineData("tarn-hollow-baler-not-measured")]
    [InlineData("ravensmoor-clutch-dropped-in")]
    public void Page_WhoseStepIsAHabit_AsksForNoOtherProtection(string name)
    {
        string page = Page(name, Language.English, " ");
        Assert.DoesNotContain("Your work may reach", page, StringComparison.Ordinal);
        Assert.DoesNotContain("That alone is not enough", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hay-bottom-smoking-clutch", "take the clutch apart")]
    [InlineData("wickerby-clutch-too-hot", "take the clutch apart")]
    [InlineData("wickerby-clutch-oiled", "take the clutch apart")]
    [InlineData("hay-bottom-silent-clutch", "make the slip test on Sheet C")]
    [InlineData("dunmarsh-clutch-never-slipped", "make the slip test on Sheet C")]
    public void Page_OfAClutchInDoubt_SendsToTheSheetThatSettlesIt(string name, string step) =>
        Assert.Contains(step, Page(name, Language.English, " "), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Letters))]
    public void Page_WithoutAComplaint_SeeksNoCauseOfIt(string name, Language language)
    {
        OwnerAdvice advice = DemoCases.Advice(name).Advice!;
        string text = AdviceText.Of(advice, ReportOptions.Default.WithLanguage(language));
        Assert.Equal(
            advice.Diagnosis.Complaint.Symptom != Symptom.NotKnown,
            text.Contains("\n" + Texts.In(language).Of("letter.causes") + "\n", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Letters))]
    public void Letter_OfADemo_NeverSaysThatItsPriceIsUnknown(string name, Language language) => Assert.DoesNotContain(
        Texts.In(language).Of("letter.cost.notKnown"),
        AdviceText.Of(DemoCases.Advice(name).Advice!, ReportOptions.Default.WithLanguage(language)),
        StringComparison.Ordinal);

    private static Finding AsOneOfSeveral(Finding finding) => finding.Parameters.Aggregate(
        Finding.Of(finding.Code + ".each", Severity.Note),
        (each, p) => p.Text is { } text ? each.With(p.Name, text) : each.With(p.Name, p.Kind, p.Value));

    private static string LiftOf(StandingReason reason, string name) =>
        reason.Why.Code == StandingFindings.GuardsNotKnown && DemoCases.Advice(name).Advice!.Verdict is null
            ? "letter.standing.guardsNotKnown" : reason.LiftCode;

    private static string CleanText(string text) => LineBreak().Replace(text, " ");

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
