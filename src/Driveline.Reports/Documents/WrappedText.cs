namespace Driveline.Reports.Documents;

/// <summary>Breaks a text into lines at blanks, but never between a number and its unit; a word longer than a line is cut.</summary>
internal static class WrappedText
{
    private const char NoBreak = '\u00A0';

    public static IReadOnlyList<string> Lines(string text, int width)
    {
        var lines = new List<string>();
        string line = string.Empty;
        foreach (string word in Unbroken.Of(text).Split([' '], StringSplitOptions.RemoveEmptyEntries))
        {
            string rest = word;
            if (line.Length > 0 && line.Length + 1 + rest.Length <= width)
            {
                line += " " + rest;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            while (rest.Length > width)
            {
                int cut = char.IsHighSurrogate(rest[width - 1]) ? width - 1 : width;
                lines.Add(rest.Substring(0, cut));
                rest = rest.Substring(cut);
            }

            line = rest;
        }

        if (line.Length > 0 || lines.Count == 0)
        {
            lines.Add(line);
        }

        // A no-break space has done its work here; a terminal or a mail wants a plain one.
        return [.. lines.Select(l => l.Replace(NoBreak, ' '))];
    }
}
