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
    [InlineData("svg{display:block;max-width:100%;height:auto}", "a picture shrinks to its page")]
    [InlineData("figure{margin:0}", "a browser's 40 px on both sides would be lost on a phone")]
    [InlineData("color-scheme:light dark", "a dark screen gets a dark page")]
    [InlineData("@media print{", "paper")]
    [InlineData("figure,table,tr,li,.lead{break-inside:avoid}", "no picture and no table in two halves")]
    [InlineData("thead{display:table-header-group}", "a table longer than a sheet repeats its heads")]
    public void Page_Style_HasItsRule(string rule, string why) =>
        Assert.True(VerdictHtml.Of(All["protected"]).Contains(rule, StringComparison.Ordinal), why);

    [Fact]
    public void Page_Table_HasHeadsWithScope()
    {
        string html = VerdictHtml.Of(All["protected"]);
        Assert.Contains("<thead>\n<tr><th scope=\"col\">", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<th>", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("protected", "good")]
    [InlineData("overlap", "careful")]
    [InlineData("nothing known", "careful")]
    [InlineData("too strong", "bad")]
    public void Page_Lead_HasTheColourOfTheVerdict(string name, string tone) =>
        Assert.Contains("<p class=\"lead " + tone + "\">", VerdictHtml.Of(All[name]), StringComparison.Ordinal);

    private static void AssertWhole(XElement svg)
    {
        double[] box = [.. svg.Attribute("viewBox")!.Value.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
        double[] size = [double.Parse(svg.Attribute("width")!.Value, CultureInfo.InvariantCulture),
            double.Parse(svg.Attribute("height")!.Value, CultureInfo.InvariantCulture)];
        Assert.Equal([0, 0, .. size], box);
    }
}
