using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports;

/// <summary>A verdict as Markdown: the content of <see cref="VerdictText"/>, names from a case escaped.</summary>
public static class VerdictMarkdown
{
    /// <summary>The report in metric units, without a picture.</summary>
    public static string Of(ProtectionVerdict verdict) => Of(verdict, ReportOptions.Default);

    /// <summary>The report without a picture.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Of(ProtectionVerdict verdict, ReportOptions options) => Write(verdict, options, null);

    /// <summary>The report with a link to the picture of the torque ladder.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="options">Title, units, language.</param>
    /// <param name="picture">Address of the picture relative to the report, e.g. "cutter.ladder.svg".</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(ProtectionVerdict verdict, ReportOptions options, string picture) =>
        Write(verdict, options, picture ?? throw new ArgumentNullException(nameof(picture)));

    private static string Write(ProtectionVerdict verdict, ReportOptions options, string? picture) => MarkdownRendering.Of(
        VerdictReport.Of(verdict ?? throw new ArgumentNullException(nameof(verdict)), options
            ?? throw new ArgumentNullException(nameof(options))), picture);
}
