using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A text that stands for itself.</summary>
internal sealed class TextMember : ReferenceMember<string>
{
    private readonly TextValue text;

    public TextMember(string name, int longest, string doc)
        : base(name, doc) => text = new TextValue(longest);

    public override string ValueWords => "text";

    public override string? PermittedWords => text.PermittedWords;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => text.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteStringValue((string)value);

    public override void WriteSchema(Utf8JsonWriter writer) => text.WriteSchema(writer);
}
