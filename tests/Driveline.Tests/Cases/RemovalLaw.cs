using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>Any member or element less in a demo case never creates a Yes.</summary>
internal static class RemovalLaw
{
    public static IReadOnlyList<string> Simulated { get; } =
        [.. DemoCases.Names.Where(n => DemoCases.Json(n).Contains("\"simulated\"", StringComparison.Ordinal))];

    public static void Holds(string name)
    {
        var runs = new RememberedRuns();
        ProtectionVerdict full = DemoCases.Verdict(name);
        int removed = 0;
        foreach ((string path, string json) in CaseRemovals.WithOneLess(DemoCases.Json(name)))
        {
            CaseReadResult read = CaseReader.Read(json);
            if (!read.IsRead || CaseQuestion.Of(read.Case!, runs.Meter()).Question is not { } question)
            {
                continue;
            }

            removed++;
            ProtectionVerdict less = ProtectionCheck.Run(question);
            Assert.False(less.Guards == Answer.Yes && full.Guards != Answer.Yes, "guards became Yes without " + path);
            Assert.False(less.Quiet == Answer.Yes && full.Quiet != Answer.Yes, "quiet became Yes without " + path);
        }

        Assert.True(removed >= 4, "the law must see many removals; saw " + removed);
    }
}
