using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace Driveline.Fleet.Web;

/// <summary>Takes registrations and batches over HTTP.</summary>
internal sealed class DrivelineEndpoint(IGrainFactory grains, int mostBodyBytes)
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    public Task TakeAsync(HttpContext context) => RunAsync(context, async () =>
    {
        TelemetryBatch batch = RequestBody.Batch(await BodyAsync(context));
        BatchAnswer answer = await Driveline(context).TakeAsync(batch);
        int status = answer.Outcome switch
        {
            BatchOutcome.Waiting => StatusCodes.Status202Accepted,
            BatchOutcome.Busy => StatusCodes.Status503ServiceUnavailable,
            BatchOutcome.Refused => answer.Refusal!.Field switch
            {
                "driveline" => StatusCodes.Status404NotFound,
                "sequence" => StatusCodes.Status409Conflict,
                _ => StatusCodes.Status400BadRequest,
            },
            _ => StatusCodes.Status200OK,
        };
        if (answer.Outcome == BatchOutcome.Busy)
        {
            context.Response.Headers.RetryAfter = "1";
        }

        await FleetJson.WriteAsync(context, status, json => FleetJson.Write(json, answer));
    });

    public Task RegisterAsync(HttpContext context) => RunAsync(context, async () =>
    {
        RegistrationAnswer answer = await Driveline(context).RegisterAsync(RequestBody.Registration(await BodyAsync(context)));
        int status = !answer.IsRegistered ? StatusCodes.Status400BadRequest
            : answer.IsNew ? StatusCodes.Status201Created
            : StatusCodes.Status200OK;
        await FleetJson.WriteAsync(context, status, json =>
        {
            json.WriteString("outcome", answer.IsRegistered ? "registered" : "refused");
            json.WriteStartArray("problems");
            foreach (string problem in answer.Problems)
            {
                json.WriteStringValue(problem);
            }

            json.WriteEndArray();
        });
    });

    public Task StatusAsync(HttpContext context) => RunAsync(context, async () =>
    {
        DrivelineStatus? status = await Driveline(context).StatusAsync();
        await (status is null
            ? FleetJson.RefuseAsync(
                context, StatusCodes.Status404NotFound, new FleetRefusal("driveline", "a registered one", Name(context)))
            : FleetJson.WriteAsync(context, StatusCodes.Status200OK, json => FleetJson.Write(json, status)));
    });

    public Task RemoveAsync(HttpContext context) => RunAsync(context, async () =>
    {
        await Driveline(context).RemoveAsync();
        context.Response.StatusCode = StatusCodes.Status204NoContent;
    });

    private static string Name(HttpContext context) => (string)context.Request.RouteValues["name"]!;

    private IDrivelineGrain Driveline(HttpContext context) => DrivelineStatus.IsName(Name(context))
        ? grains.GetGrain<IDrivelineGrain>(Name(context))
        : throw new RefusedException("driveline", "a name of 1 to 64 letters, digits, dots, dashes and underscores", Cut(Name(context)));

    private static async Task<JsonElement> BodyAsync(HttpContext context)
    {
        // A form or a text could come from any page of the web without being asked for; this cannot.
        if (!context.Request.HasJsonContentType())
        {
            throw new RefusedException("Content-Type", "application/json", Cut(context.Request.ContentType ?? "none"));
        }

        using JsonDocument document = await JsonDocument.ParseAsync(context.Request.Body, Strict, context.RequestAborted);
        return document.RootElement.Clone();
    }

    private async Task RunAsync(HttpContext context, Func<Task> answer)
    {
        try
        {
            await answer();
        }
        catch (RefusedException refused)
        {
            int status = refused.Refusal.Field == "Content-Type" ? StatusCodes.Status415UnsupportedMediaType
                : StatusCodes.Status400BadRequest;
            await FleetJson.RefuseAsync(context, status, refused.Refusal);
        }
        catch (JsonException wrong)
        {
            string received = wrong.LineNumber is not { } line ? "a member twice"
                : string.Create(CultureInfo.InvariantCulture, $"something else on line {line + 1}");
            await FleetJson.RefuseAsync(
                context, StatusCodes.Status400BadRequest, new FleetRefusal("body", "JSON with each member once", received));
        }
        catch (BadHttpRequestException bad) when (bad.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            string received = context.Request.ContentLength is { } length ? length.ToString(CultureInfo.InvariantCulture) : "more";
            await FleetJson.RefuseAsync(context, bad.StatusCode, new FleetRefusal(
                "body", string.Create(CultureInfo.InvariantCulture, $"at most {mostBodyBytes} bytes"), received));
        }
        catch (Exception failed) when (!context.Response.HasStarted && failed is OrleansException or TimeoutException)
        {
            await FleetJson.RefuseAsync(context, StatusCodes.Status503ServiceUnavailable, new FleetRefusal(
                "driveline", "one that a silo holds now", "one on its way to another silo; send it again"));
        }
    }

    private static string Cut(string text) => text.Length > 80 ? text[..80] + "…" : text;
}
