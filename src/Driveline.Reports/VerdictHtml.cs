using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>A verdict as one self-contained HTML page with the picture inside: the content of <see cref="VerdictText"/>.</summary>
public static class VerdictHtml
{
    /// <summary>The page in metric units.</summary>
    public static string Of(ProtectionVerdict verdict) => Of(verdict, ReportOptions.Default);

    /// <summary>The page with options.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Of(ProtectionVerdict verdict, ReportOptions options)
    {
        IReadOnlyList<ReportBlock> blocks = VerdictReport.Of(
            verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)));
        return HtmlRendering.Of(blocks, Languages.CodeOf(options.Language), TorqueLadderPicture.Fragment(verdict, options));
    }
}
