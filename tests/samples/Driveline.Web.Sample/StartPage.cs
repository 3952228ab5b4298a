using Driveline.Wording;

namespace Driveline.Web.Sample;

/// <summary>The first page: begin the questions, or hand in a case.</summary>
internal sealed class StartPage(Asking asking)
{
    private readonly PageFrame frame = new(asking);

    public string Html()
    {
        string other = asking.Language == Language.Spanish ? "en" : "es";
        return frame.Page(frame.Word("title"), $"""
            <nav><a href="/?language={other}" lang="{other}" hreflang="{other}">{frame.Word("other")}</a></nav>
            <p>{frame.Word("lead")}</p>
            <form action="/interview" method="get">{frame.Hidden()}<button>{frame.Word("start")}</button></form>
            {CaseForm(frame, string.Empty)}
            """);
    }

    public static string CaseForm(PageFrame frame, string json) => $"""
        <h2>{frame.Word("case")}</h2>
        <form action="/case?{frame.Query}" method="post">
        <label for="case">{frame.Word("caseHelp")}</label>
        <textarea id="case" name="case" spellcheck="false" required>{"\n" + PageFrame.Encoded(json)}</textarea>
        <button>{frame.Word("send")}</button>
        </form>
        """;
}
