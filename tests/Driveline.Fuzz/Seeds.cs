using System.Globalization;
using System.Text;
using Driveline.Cli.Telemetry;
using Driveline.Fleet;
using Driveline.Fleet.Ledgers;
using Driveline.Monitoring;

namespace Driveline.Fuzz;

/// <summary>First inputs: from the demos, from what the library itself writes, and those that were kept.</summary>
internal static class Seeds
{
    private const int Samples = 400;

    private static readonly string[] Names =
    [
        "M10", "M8x1.25", "1/2-13 UNC", "3/8-24 UNF", "#10-32", "8.8", "SAE J429 Grade 5", "A2-70", "three radial lines", "no mark",
        "85 HRB", "HV 250", "ISO 8752 6", "M12x1.75x60", "7/16",
    ];

    private static readonly string[] Quantities =
    [
        "650 lbf.ft", "1 3/4 in", "12,5 mm", "540 min⁻¹", "35 hp", "1,200.5 N·m", "1e3 N.m", "-4 kW", "2 ft 3 in", "0x10 mm", "½ in",
    ];

    public static void Write(string folder)
    {
        Texts(folder, "thread", Names);
        Texts(folder, "quantity", Quantities);
        Texts(folder, "stock", "sku,designation,grade,length,coating,price,currency\nA1,M8x1.25,8.8,40 mm,zinc,0.35,EUR\n"
            + "B2,1/2-13 x 2-1/2,5,,,1.2,USD\n");
        Files(folder, "case", "*.case.json");
        Files(folder, "model", "*.model.json");
        Files(folder, "study", "*.study.json");
        Texts(folder, "telemetry", Table(), "(1436509052.249713) can0 18FEDF00#8AA0287D7DFFFFF5\n"
            + "(1436509052.35)  can0  18F00400   [8]  F1 8A AF 00 20 FF FF FF\n");

        OverloadMonitor monitor = Fed();
        Bytes(folder, "snapshot", monitor.Save()[..^sizeof(uint)], monitor.Save(1)[..^sizeof(uint)]);
        var decoder = new EngineTorqueDecoder(UnitsNet.Torque.FromNewtonMeters(400));
        Bytes(folder, "decoder", decoder.Save()[..^sizeof(uint)]);
        Bytes(folder, "ledger", [.. new[] { StateFormat.Wide, StateFormat.Packed }
            .Select(f => new BatchLedger(new OverloadMonitor(Targets.Settings)).Save(f)[..^sizeof(uint)])]);
        string state = new WatchState { PeriodS = 0.01, Monitor = monitor.Save(), Decoder = decoder.Save() }.Write();
        Bytes(folder, "watch", Convert.FromBase64String(state)[..^System.Security.Cryptography.SHA256.HashSizeInBytes]);
        Corpus.Unpack(Path.Combine(AppContext.BaseDirectory, "corpus"), folder);
    }

    private static OverloadMonitor Fed()
    {
        var monitor = new OverloadMonitor(Targets.Settings);
        Span<MonitorEvent> room = new MonitorEvent[64];
        for (int k = 0; k < Samples; k++)
        {
            monitor.Feed([new TorqueSample(k * 0.01, 56, k % 50 > 40 ? 20 : 56, 300 + k % 90 * 10)], room);
        }

        return monitor;
    }

    private static string Table()
    {
        var text = new StringBuilder(TelemetryLog.Head + "\n");
        for (int k = 0; k < 20; k++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{k * 0.01},540,{(k > 15 ? "" : "540")},{300 + k}\n");
        }

        return text.ToString();
    }

    private static void Files(string folder, string target, string pattern)
    {
        string cases = Path.Combine(AppContext.BaseDirectory, "cases");
        Bytes(folder, target, [.. Directory.GetFiles(cases, pattern).Order(StringComparer.Ordinal).Select(File.ReadAllBytes)]);
    }

    private static void Texts(string folder, string target, params string[] texts) =>
        Bytes(folder, target, [.. texts.Select(Encoding.UTF8.GetBytes)]);

    private static void Bytes(string folder, string target, params byte[][] inputs)
    {
        string into = Path.Combine(folder, target);
        Directory.CreateDirectory(into);
        for (int k = 0; k < inputs.Length; k++)
        {
            File.WriteAllBytes(Path.Combine(into, k.ToString("000", CultureInfo.InvariantCulture)), inputs[k]);
        }
    }
}
