using System.Globalization;
using System.Xml.Linq;
using Driveline.Chains;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Tests.Cases;
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
        XElement svg = XElement.Parse(TorqueLadderPicture.Svg(verdict));
        double width = Number(svg.Attribute("width"));
        double height = Number(svg.Attribute("height"));
        string words = Words(svg);
        foreach (LadderRung rung in verdict.Ladder.Where(r => r.Name is not null && !r.Name.Contains('<', StringComparison.Ordinal)))
        {
            Assert.Contains(rung.Name!, words, StringComparison.OrdinalIgnoreCase);
        }

        Assert.Contains("Normal work", words, StringComparison.Ordinal);
        Assert.Contains("Engaging the PTO", words, StringComparison.Ordinal);
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
        string words = Words(XElement.Parse(TorqueLadderPicture.Svg(All["nothing known"])));
        Assert.Equal(5, words.Split("not known: it may be anywhere").Length - 1);   // work, letting in, bolt, tube, box
        Assert.Contains("No torque is known yet", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("protected", "Room of 200 N·m: even a weak shear bolt holds 20% more", "1200 − 1000")]
    [InlineData("protected", "Room of 100 N·m", "2100 − 2000")]
    [InlineData("overlap", "Overlap of 100 N·m: a weak shear bolt may act in normal work", "1000 − 900")]
    [InlineData("overlap", "Overlap of 500 N·m: a strong shear bolt may outlast the drive tube", "2600 − 2100")]
    [InlineData("unbounded", "no known upper end", "at least 1200")]
    [InlineData("unbounded", "No room can be shown: nobody knows how much the unmarked bolt can hold", "no upper end")]
    [InlineData("no device", "Nothing limits the torque on", "no device")]
    public void Svg_Gap_IsNamed(string name, string words, string working)
    {
        string shown = Words(XElement.Parse(TorqueLadderPicture.Svg(All[name])));
        Assert.True(shown.Contains(words, StringComparison.Ordinal), working + "\n" + shown);
    }

    [Theory]
    [InlineData(Language.English, "Room at its own place: the auger shaft takes 11% more than the strongest auger bolt holds.",
        "room at its own place", "Room of 750")]
    [InlineData(Language.Spanish, "Margen en su propio sitio: «auger shaft» resiste un 11 % más de lo que aguanta",
        "margen en su propio sitio", "Margen de 750")]
    public void Svg_RoomAtItsOwnPlaceOnly_IsNotGivenAsATorque(Language language, string words, string mark, string wrong)
    {
        // At the PTO the bolt's bar ends at 2940 and the shaft's begins at 2190 N·m: 750 of overlap, never of room.
        string shown = Words(Drawn("millbrook-feed-auger", language));
        Assert.Contains(words, shown, StringComparison.Ordinal);
        Assert.Contains(mark, shown, StringComparison.Ordinal);
        Assert.DoesNotContain(wrong, shown, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names), MemberType = typeof(ReportCases))]
    public void Svg_AnyVerdict_GivesNoNegativeGap(string name)
    {
        string shown = Words(XElement.Parse(TorqueLadderPicture.Svg(All[name])));
        Assert.DoesNotMatch("(Room|Overlap) of (-|0 )", shown);
    }

    [Theory]
    [InlineData("thornbeck-bolt-right", "Between the protection and the shaft at the bolt hole")]
    [InlineData("millbrook-feed-auger", "Between the protection and the auger shaft")]
    public void Svg_PartMostAtRisk_IsTheOneThatTheGapNames(string name, string gap)
    {
        XElement[] texts =
            [.. Drawn(name, Language.English).Descendants().Where(e => e.Name.LocalName == "text" && Number(e.Attribute("x")) < 30)];
        string[] lines = [.. texts.Select(e => e.Value)];
        int marked = Assert.Single(Enumerable.Range(0, lines.Length), k => lines[k].Contains("most at risk", StringComparison.Ordinal));
        string row = texts.Take(marked).Last(e => e.Attribute("font-weight")?.Value == "700").Value;
        Assert.Contains(gap, string.Join(' ', lines), StringComparison.Ordinal);
        Assert.EndsWith(row, gap, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Svg_TwoShaftsAtBoltHoles_AreNamedWithTheirBolts()
    {
        string shown = Words(Drawn("millbrook-feed-auger", Language.English));
        Assert.Contains("Shaft at the bolt hole (main bolt)", shown, StringComparison.Ordinal);
        Assert.Contains("Shaft at the bolt hole (auger bolt)", shown, StringComparison.Ordinal);
        Assert.Contains(
            "Eje en el agujero del perno (main bolt)", Words(Drawn("millbrook-feed-auger", Language.Spanish)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("protected", "room")]
    [InlineData("overlap", "careful")]
    [InlineData("nothing known", "careful")]
    [InlineData("too soft", "careful")]
    [InlineData("too strong", "overlap")]
    [InlineData("weaker than work", "overlap")]
    public void Svg_Headline_HasTheColourOfTheVerdict(string name, string ink)
    {
        XElement bar = Assert.Single(XElement.Parse(TorqueLadderPicture.Svg(All[name])).Descendants(),
            e => e.Name.LocalName == "rect" && Number(e.Attribute("x")) == 8);
        Assert.Equal("dl-f-" + ink, bar.Attribute("class")!.Value);
    }

    [Fact]
    public void Svg_UsCustomary_HasItsAxis() => Assert.Contains(
        "lb·ft", TorqueLadderPicture.Svg(All["protected"], ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary)),
            StringComparison.Ordinal);

    [Theory]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(40)]
    public void Svg_ManyParts_EachRowBelowTheOneBefore(int count)
    {
        Element[] parts = [.. Enumerable.Range(1, count)
            .Select(k => Part.Shaft("shaft number " + k + " with quite a long name so that it wraps").WithDamageTorque(Nm(1000 * k)))];
        XElement svg = XElement.Parse(
            TorqueLadderPicture.Svg(ProtectionCheck.Run(ProtectionQuestion.About(DrivelineChain.Of(parts)))));
        double[] lines =
            [.. svg.Descendants().Where(e => e.Name.LocalName == "text" && Number(e.Attribute("x")) < 30)
                .Select(e => Number(e.Attribute("y")))];
        Assert.True(lines.Length >= count * 2);
        Assert.All(lines.Zip(lines.Skip(1)),
            pair => Assert.True(pair.Second >= pair.First + 12, FormattableString.Invariant($"{pair.First} and {pair.Second}")));
    }

    private static XElement Drawn(string demo, Language language) =>
        XElement.Parse(TorqueLadderPicture.Svg(DemoCases.Verdict(demo), ReportOptions.Default.WithLanguage(language)));

    private static string Words(XElement svg) =>
        string.Join(' ', svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));

    private static double Number(XAttribute? attribute) => double.Parse(attribute!.Value, CultureInfo.InvariantCulture);
}
