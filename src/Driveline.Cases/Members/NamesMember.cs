using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>One of a list of names, each standing for a value.</summary>
internal abstract class NamesMember<T> : Member
    where T : notnull
{
    private readonly Dictionary<string, T> values = new(StringComparer.Ordinal);
    private readonly Dictionary<T, string> names = [];

    protected NamesMember(string name, IEnumerable<KeyValuePair<string, T>> choices, string doc)
        : base(name, doc)
    {
        foreach (KeyValuePair<string, T> choice in choices)
        {
            values.Add(choice.Key, choice.Value);
            names.Add(choice.Value, choice.Key);
        }

        PermittedWords = "one of " + string.Join(", ", values.Keys);
    }

    public override string ValueWords => "choice";

    public override string? PermittedWords { get; }

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        string? text = walk.Text(ref reader, PermittedWords!);
        if (text is null)
        {
            return null;
        }

        if (values.TryGetValue(text, out T? value))
        {
            return value;
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

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteStringValue(names[(T)value]);

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "string");
        writer.WriteStartArray("enum");
        foreach (string name in values.Keys)
        {
            writer.WriteStringValue(name);
        }

        writer.WriteEndArray();
    }

    public override void Check(object value)
    {
        if (value is not T named || !names.ContainsKey(named))
        {
            throw NotPermitted(value.ToString()!);
        }
    }
}
