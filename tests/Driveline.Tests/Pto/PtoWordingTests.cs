using System.Reflection;
using Driveline.Findings;
using Driveline.Pto;
using Driveline.Wording;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class PtoWordingTests
{
    public static TheoryData<string> Codes() =>
        [.. typeof(PtoFindings).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Finding_EachCode_HasWords(string code) => Assert.Contains(code, Texts.English.Codes);

    [Fact]
    public void Finding_InWords_LeavesNoBrace()
    {
        Finding[] findings =
        [
            .. StubStrength.Of(PtoTypes.Of(2)).Findings,
            .. PtoTypes.Of(1).Check(Power.FromKilowatts(70)),
            .. UniversalJoint.At(Angle.FromDegrees(20)).CheckContinuousWork(),
            .. UniversalJoint.At(Angle.FromDegrees(40)).CheckContinuousWork(),
            .. JointPair.Of(UniversalJoint.At(Angle.FromDegrees(20)), UniversalJoint.At(Angle.FromDegrees(10)), JointPhasing.NotKnown)
                .Check(),
            .. JointPair.Of(UniversalJoint.At(Angle.FromDegrees(20)), UniversalJoint.At(Angle.FromDegrees(10)), JointPhasing.InPhase)
                .Check(),
        ];
        Assert.Equal(7, findings.Select(f => f.Code).Distinct().Count());
        Assert.All(findings, f => Assert.DoesNotContain("{", Texts.English.Of(f), StringComparison.Ordinal));
    }
}
