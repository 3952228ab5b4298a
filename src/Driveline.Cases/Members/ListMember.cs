using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A list of objects that share a table.</summary>
internal abstract class ListMember : Member
{
    private readonly Func<MemberTable> table;
    private readonly string items;
    private readonly int most;

    protected ListMember(string name, Func<MemberTable> table, int most, string items, string doc)
        : base(name, doc)
    {
        this.table = table;
        this.items = items;
        this.most = most;
    }

    public MemberTable Table => table();

    public override string ValueWords => "list of " + items;

    public override string? PermittedWords => FormattableString.Invariant($"a list of at most {most} {items}");

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            walk.WrongKind(ref reader, PermittedWords!);
            return null;
        }

        long offset = reader.TokenStartIndex;
        var read = new List<CaseFacts>();
        int index = 0;
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (index >= most)
            {
                index++;
                reader.Skip();
                continue;
            }

            walk.Enter(index++);
            if (!Admits(reader.TokenStartIndex, walk))
            {
                reader.Skip();
            }
            else if (FactsReader.Read(ref reader, Table, walk) is { } item)
            {
                read.Add(item);
            }

            walk.Leave();
        }

        if (index > most)
        {
            walk.Error(
                CaseErrorKind.OutOfRange,
                offset,
                FormattableString.Invariant($"This must be {PermittedWords}; got {index}."),
                PermittedWords,
                FormattableString.Invariant($"{index} {items}"),
                null);
        }

        return ListOf(read, offset, walk);
    }

    public override void Write(Utf8JsonWriter writer, object value)
    {
        writer.WriteStartArray();
        foreach (CaseFacts item in (IEnumerable<CaseFacts>)value)
        {
            FactsWriter.Write(writer, item);
        }

        writer.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteNumber("maxItems", most);
        writer.WriteStartObject("items");
        writer.WriteString("$ref", "#/$defs/" + Table.Name);
        writer.WriteEndObject();
    }

    public override void Check(object value)
    {
        int count = ((IReadOnlyCollection<CaseFacts>)value).Count;
        if (count > most)
        {
            throw NotPermitted(FormattableString.Invariant($"{count}"));
        }
    }

    /// <summary>False, with an error, when an item must not be read.</summary>
    protected virtual bool Admits(long offset, CaseWalk walk) => true;

    /// <summary>The value of the list, after checks across its items; null when it is empty.</summary>
    protected abstract object? ListOf(IReadOnlyList<CaseFacts> items, long offset, CaseWalk walk);
}
