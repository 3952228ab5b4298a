namespace Driveline.Tests.Findings;

public class FindingCodesTests
{
    [Fact]
    public void Codes_All_AreAreaDotName() =>
        Assert.DoesNotMatch("(?m)^(?![a-z][A-Za-z]*(\\.[a-z][A-Za-z]*)+$).+$", string.Join("\n", FindingCodes.All));

    [Fact]
    public void Codes_All_AreDeclaredOnce() => Assert.Equal(FindingCodes.All, FindingCodes.All.Distinct());
}
