using System.Globalization;
using System.Xml.Linq;
using Driveline.Chains;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Wording;
using static Driveline.Tests.Protection.Thornbeck;
using static Driveline.Tests.Reports.ReportCases;

namespace Driveline.Tests.Reports;

public class TorqueLadderPictureTests
{
    [Theory]
    [MemberData(nameof(Names), MemberType = typeof(ReportCases))]
    public void Svg_AnyVerdict_NamesEveryRungAndStaysInside(string name)
    {
        ProtectionVerdict verdict = All[name];
        XElement svg = XElement.Parse(TorqueLadderPicture.Svg(verdict).Replace("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n", string.Empty, StringComparison.Ordinal));
        double width = Number(svg.Attribute("width"));
        double height = Number(svg.Attribute("height"));
        string words = Words(svg);
        foreach (LadderRung rung in verdict.Ladder.Where(r => r.Name is not null && !r.Name.Contains('<', StringComparison.Ordinal)))
        {
            Assert.Contains(rung.Name!, words, StringComparison.OrdinalIgnoreCase);
        }

        Assert.Contains("Normal work", words, StringComparison.Ordinal);
        Assert.Contains("Letting the PTO in", words, StringComparison.Ordinal);
        foreach (XElement box in svg.Descendants().Where(e => e.Name.LocalName == "rect"))
        {
            double left = Number(box.Attribute("x")), top = Number(box.Attribute("y"));
            Assert.InRange(left, 0, width);
            Assert.InRange(left + Number(box.Attribute("width")), 0, width);
            Assert.InRange(top + Number(box.Attribute("height")), 0, height);
        }
    }

    [Fact]
    public void Svg_UnknownTorques_HaveRowsOfTheirOwn()
    {
        string words = Words(XElement.Parse(TorqueLadderPicture.Svg(All["nothing known"]).Split('\n', 2)[1]));
        Assert.Equal(5, words.Split("not known: it may be anywhere").Length - 1);   // work, letting in, bolt, tube, box
        Assert.Contains("No torque is known yet", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("protected", "Room of 200 N·m: even a weak shear bolt holds 20 % more", "1200 − 1000")]
    [InlineData("protected", "Room of 100 N·m", "2100 − 2000")]
    [InlineData("overlap", "Overlap of 100 N·m: a weak shear bolt may act in normal work", "1000 − 900")]
    [InlineData("overlap", "Overlap of 500 N·m: a strong shear bolt may outlast drive tube", "2600 − 2100")]
    [InlineData("unbounded", "no known upper end", "at least 1200")]
    [InlineData("unbounded", "No room can be shown: nobody knows how much unmarked bolt can hold", "no upper end")]
    [InlineData("no device", "Nothing limits the torque on", "no device")]
    public void Svg_Gap_IsNamed(string name, string words, string working)
    {
        string shown = Words(XElement.Parse(TorqueLadderPicture.Svg(All[name]).Split('\n', 2)[1]));
        Assert.True(shown.Contains(words, StringComparison.Ordinal), working + "\n" + shown);
    }

    [Fact]
    public void Svg_UsCustomary_HasItsAxis() => Assert.Contains(
        "lbf·ft", TorqueLadderPicture.Svg(All["protected"], ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary)), StringComparison.Ordinal);

    [Theory]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(40)]
    public void Svg_ManyParts_EachRowBelowTheOneBefore(int count)
    {
        Element[] parts = [.. Enumerable.Range(1, count).Select(k => Part.Shaft("shaft number " + k + " with quite a long name so that it wraps").WithDamageTorque(Nm(1000 * k)))];
        XElement svg = XElement.Parse(TorqueLadderPicture.Svg(ProtectionCheck.Run(ProtectionQuestion.About(DrivelineChain.Of(parts)))).Split('\n', 2)[1]);
        double[] lines = [.. svg.Descendants().Where(e => e.Name.LocalName == "text" && Number(e.Attribute("x"), e) < 30).Select(e => Y(e))];
        Assert.True(lines.Length >= count * 2);
        Assert.All(lines.Zip(lines.Skip(1)), pair => Assert.True(pair.Second >= pair.First + 12, FormattableString.Invariant($"{pair.First} and {pair.Second}")));
    }

    private static string Words(XElement svg) => string.Join(' ', svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));

    private static double Number(XAttribute? attribute) => double.Parse(attribute!.Value, CultureInfo.InvariantCulture);

    // A text stands at its transform or at x and y.
    private static double Number(XAttribute? x, XElement text) => x is not null && text.Attribute("transform") is null ? Number(x) : At(text)[0];

    private static double Y(XElement text) => text.Attribute("y") is { } y && text.Attribute("transform") is null ? Number(y) : At(text)[1];

    private static double[] At(XElement text)
    {
        string transform = text.Attribute("transform")!.Value;
        int open = transform.IndexOf('(', StringComparison.Ordinal);
        return [.. transform[(open + 1)..transform.IndexOf(')', StringComparison.Ordinal)].Split([',', ' '], StringSplitOptions.RemoveEmptyEntries)
            .Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
    }
}
