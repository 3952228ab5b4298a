using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Letters;

namespace Driveline.Reports;

/// <summary>An advice as plain text: the answer to an owner's letter, wrapped at the width of the options.</summary>
/// <remarks>
/// One page: whether the machine may be used, what to do, what we think, what to tell us. Then every caution, and the sheets that apply:
/// A changing the bolt, B after a hit, C testing and setting the clutch, D the numbers.
/// </remarks>
public static class AdviceText
{
    /// <summary>The answer in English, in metric units.</summary>
    public static string Of(OwnerAdvice advice) => Of(advice, ReportOptions.Default);

    /// <summary>The answer with options.</summary>
    /// <exception cref="ArgumentNullException">The advice or the options are missing.</exception>
    public static string Of(OwnerAdvice advice, ReportOptions options) => TextRendering.Of(AdviceLetter.Of(
        advice ?? throw new ArgumentNullException(nameof(advice)), options ?? throw new ArgumentNullException(nameof(options))),
        options.TextWidth);
}
