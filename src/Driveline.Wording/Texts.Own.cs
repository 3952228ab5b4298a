using System.Text.RegularExpressions;
using Driveline.Quantities;

namespace Driveline.Wording;

/// <content>Texts that the caller brings: other words, words for codes of his own, or another language.</content>
public sealed partial class Texts
{
    private const int LongestText = 4000;

    // Made when a caller first brings words of his own: the start of a program is too early.
    private static Regex OwnLanguage => field ??= new("^[a-z]{2,3}(-[A-Z]{2})?\\z", RegexOptions.CultureInvariant);

    private static Regex OwnCode => field ??= new(@"^[a-zA-Z][a-zA-Z0-9]*(\.[a-zA-Z0-9]+)+\z", RegexOptions.CultureInvariant);

    private static Regex Places => field ??= new(@"\{[^{}]*\}", RegexOptions.CultureInvariant);

    /// <summary>The same texts with others in their place, or with texts for codes of the caller's own.</summary>
    /// <param name="own">
    /// Code and text, e.g. "ourShop.torque" and "Tighten to the specification."; "name." and a name stands for a name that the library
    /// gives. The text of a code held here needs the same places, such as {name}, and no others.
    /// </param>
    /// <exception cref="ArgumentException">A code or a text is not as described; the message says which, and what is wanted.</exception>
    public Texts With(IEnumerable<KeyValuePair<string, string>> own) => new(Language, LanguageCode, Merged(own));

    /// <summary>A language of the caller's own; a code for which it has no text keeps the text it has here.</summary>
    /// <param name="languageCode">By ISO 639-1 or 639-2, e.g. "de" or "pt-BR"; none that is held here.</param>
    /// <param name="own">As for <see cref="With"/>; <see cref="Codes"/> lists what there is to put into words.</param>
    /// <exception cref="ArgumentException">A code or a text is not as described; the message says which, and what is wanted.</exception>
    public Texts InLanguage(string languageCode, IEnumerable<KeyValuePair<string, string>> own)
    {
        Guard.NotBlank(languageCode, "Code of a language", nameof(languageCode));
        return OwnLanguage.IsMatch(languageCode) && !Languages.TryParse(languageCode, out _)
            ? new Texts(Language, languageCode, Merged(own))
            : throw new ArgumentException(
                "Code of a language must be of two or three small letters, and none that is held here ("
                    + string.Join(", ", Languages.All.Select(Languages.CodeOf)) + "); got \"" + languageCode + "\".", nameof(languageCode));
    }

    private Dictionary<string, string> Merged(IEnumerable<KeyValuePair<string, string>> own)
    {
        var merged = new Dictionary<string, string>(all, StringComparer.Ordinal);
        foreach (KeyValuePair<string, string> text in Guard.NotNull(own, nameof(own)))
        {
            merged[Checked(text.Key, text.Value)] = text.Value;
        }

        return merged;
    }

    private string Checked(string code, string text)
    {
        if (code is null || !(OwnCode.IsMatch(code) || (IsName(code) && code.Length > NamePrefix.Length)))
        {
            throw new ArgumentException("Code of a text must be area.name in letters and digits; got \"" + code + "\".", nameof(code));
        }

        if (string.IsNullOrWhiteSpace(text) || text.Length > LongestText || text.Any(char.IsControl))
        {
            throw new ArgumentException(
                FormattableString.Invariant($"Text of \"{code}\" must be 1 to {LongestText} characters, none of them control characters; ")
                    + FormattableString.Invariant($"got {text?.Length ?? 0} characters."), nameof(text));
        }

        if (all.TryGetValue(code, out string? held) && !PlacesOf(held).SetEquals(PlacesOf(text)))
        {
            throw new ArgumentException(
                "Text of \"" + code + "\" must have the places " + Listed(held) + "; got " + Listed(text) + ".", nameof(text));
        }

        return code;
    }

    private static HashSet<string> PlacesOf(string text) =>
        new(Places.Matches(text).Cast<Match>().Select(m => m.Value), StringComparer.Ordinal);

    private static string Listed(string text)
    {
        string[] places = [.. PlacesOf(text).OrderBy(p => p, StringComparer.Ordinal)];
        return places.Length == 0 ? "none" : string.Join(", ", places);
    }
}
