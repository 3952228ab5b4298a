using Driveline.Choosing;
using Driveline.Clutches;
using Driveline.Quantities;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;
using Driveline.Wording;
using UnitsNet;

namespace Driveline.Reports.Charts;

/// <summary>Torque at which a clutch slips over the length of its springs, with the window, the solid length and what wear takes.</summary>
internal static class SettingChart
{
    private const int Points = 48;
    private const double Reach = 4;

    public static IPicture? Of(
        SlipTorque torque, DiscClutch clutch, ClutchWindow? window, TorqueBand? manuals, ReportOptions options, PictureFrame frame)
    {
        double free = clutch.Springs.FreeLength.Meters;
        double solid = clutch.Springs.SolidLength.Meters;
        double most = free - solid;
        if (!(most > 0) || torque.Running.Expected is not { } running || !(running.NewtonMeters > 0))
        {
            return null;
        }

        var phrase = new Phrase(options.Texts, options.Units);
        double perMeter = options.Units == DisplayUnits.UsCustomary ? 1 / 0.0254 : 1000;
        double perNm = phrase.TorquePerNm;
        List<(double X, double Low, double Expected, double High)> curve = Curve(torque, clutch, perMeter, perNm);
        if (curve.Count < 2)
        {
            return null;
        }

        double top = Math.Max(curve.Max(p => p.High), (manuals?.High ?? manuals?.Low)?.NewtonMeters * perNm ?? 0) * 1.08;
        string unit = options.Units == DisplayUnits.UsCustomary ? "in" : "mm";
        var chart = new Chart(
            frame, phrase, Lead(torque, clutch, window, phrase), phrase.Of("picture.setting.description"),
            new ChartAxis((solid - (0.06 * most)) * perMeter, free * perMeter,
                phrase.Of(Phrase.Code("picture.setting.length").With("unit", unit))),
            new ChartAxis(0, Math.Max(top, 1e-6), phrase.Of(Phrase.Code("picture.setting.torque").With("unit", phrase.TorqueUnit))));
        if (window is not null)
        {
            double a = window.Lowest.SpringLength.Meters * perMeter;
            double b = window.Highest.SpringLength.Meters * perMeter;
            chart.Zone(Math.Min(a, b), Math.Max(a, b), SvgInk.RoomGround, phrase.Of("picture.setting.window"));
        }

        chart.Zone((solid - (0.06 * most)) * perMeter, solid * perMeter, SvgInk.OverlapGround, phrase.Of("picture.setting.solid"))
            .Band([.. curve.Select(p => (p.X, p.Low, p.High))], SvgInk.LimitGround, phrase.Of("picture.setting.band"))
            .Line([.. curve.Select(p => (p.X, p.Expected))], SvgInk.Part, LineDash.Solid, phrase.Of("picture.setting.expected"));
        if (manuals is not null)
        {
            chart.Level((manuals.Expected ?? manuals.Low).NewtonMeters * perNm, SvgInk.Trip, LineDash.DashDotted,
                phrase.Of("picture.setting.manuals"));
        }

        if (clutch.SpringLength?.Expected is { } now)
        {
            chart.Mark(now.Meters * perMeter, SvgInk.Work, LineDash.Solid, phrase.Of("picture.setting.now"));
            chart.Mark((now.Meters + WearM(clutch)) * perMeter, SvgInk.Overlap, LineDash.Dashed, phrase.Of("picture.setting.worn"));
        }

        return chart;
    }

    // Set to a torque, the springs come to a length; the clutch as measured where it was. The spread is that of its torque now.
    private static List<(double X, double Low, double Expected, double High)> Curve(
        SlipTorque torque, DiscClutch clutch, double perMeter, double perNm)
    {
        var curve = new List<(double X, double Low, double Expected, double High)>();
        DiscClutch measured = clutch.CalibratedBy(torque.Condition);
        double now = torque.Running.Expected!.Value.NewtonMeters;
        double low = torque.Running.Low.NewtonMeters / now;
        double high = (torque.Running.High?.NewtonMeters ?? now) / now;
        for (int k = 1; k <= Points; k++)
        {
            double wanted = now * Reach * k / Points;
            if (ClutchSetting.For(measured, Torque.FromNewtonMeters(wanted), torque.Condition).SpringLength is { } length)
            {
                curve.Add((length.Meters * perMeter, wanted * low * perNm, wanted * perNm, wanted * high * perNm));
            }
        }

        return curve;
    }

    // Each worn face lets the springs grow longer by what it has lost.
    private static double WearM(DiscClutch clutch) => 0.001 * clutch.Faces;

    private static string Lead(SlipTorque torque, DiscClutch clutch, ClutchWindow? window, Phrase phrase) => window is null
        ? clutch.SpringLength?.Expected is { } now && torque.Running.IsBounded
            ? phrase.Of(Phrase.Code("picture.setting.lead.now")
                .With("length", Findings.QuantityKind.Length, now.Meters)
                .With("band", BandWords.Of(torque.Running, phrase)))
            : phrase.Of("picture.setting.lead.none")
        : phrase.Of(Phrase.Code("picture.setting.lead")
            .With("long", Findings.QuantityKind.Length, Math.Max(window.Lowest.SpringLength.Meters, window.Highest.SpringLength.Meters))
            .With("short", Findings.QuantityKind.Length, Math.Min(window.Lowest.SpringLength.Meters, window.Highest.SpringLength.Meters)));
}
