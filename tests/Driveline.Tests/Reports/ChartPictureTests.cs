using System.Globalization;
using System.Xml.Linq;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Reports.Charts;
using Driveline.Reports.Pictures;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>The charts and sketches: drawn from the numbers, readable on a phone, nothing where nothing is known.</summary>
public class ChartPictureTests
{
    private const string Clutch = "dunmarsh-clutch-well-set";
    private const string Bolt = "thornbeck-bolt-right";

    private static readonly Basis Own = Basis.Given("test");

    private static readonly string[] Kinds = ["setting", "temperature", "section", "planes", "grades", "costs"];

    public static TheoryData<string, double, bool> All
    {
        get
        {
            var data = new TheoryData<string, double, bool>();
            foreach (string kind in Kinds)
            {
                data.Add(kind, 1000, false);
                data.Add(kind, 360, true);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Picture_OfEachKind_IsWellFormedNamedAndInsideItsFrame(string kind, double width, bool us)
    {
        ReportOptions options = ReportOptions.Default.WithPictureWidth(width)
            .WithUnits(us ? DisplayUnits.UsCustomary : DisplayUnits.Metric).WithLanguage(us ? Language.Spanish : Language.English);
        string svg = Drawn(kind, options)!;
        XElement root = XElement.Parse(svg);
        Assert.Equal(["title", "desc", "style"], root.Elements().Take(3).Select(e => e.Name.LocalName));
        Assert.All(root.Elements().Take(2), e => Assert.NotEmpty(e.Value));
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        double height = Number(root, "height");
        foreach (DrawnText text in root.Descendants().Where(e => e.Name.LocalName == "text").Select(DrawnText.Of))
        {
            double wide = TextWidths.Of(text.Words, text.Size, false) / 1.08;
            double left = text.Anchor switch { "middle" => text.X - (wide / 2), "end" => text.X - wide, _ => text.X };
            Assert.InRange(left, 0, width);
            Assert.InRange(left + wide, 0, width);
            Assert.InRange(text.Y, 0, height);
            Assert.InRange(text.Size, 11, 24);
        }

        foreach (XElement box in root.Descendants().Where(e => e.Name.LocalName == "rect"))
        {
            Assert.InRange(Number(box, "x"), 0, width);
            Assert.InRange(Number(box, "x") + Number(box, "width"), 0, width);
            Assert.InRange(Number(box, "y") + Number(box, "height"), 0, height);
        }
    }

    [Fact]
    public void Setting_Curve_GoesThroughTheTorqueAndLengthOfNow()
    {
        SlipTorque torque = ReviewOf(Clutch).Torque;
        var picture = new DrawnSvg(ClutchPicture.Setting(torque, null, null, ReportOptions.Default)!);
        Func<double, double> length = DrawnSvg.Axis(
            picture.Texts.Where(t => t is { Anchor: "middle", Size: 13, Number: not null }).Select(t => (t.X, t.Number!.Value)));
        Func<double, double> slips = DrawnSvg.Axis(
            picture.Texts.Where(t => t is { Anchor: "end", Size: 13, Number: not null }).Select(t => (t.Y, t.Number!.Value)));
        (double X, double Y)[] curve = Assert.Single(picture.Curves("part"));

        // measured by lever: 650 N\u00B7m at 34.2 mm
        (double X, double Y) near = curve.MinBy(p => Math.Abs(length(p.X) - 34.2));
        Assert.Equal(650, slips(near.Y), 25.0);
        Assert.True(slips(curve[0].Y) < slips(curve[^1].Y) == curve[0].X > curve[^1].X, "shorter springs press harder");
    }

    [Fact]
    public void Planes_OfABoltThroughTheShaft_AreTwo()
    {
        ShearBoltDevice bolt = DemoCases.Verdict(Bolt).Question.Chain.Devices.OfType<ShearBoltDevice>().First();
        XElement svg = XElement.Parse(BoltPicture.Planes(bolt, ReportOptions.Default)!);
        Assert.Equal(2, svg.Descendants().Count(e => e.Name.LocalName == "polyline"
            && e.Attribute("class")!.Value == "dl-s-overlap"));
        Assert.Contains("15.9 mm", svg.Value, StringComparison.Ordinal);   // half of 1 1/4 in
    }

    [Fact]
    public void Picture_OfNothingKnown_IsNone()
    {
        SlipTorque nothing = SlipTorque.NotKnown(ClutchCondition.AsOf(new DateTime(2026, 1, 1)));
        Assert.Null(ClutchPicture.Setting(nothing, null, null, ReportOptions.Default));
        Assert.Null(BoltPicture.Grades(ReportCases.All["nothing known"], ReportOptions.Default));
        Assert.Null(CostPicture.Years([], ReportOptions.Default));
    }

    private static string? Drawn(string kind, ReportOptions options) => kind switch
    {
        "setting" => ClutchPicture.Setting(ReviewOf(Clutch).Torque, null, null, options),
        "temperature" => ClutchPicture.Temperature(ReviewOf(Clutch), options),
        "section" => ClutchPicture.Section(ReviewOf(Clutch).Torque.Clutch!, options),
        "planes" => BoltPicture.Planes(DemoCases.Verdict(Bolt).Question.Chain.Devices.OfType<ShearBoltDevice>().First(), options),
        "grades" => BoltPicture.Grades(DemoCases.Verdict(Bolt), options),
        _ => CostPicture.Years(
            OwnershipCost.Ranked(OwnershipTerms.Of("USD", 8, 0.04), OwnershipOption.Of("bolts", OptionKind.SameBolt).WithBreaks(
                RatioBand.Between(10, 20, 40, Own), MoneyBand.Between(1, 2, 3, Own), BoltAccess.YokeInReach),
                OwnershipOption.Of("clutch", OptionKind.Clutch).WithOutlay(MoneyBand.Exactly(600, Own))), options),
    };

    private static ClutchReview ReviewOf(string demo) => CaseAssessment.Of(DemoCases.Json(demo)).Clutches()[0].Review();

    private static double Number(XElement shape, string name) => double.Parse(shape.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
