using System.Text.RegularExpressions;
using System.Xml.Linq;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Wording;
using static Driveline.Tests.Reports.ReportCases;

namespace Driveline.Tests.Reports;

public class VerdictReportTests
{
    private static readonly ReportOptions Titled = ReportOptions.Default.WithTitle("Brush cutter");

    [Theory]
    [MemberData(nameof(Names), MemberType = typeof(ReportCases))]
    public void AnyForm_AnyVerdict_EndsWithEveryCaution(string name)
    {
        ProtectionVerdict verdict = All[name];
        string[] cautions = [.. verdict.Cautions.Select(c => Texts.English.Of(c.Code))];
        // a bolt adds: support the halves
        Assert.Equal(verdict.Question.Chain.Devices.Any(d => d.Kind == DeviceKind.ShearBolt) ? 6 : 5, cautions.Length);
        string text = OneLine(VerdictText.Of(verdict, Titled));
        Assert.EndsWith("Take care --------- - " + string.Join(" - ", cautions), text, StringComparison.Ordinal);
        Assert.EndsWith("Take care - " + string.Join(" - ", cautions),
            OneLine(VerdictMarkdown.Of(verdict, Titled).Replace("## ", string.Empty, StringComparison.Ordinal)), StringComparison.Ordinal);
        string[] items = [.. Page(verdict).Descendants("ul").Last().Elements("li").Select(li => li.Value)];
        Assert.Equal(cautions, items);
    }

    [Theory]
    [MemberData(nameof(Names), MemberType = typeof(ReportCases))]
    public void Text_AnyVerdict_HasEveryFindingWorstFirstAndNoCode(string name)
    {
        ProtectionVerdict verdict = All[name];
        string text = OneLine(VerdictText.Of(verdict, Titled));
        string notice = text[text.IndexOf("What to notice", StringComparison.Ordinal)..];
        string[] starts = ["- DANGER: ", "- WARNING: ", "- Note: "];

        // One fact about several parts is one line.
        IEnumerable<IGrouping<Severity, string>> expected = verdict.Findings
            .Select((f, k) => (f.Severity, Key: Texts.English.Codes.Contains(f.Code + ".several")
                && (f.Parameters.Count == 1 || Texts.English.Codes.Contains(f.Code + ".each"))
                    ? f.Code + f.Parameter("device")?.Text : "#" + k))
            .Distinct().GroupBy(p => p.Severity, p => p.Key);
        Assert.All(expected, g => Assert.Equal(g.Count(), Regex.Count(notice, Regex.Escape(starts[(int)g.Key]))));
        int[] order = [.. Regex.Matches(notice, "- (DANGER|WARNING|Note): ").Select(m => Array.IndexOf(starts, m.Value))];
        Assert.Equal(order.Order(), order);

        Assert.DoesNotContain('{', text.Replace("{damagedLow}", string.Empty, StringComparison.Ordinal));
        Assert.DoesNotMatch(@"\b(gap|guards|quiet|answer|measure|rung|part|side)\.[A-Za-z]", text);
    }

    [Theory]
    [InlineData("protected", "Protected: it acts before a part is damaged")]
    [InlineData("protected", "it takes 5% more than the strongest shear bolt holds", "2100 / 2000")]
    [InlineData("protected", "Even a weak shear bolt holds 20% more than the highest peak", "1200 / 1000")]
    [InlineData("overlap", "It may not protect")]
    [InlineData("overlap", "A strong shear bolt may hold 24% more than a weak drive tube takes", "2600 / 2100 = 1.238, rounded up")]
    [InlineData("overlap", "may be 12% more than a weak shear bolt holds", "1000 / 900 = 1.111, rounded up")]
    [InlineData("overlap", "STRONGER than what the manual specifies: about 1.89 times", "1700 / 900")]
    [InlineData("unbounded", "no known end")]
    [InlineData("no device", "Nothing in the list would give before a part breaks")]
    [InlineData("nothing known", "No torque is known yet")]
    [InlineData("nothing known", "Not in the order above, because not known: bolt, tube, box.")]
    [InlineData("weaker than work", "Stop: the work is harder than the weakest part can take.")]
    [InlineData("flywheel", "The flywheel lies in between: its stored energy can reach this part")]
    public void Text_Verdict_SaysInPlainWords(string name, string words, string working = "")
    {
        Assert.True(OneLine(VerdictText.Of(All[name], Titled)).Contains(words, StringComparison.Ordinal),
            working + "\n" + VerdictText.Of(All[name]));
    }

    [Fact]
    public void Text_UsCustomary_IsInPoundFeet()
    {
        string text = VerdictText.Of(All["protected"], Titled.WithUnits(DisplayUnits.UsCustomary));
        Assert.Contains("lb·ft", text, StringComparison.Ordinal);
        Assert.DoesNotContain("N·m", text, StringComparison.Ordinal);
        Assert.Contains("738", text, StringComparison.Ordinal);   // 1000 N·m / 1.35582
    }

    [Fact]
    public void Text_HostileName_HasNoControlCharacterAndKeepsItsBraces()
    {
        string text = VerdictText.Of(All["hostile"], Titled.WithTitle(Hostile));
        Assert.DoesNotContain(text, c => (char.IsControl(c) && c != '\n') || c == '\u202E' || char.IsSurrogate(c));
        Assert.Contains("{damagedLow}", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Markdown_HostileName_IsEscaped()
    {
        string markdown = VerdictMarkdown.Of(All["hostile"], Titled.WithTitle(Hostile));
        Assert.DoesNotContain("<b>", markdown, StringComparison.Ordinal);
        Assert.Contains("&lt;b\\>\\|\\`\\*\\_\\[x\\](y)", markdown, StringComparison.Ordinal);
        int[] cells = [.. markdown.Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal))
            .Select(l => l.Replace("\\|", string.Empty, StringComparison.Ordinal).Count(c => c == '|'))];
        Assert.All(cells, n => Assert.Equal(5, n));
    }

    [Fact]
    public void Html_HostileName_IsTextOnly()
    {
        XElement page = Page(All["hostile"]);
        Assert.Empty(page.Descendants("b"));
        Assert.Contains(page.Descendants("li"), li => li.Value.Contains("<b>|`*_[x](y)", StringComparison.Ordinal));
        Assert.Equal(2, page.Descendants(XName.Get("svg", "http://www.w3.org/2000/svg")).Count());   // for a screen and for a phone
        Assert.Empty(page.Descendants("script"));
    }

    [Fact]
    public void AnyForm_ForeignCulture_IsTheSame()
    {
        string before = VerdictText.Of(All["overlap"], Titled) + VerdictHtml.Of(All["overlap"], Titled);
        System.Globalization.CultureInfo old = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(before, VerdictText.Of(All["overlap"], Titled) + VerdictHtml.Of(All["overlap"], Titled));
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = old;
        }
    }

    // The page is written as well-formed XML but for its doctype and the void meta elements.
    private static XElement Page(ProtectionVerdict verdict)
    {
        string html = VerdictHtml.Of(verdict, Titled.WithTitle(Hostile));
        html = html.Replace("<!DOCTYPE html>\n", string.Empty, StringComparison.Ordinal);
        html = System.Text.RegularExpressions.Regex.Replace(html, "<meta [^>]*>", string.Empty);
        return XElement.Parse(html);
    }

    private static string OneLine(string text) =>
        System.Text.RegularExpressions.Regex.Replace(text, @"\s+", " ").Trim();
}
