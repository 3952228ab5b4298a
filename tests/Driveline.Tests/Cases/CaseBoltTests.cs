using Driveline.Cases.Questions;
using Driveline.Chains;
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
        ProtectionVerdict verdict = Ask(
            "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"yokeThickness\": \"3 mm\", \"yokeYieldStrength\": \"" + yield + "\"");
        Finding oval = Assert.Single(verdict.Findings, f => f.Code == ShearBoltFindings.HolesOvalFirst);
        Assert.True(Math.Abs(oval.Parameter("oval")!.Value - expectedNm) < 0.1, source + "; got " + oval.Parameter("oval")!.Value);
    }

    [Theory]
    [InlineData("800 MPa", 1917, "hand: (π/16 · 31.75³ − 12.7 · 31.75²/6) mm³ · 800 MPa/√3 = 4151 mm³ · 461.9 MPa")]
    [InlineData("690 MPa", 1653, "hand: 4151 mm³ · 690 MPa/√3")]
    public void HoleDiameter_ThinBoltInAWideHole_SizesTheHoleInTheShaftAndBarsAQuietYes(string yield, double expectedNm, string source)
    {
        string json = DemoCases.Json(Right).Replace("\"shaftYieldStrength\": \"700 MPa\"",
            "\"shaftYieldStrength\": \"" + yield + "\", \"holeDiameter\": \"1/2 in\"", StringComparison.Ordinal);
        ProtectionVerdict verdict = ProtectionCheck.Run(CaseQuestion.Of(CaseReaderTests.ReadGood(json)).Question!);
        double low = Assert.Single(verdict.Parts, p => p.Part.Kind == PartKind.ShaftAtCrossHole).Part.Limit!.DamagedAt.SiBand.Low;
        Assert.True(Math.Abs(low - expectedNm) < 2, source + FormattableString.Invariant($"; got {low:0.#}"));
        Assert.NotEqual(Answer.Yes, verdict.Quiet);
        Finding loose = Assert.Single(verdict.Findings, f => f.Code == ShearBoltFindings.LooseInHole);
        Assert.Equal(9.525e-3, loose.Parameter("bolt")!.Value, 1e-9);
        Assert.Equal(12.7e-3, loose.Parameter("hole")!.Value, 1e-9);
    }

    // Seen to turn within 12 months of 2026-05-04 or not; a trip frees only a hub of which nothing else is told.
    [Theory]
    [InlineData("\"hub\": \"free\"", false)]
    [InlineData("\"hub\": \"free\", \"hubSeen\": \"2025-06-01\"", false)]
    [InlineData("\"hub\": \"free\", \"hubSeen\": \"2025-05-01\"", true)]
    [InlineData("\"hub\": \"free\", \"lastTrip\": \"2009-05-01\"", false)]
    [InlineData("\"lastTrip\": \"2009-05-01\"", true)]
    [InlineData("\"lastTrip\": \"2025-10-01\"", false)]
    public void HubSeen_TwelveMonths_ThenBarsTheGuards(string members, bool isTooOld)
    {
        string json =
            "{ \"date\": \"2026-05-04\", \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10\", \"grade\": \"8.8\", \"planeThrough\": "
                + "\"shank\", \"layout\": \"throughShaft\", "
            + "\"shaftDiameter\": \"30 mm\", " + members + " } } ] }";
        ShearBoltDevice bolt = Assert.Single(
            CaseQuestion.Of(CaseReaderTests.ReadGood(json)).Question!.Chain.Devices.OfType<ShearBoltDevice>());
        Assert.Equal(isTooOld, bolt.GuardBars.Any(f => f.Code == ShearBoltFindings.HubFreedomTooOld));
        Assert.Equal(isTooOld, bolt.BreakTorque.Torque.High is null);
    }

    [Theory]
    [InlineData("\"hubSeen\": \"2026-06-01\"", "hubSeen")]
    [InlineData("\"thread\": \"M10\", \"yokeEdge\": \"5 mm\"", "yokeEdge")]
    [InlineData("\"layout\": \"throughShaft\", \"shaftDiameter\": \"30 mm\", \"hubDiameter\": \"30 mm\"", "hubDiameter")]
    public void Bolt_ContradictionOfItsPlace_IsRefused(string members, string named)
    {
        string path = CaseReaderTests.ReadOneError(
            "{ \"date\": \"2026-05-04\", \"driveline\": [ { \"shearBolt\": { " + members + " } } ] }").Path;
        Assert.EndsWith(named == "hubSeen" ? "date" : named, path, StringComparison.Ordinal);
    }

    // 2 · 2.5 · 360 MPa · 9.525 · 3 mm² · 15.875 mm = 816.5 N·m at 3 hole diameters; 4 in less 2 in less 3/8 in stand out.
    [Fact]
    public void YokeAndLength_Told_GiveAPartAndAProudBolt()
    {
        ProtectionVerdict verdict = Ask(
            "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"yokeThickness\": \"3 mm\", \"yokeTensileStrength\": \"360 MPa\", "
            + "\"yokeEdge\": \"30 mm\", \"boltLength\": \"4 in\", \"hubDiameter\": \"2 in\"");
        double nm = Assert.Single(verdict.Parts, p => p.Part.Name == "yoke at the bolt hole").Part.Limit!.DamagedAt.SiBand.Expected;
        Assert.True(Math.Abs(nm - 816.5) < 0.1, FormattableString.Invariant($"got {nm:0.#}"));
        Assert.Equal(1.625 * 0.0254,
            Assert.Single(verdict.Findings, f => f.Code == ShearBoltFindings.BoltStandsProud).Parameter("protrusion")!.Value, 1e-9);
    }

    [Theory]
    [InlineData("0.406 in", false, "ASME B18.2.8, 3/8 in: normal hole 13/32 in")]
    [InlineData("0.422 in", false, "ASME B18.2.8, 3/8 in: loose hole 27/64 in")]
    [InlineData("0.43 in", true, "wider than the loose hole 27/64 in")]
    public void HoleDiameter_ClearanceHole_IsLooseOnlyBeyondTheLooseFit(string hole, bool isLoose, string source)
    {
        ProtectionVerdict verdict = Ask("\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"holeDiameter\": \"" + hole + "\"");
        Assert.True(isLoose == verdict.Findings.Any(f => f.Code == ShearBoltFindings.LooseInHole), source);
        Assert.Equal(isLoose, verdict.Quiet != Answer.Yes);
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
        CaseQuestion question = CaseQuestion.Of(
            CaseReaderTests.ReadGood(json.Replace(Stated, bolt + ", \"layout\"", StringComparison.Ordinal)));
        Assert.Empty(question.Errors);
        return ProtectionCheck.Run(question.Question!);
    }
}
