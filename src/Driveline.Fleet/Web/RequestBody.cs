using System.Globalization;
using System.Text.Json;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Fleet.Web;

/// <summary>Reads what the endpoint is sent; what is wrong becomes a refusal that names field, range and what came.</summary>
internal static class RequestBody
{
    private static readonly string[] Columns = ["timeS", "speedInRadPerS", "speedOutRadPerS", "torqueNm"];
    private static readonly string[] BatchMembers = [.. Columns, "sequence", "lostBefore", "newClock", "end"];
    private static readonly string[] RegistrationMembers = ["case", "samplePeriodS", "overloadNm", "speedRatio"];

    /// <summary>A batch: its number, and a column of numbers for each quantity; without speedOutRadPerS none was measured.</summary>
    /// <exception cref="RefusedException">Anything is wrong.</exception>
    public static TelemetryBatch Batch(JsonElement root)
    {
        Members(root, BatchMembers);
        double[] time = Column(root, Columns[0], -1), speedIn = Column(root, Columns[1], time.Length);
        double[] torque = Column(root, Columns[3], time.Length);
        double[] speedOut = root.TryGetProperty(Columns[2], out _) ? Column(root, Columns[2], time.Length)
            : [.. Enumerable.Repeat(double.NaN, time.Length)];
        var samples = new TorqueSample[time.Length];
        for (int k = 0; k < samples.Length; k++)
        {
            samples[k] = new TorqueSample(time[k], speedIn[k], speedOut[k], torque[k]);
        }

        TelemetryBatch batch = TelemetryBatch.Of(Whole(root, "sequence", null), samples).WithLostBefore(Whole(root, "lostBefore", 0));
        batch = Flag(root, "newClock") ? batch.WithNewClock() : batch;
        return Flag(root, "end") ? batch.WithEnd() : batch;
    }

    /// <summary>A registration: a case, the period of the samples, and what else is to be said.</summary>
    /// <exception cref="RefusedException">Anything is wrong.</exception>
    public static DrivelineRegistration Registration(JsonElement root)
    {
        Members(root, RegistrationMembers);
        JsonElement file = root.TryGetProperty("case", out JsonElement given) && given.ValueKind == JsonValueKind.Object ? given
            : throw new RefusedException("case", "a case file as an object", Shown(root, "case"));
        double periodS = Number(root, "samplePeriodS", 1e-5, 3600)
            ?? throw new RefusedException("samplePeriodS", "a number of seconds", "none");
        var registration = DrivelineRegistration.Of(file.GetRawText(), Duration.FromSeconds(periodS));
        registration = Number(root, "overloadNm", 1e-3, 1e6) is { } nm ? registration.WithOverload(Torque.FromNewtonMeters(nm))
            : registration;
        return Number(root, "speedRatio", 0.01, 100) is { } ratio ? registration.WithSpeedRatio(ratio) : registration;
    }

    private static void Members(JsonElement root, string[] known)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            throw new RefusedException("body", "an object", root.ValueKind.ToString());
        }

        foreach (JsonProperty member in root.EnumerateObject())
        {
            if (!known.Contains(member.Name, StringComparer.Ordinal))
            {
                throw new RefusedException("body", "an object with " + string.Join(", ", known), "\"" + Cut(member.Name) + "\"");
            }
        }
    }

    private static double[] Column(JsonElement root, string name, int length)
    {
        if (!root.TryGetProperty(name, out JsonElement column) || column.ValueKind != JsonValueKind.Array)
        {
            throw new RefusedException(name, "a list of numbers", Shown(root, name));
        }

        int count = column.GetArrayLength();
        if (count > TelemetryBatch.MostSamples || (length >= 0 && count != length))
        {
            int most = length >= 0 ? length : TelemetryBatch.MostSamples;
            throw new RefusedException(name, (length >= 0 ? "" : "at most ") + most.ToString(CultureInfo.InvariantCulture) + " numbers",
                count.ToString(CultureInfo.InvariantCulture));
        }

        double[] values = new double[count];
        int at = 0;
        foreach (JsonElement cell in column.EnumerateArray())
        {
            // A cell without a value is a sample that could not be taken: the monitor counts it.
            values[at++] = cell.ValueKind == JsonValueKind.Null ? double.NaN
                : cell.ValueKind == JsonValueKind.Number && cell.TryGetDouble(out double value) ? value
                : throw new RefusedException(name, "a list of numbers and null", Cut(cell.GetRawText()));
        }

        return values;
    }

    private static double? Number(JsonElement root, string name, double low, double high) =>
        !root.TryGetProperty(name, out JsonElement given) ? null
        : given.ValueKind == JsonValueKind.Number && given.TryGetDouble(out double value) && value >= low && value <= high ? value
        : throw new RefusedException(
            name, string.Create(CultureInfo.InvariantCulture, $"a number from {low} to {high}"), Cut(given.GetRawText()));

    private static long Whole(JsonElement root, string name, long? other) =>
        root.TryGetProperty(name, out JsonElement given) && given.ValueKind == JsonValueKind.Number
            && given.TryGetInt64(out long value) ? value
        : given.ValueKind == JsonValueKind.Undefined && other is { } left ? left
        : throw new RefusedException(name, "a whole number", Shown(root, name));

    private static bool Flag(JsonElement root, string name) => root.TryGetProperty(name, out JsonElement given)
        && (given.ValueKind is JsonValueKind.True or JsonValueKind.False ? given.GetBoolean()
            : throw new RefusedException(name, "true or false", Shown(root, name)));

    private static string Shown(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement given) ? Cut(given.GetRawText()) : "none";

    private static string Cut(string text) => text.Length > 40 ? text[..40] + "…" : text;
}
