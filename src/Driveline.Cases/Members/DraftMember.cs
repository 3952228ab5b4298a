using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>An object of a file that is only read: its value is a draft, with the places of its members.</summary>
internal sealed class DraftMember : Member
{
    private readonly Func<MemberTable> table;

    public DraftMember(string name, Func<MemberTable> table, string doc)
        : base(name, doc) => this.table = table;

    public MemberTable Table => table();

    public override string ValueWords => "object";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => FactsReader.ReadDraft(ref reader, Table, walk);

    public override void Write(Utf8JsonWriter writer, object value) => throw new NotSupportedException("\"" + Name + "\" is only read.");

    public override void WriteSchema(Utf8JsonWriter writer) => writer.WriteString("$ref", "#/$defs/" + Table.Name);
}
