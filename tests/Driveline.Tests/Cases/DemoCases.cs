using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Text;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Cases.Questions;
using Driveline.Choosing;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>The demonstration cases as files beside the tests. Their answers are worked out once for all tests.</summary>
internal static class DemoCases
{
    private static readonly RememberedRuns Runs = new();
    private static readonly ConcurrentDictionary<(string What, string Name), Lazy<object>> Known = new();

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "cases");

    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateFiles(Folder, "*.case.json")
            .Select(f => Path.GetFileName(f).Replace(".case.json", string.Empty, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    public static string Json(string name) => File.ReadAllText(Path.Combine(Folder, name + ".case.json"), Encoding.UTF8);

    public static CaseFile Read(string name) => Once(name, ReadAnew);

    public static ProtectionVerdict Verdict(string name) => Once(name, n => VerdictOf(n, Question(n)));

    /// <summary>The verdict, read and worked out again with nothing remembered.</summary>
    public static ProtectionVerdict VerdictAnew(string name) => VerdictOf(name, CaseQuestion.Of(ReadAnew(name)));

    public static CaseAdvice Advice(string name) => Once(name, n => AdviceOf(Read(n)));

    /// <summary>The advice on a case that differs little from a demo; what is simulated as there is not run again.</summary>
    public static CaseAdvice AdviceOf(CaseFile file) => CaseAdvice.Of(file, Runs.Meter());

    public static CaseSimulation Simulation(string name) => Once(name, n => CaseSimulation.Of(
        Read(n),
        Read(n).Facts.Get(CaseFileMembers.Strike) is null ? SimulatedEvent.Engagement : SimulatedEvent.Strike,
        Runs.Meter()));

    public static IReadOnlyList<ClutchChoice> Settings(string name) => Once(name, n => CaseChoice.SettingsOf(Verdict(n).Question));

    public static BoltChoice Choice(string name) => Once(name, n => BoltChoice.For(Verdict(n).Question));

    /// <summary>The bolts that the terms of the case allow.</summary>
    public static BoltChoice ChoiceInItsTerms(string name) =>
        Once(name, n => BoltChoice.For(Verdict(n).Question, CaseChoice.TermsOf(Read(n))));

    public static CaseFile ReadAnew(string name)
    {
        CaseReadResult result = CaseReader.Read(Json(name));
        Assert.True(result.IsRead, name + ": " + string.Join("; ", result.Errors));
        return result.Case!;
    }

    private static CaseQuestion Question(string name) => Once(name, n => CaseQuestion.Of(Read(n), Runs.Meter()));

    private static ProtectionVerdict VerdictOf(string name, CaseQuestion question)
    {
        Assert.True(question.Question is not null, name + ": " + string.Join("; ", question.Errors));
        return ProtectionCheck.Run(question.Question);
    }

    private static T Once<T>(string name, Func<string, T> make, [CallerMemberName] string what = "")
        where T : class => (T)Known.GetOrAdd((what, name), _ => new Lazy<object>(() => make(name))).Value;
}
