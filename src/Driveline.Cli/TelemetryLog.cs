using System.Globalization;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Cli;

/// <summary>
/// Reads a log of samples: a head that names the columns with their units, then a row a sample. Bad rows are counted, never
/// thrown.
/// </summary>
/// <remarks>
/// Cells stand between commas, semicolons or tabs, whichever the head has; the decimal sign is a point. Lines that are empty or
/// begin with # are left out, and so are columns of other names.
/// </remarks>
internal sealed class TelemetryLog
{
    private const int MostNamed = 5;

    private static readonly string[][] Known =
    [
        ["timeS", "timeMs"],
        ["speedInRpm", "speedInRadPerS"],
        ["speedOutRpm", "speedOutRadPerS"],
        ["torqueNm", "torqueKNm", "torqueLbfFt"],
    ];

    private readonly TextReader reader;
    private readonly string[] head;
    private readonly char separator;
    private readonly int[] places;
    private readonly double[] factors;
    private readonly List<RowProblem> first = [];
    private long line;

    private TelemetryLog(TextReader reader, string[] head, char separator, int[] places, long line)
    {
        this.reader = reader;
        this.head = head;
        this.separator = separator;
        this.places = places;
        this.line = line;
        factors = [.. places.Select(place => place < 0 ? 1 : FactorOf(head[place]))];
    }

    /// <summary>Rows that could not be read.</summary>
    public long BadRows { get; private set; }

    /// <summary>The first of them.</summary>
    public IReadOnlyList<RowProblem> FirstBadRows => first;

    /// <summary>Reads the head of a log.</summary>
    /// <exception cref="BadInputException">A column is missing or stands there twice.</exception>
    public static TelemetryLog Open(TextReader reader)
    {
        long line = 0;
        string? text;
        do
        {
            text = reader.ReadLine()?.TrimStart('\uFEFF');
            line++;
        }
        while (text is not null && IsNothing(text));

        if (text is null)
        {
            throw new BadInputException("The log is empty; a head such as timeS,speedInRpm,speedOutRpm,torqueNm is wanted.");
        }

        char separator = text.Contains('\t', StringComparison.Ordinal) ? '\t' : text.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        string[] head = [.. text.Split(separator).Select(cell => cell.Trim().Trim('"'))];
        var problems = new List<string>();
        int[] places = [.. Known.Select(names => PlaceOf(head, names, problems))];
        return problems.Count == 0 ? new TelemetryLog(reader, head, separator, places, line) : throw new BadInputException(problems);
    }

    /// <summary>Reads the next samples; 0 at the end.</summary>
    public int Read(Span<TorqueSample> samples)
    {
        int count = 0;
        while (count < samples.Length && reader.ReadLine() is { } text)
        {
            line++;
            if (!IsNothing(text) && TryRow(text, out TorqueSample sample))
            {
                samples[count++] = sample;
            }
        }

        return count;
    }

    private static bool IsNothing(string text) => string.IsNullOrWhiteSpace(text) || text[0] == '#';

    private static int PlaceOf(string[] head, string[] names, List<string> problems)
    {
        int[] found = [.. Enumerable.Range(0, head.Length).Where(k => names.Contains(head[k], StringComparer.OrdinalIgnoreCase))];
        bool isOptional = names == Known[2];
        if (found.Length > 1)
        {
            problems.Add("The log has more than one column of " + string.Join(", ", names) + ".");
        }
        else if (found.Length == 0 && !isOptional)
        {
            problems.Add("The log needs a column " + string.Join(" or ", names) + "; it has: " + string.Join(", ", head.Take(20)) + ".");
        }

        return found.Length == 0 ? -1 : found[0];
    }

    private static double FactorOf(string name) => name.ToUpperInvariant() switch
    {
        "TIMEMS" => 1e-3,
        "SPEEDINRPM" or "SPEEDOUTRPM" => Math.PI / 30,
        "TORQUEKNM" => 1e3,
        "TORQUELBFFT" => Torque.FromPoundForceFeet(1).NewtonMeters,
        _ => 1,
    };

    private bool TryRow(string text, out TorqueSample sample)
    {
        sample = default;
        string[] cells = text.Split(separator);
        if (cells.Length != head.Length)
        {
            return Bad(null);
        }

        Span<double> values = [double.NaN, double.NaN, double.NaN, double.NaN];
        for (int k = 0; k < places.Length; k++)
        {
            string cell = places[k] < 0 ? string.Empty : cells[places[k]].Trim().Trim('"');
            if (cell.Length == 0 && k == 2)
            {
                continue;
            }

            if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
            {
                return Bad(head[places[k]]);
            }

            values[k] = value * factors[k];
        }

        sample = new TorqueSample(values[0], values[1], values[2], values[3]);
        return true;
    }

    private bool Bad(string? column)
    {
        BadRows++;
        if (first.Count < MostNamed)
        {
            first.Add(new RowProblem(line, column));
        }

        return false;
    }
}
