using System.Text;
using System.Text.Json.Nodes;
using Driveline.Cases;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Cases;

/// <summary>Whatever is done to a good case file, reading it gives a case or errors, never an exception, and soon.</summary>
public class CaseReaderLaws
{
    private static readonly string[] Values =
    [
        "null", "true", "-1", "0", "1e999", "\"\"", "\"x\"", "\"5 N.m\"", "\"12 kW\"", "\"NaN\"", "[]", "[[]]", "{}", "{\"low\":1}",
        "{\"low\":\"1 N.m\",\"expected\":null}", "[{\"shaft\":\"a\"}]", "{\"shaft\":{}}", "\"unbounded\"", "123456789012345678901234567890",
    ];

    [Law(MaxTest = 300)]
    public Property Members_DroppedRenamedOrRetyped_GiveACaseOrErrors() => Prop.ForAll(
        Gen.Choose(0, int.MaxValue).ToArbitrary(),
        seed =>
        {
            var r = new Random(seed);
            string json = JsonNode.Parse(Sample.Everything)!.ToJsonString();
            for (int i = r.Next(1, 4); i > 0; i--)
            {
                json = Mutated(JsonNode.Parse(json)!, r);
            }

            return IsAnswered(Encoding.UTF8.GetBytes(json));
        });

    [Law(MaxTest = 300)]
    public Property Bytes_Changed_GiveACaseOrErrors() => Prop.ForAll(
        Gen.Choose(0, int.MaxValue).ToArbitrary(),
        seed =>
        {
            var r = new Random(seed);
            byte[] utf8 = Encoding.UTF8.GetBytes(Sample.Everything);
            for (int i = r.Next(1, 6); i > 0; i--)
            {
                int at = r.Next(utf8.Length);
                utf8 = r.Next(4) switch
                {
                    0 => utf8.Take(at).ToArray(),
                    1 => [.. utf8.Take(at), .. utf8.Skip(Math.Min(utf8.Length, at + r.Next(20)))],
                    2 => [.. utf8.Take(at), (byte)r.Next(256), .. utf8.Skip(at)],
                    _ => [.. utf8.Take(at), .. "{}[]\",:\\/0-e"u8.Slice(r.Next(12), 1).ToArray(), .. utf8.Skip(at + 1)],
                };
                if (utf8.Length == 0)
                {
                    break;
                }
            }

            return IsAnswered(utf8);
        });

    [Law(MaxTest = 200)]
    public Property Noise_Alone_GivesErrors() => Prop.ForAll(ArbMap.Default.GeneratorFor<byte[]>().ToArbitrary(), IsAnswered);

    private static bool IsAnswered(byte[] utf8)
    {
        CaseReadResult result = CaseReaderTests.Timed(() => CaseReader.Read(utf8));
        bool isConsistent = result.IsRead == (result.Errors.Count == 0)
            && result.Errors.All(e => e.Line >= 1 && e.Column >= 1 && e.Kind != CaseErrorKind.NotKnown && e.Message.Length > 0);
        return isConsistent && (!result.IsRead || CaseReader.Read(CaseWriter.Write(result.Case!)).Case!.Equals(result.Case));
    }

    private static string Mutated(JsonNode root, Random r)
    {
        var owners = new List<JsonObject>();
        Collect(root, owners);
        JsonObject owner = owners[r.Next(owners.Count)];
        if (owner.Count == 0)
        {
            return root.ToJsonString();
        }

        string name = owner.ElementAt(r.Next(owner.Count)).Key;
        JsonNode? value = owner[name];
        switch (r.Next(3))
        {
            case 0:
                owner.Remove(name);
                break;
            case 1:
                owner.Remove(name);
                string renamed = name.Length > 1 ? name.Remove(r.Next(name.Length), 1) : name + "x";
                owner[renamed] = value?.DeepClone();
                break;
            default:
                owner[name] = JsonValue.Create("@@");
                string text = Values[r.Next(Values.Length)];
                int at = root.ToJsonString().IndexOf("\"@@\"", StringComparison.Ordinal);
                return root.ToJsonString().Remove(at, 4).Insert(at, text);
        }

        return root.ToJsonString();
    }

    private static void Collect(JsonNode? node, List<JsonObject> owners)
    {
        if (node is JsonObject o)
        {
            owners.Add(o);
            foreach (KeyValuePair<string, JsonNode?> member in o)
            {
                Collect(member.Value, owners);
            }
        }

        foreach (JsonNode? item in node as JsonArray ?? [])
        {
            Collect(item, owners);
        }
    }
}
