using System.Text.Json;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>A matrix of numbers, by rows.</summary>
internal sealed class MatrixMember(string name, string doc) : ReadMember(name, doc)
{
    private const int Most = 1000;

    public override string ValueWords => "list of rows of numbers";

    public override string PermittedWords => "a list of rows, each a list of numbers";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) =>
        ListOf.Read(ref reader, walk, PermittedWords, 1, Most, Row)?.ToArray();

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteStartObject("items");
        writer.WriteString("type", "array");
        writer.WriteStartObject("items");
        writer.WriteString("type", "number");
        writer.WriteEndObject();
        writer.WriteEndObject();
    }

    private static double[]? Row(ref Utf8JsonReader reader, CaseWalk walk, int index) =>
        ListOf.Read<object>(ref reader, walk, "a list of numbers", 1, Most, Number)?.Select(v => (double)v).ToArray();

    private static object? Number(ref Utf8JsonReader reader, CaseWalk walk, int index)
    {
        if (reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double value) && double.IsFinite(value))
        {
            return value;
        }

        walk.WrongKind(ref reader, "a number");
        return null;
    }
}
