#if !NETSTANDARD_BUILD
using System.Reflection;
using Driveline.Cases;
using Driveline.Provenance;
using Driveline.Reports;
using Driveline.Tests.Consistency.Rules;
using Driveline.Wording;

namespace Driveline.Tests.Consistency;

public class SurfaceRuleTests
{
    [Theory]
    [MemberData(nameof(PackageRules.Names), MemberType = typeof(PackageRules))]
    public void Surface_OfDriveline_KeepsTheRule(string rule) => PackageRules.Hold(rule, typeof(Basis).Assembly);

    [Theory]
    [MemberData(nameof(PackageRules.Names), MemberType = typeof(PackageRules))]
    public void Surface_OfWording_KeepsTheRule(string rule) => PackageRules.Hold(rule, typeof(Texts).Assembly);

    [Theory]
    [MemberData(nameof(PackageRules.Names), MemberType = typeof(PackageRules))]
    public void Surface_OfCases_KeepsTheRule(string rule) => PackageRules.Hold(rule, typeof(CaseReader).Assembly);

    [Theory]
    [MemberData(nameof(PackageRules.Names), MemberType = typeof(PackageRules))]
    public void Surface_OfReports_KeepsTheRule(string rule) => PackageRules.Hold(rule, typeof(VerdictText).Assembly);

    [Fact]
    public void QuantityEquality_InThisAssembly_IsSeen() =>
        Assert.Contains("UnitsNet.Torque.op_Equality", QuantityEquality.In(Assembly.GetExecutingAssembly()));

    [Theory]
    [InlineData(nameof(ThrowsItself), true)]
    [InlineData(nameof(LetsAnotherThrow), true)]
    [InlineData(nameof(ThrowsForNothing), false)]
    public void Throwing_MethodsOfThisClass_AreSeen(string method, bool throws) => Assert.Equal(
        throws, Throwing.ForArguments(typeof(SurfaceRuleTests).GetMethod(method, BindingFlags.NonPublic | BindingFlags.Static)!));

    private static void ThrowsItself() => throw new ArgumentOutOfRangeException(nameof(PackageRules.Names));

    private static void LetsAnotherThrow() => ThrowsItself();

    private static void ThrowsForNothing() => ArgumentNullException.ThrowIfNull(PackageRules.Names);

    // Never called: the rule is to find it.
#pragma warning disable CS0618
    private static bool Compares(UnitsNet.Torque left, UnitsNet.Torque right) => left == right;
#pragma warning restore CS0618
}
#endif
