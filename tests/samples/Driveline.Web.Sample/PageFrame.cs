using System.Net;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Web.Sample;

/// <summary>What all pages share: head, style, language, and the words the library does not have.</summary>
internal sealed class PageFrame(Asking asking)
{
    private static readonly string Style = Resource.Text("page.css") + ReportStyle.Css;

    private static readonly Dictionary<string, (string English, string Spanish)> Own = new(StringComparer.Ordinal)
    {
        ["title"] = ("What protects your machine?", "¿Qué protege su máquina?"),
        ["lead"] = (
            "Bolts that keep breaking, or a blow and nothing gave: answer a few questions and read what to do.",
            "Pernos que se rompen sin parar, o un golpe y nada cedió: conteste unas preguntas y lea qué hacer."),
        ["start"] = ("Start with the first question", "Empezar por la primera pregunta"),
        ["other"] = ("En español", "In English"),
        ["case"] = ("A case that is written down", "Un caso ya escrito"),
        ["caseHelp"] = ("The text of a case file (JSON)", "El texto de un archivo de caso (JSON)"),
        ["send"] = ("Write the letter", "Escribir la carta"),
        ["answer"] = ("Answer", "Responder"),
        ["back"] = ("Back one answer", "Volver una respuesta"),
        ["enough"] = ("Enough: write the letter", "Basta: escribir la carta"),
        ["told"] = ("What you have told us", "Lo que nos ha dicho"),
        ["goOn"] = ("Go on", "Seguir"),
        ["goOnAsk"] = (
            "That is enough to name a cause. Shall we go on all the same?",
            "Eso basta para nombrar una causa. ¿Seguimos de todos modos?"),
        ["no"] = ("No, write the letter", "No, escribir la carta"),
        ["powerAsk"] = (
            "What PTO power has the tractor, as “35 hp”? Leave it empty if you don't know.",
            "¿Qué potencia tiene la toma de fuerza, como «35 hp»? Déjelo vacío si no lo sabe."),
        ["manualAsk"] = (
            "What bolt does the machine's manual name: thread and grade, as “3/8-16 UNC, SAE 5”? Leave it empty if you don't know.",
            "¿Qué perno nombra el manual de la máquina: rosca y clase, como «3/8-16 UNC, SAE 5»? Déjelo vacío si no lo sabe."),
        ["wrong"] = ("This case cannot be answered yet", "Este caso todavía no tiene respuesta"),
        ["again"] = ("Start anew", "Empezar de nuevo"),
        ["picture"] = ("The torques in order", "Los pares en orden"),
        ["keep"] = ("The case, to keep or to go on with", "El caso, para guardarlo o seguir con él"),
        ["units"] = ("Units", "Unidades"),
    };

    public Asking Asking => asking;

    public string Query =>
        "language=" + Languages.CodeOf(asking.Language) + "&amp;units=" + (asking.Units == DisplayUnits.UsCustomary ? "us" : "si");

    public string Word(string name) => Encoded(asking.Language == Language.Spanish ? Own[name].Spanish : Own[name].English);

    public string Text(string code) => Encoded(asking.Texts.Of(code));

    public static string Encoded(string text) => WebUtility.HtmlEncode(text);

    public string Hidden() =>
        $"<input type=\"hidden\" name=\"language\" value=\"{Languages.CodeOf(asking.Language)}\">"
        + $"<input type=\"hidden\" name=\"units\" value=\"{(asking.Units == DisplayUnits.UsCustomary ? "us" : "si")}\">";

    public string Page(string heading, string body) => $"""
        <!DOCTYPE html>
        <html lang="{Languages.CodeOf(asking.Language)}">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>{heading}</title>
        <link rel="icon" href="data:,">
        <style>{Style}</style>
        </head>
        <body>
        <main>
        <h1 id="question">{heading}</h1>
        {body}
        </main>
        </body>
        </html>
        """;
}
