namespace Driveline.Cases.Results;

/// <summary>An object of a result: its members in the order in which they are written. Writer, schema and page all follow it.</summary>
internal abstract class ResultShape
{
    private readonly List<ResultMember> members = [];

    protected ResultShape(string name, string doc)
    {
        Name = name;
        Doc = doc;
    }

    /// <summary>Name of the object, as its schema definition is called.</summary>
    public string Name { get; }

    /// <summary>What the object is.</summary>
    public string Doc { get; }

    public IReadOnlyList<ResultMember> Members => members;

    /// <summary>The shape and every one below it, each once, in the order in which they are met.</summary>
    public IReadOnlyList<ResultShape> All()
    {
        var all = new List<ResultShape> { this };
        for (int k = 0; k < all.Count; k++)
        {
            all.AddRange(all[k].members.Select(m => m.Type.Shape).OfType<ResultShape>().Distinct().Where(s => !all.Contains(s)).ToArray());
        }

        return all;
    }

    protected void Describe(string name, ResultType type, string doc) => members.Add(new ResultMember(name, type, doc));
}
