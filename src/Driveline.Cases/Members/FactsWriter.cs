using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>Writes one object by its table: the stated members, in the order of the rows.</summary>
internal static class FactsWriter
{
    public static void Write(Utf8JsonWriter writer, CaseFacts facts)
    {
        writer.WriteStartObject();
        foreach (Member member in facts.Table.Members)
        {
            if (facts[member] is { } value)
            {
                writer.WritePropertyName(member.Name);
                member.Write(writer, value);
            }
        }

        writer.WriteEndObject();
    }
}
