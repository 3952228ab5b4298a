using Driveline.Choosing;
using Driveline.Reports.Choices;
using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>
/// A choice as plain text: the best bolt that fits or that none does, the bolts in a table, what each brings with it, what would help, the
/// settings of the clutches, and last the cautions.
/// </summary>
public static class ChoiceText
{
    /// <summary>The text in metric units.</summary>
    public static string Of(BoltChoice choice) => Of(choice, ReportOptions.Default);

    /// <summary>The text with options.</summary>
    /// <exception cref="ArgumentNullException">The choice or the options are missing.</exception>
    public static string Of(BoltChoice choice, ReportOptions options) => Of(choice, [], options);

    /// <summary>The text with the settings of the slip clutches of the same driveline.</summary>
    /// <exception cref="ArgumentNullException">The choice, the settings or the options are missing.</exception>
    public static string Of(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options) =>
        TextRendering.Of(ChoiceReport.Checked(choice, settings, options), options.TextWidth);
}
