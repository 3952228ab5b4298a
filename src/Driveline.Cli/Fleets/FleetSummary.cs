using System.Globalization;
using System.Text.Json;
using Driveline.Fleet;

namespace Driveline.Cli.Fleets;

/// <summary>What a replay came to.</summary>
internal sealed class FleetSummary
{
    public int Drivelines { get; init; }

    public long Batches { get; init; }

    public long Samples { get; init; }

    public long SentAgain { get; init; }

    public long LeftOut { get; init; }

    public long Alarms { get; init; }

    public TimeSpan Took { get; init; }

    public double MiddleMs { get; init; }

    public double SlowestMs { get; init; }

    public required DrivelineStatus[] Worst { get; init; }

    private double PerSecond => Batches / Math.Max(0.001, Took.TotalSeconds);

    public void Print(Terminal terminal, bool isJson)
    {
        if (isJson)
        {
            JsonText.Print(terminal, Write);
            return;
        }

        Say(terminal, $"{N(Drivelines)} drivelines, {N(Batches)} batches, {N(Samples)} samples");
        Say(terminal, $"{Took.TotalSeconds:N1} s, {N(PerSecond)} batches/s; sent again: {N(SentAgain)}");
        Say(terminal, $"acknowledged: half within {MiddleMs:N1} ms, 99 of 100 within {SlowestMs:N1} ms");
        Say(terminal, $"alarms: {N(Alarms)}; rows that could not be read: {N(LeftOut)}");
        terminal.Table(["driveline", "trips", "overloads", "slips", "highest N·m", "hours"], Worst.Select(IReadOnlyList<string> (s) =>
        [
            s.Driveline, N(s.Trips), N(s.Overloads), N(s.Slips), double.IsNaN(s.HighestNm) ? "-" : N(s.HighestNm),
            s.TurnedHours.ToString("N1", CultureInfo.InvariantCulture),
        ]));
    }

    private static void Say(Terminal terminal, FormattableString line) => terminal.Output.WriteLine(FormattableString.Invariant(line));

    private static string N(double number) => number.ToString("N0", CultureInfo.InvariantCulture);

    private void Write(Stream stream)
    {
        using var json = new Utf8JsonWriter(stream, JsonText.Options);
        json.WriteStartObject();
        json.WriteNumber("drivelines", Drivelines);
        json.WriteNumber("batches", Batches);
        json.WriteNumber("samples", Samples);
        json.WriteNumber("durationS", Math.Round(Took.TotalSeconds, 3));
        json.WriteNumber("batchesPerS", Math.Round(PerSecond, 1));
        json.WriteNumber("ackMiddleMs", Math.Round(MiddleMs, 3));
        json.WriteNumber("ackSlowestMs", Math.Round(SlowestMs, 3));
        json.WriteNumber("sentAgain", SentAgain);
        json.WriteNumber("unreadableRows", LeftOut);
        json.WriteNumber("alarms", Alarms);
        json.WriteStartArray("worst");
        foreach (DrivelineStatus status in Worst)
        {
            json.WriteStartObject();
            json.WriteString("driveline", status.Driveline);
            json.WriteNumber("trips", status.Trips);
            json.WriteNumber("overloads", status.Overloads);
            json.WriteNumber("slips", status.Slips);
            json.WriteNumber("highestNm", double.IsNaN(status.HighestNm) ? 0 : status.HighestNm);
            json.WriteNumber("turnedHours", status.TurnedHours);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
