using System.Text;

namespace Driveline.Wording;

/// <summary>
/// A text with places for parameters, cut once: "{name}", or "{kind|partKind}", which shows the text of partKind.&lt;kind&gt;.
/// </summary>
internal sealed class Template
{
    [ThreadStatic]
    private static StringBuilder? room;

    private readonly string[] texts;
    private readonly Place[] places;

    private Template(string[] texts, Place[] places)
    {
        this.texts = texts;
        this.places = places;
    }

    public static Template Of(string template)
    {
        var texts = new List<string>();
        var places = new List<Place>();
        int at = 0;
        while (at < template.Length)
        {
            int open = template.IndexOf('{', at);
            int close = open < 0 ? -1 : template.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            texts.Add(template.Substring(at, open - at));
            string[] place = template.Substring(open + 1, close - open - 1).Split('|');
            places.Add(new Place(template.Substring(open, close - open + 1), place[0], place.Length > 1 ? place[1] : null));
            at = close + 1;
        }

        texts.Add(template.Substring(at));
        return new Template([.. texts], [.. places]);
    }

    /// <summary>One pass, so that braces in a name are never filled in their turn.</summary>
    public string Fill<T>(T from, Func<T, Place, string?> words)
    {
        if (places.Length == 0)
        {
            return texts[0];
        }

        StringBuilder text = (room ??= new StringBuilder(512)).Clear().Append(texts[0]);
        for (int k = 0; k < places.Length; k++)
        {
            text.Append(words(from, places[k]) ?? places[k].Whole).Append(texts[k + 1]);
        }

        return text.ToString();
    }

    /// <summary>A place for a parameter.</summary>
    internal sealed class Place
    {
        public Place(string whole, string parameter, string? codes)
        {
            Whole = whole;
            Parameter = parameter;
            Codes = codes;
        }

        /// <summary>It as it stands in the template, for a parameter that nobody gave.</summary>
        public string Whole { get; }

        public string Parameter { get; }

        /// <summary>The codes of which the parameter's text names one; null when it stands for itself.</summary>
        public string? Codes { get; }
    }
}
