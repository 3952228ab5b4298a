using System.Text;
using System.Text.Json;
using Driveline.Cases.TorsionModels;
using Driveline.Torsion;
using Json.Schema;

namespace Driveline.Tests.Cases.TorsionModels;

/// <summary>
/// The page and the schema of the model file are the ones the member tables write, and every kind of event is on the page.
/// </summary>
public class ModelDocsTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(TorsionModelSchema.Json());

    public static TheoryData<string> Files
    {
        get
        {
            var data = new TheoryData<string>();
            foreach (string folder in new[] { "cases", Path.Combine("reference", "torsion", "models") })
            {
                foreach (string file in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, folder), "*.model.json")
                    .Order(StringComparer.Ordinal))
                {
                    data.Add(Path.GetRelativePath(AppContext.BaseDirectory, file));
                }
            }

            return data;
        }
    }

    [Fact]
    public void DocsPage_Tables_AreTheMembersOwn() =>
        Assert.EndsWith(Lines(TorsionModelDocs.Markdown()), Page("torsional-model.md"), StringComparison.Ordinal);

    [Fact]
    public void SchemaFile_IsTheMembersOwn() => Assert.Equal(Page("torsional-model.schema.json"), Lines(TorsionModelSchema.Json()));

    [Fact]
    public void DocsPage_EveryKindOfEvent_IsExplained()
    {
        string page = Page("torsional-model.md");
        Assert.All(Enum.GetNames<TransientEventKind>().Where(n => n != nameof(TransientEventKind.NotKnown)),
            n => Assert.Contains("| `" + n + "` |", page, StringComparison.Ordinal));
    }

    [Fact]
    public void DocsPage_Example_IsReadAndRuns()
    {
        string example = Page("torsional-model.md").Split("```json\n")[1].Split("```")[0];
        Assert.True(IsValid(example));
        TransientResult result = TorsionModelReader.Read(example).Model!.Run();
        Assert.True(result.IsComplete);
        Assert.Contains(Enumerable.Range(0, result.EventCount), i => result.Event(i).Part == "stump");
    }

    [Fact]
    public void Schema_ItsOwnRules_AreKept()
    {
        using JsonDocument schema = JsonDocument.Parse(TorsionModelSchema.Json());
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void ModelFile_Kept_IsValidAndRead(string file)
    {
        string json = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, file), Encoding.UTF8);
        Assert.True(IsValid(json));
        TorsionModelReadResult read = TorsionModelReader.Read(json);
        Assert.True(read.IsRead, string.Join("; ", read.Errors));
        Assert.NotNull(read.Model!.Title);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("""{ "duration": 0, "rotors": [] }""")]
    [InlineData("""{ "duration": "1", "rotors": [ { "name": "a", "heldAt": 0 }, { "name": "b", "inertia": 1 } ] }""")]
    [InlineData("""{ "duration": 1, "rotors": [ { "name": "a", "inertia": 0 }, { "name": "b", "inertia": 1 } ] }""")]
    [InlineData("""{ "duration": 1, "rotors": [ { "name": "a", "inertia": 1, "mass": 1 }, { "name": "b", "inertia": 1 } ] }""")]
    [InlineData("""{ "duration": 1, "rotors": [ { "name": "a", "inertia": 1 }, { "name": "b", "inertia": 1 } ],"""
        + """ "shafts": [ { "name": "s", "from": "a", "to": "b", "stiffness": -1 } ] }""")]
    [InlineData("""{ "duration": 1, "rotors": [ { "name": "a", "inertia": 1 }, { "name": "b", "inertia": 1 } ],"""
        + """ "start": { "speeds": { "a": "fast" } } }""")]
    public void Model_Bad_IsInvalidAndRefusedByTheReader(string json)
    {
        Assert.False(IsValid(json));
        Assert.False(TorsionModelReader.Read(json).IsRead);
    }

    private static bool IsValid(string json) => Schema.Evaluate(JsonDocument.Parse(json).RootElement).IsValid;

    private static string Page(string file) => Lines(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", file), Encoding.UTF8));

    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).TrimEnd();
}
