using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>The case of a study, which <see cref="StudyCase"/> has read already.</summary>
internal sealed class CaseMember(string name, string doc) : ReadMember(name, doc)
{
    public override string ValueWords => "text or case";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        reader.Skip();
        return this;
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteStartArray("type");
        writer.WriteStringValue("string");
        writer.WriteStringValue("object");
        writer.WriteEndArray();
    }
}
