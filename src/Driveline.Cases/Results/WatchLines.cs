using System.Text;
using System.Text.Json;
using Driveline.Monitoring;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>What a watch tells other programs: one JSON object a line, one for each event as it ends, and one for the whole.</summary>
/// <remarks>
/// Torques are in N·m, energies in J, temperatures in °C, times in s on the clock of the log. Members of an event that do not apply are
/// left out. In the summary what is not known is null, and what has no bound is "unbounded".
/// </remarks>
public static class WatchLines
{
    /// <summary>The line of an event; null for an engagement, which is no trouble.</summary>
    /// <example>{"event":"overload","timeS":1.5,"durationS":1.1,"peakNm":1200}</example>
    public static string? Event(MonitorEvent seen)
    {
        string? name = seen.Kind switch
        {
            MonitorEventKind.Overload => "overload",
            MonitorEventKind.Trip => "trip",
            MonitorEventKind.Slip => "slip",
            MonitorEventKind.Overheat => "heat",
            MonitorEventKind.Gap => "gap",
            _ => null,
        };
        return name is null ? null : Line(json =>
        {
            json.WriteString("event", name);
            json.WriteNumber("timeS", seen.StartS);
            Applying(json, "durationS", seen.DurationS);
            Applying(json, "peakNm", seen.PeakNm);
            Applying(json, "energyJ", seen.EnergyJ);
            Applying(json, "tempC", Celsius(seen.PeakFaceK));
        });
    }

    /// <summary>The line of the whole, from the first sample on, that of the states resumed included.</summary>
    /// <exception cref="ArgumentNullException">The report is missing.</exception>
    public static string Summary(MonitorReport report)
    {
        MonitorHistory history = Guard.NotNull(report, nameof(report)).History;
        SampleCounts counts = report.Counts;
        return Line(json =>
        {
            json.WriteNumber("samples", counts.Taken);
            json.WriteStartObject("rejected");
            json.WriteNumber("late", counts.Late);
            json.WriteNumber("missing", counts.Missing);
            json.WriteNumber("nan", counts.NotANumber + counts.OutOfRange + report.BadRows);
            json.WriteNumber("duplicate", counts.Duplicate);
            json.WriteEndObject();
            json.WriteNumber("hours", history.Turned.Hours);
            json.WriteNumber("overloads", history.Overloads);
            JsonNumbers.Number(json, "trips", history.Trips);
            JsonNumbers.Number(json, "slips", history.Slips);
            json.WriteNumber("cycles", report.Cycles);
            Damage(json, "damageShaft", report.Lives.Where(life => !life.Detail.IsBolt));
            Damage(json, "damageBolt", report.Lives.Where(life => life.Detail.IsBolt));
            JsonNumbers.Number(json, "maxClutchTempC", history.HighestFaceTemperature is { } highest ? Celsius(highest.Kelvins) : null);
            WorkPeak(json, report.WorkPeak);
        });
    }

    private static void WorkPeak(Utf8JsonWriter json, WorkPeakEstimate learned)
    {
        json.WriteStartObject("workPeakNm");
        if (learned.Torque is { } torque)
        {
            json.WriteNumber("low", torque.SiBand.Low);
            End(json, "expected", torque.SiBand.Expected);
            End(json, "high", torque.SiBand.High);
        }
        else
        {
            JsonNumbers.Number(json, "low", learned.IsUpperBound ? 0 : null);
            json.WriteNull("expected");
            JsonNumbers.Number(json, "high", learned.AtMost?.NewtonMeters);
        }

        json.WriteEndObject();
    }

    // The place that has used most of its life.
    private static void Damage(Utf8JsonWriter json, string name, IEnumerable<ConsumedLife> lives)
    {
        double[] shares = [.. lives.Select(life => life.Damage.SiBand.Expected)];
        if (shares.Length == 0)
        {
            json.WriteNull(name);
        }
        else
        {
            End(json, name, shares.Max());
        }
    }

    private static void End(Utf8JsonWriter json, string name, double value)
    {
        if (double.IsPositiveInfinity(value))
        {
            json.WriteString(name, "unbounded");
        }
        else
        {
            json.WriteNumber(name, value);
        }
    }

    private static void Applying(Utf8JsonWriter json, string name, double value)
    {
        if (Guard.IsFinite(value))
        {
            json.WriteNumber(name, value);
        }
    }

    private static double Celsius(double kelvins) => kelvins - 273.15;

    private static string Line(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
