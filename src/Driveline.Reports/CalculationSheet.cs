using Driveline.Chains;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Reports.Documents;
using Driveline.Reports.Sheets;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>
/// A calculation to be checked by hand: what it begins with and from where, each formula with the numbers put in and its result, the
/// clause; then where the numbers come from, and a place to sign.
/// </summary>
public static class CalculationSheet
{
    /// <summary>An English sheet in Markdown without a list of bases.</summary>
    public static string Markdown(string title, IReadOnlyList<CalculationLine> lines) => Markdown(title, lines, []);

    /// <summary>An English sheet in Markdown with the bases of its inputs, the weakest first and each once.</summary>
    /// <param name="title">Title of the sheet; printed safely.</param>
    /// <param name="lines">The recorded steps in order.</param>
    /// <param name="bases">Where the inputs come from.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Markdown(string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases) =>
        Markdown(title, lines, bases, Language.English);

    /// <summary>A sheet in Markdown in a language; formulas and symbols stay as the library holds them.</summary>
    /// <param name="title">Title of the sheet; printed safely.</param>
    /// <param name="lines">The recorded steps in order.</param>
    /// <param name="bases">Where the inputs come from.</param>
    /// <param name="language">Language of the words and of the number's decimal sign.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    public static string Markdown(string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases, Language language) =>
        MarkdownRendering.Of(Worked(title, lines, bases, ReportOptions.Default.WithLanguage(language)), null);

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

    /// <summary>
    /// The sums of a slip clutch as such a page: from the length of its springs to its torque, from a torque to that length, the heat of a
    /// slip.
    /// </summary>
    /// <exception cref="ArgumentNullException">The review or the options are missing.</exception>
    public static string Html(ClutchReview review, ReportOptions options) =>
        HtmlRendering.Page(Worked(review, options), "page.kind.sheet", options);

    /// <summary>The sums of a slip clutch as Markdown.</summary>
    /// <exception cref="ArgumentNullException">The review or the options are missing.</exception>
    public static string Markdown(ClutchReview review, ReportOptions options) => MarkdownRendering.Of(Worked(review, options), null);

    private static IReadOnlyList<ReportBlock> Worked(ClutchReview review, ReportOptions options) => ClutchWorkedSheet.Of(
        review ?? throw new ArgumentNullException(nameof(review)), options ?? throw new ArgumentNullException(nameof(options)));

    private static IReadOnlyList<ReportBlock> Worked(ProtectionVerdict verdict, ReportOptions options) => WorkedSheet.Of(
        verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)));

    private static IReadOnlyList<ReportBlock> Worked(
        string title, IReadOnlyList<CalculationLine> lines, IReadOnlyList<Basis> bases, ReportOptions options) => WorkedSheet.Of(
        title ?? throw new ArgumentNullException(nameof(title)), lines ?? throw new ArgumentNullException(nameof(lines)),
        bases ?? throw new ArgumentNullException(nameof(bases)), options ?? throw new ArgumentNullException(nameof(options)));
}
