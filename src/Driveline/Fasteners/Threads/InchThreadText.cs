using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Reads inch threads as people write them.</summary>
internal static class InchThreadText
{
    private static readonly Regex Pattern = new(
        @"^(?:(?:#|no\.?|number)\s*(?<no>[0-9]+)|(?<no>[0-9]+)(?=-(?:24|32)\b)|(?<w>[0-9]+)\s*[- ]\s*(?<a>[0-9]+)/(?<b>[0-9]+)"
            + @"|(?<a>[0-9]+)/(?<b>[0-9]+)|(?<dec>[0-9]*[.,][0-9]+|[0-9]+[.,]?))"
        + @"\s*(?<unit>in\.?|inch|inches|"")?\s*(?:(?<x>[-x*])\s*(?<n>[0-9]+)?)?\s*(?:tpi)?"
            + @"\s*(?<s>unr?c|unr?f|nc|nf|coarse|fine)?\s*(?:-?\s*[123]a)?$",
        RegexOptions.CultureInvariant);

    public static Match Match(string plain) => Pattern.Match(plain);

    public static UnifiedThread? Of(Match match, string text, out string? problem)
    {
        double diameter = InchDiameter(match, out string? number);
        if (double.IsNaN(diameter))
        {
            return ThreadText.NotUnderstood(text, out problem);
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
                + match.Groups["dec"].Value + " in for inches. " + ThreadText.Accepted;
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

        problem = ThreadText.NotHeld(text, UnifiedThreads.All, diameter * Si.Inch);
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
            return 0.060 + (0.013 * ThreadText.Number(match.Groups["no"].Value));
        }

        if (!match.Groups["a"].Success)
        {
            return ThreadText.Number(match.Groups["dec"].Value);
        }

        double whole = match.Groups["w"].Success ? ThreadText.Number(match.Groups["w"].Value) : 0;
        double below = ThreadText.Number(match.Groups["b"].Value);
        return below > 0 ? whole + (ThreadText.Number(match.Groups["a"].Value) / below) : double.NaN;
    }

    private static ThreadSeries SeriesOf(string text) => text.Length == 0 ? ThreadSeries.NotKnown
        : text is "fine" || text[text.Length - 1] == 'f' ? ThreadSeries.Unf
        : ThreadSeries.Unc;

    private static int Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : 0;
}
