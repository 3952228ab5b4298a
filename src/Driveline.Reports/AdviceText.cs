using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Letters;

namespace Driveline.Reports;

/// <summary>An advice as plain text: the answer to an owner's letter, at most 78 columns but for long table rows.</summary>
/// <remarks>
/// In order: the likeliest cause or that not enough is known, what may be behind it with reasons for and against, what to check
/// next, what to do with the price of each in protection and money, the inspection after a blow, deck, costs, the bolt change,
/// what else to notice, where it comes from, and always last every caution.
/// </remarks>
public static class AdviceText
{
    /// <summary>The answer in English, in metric units.</summary>
    public static string Of(OwnerAdvice advice) => Of(advice, ReportOptions.Default);

    /// <summary>The answer with options.</summary>
    /// <exception cref="ArgumentNullException">The advice or the options are missing.</exception>
    public static string Of(OwnerAdvice advice, ReportOptions options) => TextRendering.Of(AdviceLetter.Of(
        advice ?? throw new ArgumentNullException(nameof(advice)), options ?? throw new ArgumentNullException(nameof(options))));
}
