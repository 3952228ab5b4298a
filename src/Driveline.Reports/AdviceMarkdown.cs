using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Letters;

namespace Driveline.Reports;

/// <summary>An advice as Markdown: the content of <see cref="AdviceText"/>.</summary>
public static class AdviceMarkdown
{
    /// <summary>The answer in English, in metric units.</summary>
    public static string Of(OwnerAdvice advice) => Of(advice, ReportOptions.Default);

    /// <summary>The answer with options.</summary>
    /// <exception cref="ArgumentNullException">The advice or the options are missing.</exception>
    public static string Of(OwnerAdvice advice, ReportOptions options) => MarkdownRendering.Of(
        AdviceLetter.Of(
            advice ?? throw new ArgumentNullException(nameof(advice)), options ?? throw new ArgumentNullException(nameof(options))), null);
}
