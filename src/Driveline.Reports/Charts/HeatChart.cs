using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;
using Driveline.Wording;
using UnitsNet;

namespace Driveline.Reports.Charts;

/// <summary>How hot the faces of a slipping clutch get while the machine is blocked.</summary>
internal static class HeatChart
{
    private const int Points = 61;
    private const double Shown = 1.3;

    public static IPicture? Of(ClutchReview review, ReportOptions options, PictureFrame frame)
    {
        if (review.Heat is not { } heat || (review.TimeToMaximum ?? review.TimeToLimit) is not { } last || !(last.Seconds > 0))
        {
            return null;
        }

        var phrase = new Phrase(options.Texts, options.Units);
        double end = last.Seconds * Shown;
        (double X, double Y)[] curve =
        [
            .. Enumerable.Range(0, Points).Select(k => end * k * k / ((Points - 1) * (Points - 1)))
                .Select(t => (t, InUnit(heat.FaceTemperature(Duration.FromSeconds(t)), options.Units))),
        ];
        string lead = review.TimeToLimit is { } limit
            ? phrase.Of(Phrase.Code("picture.heat.lead").With("time", TimeWords.Of(limit.Seconds, phrase)))
            : phrase.Of("picture.heat.lead.open");
        var chart = new Chart(
            frame, phrase, lead, phrase.Of("picture.heat.description"),
            new ChartAxis(0, end, phrase.Of("picture.heat.time")),
            new ChartAxis(0, curve.Max(p => p.Y) * 1.08, phrase.Of(Phrase.Code("picture.heat.temperature")
                .With("unit", options.Units == DisplayUnits.UsCustomary ? "°F" : "°C"))));
        chart.Line(curve, SvgInk.Overlap, LineDash.Solid, phrase.Of("picture.heat.face"));
        AddLimit(chart, heat, review.TimeToLimit, SvgInk.Careful, LineDash.Dashed, "picture.heat.limit", options.Units, phrase);
        AddLimit(chart, heat, review.TimeToSmoke, SvgInk.Faint, LineDash.Dotted, "picture.heat.smoke", options.Units, phrase);
        AddLimit(chart, heat, review.TimeToMaximum, SvgInk.Part, LineDash.DashDotted, "picture.heat.maximum", options.Units, phrase);
        return chart;
    }

    private static void AddLimit(
        Chart chart, SlipHeat heat, Duration? reached, SvgInk ink, LineDash dash, string code, DisplayUnits units, Phrase phrase)
    {
        if (reached is { } time)
        {
            chart.Level(InUnit(heat.FaceTemperature(time), units), ink, dash, phrase.Of(Phrase.Code(code)
                .With("temperature", QuantityKind.Temperature, heat.FaceTemperature(time).Kelvins)
                .With("time", TimeWords.Of(time.Seconds, phrase))));
        }
    }

    private static double InUnit(Temperature temperature, DisplayUnits units) =>
        units == DisplayUnits.UsCustomary ? temperature.DegreesFahrenheit : temperature.DegreesCelsius;
}
