using System.Text.RegularExpressions;

namespace Driveline.Tests.Consistency;

/// <summary>Reads the code of the core and keeps its folders' dependencies one-way.</summary>
public partial class LayerTests
{
    // Each folder may use those to its left in this order, except siblings of one group.
    private static readonly string[][] Order =
    [
        ["Provenance"],
        ["Quantities"],
        ["Findings"],
        ["Fatigue", "Fasteners"],
        ["ShearBolts", "Clutches", "Pto", "Torsion"],
        ["Chains"],
        ["Loads", "Monitoring"],
        ["Protection"],
        ["Choosing"],
        ["Advice"],
    ];

    private static string SourceRoot => Path.Combine(AppContext.BaseDirectory, "source", "Driveline");

    [Fact]
    public void Core_EveryFolder_StandsInTheOrder()
    {
        string[] known = [.. Order.SelectMany(g => g), "Internal"];
        string[] folders =
            [.. Directory.GetDirectories(SourceRoot).Select(d => Path.GetFileName(d)!).Where(f => f is not "obj" and not "bin")];
        Assert.NotEmpty(folders);
        Assert.All(folders, f => Assert.Contains(f, known));
    }

    [Fact]
    public void Core_Usings_PointOnlyToTheLeft()
    {
        var wrong = new List<string>();
        int seen = 0;
        foreach (string file in Directory.EnumerateFiles(SourceRoot, "*.cs", SearchOption.AllDirectories))
        {
            string folder = Path.GetRelativePath(SourceRoot, file).Split(Path.DirectorySeparatorChar)[0];
            int own = Array.FindIndex(Order, g => g.Contains(folder));
            foreach (Match use in CoreName().Matches(File.ReadAllText(file)))
            {
                string other = use.Groups[1].Value;
                int level = Array.FindIndex(Order, g => g.Contains(other));
                seen++;
                if (level >= 0 && own >= 0 && other != folder && level >= own)
                {
                    wrong.Add(folder + "/" + Path.GetFileName(file) + " uses " + other);
                }
            }
        }

        Assert.True(seen > 50, "the search must see the code it guards");
        Assert.Empty(wrong);
    }

    [Fact]
    public void Core_Folder_HasNoDrawerNames() =>
        Assert.DoesNotContain(
            Directory.EnumerateFileSystemEntries(SourceRoot, "*", SearchOption.AllDirectories).Select(Path.GetFileNameWithoutExtension),
            name => name is "Utils" or "Helpers" or "Common" or "Models" or "Misc");

    [GeneratedRegex(@"Driveline\.([A-Z]\w+)")]
    private static partial Regex CoreName();
}
