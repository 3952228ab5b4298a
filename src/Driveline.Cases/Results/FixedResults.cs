using System.Collections.Concurrent;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>What is written the same way in every result, such as a caution: kept for each language of the library and its units.</summary>
internal sealed class FixedResults
{
    private const int MostKept = 256;

    private readonly ConcurrentDictionary<(object Value, Language Language, DisplayUnits Units), byte[]> kept = new();

    /// <summary>Writes it as it was written before; false when it was not.</summary>
    public bool TryWrite(ResultWriter json, object value, ResultOptions to)
    {
        if (!IsKept(json, to) || !kept.TryGetValue((value, to.Texts.Language, to.Units), out byte[]? before))
        {
            return false;
        }

        json.Kept(before);
        return true;
    }

    /// <summary>Keeps what is written of it from a position up to here.</summary>
    public void Keep(ResultWriter json, object value, ResultOptions to, int begin)
    {
        if (IsKept(json, to) && kept.Count < MostKept)
        {
            kept.TryAdd((value, to.Texts.Language, to.Units), json.From(begin));
        }
    }

    // Texts that a caller brings may be many.
    private static bool IsKept(ResultWriter json, ResultOptions to) =>
        json.IsCompact && (ReferenceEquals(to.Texts, Texts.English) || ReferenceEquals(to.Texts, Texts.Spanish));
}
