namespace Driveline.Cli;

/// <summary>Finds the name that was probably meant.</summary>
internal static class NearestName
{
    private const int LongestWord = 40;

    /// <summary>The nearest name by edits; null when none is near.</summary>
    public static string? Of(string word, IEnumerable<string> names)
    {
        if (word.Length > LongestWord)
        {
            return null;
        }

        string? best = null;
        int fewest = Math.Max(1, word.Length / 3) + 1;
        foreach (string name in names)
        {
            int edits = Edits(word.ToLowerInvariant(), name.ToLowerInvariant());
            if (edits < fewest)
            {
                best = name;
                fewest = edits;
            }
        }

        return best;
    }

    private static int Edits(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
