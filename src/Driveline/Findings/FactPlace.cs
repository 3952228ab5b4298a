using Driveline.Quantities;

namespace Driveline.Findings;

/// <summary>Where the facts of one thing stand, such as "driveline[2].shearBolt", and which of them are told.</summary>
/// <remarks>With it a finding says which facts it rests on by their whole path; without it by their name alone.</remarks>
public sealed class FactPlace
{
    private readonly IToldFacts told;

    private FactPlace(IToldFacts told) => this.told = told;

    /// <summary>Path of the thing, e.g. "driveline[2].shearBolt".</summary>
    public string Path => told.Path;

    /// <summary>A place and the names of the facts that are told there.</summary>
    /// <param name="path">Path of the thing; not blank.</param>
    /// <param name="told">Names of the facts, e.g. "hub"; others are not told.</param>
    /// <exception cref="ArgumentException">The path is blank, or the names are missing.</exception>
    public static FactPlace Of(string path, IEnumerable<string> told) => new(new Listed(
        Guard.NotBlank(path, "Path of the facts", nameof(path)),
        new HashSet<string>(Guard.NotNull(told, nameof(told)), StringComparer.Ordinal)));

    internal static FactPlace Of(IToldFacts told) => new(told);

    /// <inheritdoc/>
    public override string ToString() => Path;

    /// <summary>Paths of those facts that are told; of all of them when none is, and of the thing itself when none is named.</summary>
    internal string[] Of(IReadOnlyList<string> facts)
    {
        string path = Path;
        int named = 0;
        for (int k = 0; k < facts.Count; k++)
        {
            named += told.IsTold(facts[k]) ? 1 : 0;
        }

        var paths = new string[facts.Count == 0 ? 1 : named > 0 ? named : facts.Count];
        paths[0] = path;
        int count = 0;
        for (int k = 0; k < facts.Count; k++)
        {
            if (named == 0 || told.IsTold(facts[k]))
            {
                paths[count++] = path + "." + facts[k];
            }
        }

        return paths;
    }

    private sealed class Listed : IToldFacts
    {
        private readonly HashSet<string> names;

        public Listed(string path, HashSet<string> names)
        {
            Path = path;
            this.names = names;
        }

        public string Path { get; }

        public bool IsTold(string name) => names.Contains(name);
    }
}
