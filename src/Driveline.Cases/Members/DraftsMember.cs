using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A list of objects of a file that is only read.</summary>
internal sealed class DraftsMember : Member
{
    private readonly Func<MemberTable> table;
    private readonly int most;

    public DraftsMember(string name, Func<MemberTable> table, int most, string doc)
        : base(name, doc)
    {
        this.table = table;
        this.most = most;
    }

    public MemberTable Table => table();

    public override string ValueWords => "list";

    public override string? PermittedWords => FormattableString.Invariant($"a list of at most {most}");

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            walk.WrongKind(ref reader, "a list");
            return null;
        }

        long offset = reader.TokenStartIndex;
        var drafts = new List<CaseDraft?>();
        int index = 0;
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (++index > most)
            {
                reader.Skip();
                continue;
            }

            walk.Enter(index - 1);
            drafts.Add(FactsReader.ReadDraft(ref reader, Table, walk));
            walk.Leave();
        }

        if (index > most)
        {
            walk.Error(
                CaseErrorKind.OutOfRange,
                offset,
                FormattableString.Invariant($"This must be {PermittedWords}; got {index}."),
                PermittedWords,
                FormattableString.Invariant($"{index} items"),
                null);
        }

        return drafts;
    }

    public override void Write(Utf8JsonWriter writer, object value) => throw new NotSupportedException("\"" + Name + "\" is only read.");

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteNumber("maxItems", most);
        writer.WriteStartObject("items");
        writer.WriteString("$ref", "#/$defs/" + Table.Name);
        writer.WriteEndObject();
    }
}
