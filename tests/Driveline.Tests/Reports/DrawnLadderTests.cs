using System.Text.Json;
using Driveline.Cases.Results;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>Every bar of every demo's torque ladder, read back through the printed axis, against the numbers of the JSON.</summary>
public class DrawnLadderTests
{
    private const double BarsRight = 960;
    private const double ThinBar = 5;

    public static TheoryData<string, bool> Demos
    {
        get
        {
            var data = new TheoryData<string, bool>();
            foreach (string name in DemoCases.Names)
            {
                data.Add(name, false);
                data.Add(name, true);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Bars_OfADemo_AreTheTorquesOfTheJson(string name, bool us)
    {
        ProtectionVerdict verdict = DemoCases.Verdict(name);
        ReportOptions options = ReportOptions.Default.WithUnits(us ? DisplayUnits.UsCustomary : DisplayUnits.Metric)
            .WithLanguage(us ? Language.Spanish : Language.English);
        var picture = new DrawnSvg(TorqueLadderPicture.Svg(verdict, options));
        double perNm = us ? 1 / 1.3558179483314 : 1;   // 1 lbf·ft = 1.3558179483314 N·m
        (double Low, double Expected, double High)[] work = [.. Bands(verdict, json => [json.GetProperty("workPeakNm")], perNm)];
        (double Low, double Expected, double High)[] devices =
            [.. Bands(verdict, json => json.GetProperty("devices").EnumerateArray().Select(d => d.GetProperty("tripTorqueNm")), perNm)];
        (double Low, double Expected, double High)[] parts =
            [.. Bands(verdict, json => json.GetProperty("parts").EnumerateArray().Select(d => d.GetProperty("damagedAtNm")), perNm)];
        if (work.Length + devices.Length + parts.Length == 0)
        {
            return;
        }

        Func<double, double> torque = DrawnSvg.Axis(picture.Texts
            .Where(t => t is { Anchor: "middle", Size: 13, X: >= 400, Number: not null }).Select(t => (t.X, t.Number!.Value)));
        AssertBars(picture, "work", work, torque);
        AssertBars(picture, "device", devices, torque);
        AssertBars(picture, "part", parts, torque);
    }

    private static void AssertBars(
        DrawnSvg picture, string ink, (double Low, double Expected, double High)[] bands, Func<double, double> torque)
    {
        (double Left, double Top, double Width, double Height)[] bars = [.. picture.Boxes(ink).Where(b => b.Height == 24 && b.Left > 300)];
        Assert.Equal(bands.Length, bars.Length);
        double pixel = torque(1) - torque(0);
        double end = torque(BarsRight);
        foreach ((double low, double expected, double high) in bands)
        {
            bool isThin = Math.Min(high, end) - low < ThinBar * pixel;
            double right = double.IsPositiveInfinity(high) ? (double.IsPositiveInfinity(expected) ? low : Math.Min(expected, end))
                : Math.Min(high, end);
            Assert.Contains(bars, b =>
                Math.Abs(torque(b.Left) - Math.Min(low, end)) <= (isThin ? ThinBar + 0.1 : 0.1) * pixel
                && (right - low < ThinBar * pixel || Math.Abs(torque(b.Left + b.Width) - right) <= 0.1 * pixel));
        }
    }

    private static IEnumerable<(double Low, double Expected, double High)> Bands(
        ProtectionVerdict verdict, Func<JsonElement, IEnumerable<JsonElement>> of, double perNm)
    {
        using var stream = new MemoryStream();
        VerdictJson.Of(verdict).Write(stream);
        return
        [
            .. of(JsonDocument.Parse(stream.ToArray()).RootElement).Where(b => b.ValueKind == JsonValueKind.Object)
                .Select(b => (At(b, "low") * perNm, At(b, "expected") * perNm, At(b, "high") * perNm)),
        ];
    }

    private static double At(JsonElement band, string end) =>
        band.GetProperty(end) is { ValueKind: JsonValueKind.Number } known ? known.GetDouble() : double.PositiveInfinity;
}
