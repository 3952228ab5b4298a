using Driveline.Cases;

namespace Driveline.Web.Sample;

/// <summary>The adviser's page: an interview, or a case as it stands; then the letter and the ladder. Works without scripts.</summary>
internal static class AdviserPages
{
    public static void Map(WebApplication app)
    {
        app.MapGet("/", (HttpContext web) => Page(web, asking => new StartPage(asking).Html()));
        app.MapGet("/interview", (HttpContext web) => Page(web, asking => Interviewed(web.Request.Query, asking)));
        app.MapPost("/case", async (HttpContext web, CancellationToken stop) =>
        {
            IFormCollection form = await web.Request.ReadFormAsync(stop);
            string json = form["case"].ToString();
            return Page(web, asking => new LetterPage(asking, CaseAssessment.Of(json), json).Html(stop));
        }).DisableAntiforgery();
    }

    private static string Interviewed(IQueryCollection query, Asking asking)
    {
        Interview talk = Interview.Read(query["told"].ToString(), out string? wrong);
        string step = query["step"].ToString();
        if (wrong is null && step.Length > 0 && step == talk.Next && query.ContainsKey("answer"))
        {
            talk = talk.Answer(step, query["answer"].ToString(), out wrong);
        }

        return talk.Next is null || query.ContainsKey("enough")
            ? new LetterPage(asking, CaseAssessment.Of(talk.State.File), CaseWriter.ToJson(talk.State.File)).Html(CancellationToken.None)
            : new QuestionPage(asking, talk, wrong).Html();
    }

    private static IResult Page(HttpContext web, Func<Asking, string> html) =>
        Asking.TryParse(web.Request.Query, out Asking? asking, out string? wrong)
            ? Results.Text(html(asking), "text/html; charset=utf-8")
            : Results.Problem(wrong, statusCode: StatusCodes.Status400BadRequest);
}
