namespace Driveline.Cli.Pages;

/// <summary>The report of one case in each form, made only when it is asked for.</summary>
internal sealed class PageReport
{
    /// <summary>Name of its files without an ending, e.g. "brush-cutter.report".</summary>
    public required string Name { get; init; }

    public required string Title { get; init; }

    /// <summary>What it says in one sentence, for a list of many.</summary>
    public required Func<string> Says { get; init; }

    public required Func<string> Text { get; init; }

    public required Func<string> Markdown { get; init; }

    /// <summary>The Markdown with a link to the picture beside it; as the plain one when there is none.</summary>
    public Func<string>? MarkdownBesidePicture { get; init; }

    public required Func<string> Html { get; init; }

    /// <summary>Files that go with it when no one form is asked for: pictures, tables.</summary>
    public Func<IEnumerable<KeyValuePair<string, string>>> More { get; init; } = () => [];

    public string In(string? form) => form switch
    {
        PageOptions.Html => Html(),
        PageOptions.Markdown => Markdown(),
        _ => Text(),
    };

    /// <summary>Its files in one form; in all of them when none is named.</summary>
    public IEnumerable<KeyValuePair<string, string>> Files(string? form) => form switch
    {
        null => [new(Name + ".md", (MarkdownBesidePicture ?? Markdown)()), new(Name + ".html", Html()), .. More()],
        "text" => [new(Name + ".txt", Text())],
        _ => [new(Name + "." + form, In(form))],
    };
}
