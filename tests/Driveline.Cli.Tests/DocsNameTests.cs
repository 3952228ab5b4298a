using System.Text.RegularExpressions;
using Driveline.Cases;
using Driveline.Fleet;
using Driveline.Provenance;
using Driveline.Reports;
using Driveline.Sweeps;
using Driveline.Wording;

namespace Driveline.Cli.Tests;

/// <summary>A name of C# in a sentence of a page is one that a reader finds.</summary>
public partial class DocsNameTests
{
    private static readonly Type[] Ours = [.. new[]
        { typeof(Basis), typeof(Texts), typeof(CaseReader), typeof(VerdictText), typeof(StudyReader), typeof(FleetHost) }
        .SelectMany(t => t.Assembly.GetExportedTypes())];

    // Of the framework and other libraries; our projects, their tests; words of the result JSON that no public enum has.
    private static readonly string[] OfOthers =
    [
        "CancellationToken", "MathNet.Numerics", "UnitsNet",
        "Driveline.Cli", "Driveline.Sweeps.Tests", "ResultRegression", "PagesRegression",
        "OverloadFactor", "UnsourcedOverloadFactor",
    ];

    private static readonly ILookup<string, Type> ByName = Ours.ToLookup(t => t.Name.Split('`')[0]);

    private static readonly HashSet<string> Spaces = [.. Ours.Select(t => t.Namespace!)];

    private static readonly HashSet<string> Known =
        [.. Ours.Select(t => t.Name.Split('`')[0]), .. Ours.SelectMany(Members), .. Ours.SelectMany(Parameters), .. OfOthers];

    // The page of mutation tests speaks of files and of changes in them, not of names that a reader uses.
    public static TheoryData<string> Pages => [.. DocsPage.All.Where(p => p != "docs/mutation.md")];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_NamesOfCSharpInSentences_Exist(string page) => Assert.Empty(DocsPage.Code(page).Where(c => !IsTrue(c)).Distinct());

    private static bool IsTrue(string code)
    {
        if (Named().Match(code) is not { Success: true } name)
        {
            return true;
        }

        string[] parts = name.Groups[1].Value.Split('.');
        if (parts.Length == 1)
        {
            return !Humps().IsMatch(code) || Known.Contains(parts[0]);
        }

        return Spaces.Any(s => s == name.Groups[1].Value || s.EndsWith("." + name.Groups[1].Value, StringComparison.Ordinal))
            || Ends(parts) || OfOthers.Contains(name.Groups[1].Value);
    }

    // Space.Type, Type.Member, Space.Type.Member
    private static bool Ends(string[] parts) =>
        ByName[parts[^1]].Any(t => ("." + t.Namespace).EndsWith("." + string.Join('.', parts[..^1]), StringComparison.Ordinal))
        || ByName[parts[^2]].Any(t => Members(t).Contains(parts[^1]));

    private static IEnumerable<string> Members(Type type) => type.GetMembers().Select(m => m.Name);

    private static IEnumerable<string> Parameters(Type type) =>
        type.GetMethods().SelectMany(m => m.GetParameters().Select(p => p.Name!));

    // As a whole: Name, Name.Name, either with parameters.
    [GeneratedRegex(@"^([A-Z][A-Za-z0-9]*(?:\.[A-Z][A-Za-z0-9]*)*)(?:\(.*\))?$")]
    private static partial Regex Named();

    [GeneratedRegex("^[A-Z][a-z0-9]+(?:[A-Z][a-z0-9]+)+")]
    private static partial Regex Humps();
}
