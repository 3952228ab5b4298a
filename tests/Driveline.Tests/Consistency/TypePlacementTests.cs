using System.Text.RegularExpressions;

namespace Driveline.Tests.Consistency;

/// <summary>
/// A reader must guess the file from the concept: one type a file, named after it, in the folder of its namespace or below.
/// </summary>
public partial class TypePlacementTests
{
    private static string SourceRoot => Path.Combine(AppContext.BaseDirectory, "source");

    [Fact]
    public void Source_EveryFile_IsNamedAfterItsType()
    {
        string[] files = [.. Files()];
        Assert.True(files.Length > 40, "the search must see the code it guards");
        Assert.All(files, file => Assert.Matches(
            @"(class|struct|interface|enum|record|delegate [\w<>\[\]?]+) "
                + Regex.Escape(Path.GetFileNameWithoutExtension(file).Split('.')[0]) + @"\b",
            File.ReadAllText(file)));
    }

    [Fact]
    public void Source_EveryNamespace_IsItsFolder() => Assert.All(Files(), file =>
    {
        // Folders below a concept's own sort its files; callers import the concept.
        string[] parts = Path.GetDirectoryName(Path.GetRelativePath(SourceRoot, file))!.Split(Path.DirectorySeparatorChar);
        string folder = string.Join('.', parts.Take(2));
        Assert.Equal(folder, Namespace().Match(File.ReadAllText(file)).Groups[1].Value);
    });

    [Fact]
    public void Source_EveryFolder_CanBeSeenAtOnce() => Assert.All(
        Files().Concat(TestFiles()).GroupBy(f => Path.GetDirectoryName(f)),
        folder => Assert.True(folder.Count() <= 30, folder.Key + " holds " + folder.Count() + " files; at most 30"));

    [Fact]
    public void Source_EveryLine_FitsTheWindow() => Assert.Empty(Files().Concat(TestFiles()).SelectMany(file => File.ReadLines(file)
        .Select((line, k) => (Line: line, At: Path.GetFileName(file) + ":" + (k + 1)))
        .Where(l => l.Line.Length > 140)
        .Select(l => l.At)));

    private static IEnumerable<string> Files() => Directory.EnumerateFiles(SourceRoot, "*.cs", SearchOption.AllDirectories)
        .Where(f => Path.GetFileName(f) is not "Polyfills.cs" and not "Program.cs" and not "AssemblyInfo.cs");

    private static IEnumerable<string> TestFiles() => Directory.EnumerateFiles(
        Path.Combine(AppContext.BaseDirectory, "source-tests"), "*.cs", SearchOption.AllDirectories);

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();
}
