using System.Reflection;
using System.Text.RegularExpressions;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>Every code a result can carry has English words.</summary>
public class FindingTextsTests
{
    public static TheoryData<string> Codes =>
    [
        .. typeof(Finding).Assembly.GetTypes()
            .Where(t => t.Name.EndsWith("Findings", StringComparison.Ordinal) && t.IsAbstract && t.IsSealed)
            .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static | BindingFlags.NonPublic))
            .Where(f => f.IsLiteral && f.FieldType == typeof(string))
            .Select(f => (string)f.GetRawConstantValue()!)
            .Distinct(),
    ];

    [Theory]
    [MemberData(nameof(Codes))]
    public void FindingCode_HasWords(string code)
    {
        string words = Texts.English.Of(code);
        Assert.NotEqual(code, words);
        Assert.Matches("[.?!]$", words);
    }

    [Fact]
    public void MeasurementCodes_HaveWords()
    {
        string[] codes = [.. typeof(Measurements).GetFields().Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!)];
        Assert.NotEmpty(codes);
        Assert.All(codes, code => Assert.NotEqual(code, Texts.English.Of(code)));
    }

    [Theory]
    [InlineData(typeof(Headline), "headline.")]
    [InlineData(typeof(Answer), "answer.")]
    [InlineData(typeof(Severity), "severity.")]
    [InlineData(typeof(GuardSide), "side.")]
    [InlineData(typeof(DeviceKind), "deviceKind.")]
    [InlineData(typeof(DeviceKind), "rung.Trip.")]
    [InlineData(typeof(FittedComparison), "comparison.")]
    [InlineData(typeof(Driveline.Provenance.BasisKind), "basis.")]
    public void EnumValue_HasWords(Type type, string prefix) =>
        Assert.All(Enum.GetNames(type), name => Assert.NotEqual(prefix + name, Texts.English.Of(prefix + name)));

    [Fact]
    public void PartKind_HasWords() => Assert.All(
        Enum.GetNames<PartKind>().Select(n => "partKind." + char.ToLowerInvariant(n[0]) + n[1..]),
        code => Assert.NotEqual(code, Texts.English.Of(code)));

    [Fact]
    public void EveryText_HasBalancedPlaces() => Assert.All(
        Texts.English.Codes, code => Assert.Matches(@"^([^{}]|\{[a-zA-Z]+(\|[a-zA-Z]+)?\})*$", Texts.English.Of(code)));

    [Fact]
    public void Of_CodeParameter_ShowsItsWords()
    {
        Finding finding = Finding.Of(ProtectionFindings.ExpectedPartMissing, Severity.Warning).With("kind", "ptoStub");
        Assert.EndsWith("the tractor's PTO stub.", Texts.English.Of(finding), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_BracesInAName_AreNotFilled()
    {
        Finding finding = Finding.Of(ProtectionFindings.TripMayExceedLimit, Severity.Warning)
            .With("device", "{name}").With("name", "{tripHigh}").With("tripHigh", QuantityKind.Torque, 1)
                .With("damagedLow", QuantityKind.Torque, 2);
        string words = Texts.English.Of(finding);
        Assert.Equal(3, Regex.Count(words, @"\{tripHigh\}"));
        Assert.Contains("{name} may hold", words, StringComparison.Ordinal);
    }
}
