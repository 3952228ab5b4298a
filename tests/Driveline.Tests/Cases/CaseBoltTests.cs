using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Fasteners;
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

    [Theory]
    [InlineData("SAE 5", "six radial lines")]
    [InlineData("SAE 5", "6 lines")]
    [InlineData("SAE 5", "none")]
    [InlineData("SAE 5", "8.8")]
    [InlineData("SAE 5", "A490")]
    [InlineData("SAE 2", "six radial lines")]
    [InlineData("SAE 2", "three radial lines")]
    public void HeadMarks_OfAnotherGrade_GiveNoYesAndNameBothFacts(string grade, string marks)
    {
        ProtectionVerdict verdict = Ask("\"thread\": \"3/8-16 UNC\", \"grade\": \"" + grade + "\", \"headMarks\": \"" + marks + "\"");
        Assert.NotEqual(Answer.Yes, verdict.Guards);
        Assert.NotEqual(Answer.Yes, verdict.Quiet);
        Finding both = Assert.Single(verdict.Findings, f => f.Code == ShearBoltFindings.MarksContradict);
        Assert.Equal(grade, both.Parameter("stated")!.Text);
        Assert.Equal(HeadMark.Parse(marks).ToString(), both.Parameter("mark")!.Text);
        Assert.Equal(FittedComparison.NotKnown, verdict.FittedAgainstSpecified.Answer);
    }

    [Fact]
    public void HeadMarks_TheDocumentedExample_LeavesTheRightBoltAsItIs()
    {
        ProtectionVerdict verdict = Ask("\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"headMarks\": \"three radial lines\"");
        Assert.Equal((Answer.Yes, Answer.Yes), (verdict.Guards, verdict.Quiet));
        Assert.DoesNotContain(verdict.Findings, f => f.Code.StartsWith("fastener.", StringComparison.Ordinal));
    }

    [Fact]
    public void HeadMarks_WithoutGrade_GiveTheBandOfAllTheyMayMean()
    {
        ProtectionVerdict verdict = Ask("\"thread\": \"3/8-16 UNC\", \"headMarks\": \"three radial lines\"");
        ProtectionVerdict graded = DemoCases.Verdict(Right);
        Assert.True(verdict.Trip!.SiBand.Low <= graded.Trip!.SiBand.Low);
        Assert.True(verdict.Trip.SiBand.High > graded.Trip.SiBand.High);
        Assert.Contains(verdict.Findings, f => f.Code == FastenerFindings.SeveralGradesFitTheMark);
    }

    [Fact]
    public void HeadMarks_NoneWithoutGrade_IsAnUnmarkedBolt()
    {
        ProtectionVerdict verdict = Ask("\"thread\": \"3/8-16 UNC\", \"headMarks\": \"no marks\"");
        Assert.NotEqual(Answer.Yes, verdict.Guards);
        Assert.Contains(verdict.Findings, f => f.Code == ShearBoltFindings.BoltNotIdentified);
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
