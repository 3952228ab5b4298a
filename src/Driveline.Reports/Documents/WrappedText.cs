namespace Driveline.Reports.Documents;

/// <summary>Breaks a text into lines at blanks; a word longer than a line is cut.</summary>
internal static class WrappedText
{
    public static IReadOnlyList<string> Lines(string text, int width)
    {
        var lines = new List<string>();
        string line = string.Empty;
        foreach (string word in text.Split([' '], StringSplitOptions.RemoveEmptyEntries))
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

        return lines;
    }
}
