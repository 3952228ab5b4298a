using Driveline.Tests.Consistency.Rules;

namespace Driveline.Fleet.Tests;

public class SurfaceRuleTests
{
    [Theory]
    [MemberData(nameof(PackageRules.Names), MemberType = typeof(PackageRules))]
    public void Surface_OfFleet_KeepsTheRule(string rule) => PackageRules.Hold(rule, typeof(FleetHost).Assembly);
}
