using System.Text;

namespace Driveline.Wording;

/// <summary>Puts the article to a name of the library in a Spanish text; a name from a case stays in quotation marks.</summary>
internal static class SpanishNames
{
    private const char Open = '«';
    private const char Close = '»';

    // What a name begins with that takes "el".
    private static readonly string[] Masculine = ["perno ", "embrague ", "limitador ", "eje ", "pasador "];

    /// <summary>"de «perno fusible»" as "del perno fusible".</summary>
    public static string WithArticles(string text, NameWords names)
    {
        int at = text.IndexOf(Open);
        if (at < 0)
        {
            return text;
        }

        var words = new StringBuilder(text.Length);
        int done = 0;
        while (at >= 0)
        {
            int end = text.IndexOf(Close, at);
            if (end < 0)
            {
                break;
            }

            string name = text.Substring(at + 1, end - at - 1);
            words.Append(text, done, at - done);
            if (IsOwn(name, names))
            {
                AppendWithArticle(words, name);
            }
            else
            {
                words.Append(Open).Append(name).Append(Close);
            }

            done = end + 1;
            at = text.IndexOf(Open, done);
        }

        return words.Append(text, done, text.Length - done).ToString();
    }

    private static bool IsOwn(string name, NameWords names) =>
        Array.Exists(Masculine, m => name.StartsWith(m, StringComparison.OrdinalIgnoreCase)) && names.Holds(LowerFirst(name));

    private static void AppendWithArticle(StringBuilder words, string name)
    {
        if (EndsWith(words, " de ") || EndsWith(words, " a "))
        {
            words.Length--;
            words.Append("l ");
        }
        else if (!EndsWith(words, " como "))
        {
            words.Append(words.Length == 0 || EndsWith(words, ". ") ? "El " : "el ");
        }

        words.Append(LowerFirst(name));
    }

    private static string LowerFirst(string name) => name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name.Substring(1);

    private static bool EndsWith(StringBuilder words, string end)
    {
        for (int k = 0; k < end.Length; k++)
        {
            if (words.Length < end.Length || words[words.Length - end.Length + k] != end[k])
            {
                return false;
            }
        }

        return true;
    }
}
