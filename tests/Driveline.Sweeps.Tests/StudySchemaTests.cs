using System.Text.Json;
using Driveline.Sweeps.Reading;
using Json.Schema;

namespace Driveline.Sweeps.Tests;

/// <summary>The schema and the tables of the page are the ones that the rows of the reader write.</summary>
public class StudySchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(StudySchema.Json());

    [Fact]
    public void SchemaFile_IsTheRowsOwn() => Assert.Equal(Page("study-file.schema.json"), Lines(StudySchema.Json()));

    [Fact]
    public void DocsPage_Tables_AreTheRowsOwn() =>
        Assert.EndsWith(Lines(StudyDocs.Markdown()), Page("studies.md"), StringComparison.Ordinal);

    [Theory]
    [InlineData("thornbeck-scatter")]
    [InlineData("ravensmoor-how-often")]
    public void Study_OfTheRepository_IsValid(string name) =>
        Assert.True(IsValid(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "cases", name + ".study.json"))));

    [Theory]
    [InlineData("assess.verdict", true)]
    [InlineData("shearBolt.breakTorqueNm.low", true)]
    [InlineData("shearBolt.breakTorqueNm.low[shear bolt]", true)]
    [InlineData("simulate.peakTorqueNm[main gearbox]", true)]
    [InlineData("simulate.peakTorqueNm", false)]
    [InlineData("assess.verdict[main gearbox]", false)]
    [InlineData("assess.verdct", false)]
    public void Schema_OfAnOutput_KnowsItsName(string output, bool isValid) => Assert.Equal(
        isValid,
        IsValid(TestStudies.Json("\"design\": { \"kind\": \"sobol\", \"n\": 16 }",
            "{ \"path\": \"work.steadyPeak\", \"uniform\": [\"300 N.m\", \"340 N.m\"] }", "\"" + output + "\"")));

    [Theory]
    [InlineData("\"design\": { \"kind\": \"sobl\", \"n\": 16 }")]
    [InlineData("\"design\": { \"kind\": \"sobol\" }")]
    [InlineData("\"desing\": { \"kind\": \"sobol\", \"n\": 16 }")]
    public void Schema_OfABadDesign_RefusesIt(string more) => Assert.False(IsValid(TestStudies.Json(
        more, "{ \"path\": \"work.steadyPeak\", \"uniform\": [\"300 N.m\", \"340 N.m\"] }", "\"assess.verdict\"")));

    private static bool IsValid(string json) => Schema.Evaluate(JsonDocument.Parse(json).RootElement).IsValid;

    private static string Page(string name) => Lines(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", name)));

    private static string Lines(string text) => text.ReplaceLineEndings("\n").Trim();
}
