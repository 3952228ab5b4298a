using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A yes or no.</summary>
internal sealed class FlagMember : ValueMember<bool>
{
    private static readonly object True = true;
    private static readonly object False = false;

    public FlagMember(string name, string doc)
        : base(name, doc)
    {
    }

    public override string ValueWords => "true or false";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType is JsonTokenType.True or JsonTokenType.False)
        {
            return reader.TokenType == JsonTokenType.True ? True : False;
        }

        walk.WrongKind(ref reader, ValueWords);
        return null;
    }

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteBooleanValue((bool)value);

    public override void WriteSchema(Utf8JsonWriter writer) => writer.WriteString("type", "boolean");
}
