using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Driveline.Cases.Results;

/// <summary>The JSON Schema (draft 2020-12) of each kind of result, made from the same rows as its writer.</summary>
public static class ResultSchema
{
    private static readonly Lazy<string>[] Schemas = [.. All().Select(kind => new Lazy<string>(() => Make(kind)))];

    /// <summary>The schema of a kind of result as JSON text, indented; made once.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such kind.</exception>
    public static string Json(ResultKind kind) => (int)kind >= 0 && (int)kind < Schemas.Length ? Schemas[(int)kind].Value
        : throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such kind of result.");

    internal static ResultKind[] All() => ChoiceWords<ResultKind>.All.Values;

    internal static ResultShape ShapeOf(ResultKind kind) => kind switch
    {
        ResultKind.Advise => AdviceRows.Shape,
        ResultKind.Choose => ChoiceRows.Shape,
        ResultKind.Clutch => ClutchRows.Shape,
        ResultKind.Simulate => SimulationRows.Shape,
        ResultKind.Strength => StrengthRows.Shape,
        ResultKind.Identify => IdentifyRows.Shape,
        ResultKind.Sweep => StudyRows.Shape,
        ResultKind.Watch => WatchedRows.Shape,
        ResultKind.Transient => TransientRows.Shape,
        _ => VerdictRows.Shape,
    };

    private static string Make(ResultKind kind)
    {
        ResultShape root = ShapeOf(kind);
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "Driveline result: " + root.Name);
            json.WriteString("$ref", "#/$defs/" + root.Name);
            json.WriteStartObject("$defs");
            foreach (ResultShape shape in root.All())
            {
                json.WriteStartObject(shape.Name);
                json.WriteString("description", shape.Doc);
                WriteObject(json, ReferenceEquals(shape, root) ? [.. HeadRows.Shape.Members, .. shape.Members] : shape.Members);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    // Members may be added, so others are permitted; those that are described are always there.
    private static void WriteObject(Utf8JsonWriter json, IReadOnlyList<ResultMember> members)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (ResultMember member in members)
        {
            json.WriteStartObject(member.Name);
            json.WriteString("description", member.Doc);
            member.Type.WriteSchema(json);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("required");
        foreach (ResultMember member in members)
        {
            json.WriteStringValue(member.Name);
        }

        json.WriteEndArray();
    }
}
