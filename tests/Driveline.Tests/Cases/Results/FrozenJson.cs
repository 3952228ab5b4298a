#if !NETSTANDARD_BUILD
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Driveline.Tests.Cases;

/// <summary>A result laid out for reading a diff: what fits goes on one line; texts, which have tests of their own, are left out.</summary>
internal static class FrozenJson
{
    private const int Width = 220;

    // The number of the contract and of the library would change every file at once.
    private static readonly HashSet<string> LeftOut = ["contract", "library", "text"];

    public static string Of(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        var text = new StringBuilder();
        Write(document.RootElement, string.Empty, string.Empty, text);
        return text.Append('\n').ToString();
    }

    private static void Write(JsonElement value, string name, string indent, StringBuilder text)
    {
        string line = Line(value);
        if (value.ValueKind is not (JsonValueKind.Object or JsonValueKind.Array) || indent.Length + name.Length + line.Length <= Width)
        {
            text.Append(indent).Append(name).Append(line);
            return;
        }

        bool isObject = value.ValueKind == JsonValueKind.Object;
        text.Append(indent).Append(name).Append(isObject ? '{' : '[');
        bool isFirst = true;
        foreach ((string own, JsonElement part) in Parts(value))
        {
            text.Append(isFirst ? "\n" : ",\n");
            Write(part, own, indent + "  ", text);
            isFirst = false;
        }

        text.Append('\n').Append(indent).Append(isObject ? '}' : ']');
    }

    private static string Line(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "{" + string.Join(", ", Parts(value).Select(p => p.Name + Line(p.Value))) + "}",
        JsonValueKind.Array => "[" + string.Join(", ", Parts(value).Select(p => Line(p.Value))) + "]",
        // Nine digits: the last ones differ with the processor.
        JsonValueKind.Number => value.GetDouble().ToString("G9", CultureInfo.InvariantCulture),
        _ => value.GetRawText(),
    };

    private static IEnumerable<(string Name, JsonElement Value)> Parts(JsonElement value) => value.ValueKind == JsonValueKind.Object
        ? value.EnumerateObject().Where(m => !LeftOut.Contains(m.Name)).Select(m => ("\"" + m.Name + "\": ", m.Value))
        : value.EnumerateArray().Select(e => (string.Empty, e));
}
#endif
