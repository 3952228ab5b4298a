using Driveline.Choosing;
using Driveline.Reports.Choices;
using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>A choice of bolts as plain text: the best that fits or that none does, the bolts in a table, what each brings with it, what would help, and last the cautions.</summary>
public static class ChoiceText
{
    /// <summary>The text in metric units.</summary>
    public static string Of(BoltChoice choice) => Of(choice, ReportOptions.Default);

    /// <summary>The text with options.</summary>
    /// <exception cref="ArgumentNullException">The choice or the options are missing.</exception>
    public static string Of(BoltChoice choice, ReportOptions options) => TextRendering.Of(ChoiceReport.Of(
        choice ?? throw new ArgumentNullException(nameof(choice)), options ?? throw new ArgumentNullException(nameof(options))));
}
