using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>Each device of a case against what the manual names in its own place.</summary>
public class SpecifiedCaseTests
{
    private const string Clutch = """{ "slipClutch": { "name": "slip clutch", "statedTorque": "600 N.m" } }""";

    [Fact]
    public void Root_ClutchAndBoltOneOfEach_ComparesBoth()
    {
        ProtectionVerdict verdict = Verdict(Case(
            Clutch + "," + Bolt("flywheel bolt", "M10", "10.9", "shank", null),
                """ "specified": { "slipTorque": "600 N.m", "shearBolt": { "thread": "M10", "grade": "5.8" } } """));
        Assert.Equal(["slip clutch", "flywheel bolt"], verdict.Comparisons.Select(c => c.Device!.Name));
        Assert.Equal(FittedComparison.Stronger, verdict.Comparisons[1].Answer);   // 1040 to 520 MPa at least
        Assert.Equal(FittedComparison.Stronger, verdict.FittedAgainstSpecified.Answer);
        Assert.Equal(
            "flywheel bolt", Assert.Single(verdict.Findings, f => f.Code == ProtectionFindings.FittedStronger).Parameter("name")!.Text);
    }

    // A clutch in order that guards and stays quiet, and a manual that names a bolt besides: where is it?
    [Theory]
    [InlineData("dunmarsh-clutch-well-set", "shearBolt", """{ "thread": "M10", "grade": "8.8" }""", SpecifiedFindings.BoltNotListed)]
    [InlineData("thornbeck-bolt-right", "slipTorque", "\"600 N.m\"", SpecifiedFindings.ClutchNotListed)]
    [InlineData("thornbeck-bolt-right", "springLength", "\"34 mm\"", SpecifiedFindings.ClutchNotListed)]
    public void Root_NamesADeviceOfWhichNoneIsListed_BarsBothAndNamesItsPath(string demo, string member, string value, string code)
    {
        Assert.Equal((Answer.Yes, Answer.Yes), (DemoCases.Verdict(demo).Guards, DemoCases.Verdict(demo).Quiet));
        ProtectionVerdict verdict = Verdict(CaseWriter.ToJson(DemoCases.Read(demo).With("specified." + member, value).Case!));
        Finding found = Assert.Single(verdict.Findings, f => f.Code == code);
        Assert.Equal(["specified." + member], found.Because);
        Assert.NotEqual(Answer.Yes, verdict.Guards);
        Assert.NotEqual(Answer.Yes, verdict.Quiet);
        Assert.Equal(Answer.NotKnown, verdict.AsSpecified.Answer);
        Assert.Contains(found, verdict.AsSpecified.Open);
        Assert.Contains(verdict.MeasureNext, m => m.Code == Measurements.PartsList);
    }

    [Fact]
    public void Element_OneOfTwoBoltsStronger_IsTheHeadline()
    {
        ProtectionVerdict verdict = Verdict(Case(
            Bolt("main bolt", "M10", "8.8", "shank", """{ "shearBolt": { "thread": "M10", "grade": "8.8" } }""") + ","
            + Bolt("auger bolt", "M8", "12.9", "shank", """{ "shearBolt": { "thread": "M8", "grade": "8.8" } }"""),
            null));
        Assert.Equal([FittedComparison.Same, FittedComparison.Stronger], verdict.Comparisons.Select(c => c.Answer));
        Assert.Equal(FittedComparison.Stronger, verdict.FittedAgainstSpecified.Answer);
    }

    [Fact]
    public void Element_OneOfTwoBoltsWithoutIts_IsAskedFor()
    {
        ProtectionVerdict verdict = Verdict(Case(
            Bolt("main bolt", "M10", "8.8", "shank", """{ "shearBolt": { "thread": "M10", "grade": "8.8" } }""") + ","
                + Bolt("auger bolt", "M8", "8.8", "shank", null), null));
        Assert.Equal(FittedComparison.NotKnown, verdict.FittedAgainstSpecified.Answer);
        Assert.Contains(verdict.MeasureNext, m => m.Code == Measurements.ManualSpecification && m.Subjects.Contains("auger bolt"));
    }

    // M10 10.9 through the thread over M10 8.8 through the shank: (1040 / 800) · 0.62 to 0.8 = 0.81 to 1.04, so by itself weaker or the
    // same.
    [Theory]
    [InlineData("M10", "10.9", FittedComparison.Stronger)]
    [InlineData("M12", "8.8", FittedComparison.Stronger)]
    [InlineData("M10", "8.8", FittedComparison.Weaker)]
    public void PlaneThroughTheThread_HidesNoHigherGradeOrThickerBolt(string thread, string grade, FittedComparison answer)
    {
        ProtectionVerdict verdict = Verdict(Case(
            Bolt("bolt", thread, grade, "thread", """{ "shearBolt": { "thread": "M10", "grade": "8.8", "planeThrough": "shank" } }"""),
                null));
        Assert.Equal(answer, verdict.FittedAgainstSpecified.Answer);
        Assert.Equal(answer == FittedComparison.Stronger, verdict.FittedAgainstSpecified.Ratio!.Expected > 1);
    }

    // Whether it is more: least tensile strength and size beside 800 MPa and 10 mm of M10 8.8.
    [Theory]
    [InlineData("M8", "12.9", false, true)]     // 1220 MPa, thinner
    [InlineData("M8", "10.9", false, true)]     // 1040 MPa, thinner
    [InlineData("M12", "4.6", false, true)]     // 12 mm, softer
    [InlineData("M8", "8.8", false, false)]     // thinner only
    [InlineData("M10", "8.8", false, false)]    // the manual's
    [InlineData("M10", "10.9", true, false)]    // flagged as stronger
    public void HigherGradeOrThickerBolt_ThatBreaksNoLater_IsFlaggedAllTheSame(string thread, string grade, bool isStronger, bool flagged)
    {
        ProtectionVerdict verdict = Verdict(
            Case(Bolt("bolt", thread, grade, "shank", """{ "shearBolt": { "thread": "M10", "grade": "8.8" } }"""), null));
        Assert.Equal(isStronger, verdict.FittedAgainstSpecified.Answer == FittedComparison.Stronger);
        Assert.Equal(isStronger, verdict.Findings.Any(f => f.Code == ProtectionFindings.FittedStronger));
        Assert.Equal(
            flagged, verdict.Findings.Any(f => f.Code == ProtectionFindings.FittedHigherOrThicker && f.Severity == Severity.Warning));
    }

    [Theory]
    [InlineData(true, """{ "shearBolt": { "thread": "M10", "grade": "8.8" } }""", "specified.shearBolt", "inside the element")]
    [InlineData(false, """{ "shearBolt": { "thread": "M10", "grade": "8.8" } }""", "specified.shearBolt", "state it once")]
    public void Root_BesideSeveralOrAnElementsOwn_IsRefused(bool two, string root, string path, string words)
    {
        string own = two ? Bolt("a", "M10", "8.8", "shank", null) + "," + Bolt("b", "M10", "8.8", "shank", null)
            : Bolt("a", "M10", "8.8", "shank", root);
        CaseError error = Assert.Single(CaseReader.Read(Case(own, "\"specified\": " + root)).Errors);
        Assert.Equal(path, error.Path);
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"slipClutch\": {} }, { \"slipClutch\": {} }", "{ \"slipTorque\": \"600 N.m\" }", "specified.slipTorque")]
    [InlineData("{ \"slipClutch\": {} }, { \"cutOut\": {} }", "{ \"slipTorque\": \"600 N.m\" }", "specified.slipTorque")]
    [InlineData("{ \"shearBolt\": {} }, { \"branch\": \"b\", \"powerShare\": 0.3, \"driveline\": [ { \"shearBolt\": {} } ] }",
        "{ \"shearBolt\": { \"thread\": \"M10\" } }", "specified.shearBolt")]
    [InlineData("{ \"slipClutch\": {} }, { \"shearBolt\": {} }", "{ \"slipTorque\": \"600 N.m\" }", null)]
    public void Root_ForOneOfItsKindOnly_IsRefusedBesideASecond(string elements, string root, string? path) => Assert.Equal(
        path, CaseReader.Read(Case(elements, "\"specified\": " + root)).Errors.SingleOrDefault()?.Path);

    [Fact]
    public void Element_SpecifiedOfAnotherKind_IsRefused() => Assert.Equal(
        "driveline[0].specified",
            Assert.Single(CaseReader.Read(Case(Bolt("a", "M10", "8.8", "shank", """{ "slipTorque": "600 N.m" }"""), null)).Errors).Path);

    private static string Bolt(string name, string thread, string grade, string plane, string? specified) =>
        "{ \"shearBolt\": { \"name\": \"" + name + "\", \"thread\": \"" + thread
        + "\", \"grade\": \"" + grade + "\", \"layout\": \"throughShaft\", \"shaftDiameter\": \"35 mm\", \"planeThrough\": \"" + plane
            + "\", \"hub\": \"free\" }"
        + (specified is null ? " }" : ", \"specified\": " + specified + " }");

    private static string Case(string elements, string? root) => "{ \"driveline\": [ " + elements + " ]"
        + (root is null ? " }" : ", " + root + " }");

    private static ProtectionVerdict Verdict(string json)
    {
        CaseReadResult read = CaseReader.Read(json);
        Assert.Empty(read.Errors);
        return ProtectionCheck.Run(CaseQuestion.Of(read.Case!).Question!);
    }
}
