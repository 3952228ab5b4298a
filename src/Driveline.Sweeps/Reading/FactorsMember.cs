using System.Text.Json;
using Driveline.Cases.Members;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Reading;

/// <summary>
/// What varies. Each factor is read by the row of the case that its path leads to: units, range and words are those of the case.
/// </summary>
internal sealed class FactorsMember(string name, StudyCase of, string doc) : Member(name, doc)
{
    private const int Most = 1000;

    public override string ValueWords => "list of factors";

    public override string PermittedWords => "a list of 1 to 1000 factors";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return ListOf.Read(ref reader, walk, PermittedWords, 1, Most, (ref Utf8JsonReader at, CaseWalk w, int _) => Item(ref at, w, seen));
    }

    public override void Write(Utf8JsonWriter writer, object value) => throw new NotSupportedException();

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteStartObject("items");
        writer.WriteString("$ref", "#/$defs/factor");
        writer.WriteEndObject();
    }

    private FactorFacts? Item(ref Utf8JsonReader reader, CaseWalk walk, HashSet<string> seen)
    {
        string? path = PathOf(reader);
        CaseTarget? target = null;
        PathProblem? problem = null;
        if (path is not null && of.File is { } file)
        {
            CaseTarget.TryFind(file, path, out target, out problem);
        }

        bool isGood = path is null || seen.Add(path);
        var members = new FactorMembers(target, problem, isGood);
        return ObjectReader.Read(ref reader, members.Table, walk) is { } facts
            ? new FactorFacts(path, target is null ? null : members.FactorOf(facts, walk)) : null;
    }

    // Looked for before the rest is read, wherever it stands in the object.
    private static string? PathOf(Utf8JsonReader reader)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            return null;
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            bool isPath = reader.ValueTextEquals("path"u8);
            reader.Read();
            if (isPath)
            {
                return reader.TokenType == JsonTokenType.String ? CaseWalk.TextOrNull(ref reader) : null;
            }

            reader.Skip();
        }

        return null;
    }
}
