using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>
/// Any member or element less in a demo case creates no Yes, and lifts no stop that does not name it as its cause.
/// </summary>
internal static class RemovalLaw
{
    public static IReadOnlyList<string> Simulated { get; } =
        [.. DemoCases.Names.Where(n => DemoCases.Json(n).Contains("\"simulated\"", StringComparison.Ordinal))];

    public static void Holds(string name)
    {
        var runs = new RememberedRuns();
        ProtectionVerdict full = DemoCases.Verdict(name);
        Standing advised = DemoCases.Advice(name).Advice!.Standing;
        int removed = 0;
        var broken = new List<string>();
        foreach ((string path, string json) in CaseRemovals.WithOneLess(DemoCases.Json(name)))
        {
            CaseReadResult read = CaseReader.Read(json);
            if (!read.IsRead)
            {
                continue;
            }

            WorkMeter meter = runs.Meter();
            MappedCase mapped = MappedCase.Of(read.Case);
            CaseQuestion asked = CaseQuestion.Of(mapped, meter);
            if (asked.Question is not { } question)
            {
                continue;
            }

            removed++;
            ProtectionVerdict less = ProtectionCheck.Run(question);
            broken.AddRange(less.Guards == Answer.Yes && full.Guards != Answer.Yes ? ["guards became Yes without " + path] : []);
            broken.AddRange(less.Quiet == Answer.Yes && full.Quiet != Answer.Yes ? ["quiet became Yes without " + path] : []);
            broken.AddRange(IsLifted(full.Standing, less.Standing, path) ? ["the verdict's stop is lifted without " + path] : []);
            Standing? advice = CaseAdvice.Of(mapped, asked, less, meter).Advice?.Standing;
            broken.AddRange(advice is not null && IsLifted(advised, advice, path) ? ["the advice's stop is lifted without " + path] : []);
        }

        Assert.True(broken.Count == 0, string.Join("; ", broken));
        Assert.True(removed >= 4, "the law must see many removals; saw " + removed);
    }

    private static bool IsLifted(Standing full, Standing less, string path) => full.State == StandingState.Stop
        && less.State != StandingState.Stop && !full.Reasons.SelectMany(r => r.Why.Because).Any(cause => Touches(path[2..], cause));

    // A cause goes with the whole it belongs to, and a whole that is named stands for all that belongs to it.
    private static bool Touches(string removed, string cause) => removed == cause || IsWithin(removed, cause) || IsWithin(cause, removed);

    private static bool IsWithin(string path, string whole) =>
        path.StartsWith(whole + ".", StringComparison.Ordinal) || path.StartsWith(whole + "[", StringComparison.Ordinal);
}
