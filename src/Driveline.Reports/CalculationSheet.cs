using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Reports.Documents;
using Driveline.Reports.Sheets;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>
/// The steps of a calculation as a Markdown sheet: symbol, formula, value in SI, source; then where the numbers come from.
/// </summary>
public static class CalculationSheet
{
    private static readonly string[] Heads = ["sheet.step", "sheet.formula", "sheet.value", "sheet.unit", "sheet.source"];

    /// <summary>An English sheet without a list of bases.</summary>
    public static string Markdown(string title, IReadOnlyList<CalculationLine> lines) => Markdown(title, lines, []);

    /// <summary>An English sheet with the bases of its inputs, the weakest first and each once.</summary>
    /// <param name="title">Title of the sheet; printed safely.</param>
    /// <param name="lines">The recorded steps in order.</param>
    /// <param name="bases">Where the inputs come from.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Markdown(string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases) =>
        Markdown(title, lines, bases, Language.English);

    /// <summary>A sheet in a language; formulas, symbols and the sources of the steps stay as the library holds them.</summary>
    /// <param name="title">Title of the sheet; printed safely.</param>
    /// <param name="lines">The recorded steps in order.</param>
    /// <param name="bases">Where the inputs come from.</param>
    /// <param name="language">Language of the headings and of the number's decimal sign.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public static string Markdown(string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases, Language language)
    {
        var phrase = new Phrase(Texts.In(language), DisplayUnits.Metric);
        var blocks = new List<ReportBlock>
        {
            ReportBlock.Title(phrase.Of("sheet.title") + ": " + phrase.Name(title ?? throw new ArgumentNullException(nameof(title)))),
        };
        if ((lines ?? throw new ArgumentNullException(nameof(lines))).Count == 0)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("sheet.none")));
        }
        else
        {
            blocks.Add(ReportBlock.Table([[.. Heads.Select(phrase.Of)], .. lines.Select(line => Row(line, phrase))]));
        }

        if ((bases ?? throw new ArgumentNullException(nameof(bases))).Count > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("sheet.bases")));
            blocks.Add(ReportBlock.Bullets(bases.Distinct().OrderBy(b => b.Kind).Select(b => b.ToString())));
        }

        return MarkdownRendering.Of(blocks, null);
    }

    /// <summary>
    /// The calculation behind a verdict as one self-contained HTML page, to be checked by hand: the sum of each device in order, each end
    /// apart, with the numbers put in; the two comparisons; where the numbers come from; a place to sign.
    /// </summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Html(ProtectionVerdict verdict, ReportOptions options) =>
        HtmlRendering.Page(Worked(verdict, options), "page.kind.sheet", options);

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string HtmlFragment(ProtectionVerdict verdict, ReportOptions options) =>
        HtmlRendering.Fragment(Worked(verdict, options), options);

    /// <summary>Any recorded steps as such a page: a strike, an engagement, the heat of a slip.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Html(string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases, ReportOptions options) =>
        HtmlRendering.Page(Worked(title, lines, bases, options), "page.kind.sheet", options);

    /// <summary>The calculation behind a verdict as Markdown, in the units and the language of the options.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Markdown(ProtectionVerdict verdict, ReportOptions options) =>
        MarkdownRendering.Of(Worked(verdict, options), null);

    private static IReadOnlyList<ReportBlock> Worked(ProtectionVerdict verdict, ReportOptions options) => WorkedSheet.Of(
        verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)));

    private static IReadOnlyList<ReportBlock> Worked(
        string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases, ReportOptions options) => WorkedSheet.Of(
        title ?? throw new ArgumentNullException(nameof(title)), lines ?? throw new ArgumentNullException(nameof(lines)),
        bases ?? throw new ArgumentNullException(nameof(bases)), options ?? throw new ArgumentNullException(nameof(options)));

    private static string[] Row(CalculationLine line, Phrase phrase) =>
    [
        line.Formula.Symbol, line.Formula.Formula, phrase.Number(line.Value, "G6"),
        line.Formula.Unit == "1" ? "–" : line.Formula.Unit, line.Formula.Source,
    ];
}
