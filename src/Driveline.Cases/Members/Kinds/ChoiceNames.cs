using System.Text;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A list of names, each standing for a value; of no type, so that one code serves all enumerations.</summary>
internal sealed class ChoiceNames
{
    private readonly Dictionary<string, object> values = new(StringComparer.Ordinal);
    private readonly List<(byte[] Name, object Value)> written = [];
    private readonly Dictionary<object, string> names = [];

    public ChoiceNames(IEnumerable<KeyValuePair<string, object>> choices)
    {
        foreach (KeyValuePair<string, object> choice in choices)
        {
            values.Add(choice.Key, choice.Value);
            written.Add((Encoding.UTF8.GetBytes(choice.Key), choice.Value));
            names.Add(choice.Value, choice.Key);
        }

        PermittedWords = "one of " + string.Join(", ", values.Keys);
    }

    public string PermittedWords { get; }

    public string NameOf(object value) => names[value];

    public object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        if (reader.TokenType == JsonTokenType.String && !reader.ValueIsEscaped)
        {
            foreach ((byte[] name, object value) in written)
            {
                if (reader.ValueSpan.SequenceEqual(name))
                {
                    return value;
                }
            }
        }

        if (walk.TextOf(ref reader, PermittedWords) is not { } text)
        {
            return null;
        }

        if (values.TryGetValue(text, out object? escaped))
        {
            return escaped;
        }

        string shown = CaseWalk.Shown(text);
        string? nearest = NearestName.Of(text, values.Keys);
        walk.Error(
            CaseErrorKind.OutOfRange,
            offset,
            "This must be " + PermittedWords + "; got \"" + shown + "\"" + (nearest is null ? "." : ", did you mean \"" + nearest + "\"?"),
            PermittedWords,
            shown,
            nearest);
        return null;
    }

    public void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "string");
        writer.WriteStartArray("enum");
        foreach (string name in values.Keys)
        {
            writer.WriteStringValue(name);
        }

        writer.WriteEndArray();
    }
}
