using System.Globalization;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Cli.Telemetry;

/// <summary>A log whose head names the columns with their units, and then a row a sample.</summary>
/// <remarks>
/// Cells stand between commas, semicolons or tabs, whichever the head has; the decimal sign is a point. Lines that are empty or
/// begin with # are left out, and so are columns of other names.
/// </remarks>
internal sealed class SampleTable : ITelemetry
{
    private const int SpeedOut = 2;
    private const int MostShown = 20;
    private const int LongestShown = 40;

    private static readonly string[][] Known =
    [
        ["time_s", "timeS", "timeMs"],
        ["inputSpeed_rpm", "speedInRpm", "speedInRadPerS"],
        ["outputSpeed_rpm", "speedOutRpm", "speedOutRadPerS"],
        ["torque_Nm", "torqueNm", "torqueKNm", "torqueLbfFt"],
    ];

    private readonly LineReader lines;
    private readonly RowNotes notes;
    private readonly string[] head;
    private readonly char separator;
    private readonly int[] roles;
    private readonly double[] factors;

    private SampleTable(LineReader lines, RowNotes notes, string[] head, char separator, int[] places)
    {
        this.lines = lines;
        this.notes = notes;
        this.head = head;
        this.separator = separator;
        roles = [.. Enumerable.Range(0, head.Length).Select(column => Array.IndexOf(places, column))];
        factors = [.. head.Select(FactorOf)];
    }

    public long Line => lines.Line;

    /// <summary>The log behind a head.</summary>
    /// <exception cref="BadInputException">A column is missing or stands there twice.</exception>
    public static SampleTable Open(string text, LineReader lines, RowNotes notes)
    {
        char separator = text.Contains('\t', StringComparison.Ordinal) ? '\t' : text.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        string[] head = [.. text.Split(separator).Select(cell => cell.Trim().Trim('"'))];
        var problems = new List<string>();
        int[] places = [.. Known.Select(names => PlaceOf(head, names, problems))];
        return problems.Count == 0 ? new SampleTable(lines, notes, head, separator, places) : throw new BadInputException(problems);
    }

    public bool TryNext(out TorqueSample sample)
    {
        while (lines.TryNext(out ReadOnlySpan<char> text))
        {
            if (lines.IsTooLong)
            {
                notes.Refuse(lines.Line, RowTrouble.Length);
            }
            else if (!TelemetryLog.IsNothing(text) && TryRow(text, out sample))
            {
                return true;
            }
        }

        sample = default;
        return false;
    }

    private static int PlaceOf(string[] head, string[] names, List<string> problems)
    {
        int[] found = [.. Enumerable.Range(0, head.Length).Where(k => names.Contains(head[k], StringComparer.OrdinalIgnoreCase))];
        bool isOptional = names == Known[SpeedOut];
        if (found.Length > 1)
        {
            problems.Add("The log has more than one column of " + string.Join(", ", names) + ".");
        }
        else if (found.Length == 0 && !isOptional)
        {
            problems.Add("The log needs a column " + string.Join(" or ", names) + "; it has: "
                + string.Join(", ", head.Take(MostShown).Select(Shown)) + ".");
        }

        return found.Length == 0 ? -1 : found[0];
    }

    private static string Shown(string cell) => cell.Length > LongestShown ? cell[..LongestShown] + "…" : cell;

    private static double FactorOf(string name) => name.ToUpperInvariant() switch
    {
        "TIMEMS" => 1e-3,
        "INPUTSPEED_RPM" or "OUTPUTSPEED_RPM" or "SPEEDINRPM" or "SPEEDOUTRPM" => Math.PI / 30,
        "TORQUEKNM" => 1e3,
        "TORQUELBFFT" => Torque.FromPoundForceFeet(1).NewtonMeters,
        _ => 1,
    };

    private bool TryRow(ReadOnlySpan<char> text, out TorqueSample sample)
    {
        sample = default;
        Span<double> values = [double.NaN, double.NaN, double.NaN, double.NaN];
        int column = 0;
        int wrong = -1;
        foreach (Range range in text.Split(separator))
        {
            int role = column < roles.Length ? roles[column] : -1;
            ReadOnlySpan<char> cell = role < 0 ? default : text[range].Trim().Trim('"');
            if (role >= 0 && !(cell.IsEmpty && role == SpeedOut))
            {
                if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
                {
                    wrong = wrong < 0 ? column : wrong;
                }

                values[role] = value * factors[column];
            }

            column++;
        }

        if (column != head.Length)
        {
            notes.Refuse(lines.Line, RowTrouble.Cells);
            return false;
        }

        if (wrong >= 0)
        {
            notes.Refuse(lines.Line, head[wrong]);
            return false;
        }

        sample = new TorqueSample(values[0], values[1], values[2], values[3]);
        return true;
    }
}
