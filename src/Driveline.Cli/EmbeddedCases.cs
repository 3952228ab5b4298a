using System.Reflection;

namespace Driveline.Cli;

/// <summary>The demo cases built into the tool.</summary>
internal static class EmbeddedCases
{
    // The case in which all is well comes first: it shows what an answer looks like.
    private const string First = "thornbeck-bolt-right";
    private const string Prefix = "cases/";
    private const string Ending = ".case.json";

    /// <summary>Their names, the one in which all is well first, then in order.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. typeof(EmbeddedCases).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => NameOf(n[Prefix.Length..]))
            .OrderBy(n => n != First).ThenBy(n => n, StringComparer.Ordinal),
    ];

    /// <summary>One of them with its verdict.</summary>
    /// <exception cref="BadInputException">There is none of that name.</exception>
    public static CaseInput Of(string name)
    {
        string? known = Names.FirstOrDefault(n => string.Equals(n, NameOf(name), StringComparison.OrdinalIgnoreCase));
        return known is null
            ? throw new BadInputException("There is no demo case '" + name + "'; there are: " + string.Join(", ", Names) + ".")
            : CaseInput.Of(known, Bytes(known));
    }

    /// <summary>A file name without the ending of a case file.</summary>
    public static string NameOf(string fileName) => fileName.EndsWith(Ending, StringComparison.OrdinalIgnoreCase)
        ? fileName[..^Ending.Length]
        : Path.GetFileNameWithoutExtension(fileName);

    private static byte[] Bytes(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + name + Ending)!;
        using var whole = new MemoryStream();
        stream.CopyTo(whole);
        return whole.ToArray();
    }
}
