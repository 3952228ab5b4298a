using System.Globalization;
using System.Text.Json;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Findings;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>Every curve and band of every demo's simulation, read back through the printed axes, against the numbers of the JSON.</summary>
public class DrawnSimulationTests
{
    private const double PanelHeight = 190;

    public static TheoryData<string, bool> Demos
    {
        get
        {
            var data = new TheoryData<string, bool>();
            foreach (string name in DemoCases.Names.Where(n => n.StartsWith("ravensmoor-", StringComparison.Ordinal)))
            {
                data.Add(name, false);
                data.Add(name, true);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Curves_OfADemo_AreTheTorquesOfTheJson(string name, bool us)
    {
        CaseSimulation run = DemoCases.Simulation(name);
        DisplayUnits units = us ? DisplayUnits.UsCustomary : DisplayUnits.Metric;
        Language language = us ? Language.Spanish : Language.English;
        var picture = new DrawnSvg(SimulationPicture.Svg(run.Check!, ReportOptions.Default.WithUnits(units).WithLanguage(language)));
        double perNm = us ? 1 / 1.3558179483314 : 1;   // 1 lbf·ft = 1.3558179483314 N·m
        var loads = new Queue<JsonElement>(Loads(run));
        DrawnText[] titles = [.. picture.Texts.Where(t => t is { Size: 15, X: 92 })];
        Assert.Equal(run.Check!.With is null && run.Check.Without is null, titles.Length == 0);
        foreach (DrawnText title in titles)
        {
            JsonElement load = loads.Dequeue();
            while (!title.Words.StartsWith(
                Texts.In(language).Name(load.GetProperty("name").GetString()!) + " (", StringComparison.OrdinalIgnoreCase))
            {
                load = loads.Dequeue();
            }

            double top = title.Y + 14;
            Func<double, double> torque = DrawnSvg.Axis(picture.Texts
                .Where(t => t is { Anchor: "end", Size: 13, X: 84, Number: not null } && t.Y >= top - 1 && t.Y <= top + PanelHeight + 1)
                .Select(t => (t.Y, t.Number!.Value)));
            AssertCurve(picture, "work", top, load.GetProperty("withProtection"), torque, perNm);
            AssertCurve(picture, "overlap", top, load.GetProperty("withoutProtection"), torque, perNm);
            AssertBand(picture, top, load.GetProperty("damagedAtNm"), torque, perNm);
            if (load.GetProperty("withProtection").ValueKind == JsonValueKind.Number)
            {
                string words = QuantityWords.Of(load.GetProperty("withProtection").GetDouble(), QuantityKind.Torque, units, language);
                Assert.Contains(picture.Texts, t => t.Words == words && t.X > 800 && t.Y > top && t.Y < top + PanelHeight);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Csv_OfADemo_HasThePeaksOfTheJson(string name, bool us)
    {
        CaseSimulation run = DemoCases.Simulation(name);
        string[] lines = SimulationCsv.Of(run.Check!, ReportOptions.Default.WithUnits(us ? DisplayUnits.UsCustomary : DisplayUnits.Metric))
            .TrimEnd('\n').Split('\n');
        double perNm = us ? 1 / 1.3558179483314 : 1;   // 1 lbf·ft = 1.3558179483314 N·m
        if (run.Check!.With is null && run.Check.Without is null)
        {
            Assert.Single(lines);
            return;
        }

        Assert.Equal(!us, lines[0].Contains("[N.m]", StringComparison.Ordinal));
        Assert.Equal(us, lines[0].Contains("[lbf.ft]", StringComparison.Ordinal));
        JsonElement[] loads = [.. Loads(run)];
        for (int k = 0; k < loads.Length; k++)
        {
            string[] column = [.. lines.Skip(1).Select(l => l.Split(',')[1 + (2 * k)])];
            if (loads[k].GetProperty("withProtection").ValueKind == JsonValueKind.Number && column[0].Length > 0)
            {
                double peak = loads[k].GetProperty("withProtection").GetDouble() * perNm;
                double most = column.Max(c => Math.Abs(double.Parse(c, CultureInfo.InvariantCulture)));
                Assert.InRange(most, 0.9 * peak, 1.000001 * peak);   // 2001 samples may miss a sharp peak, never exceed it
            }
        }
    }

    private static void AssertCurve(
        DrawnSvg picture, string ink, double top, JsonElement peak, Func<double, double> torque, double perNm)
    {
        (double X, double Y)[][] curves =
            [.. picture.Curves(ink).Where(c => c.All(p => p.Y >= top - 0.01 && p.Y <= top + PanelHeight + 0.01))];
        Assert.Equal(peak.ValueKind == JsonValueKind.Number ? 1 : 0, curves.Length);
        if (curves.Length == 1)
        {
            double wanted = peak.GetDouble() * perNm;
            // 1001 samples may miss the very peak
            Assert.InRange(curves[0].Max(p => Math.Abs(torque(p.Y))), 0.98 * wanted, 1.001 * wanted);
        }
    }

    private static void AssertBand(DrawnSvg picture, double top, JsonElement damagedAt, Func<double, double> torque, double perNm)
    {
        (double Left, double Top, double Width, double Height)[] bands =
            [.. picture.Boxes("limit-ground").Where(b => b.Width > 100 && b.Top >= top - 0.01 && b.Top < top + PanelHeight)];
        double end = torque(top);
        double low = damagedAt.ValueKind == JsonValueKind.Object ? damagedAt.GetProperty("low").GetDouble() * perNm
            : double.PositiveInfinity;
        Assert.Equal(low <= end ? 1 : 0, bands.Length);
        if (bands.Length == 1)
        {
            double high = damagedAt.GetProperty("high") is { ValueKind: JsonValueKind.Number } known ? known.GetDouble() * perNm
                : double.PositiveInfinity;
            double pixel = torque(0) - torque(1);
            Assert.Equal(Math.Min(high, end), torque(bands[0].Top), 0.1 * pixel);
            Assert.InRange(torque(bands[0].Top + bands[0].Height), low - (2 * pixel), low + (0.1 * pixel));   // never thinner than 2 pixels
        }
    }

    private static IEnumerable<JsonElement> Loads(CaseSimulation run)
    {
        using var stream = new MemoryStream();
        SimulationJson.Of(run).Write(stream);
        return JsonDocument.Parse(stream.ToArray()).RootElement.GetProperty("peakTorqueNm").EnumerateArray();
    }
}
