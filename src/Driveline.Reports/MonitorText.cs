using Driveline.Monitoring;
using Driveline.Reports.Documents;
using Driveline.Reports.Monitors;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports;

/// <summary>
/// What a log of a driveline shows as plain text: the counts, the events, the heat, the life used, the work peak learned, the
/// findings, and last the cautions.
/// </summary>
public static class MonitorText
{
    /// <summary>The text in English and metric units.</summary>
    public static string Of(MonitorReport report) => Of(report, ReportOptions.Default);

    /// <summary>The text with options.</summary>
    /// <exception cref="ArgumentNullException">The report or the options are missing.</exception>
    public static string Of(MonitorReport report, ReportOptions options) => TextRendering.Of(MonitorWords.Of(
        report ?? throw new ArgumentNullException(nameof(report)), options ?? throw new ArgumentNullException(nameof(options))),
        options.TextWidth);

    /// <summary>What is wrong with the first rows that were left out for each reason, by line; one text each.</summary>
    /// <exception cref="ArgumentNullException">The report or the options are missing.</exception>
    public static IReadOnlyList<string> RowsOf(MonitorReport report, ReportOptions options) =>
    [
        .. MonitorWords.Rows(
            report ?? throw new ArgumentNullException(nameof(report)),
            new Phrase((options ?? throw new ArgumentNullException(nameof(options))).Texts, options.Units)),
    ];
}
