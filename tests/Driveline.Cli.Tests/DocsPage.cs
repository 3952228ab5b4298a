using System.Text.RegularExpressions;

namespace Driveline.Cli.Tests;

/// <summary>A page that a reader gets: the README, a page of the docs, the README of a package.</summary>
internal static partial class DocsPage
{
    /// <summary>Every page by its place below the tests, but the history of changes: it names what has been.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "README.md",
        .. new[] { "docs", "packages" }
            .SelectMany(f => Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, f), "*.md", SearchOption.AllDirectories))
            .Select(f => Path.GetRelativePath(AppContext.BaseDirectory, f).Replace('\\', '/'))
            .Where(f => f != "docs/changes.md").Order(StringComparer.Ordinal),
    ];

    public static string Text(string file) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, file)).Replace("\r\n", "\n", StringComparison.Ordinal);

    /// <summary>The blocks of C# on a page, as they stand.</summary>
    public static IEnumerable<string> Fragments(string page) => Fragment().Matches(Text(page)).Select(m => m.Groups[1].Value.Trim());

    /// <summary>What a page says in code within its sentences.</summary>
    public static IEnumerable<string> Code(string page) =>
        Ticked().Matches(Block().Replace(Text(page), "")).Select(m => m.Groups[1].Value);

    /// <summary>The code of a compiled example as a page shows it: without what the test adds around it.</summary>
    public static string Shown(string example)
    {
        string[] parts = Marker().Split(Text("Examples/" + example + ".cs"));
        IEnumerable<string> shown = parts.Where((_, k) => k % 2 == 1)
            .Select(p => string.Join('\n', WithoutIndent(p.Trim('\n').Split('\n'))).Trim());
        return string.Join("\n\n", shown).Replace("console.", "Console.", StringComparison.Ordinal);
    }

    private static IEnumerable<string> WithoutIndent(string[] lines)
    {
        int indent = lines.Where(l => l.Length > 0).Min(l => l.Length - l.TrimStart().Length);
        return lines.Select(l => l.Length > 0 ? l[indent..] : l);
    }

    [GeneratedRegex("[ ]*// (?:README|Docs) example: [a-z ]+\n")]
    private static partial Regex Marker();

    [GeneratedRegex("^ *```csharp\n(.*?)^ *```", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Fragment();

    [GeneratedRegex("^ *```.*?^ *```", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Block();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Ticked();
}
