namespace Driveline.Sweeps.Statistics;

/// <summary>How often each word came.</summary>
internal sealed class WordShares
{
    private readonly Dictionary<string, long> counts = new(StringComparer.Ordinal);
    private long all;

    public void Add(ReadOnlySpan<string?> words)
    {
        string? last = null;
        long run = 0;
        foreach (string? word in words)
        {
            if (word is null)
            {
                continue;
            }

            if (!ReferenceEquals(word, last))
            {
                Count(last, run);
                last = word;
                run = 0;
            }

            run++;
        }

        Count(last, run);
    }

    /// <summary>Each word with its share of the rows that have one, the most frequent first.</summary>
    public IReadOnlyList<KeyValuePair<string, double>> Shares() =>
        [.. counts.OrderByDescending(c => c.Value).ThenBy(c => c.Key, StringComparer.Ordinal)
            .Select(c => new KeyValuePair<string, double>(c.Key, (double)c.Value / all))];

    private void Count(string? word, long times)
    {
        if (word is not null && times > 0)
        {
            counts[word] = counts.GetValueOrDefault(word) + times;
            all += times;
        }
    }
}
