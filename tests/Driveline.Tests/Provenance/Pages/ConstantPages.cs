using System.Text.RegularExpressions;
using Driveline.Provenance;

namespace Driveline.Tests.Provenance;

/// <summary>Every source that the code of the core writes beside a number, found in the code itself.</summary>
internal static partial class ConstantPages
{
    private static string SourceRoot => Path.Combine(AppContext.BaseDirectory, "source", "Driveline");

    public static DataPage OfConstants() => DataPage.Of(
            "Sources in the code",
            "Every source that stands beside a number of a formula or a table, by concept. A source of a formula says the number itself; "
                + "the numbers of tables stand on the other pages.")
        .Table("Sources", string.Empty, "concept | says", All().Select(s => DataRow.Of(s.Basis, s.Concept, s.Basis.Document)));

    /// <summary>Each with its concept, once; what a caller states is none of them.</summary>
    public static IEnumerable<(string Concept, Basis Basis)> All() => Directory
        .EnumerateFiles(SourceRoot, "*.cs", SearchOption.AllDirectories)
        .SelectMany(file => Of(File.ReadAllText(file)).Select(
            basis => (Path.GetRelativePath(SourceRoot, file).Split(Path.DirectorySeparatorChar)[0], basis)))
        .Distinct()
        .OrderBy(s => s.Item1, StringComparer.Ordinal).ThenBy(s => s.basis.ToString(), StringComparer.Ordinal);

    private static IEnumerable<Basis> Of(string code)
    {
        Dictionary<string, string> constants = Constant().Matches(code).GroupBy(m => m.Groups[1].Value, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First().Groups[2].Value, StringComparer.Ordinal);
        foreach (Match call in Call().Matches(code))
        {
            string?[] arguments = [.. call.Groups["says"].Captures.Select(a => Text(a.Value, constants))];
            if (!arguments.Contains(null))
            {
                Basis basis = call.Groups["kind"].Value switch
                {
                    nameof(Basis.Published) when arguments.Length == 3 => Basis.Published(arguments[0]!, arguments[1]!, arguments[2]!),
                    nameof(Basis.CommonPractice) => Basis.CommonPractice(arguments[0]!),
                    _ => Basis.FromMemory(arguments[0]!),
                };
                yield return call.Groups["via"].Success ? basis.ReadVia(Text(call.Groups["via"].Value, constants)!) : basis;
            }
        }
    }

    // Literals and constants of the same file, joined by +.
    private static string? Text(string argument, Dictionary<string, string> constants)
    {
        string[] parts = [.. Part().Matches(argument).Select(p => p.Value)];
        return Array.TrueForAll(parts, p => p[0] == '"' || constants.ContainsKey(p))
            ? string.Concat(parts.Select(p => p[0] == '"' ? p[1..^1].Replace("\\\"", "\"", StringComparison.Ordinal) : constants[p]))
            : null;
    }

    [GeneratedRegex(@"const string (\w+) = ""((?:[^""\\]|\\.)*)"";")]
    private static partial Regex Constant();

    [GeneratedRegex(@"\bBasis\s*\.(?<kind>Published|CommonPractice|FromMemory)\(\s*"
        + @"(?<says>(?:""(?:[^""\\]|\\.)*""|[\w\s+])+)(?:,\s*(?<says>(?:""(?:[^""\\]|\\.)*""|[\w\s+])+))*\)"
        + @"(?:\s*\.ReadVia\(\s*(?<via>(?:""(?:[^""\\]|\\.)*""|[\s+])+)\))?")]
    private static partial Regex Call();

    [GeneratedRegex(@"""(?:[^""\\]|\\.)*""|\w+")]
    private static partial Regex Part();
}
