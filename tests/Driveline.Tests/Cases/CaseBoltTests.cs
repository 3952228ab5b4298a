using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Tests.Cases;

/// <summary>What the members of a shear bolt do to the verdict of a case.</summary>
public class CaseBoltTests
{
    private const string Right = "thornbeck-bolt-right";

    [Theory]
    [InlineData("235 MPa", 319.8, "hand: 2 planes × 1.5 × 9.525 mm × 3 mm × 15.875 mm × 235 MPa")]
    [InlineData("360 MPa", 490.0, "hand: 2 planes × 1.5 × 9.525 mm × 3 mm × 15.875 mm × 360 MPa")]
    public void YokeYieldStrength_ThinYoke_GivesTheTorqueAtWhichItsHolesGoOval(string yield, double expectedNm, string source)
    {
        ProtectionVerdict verdict = Ask("\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"yokeThickness\": \"3 mm\", \"yokeYieldStrength\": \"" + yield + "\"");
        Finding oval = Assert.Single(verdict.Findings, f => f.Code == ShearBoltFindings.HolesOvalFirst);
        Assert.True(Math.Abs(oval.Parameter("oval")!.Value - expectedNm) < 0.1, source + "; got " + oval.Parameter("oval")!.Value);
    }

    private static ProtectionVerdict Ask(string bolt) => Ask(Right, bolt);

    private static ProtectionVerdict Ask(string demo, string bolt)
    {
        const string Stated = "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"layout\"";
        string json = DemoCases.Json(demo);
        Assert.Contains(Stated, json, StringComparison.Ordinal);
        CaseQuestion question = CaseQuestion.Of(CaseReaderTests.ReadGood(json.Replace(Stated, bolt + ", \"layout\"", StringComparison.Ordinal)));
        Assert.Empty(question.Errors);
        return ProtectionCheck.Run(question.Question!);
    }
}
