using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A list of objects that share a table.</summary>
internal sealed class ListMember : ReferenceMember<CaseList>
{
    private readonly Func<MemberTable> table;
    private readonly int most;
    private readonly string items;
    private readonly Func<long, CaseWalk, bool>? admits;
    private readonly Action<CaseList, long, CaseWalk>? across;

    /// <param name="name">Name in the file.</param>
    /// <param name="table">The table of an item.</param>
    /// <param name="most">Most items.</param>
    /// <param name="items">What the items are called, e.g. "elements"; null when the list has no word for them.</param>
    /// <param name="admits">False, with an error, when an item must not be read; null when all may.</param>
    /// <param name="across">Checks across the items; null when there are none.</param>
    /// <param name="doc">What the list is.</param>
    public ListMember(
        string name,
        Func<MemberTable> table,
        int most,
        string? items,
        Func<long, CaseWalk, bool>? admits,
        Action<CaseList, long, CaseWalk>? across,
        string doc)
        : base(name, doc)
    {
        this.table = table;
        this.most = most;
        this.items = items ?? "items";
        this.admits = admits;
        this.across = across;
        ValueWords = items is null ? "list" : "list of " + items;
        PermittedWords = FormattableString.Invariant($"a list of at most {most}") + (items is null ? string.Empty : " " + items);
    }

    public MemberTable Table => table();

    public override string ValueWords { get; }

    public override string? PermittedWords { get; }

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            walk.WrongKind(ref reader, PermittedWords!);
            return null;
        }

        long offset = reader.TokenStartIndex;
        var read = new List<CaseObject>();
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
            if (admits is null || admits(reader.TokenStartIndex, walk))
            {
                read.Add(ObjectReader.Read(ref reader, Table, walk) ?? CaseObject.Unread(Table, walk, offset));
            }
            else
            {
                reader.Skip();
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

        var list = new CaseList(read);
        across?.Invoke(list, offset, walk);
        return list;
    }

    /// <summary>Checks across items that were changed after they were read.</summary>
    public void Check(CaseList list, long offset, CaseWalk walk) => across?.Invoke(list, offset, walk);

    public override void Write(Utf8JsonWriter writer, object value)
    {
        writer.WriteStartArray();
        foreach (CaseObject item in (CaseList)value)
        {
            ObjectWriter.Write(writer, item);
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
}
