using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Driveline.Fasteners;

/// <summary>Reads threads as people write them.</summary>
internal static class ThreadText
{
    public const string Accepted =
        "Accepted: an inch size with or without threads per inch and series, such as 1/2-13 UNC, 1/2 UNF, 1/2 in or #10-24; "
        + "a metric size with or without pitch, such as M10 or M10x1.25.";

    private const int LongestText = 64;

    // ISO 261 ends at a pitch of 8 mm.
    private const double LargestPitchMm = 8;

    private static readonly Regex Metric = new(
        @"^m\s*(?<d>[0-9]+(?:[.,][0-9]+)?)\s*(?:mm)?\s*(?:(?<x>[x*-])\s*(?<p>[0-9]+(?:[.,][0-9]+)?)?\s*(?:mm)?)?\s*(?:-\s*[0-9][eghEGH])?$",
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

        // A designation that names its pitch needs no reading, and a program that starts need not make the patterns.
        thread = AsHeld(text);
        if (thread is not null)
        {
            problem = null;
            return true;
        }

        string plain = Plain(text);
        Match metric = Metric.Match(plain);
        Match inch = metric.Success ? Match.Empty : InchThreadText.Match(plain);
        thread = metric.Success ? OfMetric(metric, text, out problem)
            : inch.Success ? InchThreadText.Of(inch, text, out problem)
            : NotUnderstood(text, out problem);
        return thread is not null;
    }

    private static ScrewThread? AsHeld(string text) => UnifiedThreads.All.FirstOrDefault(t => t.Designation == text)
        ?? (ScrewThread?)MetricThreads.All.FirstOrDefault(t => t.Designation == text) switch
        {
            MetricThread { Series: ThreadSeries.MetricCoarse } coarse => coarse.Assumed(),
            var fine => fine,
        };

    private static string Plain(string text) => text.Trim().ToLowerInvariant()
        .Replace('×', 'x').Replace('–', '-').Replace('—', '-').Replace('‑', '-')
        .Replace('”', '"').Replace('“', '"').Replace('″', '"').Replace("''", "\"")
        .Replace("½", " 1/2").Replace("¼", " 1/4").Replace("¾", " 3/4").Trim();

    public static UnifiedThread? NotUnderstood(string text, out string problem)
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

    public static string NotHeld(string text, IEnumerable<ScrewThread> held, double diameterM)
    {
        double nearest = held.Min(t => Math.Abs(t.MajorDiameterM - diameterM));
        string names = string.Join(", ", held
            .Where(t => Math.Abs(t.MajorDiameterM - diameterM) <= nearest + 1e-9)
            .OrderBy(t => t.MajorDiameterM).ThenByDescending(t => t.PitchM)
            .Select(t => t.Designation));
        return "\"" + text.Trim() + "\" is not among the threads held here; nearest: " + names + ". " + Accepted;
    }

    public static double Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;

    private static bool Same(double a, double b) => Math.Abs(a - b) < 1e-6;
}
