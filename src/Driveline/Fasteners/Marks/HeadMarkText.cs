using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Driveline.Fasteners;

/// <summary>Reads the marks of a bolt head as people write them.</summary>
internal static class HeadMarkText
{
    private const int LongestText = 200;

    private const string Numbers = "zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve";

    private const string SpacingWords =
        @"(?<even>even(?:ly)?(?:\s+spaced)?)|(?<t>(?:as|in|like)?\s*(?:an?\s+)?upside[\s-]*down\s+T)"
        + @"|(?<grouped>grouped(?:\s+(?:together|in\s+one\s+(?:half|part)))?|close\s+together)";

    private const RegexOptions Reading = RegexOptions.CultureInvariant | RegexOptions.IgnoreCase;

    private static readonly Regex Unmarked = new(
        @"^(?:none|nothing|blank|plain|unmarked|ungraded"
        + @"|(?:no|zero|0)\s+(?:grade\s+|head\s+|radial\s+)*(?:marks?|markings?|lines?)(?:\s+at\s+all)?)$", Reading);

    private static readonly Regex Lines = new(
        @"^(?:an?\s+)?(?<n>[0-9]{1,2}|" + Numbers + @")\s+(?:(?:" + SpacingWords + @")\s+)?(?:raised\s+|radial\s+|short\s+)*"
        + "(?:lines?|dashes|dash|marks?|ticks?|slashes|slash|bars?|rays?|strokes?|stripes?)"
        + @"(?:\s*,?\s*(?:" + SpacingWords
            + @"))?(?:\s*,?\s*(?:and|with|plus|,)\s+(?:the\s+)?(?:letters?\s+|text\s+|number\s+)?(?<text>\S.*))?$",
        Reading);

    private static readonly Regex BareCount = new("^(?:[0-9]{1,2}|" + Numbers + ")$", Reading);

    public static bool TryParse(string? text, [NotNullWhen(true)] out HeadMark? mark, [NotNullWhen(false)] out string? problem)
    {
        mark = null;
        string words = text?.Trim() ?? string.Empty;
        if (words.Length is 0 or > LongestText)
        {
            problem = words.Length == 0
                ? "Head marks are lines, letters or numbers, such as \"three radial lines\" or \"8.8\", or \"none\"; got no text."
                : FormattableString.Invariant($"Head marks are a text of at most {LongestText} characters; got {words.Length}.");
            return false;
        }

        problem = null;
        Match lines = Lines.Match(words);
        if (Unmarked.IsMatch(words))
        {
            mark = HeadMark.None;
        }
        else if (lines.Success)
        {
            return TryLines(lines, out mark, out problem);
        }
        else if (BareCount.IsMatch(words))
        {
            problem = "\"" + words + "\" does not say what is seen: write \"" + words
                + " lines\" for lines, or the whole text of the head, such as \"8.8\".";
        }
        else
        {
            string stamped = Unquoted(words);
            mark = stamped.Length == 0 ? HeadMark.None : HeadMark.OfText(stamped);
        }

        return mark is not null;
    }

    private static bool TryLines(Match lines, out HeadMark? mark, out string? problem)
    {
        string count = lines.Groups["n"].Value;
        int number = int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out int figure)
            ? figure
            : Array.IndexOf(Numbers.Split('|'), count.ToLowerInvariant());
        if (number > HeadMark.MostLines)
        {
            mark = null;
            problem = FormattableString.Invariant($"A bolt head carries at most {HeadMark.MostLines} lines; got {number}.");
            return false;
        }

        LineSpacing spacing = lines.Groups["even"].Success ? LineSpacing.Even
            : lines.Groups["t"].Success ? LineSpacing.UpsideDownT
            : lines.Groups["grouped"].Success ? LineSpacing.Grouped
            : LineSpacing.NotKnown;
        string beside = Unquoted(lines.Groups["text"].Value.Trim());
        mark = number == 0 ? HeadMark.None : HeadMark.RadialLines(number, spacing);
        mark = beside.Length == 0 ? mark : mark.WithText(beside);
        problem = null;
        return true;
    }

    private static string Unquoted(string text) =>
        text.Length >= 2 && text[0] == '"' && text[text.Length - 1] == '"' ? text.Substring(1, text.Length - 2).Trim() : text;
}
