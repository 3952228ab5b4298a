using System.Text.Json;
using Driveline.Cases.Members;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Reading;

/// <summary>
/// What varies. Each factor is read by the row of the case that its path leads to: units, range and words are those of the case.
/// </summary>
internal sealed class FactorsMember(string name, StudyCase of, string doc) : ItemsMember<FactorFacts>(name, "factors", 1000, doc)
{
    protected override void WriteItem(Utf8JsonWriter writer) => writer.WriteString("$ref", "#/$defs/" + FactorMembers.Name);

    protected override FactorFacts? Item(ref Utf8JsonReader reader, CaseWalk walk, HashSet<string> seen)
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
