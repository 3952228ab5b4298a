using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>An object with a table of its own.</summary>
internal sealed class ObjectMember : ReferenceMember<CaseObject>
{
    private readonly Func<MemberTable> table;

    public ObjectMember(string name, Func<MemberTable> table, string doc)
        : base(name, doc) => this.table = table;

    public MemberTable Table => table();

    public override string ValueWords => "object";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => ObjectReader.Read(ref reader, Table, walk);

    public override void Write(Utf8JsonWriter writer, object value) => ObjectWriter.Write(writer, (CaseObject)value);

    public override void WriteSchema(Utf8JsonWriter writer) => writer.WriteString("$ref", "#/$defs/" + Table.Name);
}
