using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>The JSON Schema (draft 2020-12) of the case file, made from the same rows as the reader.</summary>
/// <remarks>
/// The schema knows names, kinds, choices and the ranges of plain numbers. It cannot convert units: the range of a quantity
/// stands in its description, and only <see cref="CaseReader"/> checks it.
/// </remarks>
public static class CaseSchema
{
    private static readonly Lazy<string> Made = new(() => Json("Driveline case file", MemberTables.All));

    /// <summary>The schema as JSON text, indented; made once.</summary>
    public static string Json() => Made.Value;

    /// <summary>The schema of a document whose root is the first of these tables.</summary>
    internal static string Json(string title, IReadOnlyList<MemberTable> tables)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var writer = new Utf8JsonWriter(stream, options))
        {
            writer.WriteStartObject();
            writer.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            writer.WriteString("title", title);
            writer.WriteString("description", tables[0].Doc);
            writer.WriteString("$ref", "#/$defs/" + tables[0].Name);
            writer.WriteStartObject("$defs");
            foreach (MemberTable table in tables)
            {
                writer.WriteStartObject(table.Name);
                WriteTable(writer, table);
                writer.WriteEndObject();
            }

            writer.WriteEndObject();
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void WriteTable(Utf8JsonWriter writer, MemberTable table)
    {
        writer.WriteString("description", table.Doc);
        if (!table.HasKinds)
        {
            WriteObject(writer, table.Members, table.Members.Where(m => m.IsRequired));
            return;
        }

        writer.WriteStartArray("oneOf");
        foreach (Member naming in table.Members.Where(m => m.NamedKind != ElementKind.NotKnown))
        {
            Member[] members = table.Members.Where(m => m.AppliesTo(naming.NamedKind)).ToArray();
            writer.WriteStartObject();
            WriteObject(writer, members, members.Where(m => m.IsRequired || m == naming));
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static void WriteObject(Utf8JsonWriter writer, IEnumerable<Member> members, IEnumerable<Member> required)
    {
        writer.WriteString("type", "object");
        writer.WriteStartObject("properties");
        foreach (Member member in members)
        {
            writer.WriteStartObject(member.Name);
            writer.WriteString(
                "description", member.Doc + (member.PermittedWords is null ? string.Empty : " Permitted: " + member.PermittedWords + "."));
            member.WriteSchema(writer);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
        if (required.Any())
        {
            writer.WriteStartArray("required");
            foreach (Member member in required)
            {
                writer.WriteStringValue(member.Name);
            }

            writer.WriteEndArray();
        }

        writer.WriteBoolean("additionalProperties", false);
    }
}
