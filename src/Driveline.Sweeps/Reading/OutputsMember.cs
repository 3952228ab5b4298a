using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Reading;

/// <summary>The names of what is computed.</summary>
internal sealed class OutputsMember(string name, StudyCase of, string doc) : ItemsMember<string>(name, "names of outputs", 200, doc)
{
    // By itself where nothing must be named, and with a name in brackets where something may be.
    protected override void WriteItem(Utf8JsonWriter writer)
    {
        writer.WriteStartArray("anyOf");
        writer.WriteStartObject();
        writer.WriteStartArray("enum");
        foreach (CaseOutputRow row in CaseOutputs.All.Where(r => !r.MustName))
        {
            writer.WriteStringValue(row.Name);
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
        writer.WriteStartObject();
        writer.WriteString("type", "string");
        writer.WriteString("pattern", "^(" + string.Join('|', CaseOutputs.All.Where(r => r.MayName)
            .Select(r => r.Name.Replace(".", "\\.", StringComparison.Ordinal))) + ")\\[.+\\]$");
        writer.WriteEndObject();
        writer.WriteEndArray();
    }

    protected override string? Item(ref Utf8JsonReader reader, CaseWalk walk, HashSet<string> seen)
    {
        long offset = reader.TokenStartIndex;
        string? text = walk.TextOf(ref reader, "the name of an output");
        if (text is null || of.File is not { } file)
        {
            return text;
        }

        if (!CaseOutputs.TryFind(file, text, out _, out string? problem, out string? nearest))
        {
            walk.Error(CaseErrorKind.UnknownMember, offset, problem!,
                string.Join(", ", CaseOutputs.All.Select(r => r.Name)), text, nearest);
            return null;
        }

        if (!seen.Add(text))
        {
            walk.Error(CaseErrorKind.DuplicateMember, offset, "\"" + text + "\" stands twice here.", null, text, null);
            return null;
        }

        return text;
    }
}
