using Driveline.Advice;
using Driveline.Reports.Documents;
using Driveline.Reports.Letters;

namespace Driveline.Reports;

/// <summary>
/// One sheet of everything that is still to be asked, to print and send to an owner: machine, questions with boxes to tick, photographs.
/// </summary>
public static class QuestionsText
{
    /// <summary>The sheet in English.</summary>
    /// <exception cref="ArgumentNullException">The advice is missing.</exception>
    public static string Of(OwnerAdvice advice) => Of(advice, ReportOptions.Default);

    /// <summary>The sheet with options.</summary>
    /// <exception cref="ArgumentNullException">The advice or the options are missing.</exception>
    public static string Of(OwnerAdvice advice, ReportOptions options) => TextRendering.Of(
        QuestionSheet.Of(advice ?? throw new ArgumentNullException(nameof(advice)),
            options ?? throw new ArgumentNullException(nameof(options))),
        options.TextWidth);
}
