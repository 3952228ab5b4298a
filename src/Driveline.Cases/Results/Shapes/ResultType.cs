using System.Text.Json;

namespace Driveline.Cases.Results;

/// <summary>What may stand as the value of a result's member: in words for the page, and as a schema.</summary>
internal sealed class ResultType
{
    private const string ListWords = "list of";
    private const string MapWords = "object of";

    private readonly Action<Utf8JsonWriter> schema;

    private ResultType(string words, ResultShape? shape, Action<Utf8JsonWriter> schema)
    {
        Words = words;
        Shape = shape;
        this.schema = schema;
    }

    public static ResultType Text { get; } = Of("text", "string");

    public static ResultType MaybeText { get; } = Of("text or null", "string", "null");

    public static ResultType Flag { get; } = Of("true or false", "boolean");

    public static ResultType MaybeFlag { get; } = Of("true, false or null", "boolean", "null");

    public static ResultType Whole { get; } = Of("whole number", "integer");

    public static ResultType MaybeWhole { get; } = Of("whole number or null", "integer", "null");

    public static ResultType Number { get; } = new("number, \"unbounded\" or null", null, json =>
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        Types(json, ["number", "null"]);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("const", JsonNumbers.Unbounded);
        json.WriteEndObject();
        json.WriteEndArray();
    });

    /// <summary>A number or a text, as the parameter of a finding is.</summary>
    public static ResultType Any { get; } = Of("text, number, \"unbounded\" or null", "string", "number", "null");

    public static ResultType Texts { get; } = new("list of texts", null, json =>
    {
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        json.WriteString("type", "string");
        json.WriteEndObject();
    });

    /// <summary>How it is described on the page.</summary>
    public string Words { get; }

    /// <summary>The object that it is or holds; null when it is a plain value.</summary>
    public ResultShape? Shape { get; }

    public bool IsList => ReferenceEquals(Words, ListWords);

    /// <summary>True for an object whose members are names of the result's own.</summary>
    public bool IsMap => ReferenceEquals(Words, MapWords);

    public static ResultType Choice(IReadOnlyList<string> names, bool isMaybe) => new(
        string.Join(", ", names.Select(n => "`" + n + "`")) + (isMaybe ? " or null" : string.Empty), null, json =>
        {
            json.WriteStartArray("enum");
            foreach (string name in names)
            {
                json.WriteStringValue(name);
            }

            if (isMaybe)
            {
                json.WriteNullValue();
            }

            json.WriteEndArray();
        });

    public static ResultType Object(ResultShape shape, bool isMaybe) => new(isMaybe ? "or null" : string.Empty, shape, json =>
    {
        if (!isMaybe)
        {
            Reference(json, shape);
            return;
        }

        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        Reference(json, shape);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "null");
        json.WriteEndObject();
        json.WriteEndArray();
    });

    public static ResultType List(ResultShape shape) => new(ListWords, shape, json =>
    {
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        Reference(json, shape);
        json.WriteEndObject();
    });

    /// <summary>An object whose members are names of the result's own, each such an object.</summary>
    public static ResultType Map(ResultShape shape) => new(MapWords, shape, json =>
    {
        json.WriteString("type", "object");
        json.WriteStartObject("additionalProperties");
        Reference(json, shape);
        json.WriteEndObject();
    });

    /// <summary>An object whose members are names of the result's own, each such an object of numbers by names.</summary>
    public static ResultType NumbersByNames { get; } = new("object, a member a name, of objects of numbers by names", null, json =>
    {
        json.WriteString("type", "object");
        json.WriteStartObject("additionalProperties");
        json.WriteString("type", "object");
        json.WriteStartObject("additionalProperties");
        json.WriteString("type", "number");
        json.WriteEndObject();
        json.WriteEndObject();
    });

    /// <summary>Writes the members of the schema.</summary>
    public void WriteSchema(Utf8JsonWriter json) => schema(json);

    private static ResultType Of(string words, params string[] types) => new(words, null, json => Types(json, types));

    private static void Types(Utf8JsonWriter json, string[] types)
    {
        if (types.Length == 1)
        {
            json.WriteString("type", types[0]);
            return;
        }

        json.WriteStartArray("type");
        foreach (string type in types)
        {
            json.WriteStringValue(type);
        }

        json.WriteEndArray();
    }

    private static void Reference(Utf8JsonWriter json, ResultShape shape) => json.WriteString("$ref", "#/$defs/" + shape.Name);
}
