using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>An object whose member names are names from the file itself, each with one quantity.</summary>
internal sealed class NamedQuantitiesMember : ReferenceMember<IReadOnlyList<NamedQuantity>>
{
    private readonly QuantityValue quantity;

    public NamedQuantitiesMember(string name, QuantityValue quantity, string nameWords, string doc)
        : base(name, doc)
    {
        this.quantity = quantity;
        ValueWords = "object: " + nameWords + " → " + quantity.Words;
    }

    public override string ValueWords { get; }

    public override string? PermittedWords => quantity.Range.Words;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            walk.WrongKind(ref reader, "an object of names and quantities");
            return null;
        }

        var read = new List<NamedQuantity>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string name = CaseWalk.TextOrNull(ref reader) ?? "?";
            long offset = reader.TokenStartIndex;
            reader.Read();
            walk.Enter(name);
            if (!names.Add(name))
            {
                UnknownMember.Report(walk, offset, name, true, string.Empty, names);
                reader.Skip();
            }
            else if (quantity.Read(ref reader, walk) is double si)
            {
                read.Add(new NamedQuantity(name, si, offset));
            }

            walk.Leave();
        }

        return read;
    }

    public override void Write(Utf8JsonWriter writer, object value)
    {
        writer.WriteStartObject();
        foreach (NamedQuantity stated in (IReadOnlyList<NamedQuantity>)value)
        {
            writer.WritePropertyName(stated.Name);
            quantity.Write(writer, stated.Si);
        }

        writer.WriteEndObject();
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "object");
        writer.WriteStartObject("additionalProperties");
        quantity.WriteSchema(writer);
        writer.WriteEndObject();
    }
}
