using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Reading;

/// <summary>The names of what is computed.</summary>
internal sealed class OutputsMember(string name, StudyCase of, string doc) : Member(name, doc)
{
    private const int Most = 200;

    public override string ValueWords => "list of names";

    public override string PermittedWords => "a list of 1 to 200 names of outputs";

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
        writer.WriteString("type", "string");
        writer.WriteEndObject();
    }

    private string? Item(ref Utf8JsonReader reader, CaseWalk walk, HashSet<string> seen)
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
