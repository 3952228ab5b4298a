using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Letters;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>An advice as one self-contained HTML page: the content of <see cref="AdviceText"/>.</summary>
public static class AdviceHtml
{
    /// <summary>The page in English, in metric units.</summary>
    public static string Of(OwnerAdvice advice) => Of(advice, ReportOptions.Default);

    /// <summary>The page with options.</summary>
    /// <exception cref="ArgumentNullException">The advice or the options are missing.</exception>
    public static string Of(OwnerAdvice advice, ReportOptions options)
    {
        IReadOnlyList<ReportBlock> blocks = AdviceLetter.Of(
            advice ?? throw new ArgumentNullException(nameof(advice)), options ?? throw new ArgumentNullException(nameof(options)));
        return HtmlRendering.Of(blocks, Languages.CodeOf(options.Language), string.Empty);
    }
}
