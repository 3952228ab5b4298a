using System.Text.Json;
using Driveline.Monitoring;

namespace Driveline.Fleet;

/// <summary>Appends alarms to a file, one JSON object a line.</summary>
/// <remarks>
/// A line is with the operating system before its alarm is acknowledged: the end of the process loses none, that of the machine may. An
/// alarm told twice stands there twice, under one id. What does not belong to its kind is left out.
/// </remarks>
internal sealed class AlarmFile : IAlarmSink, IDisposable
{
    private readonly FileStream file;
    private readonly Lock turn = new();

    /// <summary>Opens a file, or makes it.</summary>
    /// <exception cref="IOException">It cannot be opened.</exception>
    public AlarmFile(string path) => file = new FileStream(path, FileMode.Append, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);

    /// <inheritdoc/>
    public Task DeliverAsync(IReadOnlyList<FleetAlarm> alarms, CancellationToken stopping)
    {
        ArgumentNullException.ThrowIfNull(alarms);
        using var lines = new MemoryStream();
        foreach (FleetAlarm alarm in alarms)
        {
            using (var json = new Utf8JsonWriter(lines))
            {
                Write(json, alarm);
            }

            lines.WriteByte((byte)'\n');
        }

        lock (turn)
        {
            file.Write(lines.GetBuffer().AsSpan(0, (int)lines.Length));
        }

        return Task.CompletedTask;
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => file.Dispose();

    private static void Write(Utf8JsonWriter json, FleetAlarm alarm)
    {
        MonitorEvent seen = alarm.Event;
        string kind = seen.Kind.ToString();
        json.WriteStartObject();
        json.WriteString("id", alarm.Id.ToString());
        json.WriteString("driveline", alarm.Id.Driveline);
        json.WriteNumber("sequence", alarm.Id.Sequence);
        json.WriteNumber("index", alarm.Id.Index);
        json.WriteString("alarm", char.ToLowerInvariant(kind[0]) + kind[1..]);
        Number(json, "startS", seen.StartS);
        Number(json, "durationS", seen.DurationS);
        Number(json, "peakNm", seen.PeakNm);
        Number(json, "slipAngleRad", seen.SlipAngleRad);
        Number(json, "energyJ", seen.EnergyJ);
        Number(json, "faceK", seen.PeakFaceK);
        json.WriteBoolean("atEngagement", seen.AtEngagement);
        json.WriteBoolean("isCut", seen.IsCut);
        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string name, double value)
    {
        if (double.IsFinite(value))
        {
            json.WriteNumber(name, value);
        }
    }
}
