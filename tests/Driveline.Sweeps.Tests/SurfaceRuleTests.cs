using Driveline.Tests.Consistency.Rules;

namespace Driveline.Sweeps.Tests;

public class SurfaceRuleTests
{
    [Theory]
    [MemberData(nameof(PackageRules.Names), MemberType = typeof(PackageRules))]
    public void Surface_OfSweeps_KeepsTheRule(string rule) => PackageRules.Hold(rule, typeof(Study).Assembly);
}
