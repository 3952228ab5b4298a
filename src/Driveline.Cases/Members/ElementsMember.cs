using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>The list of driveline elements, in order from the tractor.</summary>
internal sealed class ElementsMember : Member
{
    /// <summary>Most elements in one list.</summary>
    public const int Most = 200;

    private readonly Func<MemberTable> table;

    public ElementsMember(string name, Func<MemberTable> table, string doc)
        : base(name, doc) => this.table = table;

    public MemberTable Table => table();

    public override string ValueWords => "list of elements";

    public override string? PermittedWords => FormattableString.Invariant($"a list of at most {Most} elements");

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            walk.WrongKind(ref reader, PermittedWords!);
            return null;
        }

        long offset = reader.TokenStartIndex;
        var elements = new List<DrivelineElement>();
        int index = 0;
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (index >= Most)
            {
                index++;
                reader.Skip();
                continue;
            }

            walk.Enter(index++);
            if (FactsReader.Read(ref reader, Table, walk) is DrivelineElement element)
            {
                elements.Add(element);
            }

            walk.Leave();
        }

        if (index > Most)
        {
            walk.Error(
                CaseErrorKind.OutOfRange,
                offset,
                FormattableString.Invariant($"This must be {PermittedWords}; got {index}."),
                PermittedWords,
                FormattableString.Invariant($"{index} elements"),
                null);
        }

        CaseChecks.Shares(elements, offset, walk);
        return FactList.Of(elements);
    }

    public override void Write(Utf8JsonWriter writer, object value)
    {
        writer.WriteStartArray();
        foreach (DrivelineElement element in (FactList)value)
        {
            FactsWriter.Write(writer, element);
        }

        writer.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteNumber("maxItems", Most);
        writer.WriteStartObject("items");
        writer.WriteString("$ref", "#/$defs/" + Table.Name);
        writer.WriteEndObject();
    }

    public override void Check(object value)
    {
        if (((FactList)value).Count > Most)
        {
            throw NotPermitted(FormattableString.Invariant($"{((FactList)value).Count}"));
        }
    }
}
