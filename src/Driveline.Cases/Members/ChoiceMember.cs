using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>One of a list of names: the values of an enum in lower camel case, without NotKnown.</summary>
internal sealed class ChoiceMember<T> : Member
    where T : struct, Enum
{
    private readonly Dictionary<string, T> values = new(StringComparer.Ordinal);
    private readonly Dictionary<T, string> names = [];

    public ChoiceMember(string name, string doc)
        : base(name, doc)
    {
#if NET
        string[] constants = Enum.GetNames<T>();
#else
        string[] constants = Enum.GetNames(typeof(T));
#endif
        foreach (string constant in constants)
        {
            if (Enum.TryParse(constant, out T value) && !value.Equals(default(T)))
            {
                string written = char.ToLowerInvariant(constant[0]) + constant.Substring(1);
                values.Add(written, value);
                names.Add(value, written);
            }
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

        if (values.TryGetValue(text, out T value))
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
        if (!names.ContainsKey((T)value))
        {
            throw NotPermitted(value.ToString()!);
        }
    }
}
