using System.Globalization;
using System.Text;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Simulations;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports;

/// <summary>The torque traces of a simulation as comma-separated values for a spreadsheet or a script.</summary>
/// <remarks>
/// First line: names with units. Then one line a time, at equal steps: seconds since the start, and for each element its torque at its
/// own input with and without protection, in N·m or, with US customary units, in lbf·ft. Numbers are invariant with 9 digits; a run that is
/// not known leaves its cells empty.
/// </remarks>
public static class SimulationCsv
{
    private const int Samples = 2001;

    /// <summary>The table in N·m.</summary>
    /// <exception cref="ArgumentNullException">The check is missing.</exception>
    public static string Of(SimulationCheck check) => Of(check, ReportOptions.Default);

    /// <summary>The table in the units of the options; its heads are English in every language, for scripts.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Of(SimulationCheck check, ReportOptions options) => Of(check, options, CancellationToken.None);

    /// <summary>The same, until it is stopped: it runs the simulation once more with and once more without protection.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static string Of(SimulationCheck check, ReportOptions options, CancellationToken stop)
    {
        DisplayUnits units = (options ?? throw new ArgumentNullException(nameof(options))).Units;
        double perNm = TorqueShown.PerNm(units);
        string unit = units == DisplayUnits.UsCustomary ? " [lbf.ft]" : " [N.m]";
        SimulationTraces traces = SimulationTraces.Of(check ?? throw new ArgumentNullException(nameof(check)), Samples, stop);
        var text = new StringBuilder("time [s]");
        foreach (SimulationTrace trace in traces.All)
        {
            text.Append(',').Append(Cell(trace.Load.Element.Name + ", with protection" + unit))
                .Append(',').Append(Cell(trace.Load.Element.Name + ", without protection" + unit));
        }

        text.Append('\n');
        for (int k = 0; k < Samples && traces.All.Count > 0; k++)
        {
            text.Append(Number(traces.LengthS * k / (Samples - 1)));
            foreach (SimulationTrace trace in traces.All)
            {
                text.Append(',').Append(At(trace.With, k, perNm)).Append(',').Append(At(trace.Without, k, perNm));
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    private static string At(IReadOnlyList<double>? trace, int k, double perNm) =>
        trace is not null && k < trace.Count ? Number(trace[k] * perNm) : string.Empty;

    private static string Number(double value) => value.ToString("G9", CultureInfo.InvariantCulture);

    // A name that begins like a formula would be run by a spreadsheet.
    private static string Cell(string text)
    {
        string clean = CleanText.Line(text).Replace("\"", "\"\"");
        return "\"" + (clean.Length > 0 && clean[0] is '=' or '+' or '-' or '@' ? "'" : string.Empty) + clean + "\"";
    }
}
