using Driveline.Choosing;
using Driveline.Reports.Choices;
using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>A choice as Markdown: the content of <see cref="ChoiceText"/>.</summary>
public static class ChoiceMarkdown
{
    /// <summary>The report with options, without pictures.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options) =>
        MarkdownRendering.Of(ChoiceReport.Checked(choice, settings, options), null);
}
