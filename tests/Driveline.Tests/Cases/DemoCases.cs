using System.Text;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>The demonstration cases as files beside the tests.</summary>
internal static class DemoCases
{
    private static string Folder => Path.Combine(AppContext.BaseDirectory, "cases");

    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateFiles(Folder, "*.case.json")
            .Select(f => Path.GetFileName(f).Replace(".case.json", string.Empty, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    public static string Json(string name) => File.ReadAllText(Path.Combine(Folder, name + ".case.json"), Encoding.UTF8);

    public static CaseFile Read(string name)
    {
        CaseReadResult result = CaseReader.Read(Json(name));
        Assert.True(result.IsRead, name + ": " + string.Join("; ", result.Errors));
        return result.Case!;
    }

    public static ProtectionVerdict Verdict(string name)
    {
        CaseQuestion question = CaseQuestion.Of(Read(name));
        Assert.True(question.Question is not null, name + ": " + string.Join("; ", question.Errors));
        return ProtectionCheck.Run(question.Question);
    }
}
