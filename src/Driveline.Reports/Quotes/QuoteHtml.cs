using Driveline.Choosing;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Quotes;

/// <summary>
/// A quote for a shear bolt as one self-contained HTML page: parts, labour, total, until when it is valid, both margins, what was left out
/// and why, the cautions, a place to sign.
/// </summary>
/// <remarks>Never a bolt stronger than the manual's or not known not to be, nor any while the machine must stop.</remarks>
public static class QuoteHtml
{
    /// <summary>The page.</summary>
    /// <param name="choice">The choice made from the stock's list.</param>
    /// <param name="stock">The stock; its rows that are no bolt are listed. Null when it came from elsewhere.</param>
    /// <param name="terms">Number, labour, date.</param>
    /// <param name="options">Title, language, units, head.</param>
    /// <exception cref="ArgumentNullException">The choice, the terms or the options are missing.</exception>
    public static string Of(BoltChoice choice, StockFile? stock, QuoteTerms terms, ReportOptions options) =>
        HtmlRendering.Page(Blocks(choice, stock, terms, options), "page.kind.quote", options);

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">The choice, the terms or the options are missing.</exception>
    public static string Fragment(BoltChoice choice, StockFile? stock, QuoteTerms terms, ReportOptions options) =>
        HtmlRendering.Fragment(Blocks(choice, stock, terms, options), options);

    /// <summary>The same content as Markdown.</summary>
    /// <exception cref="ArgumentNullException">The choice, the terms or the options are missing.</exception>
    public static string Markdown(BoltChoice choice, StockFile? stock, QuoteTerms terms, ReportOptions options) =>
        MarkdownRendering.Of(Blocks(choice, stock, terms, options), null);

    /// <summary>The same content as plain text.</summary>
    /// <exception cref="ArgumentNullException">The choice, the terms or the options are missing.</exception>
    public static string Text(BoltChoice choice, StockFile? stock, QuoteTerms terms, ReportOptions options) =>
        TextRendering.Of(Blocks(choice, stock, terms, options), options.TextWidth);

    private static IReadOnlyList<ReportBlock> Blocks(BoltChoice choice, StockFile? stock, QuoteTerms terms, ReportOptions options) =>
        QuoteReport.Of(
            choice ?? throw new ArgumentNullException(nameof(choice)), stock, terms ?? throw new ArgumentNullException(nameof(terms)),
            options ?? throw new ArgumentNullException(nameof(options)));
}
