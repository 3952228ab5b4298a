using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Protection;
using Driveline.Provenance;

namespace Driveline.Tests.Cases;

public class CaseSourceTests
{
    private const string Sourced = """
        {
          "$schema": "case-file.schema.json", "format": 0,
          "driveline": [ { "shaft": "tube", "damagedAt": { "low": "1900 N.m", "high": "1900 N.m", "source": "parts book, page 12" } } ]
        }
        """;

    [Fact]
    public void Band_WithASource_HasItAsItsBasisUpToTheResult()
    {
        ProtectionVerdict verdict = CaseAssessment.Of(Sourced).Verdict();
        Assert.Equal(Basis.Given("parts book, page 12"), verdict.WeakestPart!.DamagedAtPto!.WeakestBasis);
        Assert.Contains("\"document\": \"parts book, page 12\"", VerdictJson.Of(verdict).ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void Band_WithASource_IsWrittenAndReadBackTheSame()
    {
        CaseFile file = CaseReader.Read(Sourced).Case!;
        string written = CaseWriter.ToJson(file);
        Assert.Contains("\"source\": \"parts book, page 12\"", written, StringComparison.Ordinal);
        Assert.Contains("\"$schema\": \"case-file.schema.json\"", written, StringComparison.Ordinal);
        Assert.Equal(file, CaseReader.Read(written).Case);
    }

    [Theory]
    [InlineData("""{ "format": 2 }""", "format")]
    [InlineData("""{ "$schema": "" }""", "$schema")]
    [InlineData("""{ "work": { "steadyPeak": { "low": "1 N.m", "source": " " } } }""", "work.steadyPeak.source")]
    [InlineData("""{ "work": { "steadyPeak": { "low": "1 N.m", "source": 3 } } }""", "work.steadyPeak.source")]
    public void Member_Bad_IsRefusedAtItsPath(string json, string path) =>
        Assert.Equal(path, Assert.Single(CaseReader.Read(json).Errors).Path);

    [Fact]
    public void Verdict_ListsAskedAgain_AreTheSameLists()
    {
        ProtectionVerdict verdict = CaseAssessment.Of(Sample.BrushCutter).Verdict();
        Assert.Same(verdict.Findings, verdict.Findings);
        Assert.Same(verdict.MeasureNext, verdict.MeasureNext);
        Assert.Same(verdict.NeighbourGrades, verdict.NeighbourGrades);
        Assert.Same(verdict.Ladder, verdict.Ladder);
        Assert.Same(verdict.Standing, verdict.Standing);
    }
}
