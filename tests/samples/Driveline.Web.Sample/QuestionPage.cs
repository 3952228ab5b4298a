using Driveline.Advice;
using Driveline.Loads;

namespace Driveline.Web.Sample;

/// <summary>One question with its answers, the cautions of finding it out, and what was told before.</summary>
internal sealed class QuestionPage(Asking asking, Interview talk, string? wrong)
{
    private readonly PageFrame frame = new(asking);

    public string Html()
    {
        string step = talk.Next!;
        FactQuestion? question = FactQuestion.Find(step);
        string heading = step switch
        {
            Interview.Machine => frame.Text("interview.machine"),
            Interview.Symptom => frame.Text("interview.symptom"),
            Interview.Power => frame.Word("powerAsk"),
            Interview.Manual => frame.Word("manualAsk"),
            Interview.GoOn => frame.Word("goOnAsk"),
            _ => frame.Text(question!.TextCode),
        };
        string cautions = string.Concat((question?.Cautions ?? []).Select(c => $"<p class=\"caution\">{frame.Text(c.Code)}</p>"));
        string mistake = wrong is null ? string.Empty : $"<p class=\"wrong\" role=\"alert\">{PageFrame.Encoded(wrong)}</p>";
        return frame.Page(heading, $"""
            {mistake}{cautions}
            <form action="/interview" method="get">
            {frame.Hidden()}
            <input type="hidden" name="told" value="{PageFrame.Encoded(talk.Line)}">
            <input type="hidden" name="step" value="{PageFrame.Encoded(step)}">
            {Answers(step, heading)}
            <button>{frame.Word("answer")}</button>
            </form>
            <nav>{Links()}</nav>
            {Told()}
            """);
    }

    private string Answers(string step, string heading)
    {
        if (step is Interview.Power or Interview.Manual)
        {
            return $"<p><label for=\"answer\">{heading}</label><br>"
                + "<input type=\"text\" id=\"answer\" name=\"answer\" maxlength=\"80\" autocomplete=\"off\"></p>";
        }

        IEnumerable<(string Value, string Text)> answers = step switch
        {
            Interview.Machine => Enum.GetValues<MachineKind>().Where(k => k != MachineKind.NotKnown)
                .Select(k => (Camel(k.ToString()), frame.Text("machine." + Camel(k.ToString())))),
            Interview.Symptom => talk.State.Symptoms
                .Select(s => (s.ToString(), frame.Text(AdviceCodes.Of(s)))),
            Interview.GoOn => [(Interview.Yes, frame.Word("goOn")), ("no", frame.Word("no"))],
            _ => FactQuestion.Get(step).Answers.Select(a => (a, frame.Text(Fact.Of(step, a).Code))),
        };
        if (step is not (Interview.Symptom or Interview.GoOn))
        {
            answers = answers.Append((Interview.NotKnown, frame.Text("interview.notKnown")));
        }

        return "<fieldset aria-labelledby=\"question\">" + string.Concat(answers.Select(a =>
            $"<label class=\"choice\"><input type=\"radio\" name=\"answer\" value=\"{PageFrame.Encoded(a.Value)}\" required> "
            + $"<span>{a.Text}</span></label>"))
            + "</fieldset>";
    }

    private string Links()
    {
        string back = talk.Told.Count == 0 ? string.Empty : Link(string.Empty, talk.Back.Line, "back");
        return back + (talk.State.NeedsSymptom ? string.Empty : Link("&amp;enough=1", talk.Line, "enough"));
    }

    private string Link(string more, string told, string word) =>
        $"<a class=\"button quiet\" href=\"/interview?{frame.Query}{more}&amp;told={Uri.EscapeDataString(told)}\">{frame.Word(word)}</a>";

    private string Told()
    {
        IEnumerable<(string Step, string Answer)> answered =
            talk.Told.Where(t => t.Answer is not ("" or Interview.NotKnown or Interview.Yes or "no"));
        string[] told = [.. answered.Select(t => t.Step switch
        {
            Interview.Machine => frame.Text("machine." + t.Answer),
            Interview.Symptom => frame.Text(AdviceCodes.Of(Enum.Parse<Symptom>(t.Answer, true))),
            Interview.Power or Interview.Manual => PageFrame.Encoded(t.Answer),
            _ => frame.Text(Fact.Of(t.Step, t.Answer).Code),
        })];
        return told.Length == 0 ? string.Empty
            : $"<details class=\"told\"><summary>{frame.Word("told")} ({told.Length})</summary>"
                + $"<ul><li>{string.Join("</li><li>", told)}</li></ul></details>";
    }

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
