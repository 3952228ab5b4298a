using System.Reflection;

namespace Driveline.Tests.Consistency.Rules;

/// <summary>One way of being a public member, in all packages: the rules by name.</summary>
public static class PackageRules
{
    private static readonly Dictionary<string, Func<Assembly, IEnumerable<string>>> Rules = new()
    {
        ["no optional parameters"] = SurfaceRules.OptionalParameters,
        ["nothing can be set"] = SurfaceRules.Settable,
        ["no content can be changed"] = SurfaceRules.ChangeableContent,
        ["what is shared cannot be changed"] = ChangeableLists.Shared,
        ["defaults of enums mean something"] = SurfaceRules.DefaultsOfNoMeaning,
        ["equal by value in every way"] = SurfaceRules.HalfEquality,
        ["quantities are told in words"] = SurfaceRules.WithoutWords,
        ["quantities are never compared by value"] = QuantityEquality.In,
        ["all is documented"] = of => Documentation.Of(of).Undocumented(of),
        ["numbers say in what they count"] = of => Documentation.Of(of).NumbersWithoutUnit(of),
        ["errors are told"] = of => Documentation.Of(of).UntoldErrors(of),
    };

    public static TheoryData<string> Names => [.. Rules.Keys];

    /// <summary>Fails with the members that break a rule, one a line.</summary>
    public static void Hold(string rule, Assembly package)
    {
        string[] breaking = [.. Rules[rule](package)];
        Assert.True(breaking.Length == 0, string.Join(Environment.NewLine, breaking.Prepend(rule)));
    }
}
