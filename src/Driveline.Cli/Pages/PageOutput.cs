using System.CommandLine;
using Driveline.Reports.Documents;

namespace Driveline.Cli.Pages;

/// <summary>Prints the reports of one case or several, or writes them into a folder with a page that lists them.</summary>
internal sealed class PageOutput(PageOptions options, Terminal terminal, SharedOptions shared)
{
    /// <summary>The cases of the paths; several are refused where one answer is wanted.</summary>
    /// <exception cref="BadInputException">One cannot be read, or several are asked for as JSON or from standard input.</exception>
    public IReadOnlyList<CaseInput> Cases(ParseResult parsed, IReadOnlyList<string> paths)
    {
        if (paths.Count > 1 && parsed.GetValue(shared.Json))
        {
            throw new BadInputException("--json answers one case at a time; several were given.");
        }

        CaseInput[] cases = [.. paths.Select(p => CaseInput.Of(p, terminal))];
        return cases.GroupBy(c => c.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? throw new BadInputException("Two of the cases are named '" + twice.Key + "'; their reports would be one file.")
            : cases;
    }

    /// <summary>Writes the reports when a folder is given; prints them, unless the answer is JSON or went into the folder.</summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written, or is there already.</exception>
    public void Put(ParseResult parsed, IReadOnlyList<PageReport> reports)
    {
        string? form = parsed.GetValue(options.Form);
        string? folder = parsed.GetValue(shared.Out);
        if (folder is not null)
        {
            Write(parsed, reports, form, folder);
        }

        if (parsed.GetValue(shared.Json) || (folder is not null && form is not null))
        {
            return;
        }

        for (int k = 0; k < reports.Count; k++)
        {
            terminal.Report((k > 0 ? "\n" : string.Empty) + reports[k].In(form), shared.LanguageOf(parsed));
        }
    }

    /// <summary>Writes the reports, whatever is printed.</summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written, or is there already.</exception>
    public void Write(ParseResult parsed, IReadOnlyList<PageReport> reports, string? form, string folder)
    {
        List<KeyValuePair<string, string>> files = [.. reports.SelectMany(r => r.Files(form))];
        if (reports.Count > 1 && form is null or PageOptions.Html)
        {
            files.Add(new("index.html", HtmlIndex.Of(
                [.. reports.Select(r => (r.Name + ".html", r.Title, r.Says()))], shared.ReportOf(parsed, reports[0].Title))));
        }

        OutFolder.Write(folder, terminal, files, parsed.GetValue(options.Force));
    }
}
