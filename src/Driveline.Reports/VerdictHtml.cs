using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports;

/// <summary>A verdict as one self-contained HTML page with the picture inside: the content of <see cref="VerdictText"/>.</summary>
public static class VerdictHtml
{
    /// <summary>The page in metric units.</summary>
    public static string Of(ProtectionVerdict verdict) => Of(verdict, ReportOptions.Default);

    /// <summary>The page with options.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Of(ProtectionVerdict verdict, ReportOptions options) =>
        HtmlRendering.Page(Blocks(verdict, options), "page.kind.verdict", options);

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Fragment(ProtectionVerdict verdict, ReportOptions options) =>
        HtmlRendering.Fragment(Blocks(verdict, options), options);

    private static IReadOnlyList<ReportBlock> Blocks(ProtectionVerdict verdict, ReportOptions options) => VerdictReport.Of(
        verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)));
}
