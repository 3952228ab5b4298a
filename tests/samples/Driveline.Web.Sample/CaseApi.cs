using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Reports;
using Driveline.Reports.Quotes;

namespace Driveline.Web.Sample;

/// <summary>The API: a case in, a result, a picture or a page out; what is wrong with a case goes out with path, line and column.</summary>
internal static class CaseApi
{
    public static void Map(WebApplication app)
    {
        app.MapPost("/api/assess", (HttpContext web, CancellationToken stop) => Json(
            web, (asked, o) => VerdictJson.Of(asked.Verdict(stop), o), stop));
        app.MapPost("/api/advise", (HttpContext web, CancellationToken stop) => Json(
            web, (asked, o) => AdviceJson.Of(asked.Advice(stop), o), stop));
        app.MapPost("/api/choose", (HttpContext web, CancellationToken stop) => Json(
            web, (asked, o) => ChoiceJson.Of(asked.Choice(stop), asked.Settings(stop), o), stop));
        app.MapPost("/api/ladder.svg", (HttpContext web, CancellationToken stop) => Text(
            web, "image/svg+xml", (asked, asking) => TorqueLadderPicture.Svg(asked.Verdict(stop), asking.Report), stop));
        app.MapPost("/api/letter.html", (HttpContext web, CancellationToken stop) => Text(
            web, "text/html; charset=utf-8", (asked, asking) => AdviceHtml.Of(asked.Advice(stop), asking.Report), stop));
        app.MapPost("/api/quote.html", (HttpContext web, CancellationToken stop) => Text(
            web, "text/html; charset=utf-8", (asked, asking) => Quote(asked, asking, stop), stop));
        app.MapGet("/openapi.json", () => Results.Text(Resource.Text("openapi.json"), "application/json"));
        app.MapGet("/schemas/case.json", () => Results.Text(CaseSchema.Json(), "application/schema+json"));
        foreach (ResultKind kind in new[] { ResultKind.Assess, ResultKind.Advise, ResultKind.Choose })
        {
            app.MapGet(
                "/schemas/" + kind.ToString().ToLowerInvariant() + ".json",
                () => Results.Text(ResultSchema.Json(kind), "application/schema+json"));
        }
    }

    // Bolts come from the shelf that the query names ("stock=3/8-16 UNC, SAE 5; M10, 8.8"), else from what shops usually carry.
    private static string Quote(CaseAssessment asked, Asking asking, CancellationToken stop)
    {
        ChoiceTerms terms = asked.Terms();
        return QuoteHtml.Of(
            asked.Choice(asking.Stock is null ? terms : terms.WithStock(asking.Stock), stop), null, QuoteTerms.Default, asking.Report);
    }

    private static Task<IResult> Json(
        HttpContext web, Func<CaseAssessment, ResultOptions, ResultDocument> answer, CancellationToken stop) =>
        Answered(web, async (asked, asking) =>
        {
            ResultDocument document = answer(asked, asking.Result.WithCase(asked.File!));
            web.Response.ContentType = "application/json; charset=utf-8";
            await document.WriteAsync(web.Response.Body, stop);
            return Results.Empty;
        }, stop);

    private static Task<IResult> Text(HttpContext web, string type, Func<CaseAssessment, Asking, string> answer, CancellationToken stop) =>
        Answered(web, (asked, asking) => Task.FromResult(Results.Text(answer(asked, asking), type)), stop);

    private static async Task<IResult> Answered(HttpContext web, Func<CaseAssessment, Asking, Task<IResult>> answer, CancellationToken stop)
    {
        if (!Asking.TryParse(web.Request.Query, out Asking? asking, out string? wrong))
        {
            return Results.Problem(wrong, statusCode: StatusCodes.Status400BadRequest);
        }

        CaseAssessment asked = await CaseAssessment.ReadAsync(web.Request.Body, stop);
        return asked.IsGood
            ? await answer(asked, asking)
            : Results.ValidationProblem(
                asked.ErrorsByPath(),
                "The case cannot be answered.",
                extensions: new Dictionary<string, object?> { ["places"] = asked.Errors.Select(ErrorPlace.Of) });
    }
}
