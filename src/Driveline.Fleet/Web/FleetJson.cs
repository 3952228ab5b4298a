using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace Driveline.Fleet.Web;

/// <summary>Writes the answers of the endpoint.</summary>
internal static class FleetJson
{
    public static async Task WriteAsync(HttpContext context, int status, Action<Utf8JsonWriter> write)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "application/json";
        await using (var writer = new Utf8JsonWriter(context.Response.BodyWriter))
        {
            writer.WriteStartObject();
            write(writer);
            writer.WriteEndObject();
        }

        await context.Response.BodyWriter.FlushAsync(context.RequestAborted);
    }

    public static Task RefuseAsync(HttpContext context, int status, FleetRefusal why)
    {
        if (status is StatusCodes.Status429TooManyRequests or StatusCodes.Status503ServiceUnavailable)
        {
            context.Response.Headers.RetryAfter = "1";
        }

        return WriteAsync(context, status, json =>
        {
            json.WriteString("outcome", "refused");
            Write(json, why);
        });
    }

    public static void Write(Utf8JsonWriter json, FleetRefusal why)
    {
        json.WriteString("field", why.Field);
        json.WriteString("range", why.Range);
        json.WriteString("received", why.Received);
        json.WriteString("message", why.ToString());
    }

    public static void Write(Utf8JsonWriter json, BatchAnswer answer)
    {
        json.WriteString("outcome", Camel(answer.Outcome.ToString()));
        json.WriteNumber("acknowledgedThrough", answer.AcknowledgedThrough);
        if (answer.MissingFrom > 0)
        {
            json.WriteNumber("missingFrom", answer.MissingFrom);
            json.WriteNumber("missingThrough", answer.MissingThrough);
        }

        if (answer.RetryAfter > TimeSpan.Zero)
        {
            json.WriteNumber("retryAfterS", answer.RetryAfter.TotalSeconds);
        }

        if (answer.Refusal is { } why)
        {
            Write(json, why);
        }
    }

    public static void Write(Utf8JsonWriter json, DrivelineStatus status)
    {
        json.WriteString("driveline", status.Driveline);
        json.WriteString("silo", status.Silo);
        json.WriteNumber("acknowledgedThrough", status.AcknowledgedThrough);
        json.WriteNumber("waiting", status.Waiting);
        json.WriteNumber("lost", status.Lost);
        json.WriteNumber("openAlarms", status.OpenAlarms);
        json.WriteNumber("samples", status.Samples);
        json.WriteNumber("trips", status.Trips);
        json.WriteNumber("overloads", status.Overloads);
        json.WriteNumber("slips", status.Slips);
        if (!double.IsNaN(status.HighestNm))
        {
            json.WriteNumber("highestNm", status.HighestNm);
        }

        json.WriteNumber("overloadNm", status.OverloadNm);
        json.WriteNumber("turnedHours", status.TurnedHours);
        json.WriteNumber("stateBytes", status.StateBytes);
    }

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
