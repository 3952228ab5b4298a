using Driveline.Cases;
using Driveline.Reports;

namespace Driveline.Web.Sample;

/// <summary>The letter with all its cautions and sheets, and the ladder; or what is wrong with the case, where.</summary>
internal sealed class LetterPage(Asking asking, CaseAssessment asked, string json)
{
    private readonly PageFrame frame = new(asking);

    public string Html(CancellationToken stop)
    {
        string again = $"<nav><a class=\"button quiet\" href=\"/?{frame.Query}\">{frame.Word("again")}</a></nav>";
        if (!asked.IsGood)
        {
            string wrong = string.Concat(asked.Errors.Select(e => $"<p class=\"wrong\">{PageFrame.Encoded(e.ToString())}</p>"));
            return frame.Page(frame.Word("wrong"), $"<div role=\"alert\">{wrong}</div>{StartPage.CaseForm(frame, json)}{again}");
        }

        ReportOptions report = asking.Report;
        return frame.Page(PageFrame.Encoded(asked.File.Title ?? asking.Texts.Of("interview.title")), $"""
            {AdviceHtml.Fragment(asked.Advice(stop), report)}
            <section><h2>{frame.Word("picture")}</h2>{TorqueLadderPicture.Fragment(asked.Verdict(stop), report)}</section>
            <details><summary>{frame.Word("keep")}</summary>{StartPage.CaseForm(frame, json)}</details>
            {again}
            """);
    }
}
