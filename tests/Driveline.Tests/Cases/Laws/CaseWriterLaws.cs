using System.Text.Json;
using System.Text.Json.Nodes;
using Driveline.Cases;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Cases;

public class CaseWriterLaws
{
    [Law(MaxTest = 100)]
    public Property Case_WrittenAndRead_IsEqual() => Prop.ForAll(CaseGenerator.Case.ToArbitrary(), c =>
    {
        CaseReadResult again = CaseReader.Read(CaseWriter.Write(c));
        return (again.IsRead && again.Case!.Equals(c) && again.Case.GetHashCode() == c.GetHashCode())
            .Label(string.Join("\n", again.Errors));
    });

    [Law(MaxTest = 50)]
    public Property Case_WrittenTwice_GivesTheSameBytes() => Prop.ForAll(
        CaseGenerator.Case.ToArbitrary(),
        c => CaseWriter.Write(c).SequenceEqual(CaseWriter.Write(CaseReader.Read(CaseWriter.Write(c)).Case!)));

    [Law(MaxTest = 50)]
    public Property MemberOrder_Shuffled_GivesTheSameCase() => Prop.ForAll(
        CaseGenerator.Case.SelectMany(_ => Gen.Choose(0, int.MaxValue), (c, seed) => (c, seed)).ToArbitrary(),
        x =>
        {
            JsonNode json = JsonNode.Parse(CaseWriter.ToJson(x.c))!;
            return CaseReader.Read(Shuffled(json, new Random(x.seed)).ToJsonString()).Case?.Equals(x.c) == true;
        });

    [Law(MaxTest = 50)]
    public Property Facts_OneChanged_AreNotEqual() => Prop.ForAll(CaseGenerator.Case.ToArbitrary(), c =>
    {
        CaseFile other = c.With("title", "\"another title\"").Case!;
        string? title = c.Title is null ? null : JsonSerializer.Serialize(c.Title);
        return !c.Equals(other) && c.Equals(other.With("title", title).Case);
    });

    private static JsonNode Shuffled(JsonNode node, Random r) => node switch
    {
        JsonObject o => new JsonObject(o.OrderBy(_ => r.Next()).Select(p => KeyValuePair.Create(p.Key, (JsonNode?)Shuffled(p.Value!, r)))),
        JsonArray a => new JsonArray(a.Select(n => (JsonNode?)Shuffled(n!, r)).ToArray()),
        _ => node.DeepClone(),
    };
}
