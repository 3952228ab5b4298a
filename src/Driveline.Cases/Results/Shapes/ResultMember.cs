namespace Driveline.Cases.Results;

/// <summary>A member of a result's object as schema and page describe it.</summary>
internal sealed class ResultMember
{
    public ResultMember(string name, ResultType type, string doc)
    {
        Name = name;
        Type = type;
        Doc = doc;
    }

    public string Name { get; }

    public ResultType Type { get; }

    public string Doc { get; }
}
