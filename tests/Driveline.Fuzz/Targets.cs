using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.TorsionModels;
using Driveline.Choosing;
using Driveline.Cli;
using Driveline.Cli.Telemetry;
using Driveline.Fasteners;
using Driveline.Fleet;
using Driveline.Fleet.Ledgers;
using Driveline.Monitoring;
using Driveline.Quantities;
using Driveline.Sweeps;
using UnitsNet;

namespace Driveline.Fuzz;

/// <summary>What reads the bytes of strangers, by name. An answer may be a refusal; it may not be an exception, late or too long.</summary>
internal static class Targets
{
    /// <summary>No answer to a case is longer, B: the largest of a demo is 60 KB.</summary>
    private const int LongestAnswer = 4_000_000;

    public static readonly IReadOnlyDictionary<string, Action<byte[]>> All = new Dictionary<string, Action<byte[]>>
    {
        ["thread"] = bytes => Names(Encoding.UTF8.GetString(bytes)),
        ["quantity"] = bytes => Quantity(Encoding.UTF8.GetString(bytes)),
        ["stock"] = bytes => StockFile.TryParse(Encoding.UTF8.GetString(bytes), out _, out _),
        ["case"] = Case,
        ["model"] = Model,
        ["study"] = bytes => Study(Encoding.UTF8.GetString(bytes)),
        ["telemetry"] = Telemetry,
        ["snapshot"] = bytes => OverloadMonitor.TryRestore(Settings, Sealed(bytes), out _, out _),
        ["decoder"] = bytes => EngineTorqueDecoder.TryRestore(Sealed(bytes), out _),
        ["ledger"] = Ledger,
        ["watch"] = Watch,
    };

    /// <summary>The settings under which states are read; made when first asked for, as nothing may run before the fuzzer does.</summary>
    public static MonitorSettings Settings => field ??= MonitorSettings.Of(Torque.FromNewtonMeters(900), Duration.FromMilliseconds(10));

    /// <summary>The bytes with the checksum that belongs to them, so that what lies behind the checksum is read too.</summary>
    public static byte[] Sealed(byte[] content)
    {
        byte[] all = new byte[content.Length + sizeof(uint)];
        content.CopyTo(all, 0);
        BinaryPrimitives.WriteUInt32LittleEndian(all.AsSpan(content.Length), Crc32.Of(content));
        return all;
    }

    private static void Names(string text)
    {
        if (ScrewThread.TryParse(text, out ScrewThread? thread, out _))
        {
            Same(thread.Designation, ScrewThread.Parse(thread.Designation).Designation);
        }

        if (BoltGrade.TryParse(text, out BoltGrade? grade, out _))
        {
            Same(grade.Designation, BoltGrade.Parse(grade.Designation).Designation);
        }

        _ = HeadMark.TryParse(text, out _, out _);
        _ = Hardness.TryParse(text, out _, out _);
        _ = MaterialName.TryParse(text, out _, out _);
        _ = SpringPin.TryParse(text, out _, out _);
    }

    private static void Quantity(string text)
    {
        if (QuantityText.TryParse<Length>(text, out Length length, out _) && !double.IsFinite(length.Meters))
        {
            throw new InvalidOperationException("A length that is not finite: " + text);
        }

        if (QuantityText.TryParse<Torque>(text, out Torque torque, out _) && !double.IsFinite(torque.NewtonMeters))
        {
            throw new InvalidOperationException("A torque that is not finite: " + text);
        }

        _ = QuantityText.TryParse<Power>(text, out _, out _);
        _ = QuantityText.TryParse<RotationalSpeed>(text, out _, out _);
    }

    private static void Case(byte[] bytes)
    {
        CaseAssessment asked = CaseAssessment.Of(bytes.AsSpan());
        if (asked.Errors.Count > 0)
        {
            return;
        }

        using var answer = new MemoryStream();
        Driveline.Cases.Results.VerdictJson.Of(asked.Verdict()).Write(answer);
        if (answer.Length > LongestAnswer)
        {
            throw new InvalidOperationException(answer.Length + " bytes of answer");
        }

        using JsonDocument read = JsonDocument.Parse(answer.ToArray());
        asked.Settings();
    }

    private static void Model(byte[] bytes)
    {
        if (TorsionModelReader.Read(bytes.AsSpan()).Model is { } model)
        {
            using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
            try
            {
                model.Run(stop.Token);
            }
            catch (OperationCanceledException)
            {
                // A long run within its budget; the budget is tested elsewhere.
            }
        }
    }

    private static void Study(string text)
    {
        if (StudyReader.Read(text).Study is { } study)
        {
            StudyPlan.TryOf(study, out _, out _);
        }
    }

    private static void Telemetry(byte[] bytes)
    {
        var notes = new RowNotes();
        using var reader = new StreamReader(new MemoryStream(bytes));
        var monitor = new OverloadMonitor(Settings);
        Span<MonitorEvent> room = new MonitorEvent[64];
        try
        {
            ITelemetry log = TelemetryLog.Open(reader, notes, () => new EngineTorqueDecoder());
            while (log.TryNext(out TorqueSample sample))
            {
                monitor.Feed([sample], room);
            }
        }
        catch (BadInputException)
        {
            return;
        }

        monitor.Save();
    }

    private static void Ledger(byte[] bytes)
    {
        try
        {
            BatchLedger.Restore(Settings, Sealed(bytes), StateFormat.Packed);
        }
        catch (FleetStateException)
        {
            // A refusal that says why.
        }
    }

    private static void Watch(byte[] bytes)
    {
        try
        {
            WatchState.Read(Convert.ToBase64String([.. bytes, .. SHA256.HashData(bytes)]), "a file");
        }
        catch (BadInputException)
        {
            // A refusal that says why.
        }
    }

    private static void Same(string written, string again)
    {
        if (written != again)
        {
            throw new InvalidOperationException(written + " reads as " + again);
        }
    }
}
