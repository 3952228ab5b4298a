using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports;

/// <summary>A verdict as plain text for a terminal, a mail or a printer: plain words, at most 78 columns but for long table rows.</summary>
/// <remarks>
/// In order: the verdict, what settles a doubt, the two answers with their margins, the torques, fitted against specified,
/// what guards each part, the findings, what to measure, the weakest basis, and always last the cautions.
/// Names from a case are printed without control characters.
/// </remarks>
public static class VerdictText
{
    /// <summary>The report in metric units.</summary>
    public static string Of(ProtectionVerdict verdict) => Of(verdict, ReportOptions.Default);

    /// <summary>The report with options.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Of(ProtectionVerdict verdict, ReportOptions options) => TextRendering.Of(VerdictReport.Of(
        verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)), false),
        options.TextWidth);
}
