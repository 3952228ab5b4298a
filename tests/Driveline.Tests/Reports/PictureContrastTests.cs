using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Driveline.Reports;

namespace Driveline.Tests.Reports;

/// <summary>Words and lines of every picture stand out from the paper, on a light and on a dark screen (WCAG 2.1: 1.4.3, 1.4.11).</summary>
public partial class PictureContrastTests
{
    private const double OfWords = 4.5;
    private const double OfLines = 3;

    public static TheoryData<string> Kinds => [.. PageKinds.Pictures.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Picture_WordsAndLines_StandOutFromThePaper(string kind)
    {
        XElement svg = XElement.Parse(PageKinds.Of(PageKinds.Pictures[kind], kind, "svg", ReportOptions.Default));
        Dictionary<string, (double Light, double Dark)> inks = Inks(svg.Elements().First(e => e.Name.LocalName == "style").Value);
        (double light, double dark) = inks["dl-f-paper"];
        foreach (XElement shape in svg.Descendants())
        {
            string name = shape.Name.LocalName;
            if (name is not ("text" or "line" or "polyline") || (string?)shape.Attribute("class") is not { } ink || ink == "dl-s-grid"
                || ink == "dl-s-paper")
            {
                continue;
            }

            double least = name == "text" ? OfWords : OfLines;
            Assert.True(Ratio(inks[ink].Light, light) >= least, ink + " on light paper");
            Assert.True(Ratio(inks[ink].Dark, dark) >= least, ink + " on dark paper");
        }
    }

    /// <summary>Curves and levels of one chart differ in more than their colour, unless one lies across the other.</summary>
    [Theory]
    [InlineData("temperature")]
    [InlineData("costs")]
    public void Chart_EachOfItsLines_HasDashesOfItsOwn(string kind)
    {
        XElement svg = XElement.Parse(PageKinds.Of(PageKinds.Pictures[kind], kind, "svg", ReportOptions.Default));
        IGrouping<string, string>[] lines =
        [
            .. svg.Descendants().Where(e => e.Name.LocalName == "polyline")
                .GroupBy(e => (string?)e.Attribute("stroke-dasharray") ?? "solid", e => (string)e.Attribute("class")!),
        ];
        Assert.True(lines.Length > 2);
        Assert.All(lines, l => Assert.Single(l.Distinct()));
    }

    private static Dictionary<string, (double, double)> Inks(string style) => Rule().Matches(style).ToDictionary(
        m => m.Groups["name"].Value, m => (Luminance(m.Groups["light"].Value), Luminance(m.Groups["dark"].Value)));

    private static double Ratio(double a, double b) => (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);

    private static double Luminance(string color)
    {
        string hex = color.Length == 4 ? string.Concat(color.Skip(1).Select(c => new string(c, 2))) : color[1..];
        double[] parts =
        [
            .. Enumerable.Range(0, 3)
                .Select(k => int.Parse(hex.AsSpan(2 * k, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
                .Select(c => c <= 0.03928 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)),
        ];
        return (0.2126 * parts[0]) + (0.7152 * parts[1]) + (0.0722 * parts[2]);
    }

    [GeneratedRegex(@"\.(?<name>dl-[fs]-[a-z-]+)\{[^}]*light-dark\((?<light>#[0-9a-f]+),(?<dark>#[0-9a-f]+)\)\}")]
    private static partial Regex Rule();
}
