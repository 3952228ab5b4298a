using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>A list of at least one item, of which none may stand twice.</summary>
internal abstract class ItemsMember<T>(string name, string items, int most, string doc) : ReadMember(name, doc)
    where T : class
{
    public override string ValueWords => "list of " + items;

    public override string PermittedWords => FormattableString.Invariant($"a list of 1 to {most} {items}");

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return ListOf.Read(ref reader, walk, PermittedWords, 1, most, (ref Utf8JsonReader at, CaseWalk w, int _) => Item(ref at, w, seen));
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteNumber("minItems", 1);
        writer.WriteNumber("maxItems", most);
        writer.WriteStartObject("items");
        WriteItem(writer);
        writer.WriteEndObject();
    }

    /// <summary>Reads an item at the reader's token; null after an error.</summary>
    protected abstract T? Item(ref Utf8JsonReader reader, CaseWalk walk, HashSet<string> seen);

    /// <summary>Writes the schema of an item.</summary>
    protected abstract void WriteItem(Utf8JsonWriter writer);
}
