using System.Text.Json.Nodes;

namespace Driveline.Tests.Cases;

/// <summary>Case files with one path less: every member and every element in turn.</summary>
internal static class CaseRemovals
{
    public static IEnumerable<(string Path, string Json)> WithOneLess(string json)
    {
        JsonNode root = JsonNode.Parse(json)!;
        foreach (string path in Paths(root, "$"))
        {
            JsonNode copy = JsonNode.Parse(json)!;
            JsonNode node = Paths(copy, "$").Zip(Nodes(copy)).First(p => p.First == path).Second;
            if (node.Parent is JsonObject parent)
            {
                parent.Remove(node.GetPropertyName());
            }
            else if (node.Parent is JsonArray array)
            {
                array.RemoveAt(node.GetElementIndex());
            }

            yield return (path, copy.ToJsonString());
        }
    }

    private static IEnumerable<string> Paths(JsonNode node, string path) => node switch
    {
        JsonObject members => members.Where(m => m.Value is not null)
            .SelectMany(m => Paths(m.Value!, path + "." + m.Key).Prepend(path + "." + m.Key)),
        JsonArray items => items.SelectMany((item, k) => Paths(item!, path + "[" + k + "]").Prepend(path + "[" + k + "]")),
        _ => [],
    };

    private static IEnumerable<JsonNode> Nodes(JsonNode node) => node switch
    {
        JsonObject members => members.Where(m => m.Value is not null).SelectMany(m => Nodes(m.Value!).Prepend(m.Value!)),
        JsonArray items => items.SelectMany(item => Nodes(item!).Prepend(item!)),
        _ => [],
    };
}
