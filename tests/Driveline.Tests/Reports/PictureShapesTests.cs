using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Driveline.Reports;
using Driveline.Reports.Pictures;
using Driveline.Tests.Cases;
using static Driveline.Tests.Reports.ReportCases;

namespace Driveline.Tests.Reports;

/// <summary>The writer of pictures, and what every picture made with it keeps.</summary>
public class PictureShapesTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(12, "12")]
    [InlineData(0.5, "0.5")]
    [InlineData(-3.25, "-3.25")]
    [InlineData(7.004, "7")]
    [InlineData(99.999, "100")]
    [InlineData(double.NaN, "0")]
    [InlineData(double.PositiveInfinity, "1000000")]
    public void Number_InAPicture_HasTwoDecimalsAtMost(double value, string words) =>
        Assert.Equal(words, new StringBuilder().Number(value).ToString());

    [Theory]
    [InlineData("iii", 3 * 0.222)]    // Helvetica: i is 222 thousandths of the size
    [InlineData("W9", 0.944 + 0.556)] // W 944, digits 556
    public void Width_OfLetters_IsThatOfThePublishedMetricsWithRoomForAnotherFont(string text, double ofSize) =>
        Assert.Equal(ofSize * 10 * 1.08, TextWidths.Of(text, 10, false), 9);

    [Theory]
    [InlineData("")]
    [InlineData("one")]
    [InlineData("a few words that are broken at their blanks, and noneofthemiscutunlessitmust")]
    [InlineData("\U0001F69C\U0001F69C\U0001F69C\U0001F69C\U0001F69C\U0001F69C\U0001F69C\U0001F69C tractors")]
    public void Lines_OfAColumn_FitItAndLoseNothing(string text)
    {
        IReadOnlyList<string> lines = TextWidths.Lines(text, 60, 10, false);
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        Assert.All(lines, line =>
        {
            Assert.InRange(TextWidths.Of(line, 10, false), 0, 60);
            Assert.Equal(line, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(line)));   // no half of a pair
        });
    }

    [Fact]
    public void SlimPath_ManyPoints_StaysWithinATenthOfAPixel()
    {
        var path = new SlimPath(2000);
        double Curve(double x) => 80 * Math.Sin(x / 40) * Math.Exp(-x / 300);
        for (int k = 0; k < 2000; k++)
        {
            path.Add(k * 0.5, Curve(k * 0.5));
        }

        IReadOnlyList<(double X, double Y)> kept = path.Done();
        Assert.InRange(kept.Count, 3, 300);
        Assert.Equal((999.5, Curve(999.5)), kept[^1]);
        for (int k = 0; k < 2000; k++)
        {
            double x = k * 0.5;
            int right = Math.Max(1, Enumerable.Range(0, kept.Count).First(n => kept[n].X >= x));
            ((double X, double Y) a, (double X, double Y) b) = (kept[right - 1], kept[right]);
            Assert.InRange(a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X)) - Curve(x), -0.11, 0.11);
        }
    }

    [Theory]
    [MemberData(nameof(Names), MemberType = typeof(ReportCases))]
    public void Ladder_OnAPhone_IsReadableAndInsideItsFrame(string name) =>
        AssertPhone(TorqueLadderPicture.Svg(All[name], ReportOptions.Default.WithPictureWidth(360).WithTitle(Hostile)));

    [Theory]
    [InlineData("ravensmoor-rock")]
    [InlineData("ravensmoor-clutch-let-in-gently")]
    [InlineData("ravensmoor-pan-on-stump")]
    public void Simulation_OnAPhone_IsReadableAndInsideItsFrame(string name) => AssertPhone(SimulationPicture.Svg(
        DemoCases.Simulation(name).Check!, ReportOptions.Default.WithPictureWidth(360).WithTitle(Hostile)));

    [Fact]
    public void Picture_HasClassesAndNoColourOfItsOwn()
    {
        XElement svg = XElement.Parse(TorqueLadderPicture.Svg(All["overlap"]));
        Assert.All(svg.Descendants().SelectMany(e => e.Attributes()), a =>
        {
            Assert.DoesNotContain("#", a.Value, StringComparison.Ordinal);
            Assert.NotEqual("style", a.Name.LocalName);
            Assert.True(a.Name.LocalName != "class" || a.Value.Split(' ').All(c => c.StartsWith("dl-", StringComparison.Ordinal)), a.Value);
            Assert.True(a.Name.LocalName != "fill" || a.Value == "none", a.Value);
        });
        Assert.Equal(["title", "desc", "style"], svg.Elements().Take(3).Select(e => e.Name.LocalName));
    }

    [Fact]
    public void Fragment_TakesFontAndSchemeOfItsPage()
    {
        string fragment = TorqueLadderPicture.Fragment(All["protected"], ReportOptions.Default);
        Assert.StartsWith("<svg ", fragment, StringComparison.Ordinal);
        Assert.DoesNotContain("font-family", fragment, StringComparison.Ordinal);
        Assert.DoesNotContain("color-scheme:light dark", fragment, StringComparison.Ordinal);
        Assert.Contains("font-family", TorqueLadderPicture.Svg(All["protected"]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(319)]
    [InlineData(2001)]
    [InlineData(double.NaN)]
    public void PictureWidth_OutsideItsRange_IsRefused(double width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ReportOptions.Default.WithPictureWidth(width));

    private static void AssertPhone(string picture)
    {
        XElement svg = XElement.Parse(picture);
        double height = Of(svg, "height");
        foreach (DrawnText text in svg.Descendants().Where(e => e.Name.LocalName == "text").Select(DrawnText.Of))
        {
            double width = TextWidths.Of(text.Words, text.Size, false) / 1.08;
            double left = text.Anchor switch { "middle" => text.X - (width / 2), "end" => text.X - width, _ => text.X };
            Assert.InRange(text.Size, 11, 18);
            Assert.InRange(left, 0, 360);
            Assert.InRange(left + width, 0, 360);
            Assert.InRange(text.Y, 0, height);
        }
    }

    private static double Of(XElement shape, string name) => double.Parse(shape.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
