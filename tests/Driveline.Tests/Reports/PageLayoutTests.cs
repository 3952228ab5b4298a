using System.Globalization;
using System.Xml.Linq;
using Driveline.Reports;
using Driveline.Tests.Cases;
using static Driveline.Tests.Reports.ReportCases;

namespace Driveline.Tests.Reports;

/// <summary>What keeps pages and pictures whole on a phone, on a screen and on paper.</summary>
public class PageLayoutTests
{
    [Theory]
    [MemberData(nameof(Names), MemberType = typeof(ReportCases))]
    public void Picture_InAPage_HasAViewBoxOfItsSize(string name)
    {
        string html = VerdictHtml.Of(All[name]);
        int start = html.IndexOf("<svg", StringComparison.Ordinal);
        int end = html.IndexOf("</svg>", StringComparison.Ordinal) + 6;
        AssertWhole(XElement.Parse(html[start..end]));
    }

    [Theory]
    [MemberData(nameof(Names), MemberType = typeof(ReportCases))]
    public void Ladder_AsAFile_HasAViewBoxOfItsSize(string name) => AssertWhole(XDocument.Parse(TorqueLadderPicture.Svg(All[name])).Root!);

    [Fact]
    public void Simulation_AsAFile_HasAViewBoxOfItsSize() =>
        AssertWhole(XDocument.Parse(SimulationPicture.Svg(DemoCases.Simulation("ravensmoor-rock").Check!)).Root!);

    [Theory]
    [InlineData(".dl-pic{display:block;max-width:100%;height:auto}", "a picture shrinks to its page")]
    [InlineData(".dl-report figure{margin:1em 0", "a browser's 40 px on both sides would be lost on a phone")]
    [InlineData("color-scheme:light dark", "a dark screen gets a dark page")]
    [InlineData("@media print{", "paper")]
    [InlineData(".dl-report figure,.dl-report table,.dl-report tr,.dl-report li,.dl-lead", "no picture and no table in two halves")]
    [InlineData(".dl-sheet{break-before:page}", "each sheet on paper of its own")]
    [InlineData("thead{display:table-header-group}", "a table longer than a sheet repeats its heads")]
    [InlineData("counter(page) \" / \" counter(pages)", "numbered pages")]
    public void Page_Style_HasItsRule(string rule, string why) =>
        Assert.True(VerdictHtml.Of(All["protected"]).Contains(rule, StringComparison.Ordinal), why);

    [Fact]
    public void Page_Table_HasHeadsWithScope()
    {
        string html = VerdictHtml.Of(All["protected"]);
        Assert.Contains("<thead>\n<tr><th scope=\"col\">", html, StringComparison.Ordinal);
        Assert.Contains("<tr><th scope=\"row\">", html, StringComparison.Ordinal);
        Assert.Equal(Count(html, "<table"), Count(html, "<caption class=\"dl-sr\">"));
        Assert.DoesNotContain("<th>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_Head_IsFilledInOrLeftToBe()
    {
        string html = VerdictHtml.Of(All["protected"], ReportOptions.Default.WithHead(
            ReportHead.Empty.WithCustomer("<i>" + new string('x', 10000)).WithDate("27 November 2026")));
        Assert.Contains("<dt>Date</dt><dd>27 November 2026</dd>", html, StringComparison.Ordinal);
        Assert.Contains("<dt>Dealer</dt><dd>&#160;</dd>", html, StringComparison.Ordinal);
        Assert.Contains("<dt>Customer</dt><dd>&lt;i&gt;xxx", html, StringComparison.Ordinal);
        Assert.InRange(html.Length, 1000, 100000);
    }

    [Fact]
    public void Page_StepList_HasABoxForEachStep()
    {
        string html = AdviceHtml.Of(DemoCases.Advice("larkfield-soft-bolts").Advice!);
        int from = html.IndexOf("Sheet A", StringComparison.Ordinal);
        int steps = html.IndexOf("<ol class=\"dl-steps\">", from, StringComparison.Ordinal);
        string list = html[steps..html.IndexOf("</ol>", steps, StringComparison.Ordinal)];
        Assert.InRange(Count(list, "<li>"), 15, 25);
        Assert.Equal(Count(list, "<li>"), Count(list, "<li><label><input type=\"checkbox\"> "));
        Assert.Contains("<h2 class=\"dl-sheet\">Sheet A", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Fragment_HasPrefixedClassesAloneAndNoPageAroundIt()
    {
        string part = VerdictHtml.Fragment(All["overlap"], ReportOptions.Default);
        Assert.StartsWith("<section class=\"dl-report\" lang=\"en\">", part, StringComparison.Ordinal);
        Assert.EndsWith("</section>\n", part, StringComparison.Ordinal);
        Assert.DoesNotContain("<body", part, StringComparison.Ordinal);
        Assert.DoesNotContain("font-family", part, StringComparison.Ordinal);
        foreach (string classes in part.Split("class=\"").Skip(1).Select(t => t[..t.IndexOf('"', StringComparison.Ordinal)]))
        {
            Assert.All(classes.Split(' '), c => Assert.StartsWith("dl-", c, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("<script>alert(1)</script>", "&lt;script&gt;")]
    [InlineData("a \" quote ' and & more", "a &quot; quote &#39; and &amp; more")]
    [InlineData("\u202E\u05D0\u05D1", "\u05D0\u05D1")]
    [InlineData("\U0001F69C tractor", "\U0001F69C tractor")]
    public void Page_HostileTitle_IsText(string title, string shown)
    {
        string html = VerdictHtml.Of(All["protected"], ReportOptions.Default.WithTitle(title));
        Assert.Contains("<h1>" + shown, html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.DoesNotContain("\u202E", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("protected", "good")]
    [InlineData("overlap", "careful")]
    [InlineData("nothing known", "careful")]
    [InlineData("too strong", "bad")]
    public void Page_Lead_HasTheColourOfTheVerdict(string name, string tone) =>
        Assert.Contains("<p class=\"dl-lead dl-" + tone + "\"><strong class=\"dl-word\">", VerdictHtml.Of(All[name]),
            StringComparison.Ordinal);

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    private static void AssertWhole(XElement svg)
    {
        double[] box = [.. svg.Attribute("viewBox")!.Value.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
        double[] size = [double.Parse(svg.Attribute("width")!.Value, CultureInfo.InvariantCulture),
            double.Parse(svg.Attribute("height")!.Value, CultureInfo.InvariantCulture)];
        Assert.Equal([0, 0, .. size], box);
    }
}
