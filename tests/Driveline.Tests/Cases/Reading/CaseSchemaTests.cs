using System.Text.Json;
using Driveline.Cases;
using Json.Schema;

namespace Driveline.Tests.Cases;

public class CaseSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(CaseSchema.Json());

    [Fact]
    public void Schema_ItsOwnRules_AreKept()
    {
        using JsonDocument schema = JsonDocument.Parse(CaseSchema.Json());
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.RootElement.GetProperty("$schema").GetString());
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
    }

    [Theory]
    [InlineData(Sample.BrushCutter)]
    [InlineData(Sample.Everything)]
    [InlineData("{}")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "low": "1¾ kN.m", "high": "unbounded" } } }""")]
    public void Case_Good_IsValid(string json)
    {
        Assert.True(CaseReader.Read(json).IsRead);
        Assert.True(IsValid(json));
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("""{ "titel": "x" }""")]
    [InlineData("""{ "tractor": { "ptoPower": 26 } }""")]
    [InlineData("""{ "tractor": { "ptoPower": "26" } }""")]
    [InlineData("""{ "tractor": { "ptoPower": "kW" } }""")]
    [InlineData("""{ "tractor": { "ptoType": 5 } }""")]
    [InlineData("""{ "tractor": { "ptoType": 1.5 } }""")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "high": "2 N.m" } } }""")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "low": "2 N.m", "hi": "2 N.m" } } }""")]
    [InlineData("""{ "implement": { "kind": "hoverMower" } }""")]
    [InlineData("""{ "date": "31.05.2026" }""")]
    [InlineData("""{ "partsComplete": "yes" }""")]
    [InlineData("""{ "driveline": {} }""")]
    [InlineData("""{ "driveline": [ {} ] }""")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "rotor": "b" } ] }""")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "ratio": 2 } ] }""")]
    [InlineData("""{ "driveline": [ { "gearbox": "a", "ratio": 21 } ] }""")]
    [InlineData("""{ "driveline": [ { "gearbox": "a", "efficiency": 0 } ] }""")]
    [InlineData("""{ "driveline": [ { "branch": "b", "driveline": [] } ] }""")]
    [InlineData("""{ "title": "" }""")]
    [InlineData("""{ "title": null }""")]
    public void Case_Bad_IsInvalidAndRefusedByTheReader(string json)
    {
        Assert.False(IsValid(json));
        Assert.False(CaseReader.Read(json).IsRead);
    }

    [Fact]
    public void Case_Generated_IsValid()
    {
        for (int seed = 0; seed < 25; seed++)
        {
            string json = CaseWriter.ToJson(CaseGenerator.Make(new Random(seed)));
            Assert.True(IsValid(json), json);
        }
    }

    private static bool IsValid(string json) => Schema.Evaluate(JsonDocument.Parse(json).RootElement).IsValid;
}
