using Driveline.Tests.Consistency.Rules;

namespace Driveline.Sweeps.Tests;

public class SurfaceRuleTests
{
    [Theory]
    [MemberData(nameof(PackageRules.Names), MemberType = typeof(PackageRules))]
    public void Surface_OfSweeps_KeepsTheRule(string rule) => PackageRules.Hold(rule, typeof(Study).Assembly);

    [Fact]
    public void Study_ListCastToWhatHoldsIt_CannotBeChanged() => Assert.Empty(ChangeableLists.In(Study.Of("cast")
        .WithFactors(Factor.Choice("grade", "SAE 2", "SAE 5"), Factor.Values("n", 1, 2))
        .WithOutputs(StudyOutput.Of("n", row => row[1]))));

    [Fact]
    public void FactorChoice_OfWordsChangedAfterwards_KeepsItsOwn()
    {
        string[] words = ["SAE 2", "SAE 5"];
        Factor factor = Factor.Choice("grade", words);
        words[0] = "SAE 8";
        Assert.Equal(["SAE 2", "SAE 5"], factor.Words!);
    }
}
