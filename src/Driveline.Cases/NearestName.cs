namespace Driveline.Cases;

/// <summary>The name that was probably meant: the one with the fewest changed, added, dropped or swapped letters.</summary>
internal static class NearestName
{
    private const int LongestCompared = 40;

    /// <summary>The closest of the names, if at most a third of its letters differ; case does not count.</summary>
    public static string? Of(string written, IEnumerable<string> names)
    {
        string? nearest = null;
        int fewest = int.MaxValue;
        if (written.Length > LongestCompared)
        {
            return null;
        }

        foreach (string name in names)
        {
            int changes = Changes(written.ToUpperInvariant(), name.ToUpperInvariant());
            if (changes < fewest && changes <= Math.Max(1, name.Length / 3))
            {
                fewest = changes;
                nearest = name;
            }
        }

        return nearest;
    }

    /// <summary>
    /// Number of single-letter changes between two texts; a swap of neighbours is one (restricted Damerau–Levenshtein distance).
    /// </summary>
    internal static int Changes(string a, string b)
    {
        int[] before = new int[b.Length + 1];
        int[] previous = new int[b.Length + 1];
        int[] current = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
        {
            previous[j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int changed = previous[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                int best = Math.Min(changed, Math.Min(previous[j], current[j - 1]) + 1);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                current[j] = swapped ? Math.Min(best, before[j - 2] + 1) : best;
            }

            (before, previous, current) = (previous, current, before);
        }

        return previous[b.Length];
    }
}
