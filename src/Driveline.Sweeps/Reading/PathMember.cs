using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Reading;

/// <summary>The path of a factor; what is wrong with it was found before.</summary>
internal sealed class PathMember(string name, PathProblem? problem, bool isFirst, string doc) : ReadMember(name, doc)
{
    private readonly TextValue text = new(500);

    public override string ValueWords => "path";

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        long offset = reader.TokenStartIndex;
        string? path = text.Read(ref reader, walk);
        if (path is not null && problem is not null)
        {
            walk.Error(CaseErrorKind.UnknownMember, offset, problem.Message, problem.Permitted, problem.Received, problem.Nearest);
        }

        if (path is not null && !isFirst)
        {
            walk.Error(CaseErrorKind.DuplicateMember, offset, "\"" + path + "\" varies already.", null, path, null);
        }

        return path;
    }

    public override void WriteSchema(Utf8JsonWriter writer) => text.WriteSchema(writer);
}
