using Driveline.Quantities;

namespace Driveline.Wording;

/// <summary>The languages held and their two-letter codes.</summary>
public static class Languages
{
    private static readonly KeyValuePair<Language, string>[] Held = [new(Language.English, "en"), new(Language.Spanish, "es")];

    /// <summary>Every language in which texts are held, English first.</summary>
    public static IReadOnlyList<Language> All { get; } = [Language.English, Language.Spanish];

    /// <summary>The two-letter code of a language by ISO 639-1, e.g. "es"; it is also the lang attribute of a page.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    /// <example>Spanish: "es".</example>
    public static string CodeOf(Language language)
    {
        int at = 0;
        while (at < Held.Length && Held[at].Key != language)
        {
            at++;
        }

        return at < Held.Length ? Held[at].Value
            : throw new ArgumentOutOfRangeException(nameof(language), language, "No texts are held in that language.");
    }

    /// <summary>The language of a two-letter code.</summary>
    /// <exception cref="ArgumentException">No texts are held in that language; the message lists those that are.</exception>
    public static Language Parse(string code) => TryParse(Guard.NotNull(code, nameof(code)), out Language language)
        ? language
        : throw new ArgumentException(
            "Language \"" + code + "\" is not held; held: " + string.Join(", ", Held.Select(h => h.Value)) + ".", nameof(code));

    /// <summary>The language of a two-letter code, lower case; false when no texts are held in it.</summary>
    public static bool TryParse(string? code, out Language language)
    {
        foreach (KeyValuePair<Language, string> held in Held)
        {
            if (string.Equals(held.Value, code, StringComparison.Ordinal))
            {
                language = held.Key;
                return true;
            }
        }

        language = Language.English;
        return false;
    }
}
