using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Writes one object by its table: the stated members, in the order of the rows.</summary>
internal static class ObjectWriter
{
    public static void Write(Utf8JsonWriter writer, CaseObject written)
    {
        writer.WriteStartObject();
        foreach (Member member in written.Table.Members)
        {
            if (written[member] is { } value)
            {
                writer.WritePropertyName(member.Name);
                member.Write(writer, value);
            }
        }

        writer.WriteEndObject();
    }
}
