using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;

namespace Driveline.Tests.Cases;

/// <summary>The advice on a case whose facts do not contradict each other.</summary>
internal static class GoodAdvice
{
    public static OwnerAdvice Of(string name) => Good(DemoCases.Advice(name));

    public static OwnerAdvice Of(CaseFile file) => Good(DemoCases.AdviceOf(file));

    private static OwnerAdvice Good(CaseAdvice advice)
    {
        Assert.True(advice.Advice is not null, string.Join("; ", advice.Errors));
        return advice.Advice;
    }
}
