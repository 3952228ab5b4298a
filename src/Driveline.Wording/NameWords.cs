namespace Driveline.Wording;

/// <summary>Words for what the library itself names in English: a default name, a material, a head mark, a source.</summary>
/// <remarks>
/// An entry is the whole English name or a pattern in which {} stands for any part, e.g. "{} radial lines"; a part is looked up
/// in its turn. Of several patterns that fit, one that begins with fixed characters wins, then the one with most of them. What is not held
/// stays as it is:
/// a name from a case is never changed but for the one that equals a default name.
/// </remarks>
internal sealed class NameWords
{
    // Longer than any name held; keeps the search short whatever a case calls its parts.
    private const int LongestName = 300;

    private static readonly string[] Place = ["{}"];

    private readonly Dictionary<string, string> whole = new(StringComparer.Ordinal);
    private readonly List<KeyValuePair<string[], string[]>> patterns = [];

    public void Add(string name, string words)
    {
        string[] key = Cut(name);
        if (key.Length == 1)
        {
            whole.Add(name, words);
        }
        else
        {
            patterns.Add(new(key, Cut(words)));
        }
    }

    /// <summary>Puts the patterns in the order in which they are tried; to be called when all have been added.</summary>
    public void Order() => patterns.Sort((a, b) => Compare(a.Key, b.Key));

    /// <summary>The words for a name; the name itself when none are held.</summary>
    public string Of(string name)
    {
        if (name.Length is 0 or > LongestName || (whole.Count == 0 && patterns.Count == 0))
        {
            return name;
        }

        if (whole.TryGetValue(name, out string? words))
        {
            return words;
        }

        foreach (KeyValuePair<string[], string[]> pattern in patterns)
        {
            if (Parts(name, pattern.Key) is { } parts)
            {
                return string.Concat(pattern.Value.Select((piece, k) => k == 0 ? piece : Of(parts[k - 1]) + piece));
            }
        }

        return name;
    }

    /// <summary>True for the words of a name that is held.</summary>
    public bool Holds(string words) => whole.ContainsValue(words) || patterns.Exists(p => Parts(words, p.Value) is not null);

    private static string[] Cut(string text) => text.Split(Place, StringSplitOptions.None);

    private static int Compare(string[] a, string[] b)
    {
        int begins = (b[0].Length > 0).CompareTo(a[0].Length > 0);
        int longer = Fixed(b).CompareTo(Fixed(a));
        return begins != 0 ? begins
            : longer != 0 ? longer
            : string.CompareOrdinal(string.Join("{}", a), string.Join("{}", b));
    }

    private static int Fixed(string[] pieces)
    {
        int length = 0;
        foreach (string piece in pieces)
        {
            length += piece.Length;
        }

        return length;
    }

    // What stands in the places of a pattern, each at least one character; null when the name does not fit.
    private static string[]? Parts(string name, string[] pieces)
    {
        string last = pieces[pieces.Length - 1];
        if (!name.StartsWith(pieces[0], StringComparison.Ordinal) || !name.EndsWith(last, StringComparison.Ordinal))
        {
            return null;
        }

        var parts = new string[pieces.Length - 1];
        int at = pieces[0].Length;
        for (int k = 0; k < parts.Length; k++)
        {
            bool isLast = k == parts.Length - 1;
            int end = isLast ? name.Length - last.Length
                : at + 1 < name.Length ? name.IndexOf(pieces[k + 1], at + 1, StringComparison.Ordinal)
                : -1;
            if (end <= at)
            {
                return null;
            }

            parts[k] = name.Substring(at, end - at);
            at = end + pieces[k + 1].Length;
        }

        return parts;
    }
}
