using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Reads threads as people write them.</summary>
internal static class ThreadText
{
    private const string Accepted =
        "Accepted: an inch size with or without threads per inch and series, such as 1/2-13 UNC, 1/2 UNF, 1/2 in or #10-24; "
        + "a metric size with or without pitch, such as M10 or M10x1.25.";

    private const int LongestText = 64;

    // ISO 261 ends at a pitch of 8 mm.
    private const double LargestPitchMm = 8;

    private static readonly Regex Metric = new(
        @"^m\s*(?<d>[0-9]+(?:[.,][0-9]+)?)\s*(?:mm)?\s*(?:(?<x>[x*-])\s*(?<p>[0-9]+(?:[.,][0-9]+)?)?\s*(?:mm)?)?\s*(?:-\s*[0-9][eghEGH])?$",
        RegexOptions.CultureInvariant);

    private static readonly Regex Inch = new(
        @"^(?:(?:#|no\.?|number)\s*(?<no>[0-9]+)|(?<no>[0-9]+)(?=-(?:24|32)\b)|(?<w>[0-9]+)\s*[- ]\s*(?<a>[0-9]+)/(?<b>[0-9]+)"
            + @"|(?<a>[0-9]+)/(?<b>[0-9]+)|(?<dec>[0-9]*[.,][0-9]+|[0-9]+[.,]?))"
        + @"\s*(?<unit>in\.?|inch|inches|"")?\s*(?:(?<x>[-x*])\s*(?<n>[0-9]+)?)?\s*(?:tpi)?"
            + @"\s*(?<s>unr?c|unr?f|nc|nf|coarse|fine)?\s*(?:-?\s*[123]a)?$",
        RegexOptions.CultureInvariant);

    public static bool TryParse(string? text, [NotNullWhen(true)] out ScrewThread? thread, [NotNullWhen(false)] out string? problem)
    {
        thread = null;
        if (string.IsNullOrWhiteSpace(text))
        {
            problem = "A thread is needed; got no text. " + Accepted;
            return false;
        }

        if (text!.Length > LongestText)
        {
            problem = FormattableString.Invariant($"A thread is a text of at most {LongestText} characters; got {text.Length}. {Accepted}");
            return false;
        }

        string plain = Plain(text);
        Match metric = Metric.Match(plain);
        Match inch = metric.Success ? Match.Empty : Inch.Match(plain);
        thread = metric.Success ? OfMetric(metric, text, out problem)
            : inch.Success ? OfInch(inch, text, out problem)
            : NotUnderstood(text, out problem);
        return thread is not null;
    }

    private static string Plain(string text) => text.Trim().ToLowerInvariant()
        .Replace('×', 'x').Replace('–', '-').Replace('—', '-').Replace('‑', '-')
        .Replace('”', '"').Replace('“', '"').Replace('″', '"').Replace("''", "\"")
        .Replace("½", " 1/2").Replace("¼", " 1/4").Replace("¾", " 3/4").Trim();

    private static UnifiedThread? NotUnderstood(string text, out string problem)
    {
        problem = "\"" + text.Trim() + "\" is not a thread designation understood here. " + Accepted;
        return null;
    }

    private static MetricThread? OfMetric(Match match, string text, out string? problem)
    {
        double diameter = Number(match.Groups["d"].Value);
        bool hasPitch = match.Groups["p"].Success;
        if (match.Groups["x"].Success && !hasPitch)
        {
            problem = "\"" + text.Trim() + "\" has no pitch after the size; write M10 for the coarse pitch or M10x1.25 for a fine one.";
            return null;
        }

        double pitch = hasPitch ? Number(match.Groups["p"].Value) : 0;
        if (pitch > LargestPitchMm)
        {
            problem = "\"" + text.Trim() + "\" gives " + match.Groups["p"].Value
                + " mm where a pitch belongs, which looks like a length; write "
                + "M" + match.Groups["d"].Value + " alone or with a pitch, such as M10x1.25.";
            return null;
        }

        foreach (MetricThread held in MetricThreads.All)
        {
            if (Same(held.DiameterMm, diameter) && (hasPitch ? Same(held.PitchMm, pitch) : held.Series == ThreadSeries.MetricCoarse))
            {
                problem = null;
                return hasPitch ? held : held.Assumed();
            }
        }

        problem = NotHeld(text, MetricThreads.All, diameter / 1000);
        return null;
    }

    private static UnifiedThread? OfInch(Match match, string text, out string? problem)
    {
        double diameter = InchDiameter(match, out string? number);
        if (double.IsNaN(diameter))
        {
            return NotUnderstood(text, out problem);
        }

        bool hasCount = match.Groups["n"].Success;
        if (match.Groups["x"].Success && !hasCount)
        {
            problem = "\"" + text.Trim() + "\" has no threads per inch after the dash; write 1/2-13 UNC or 1/2 UNC.";
            return null;
        }

        bool bare = number is null && match.Groups["dec"].Success && !hasCount && !match.Groups["unit"].Success
            && !match.Groups["s"].Success
            && match.Groups["dec"].Value.IndexOfAny(['.', ',']) < 0;
        if (bare)
        {
            problem = "\"" + text.Trim() + "\" is a bare number: write M" + match.Groups["dec"].Value + " for millimeters or "
                + match.Groups["dec"].Value + " in for inches. " + Accepted;
            return null;
        }

        int count = hasCount ? Count(match.Groups["n"].Value) : 0;
        ThreadSeries series = SeriesOf(match.Groups["s"].Value);
        foreach (UnifiedThread held in UnifiedThreads.All)
        {
            if (!Matches(held, diameter, number))
            {
                continue;
            }

            bool sameCount = !hasCount || held.ThreadsPerInch == count;
            ThreadSeries wanted = series == ThreadSeries.NotKnown && !hasCount ? ThreadSeries.Unc : series;
            if (sameCount && (wanted == ThreadSeries.NotKnown || held.Series == wanted))
            {
                problem = null;
                return hasCount || series != ThreadSeries.NotKnown ? held : held.Assumed();
            }
        }

        problem = NotHeld(text, UnifiedThreads.All, diameter * Si.Inch);
        return null;
    }

    private static bool Matches(UnifiedThread held, double diameterInch, string? number) =>
        number is null ? Math.Abs(held.DiameterInch - diameterInch) < 5e-4 : held.Size == "No. " + number;

    // Number sizes step by 0.013 in from 0.060 in (ASME B1.1).
    private static double InchDiameter(Match match, out string? number)
    {
        number = match.Groups["no"].Success ? match.Groups["no"].Value.TrimStart('0') : null;
        if (number is not null)
        {
            return 0.060 + (0.013 * Number(match.Groups["no"].Value));
        }

        if (!match.Groups["a"].Success)
        {
            return Number(match.Groups["dec"].Value);
        }

        double whole = match.Groups["w"].Success ? Number(match.Groups["w"].Value) : 0;
        double below = Number(match.Groups["b"].Value);
        return below > 0 ? whole + (Number(match.Groups["a"].Value) / below) : double.NaN;
    }

    private static ThreadSeries SeriesOf(string text) => text.Length == 0 ? ThreadSeries.NotKnown
        : text is "fine" || text[text.Length - 1] == 'f' ? ThreadSeries.Unf
        : ThreadSeries.Unc;

    private static string NotHeld(string text, IEnumerable<ScrewThread> held, double diameterM)
    {
        double nearest = held.Min(t => Math.Abs(t.MajorDiameterM - diameterM));
        string names = string.Join(", ", held
            .Where(t => Math.Abs(t.MajorDiameterM - diameterM) <= nearest + 1e-9)
            .OrderBy(t => t.MajorDiameterM).ThenByDescending(t => t.PitchM)
            .Select(t => t.Designation));
        return "\"" + text.Trim() + "\" is not among the threads held here; nearest: " + names + ". " + Accepted;
    }

    private static double Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;

    private static int Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : 0;

    private static bool Same(double a, double b) => Math.Abs(a - b) < 1e-6;
}
