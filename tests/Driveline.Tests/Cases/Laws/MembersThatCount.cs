using System.Text.Json.Nodes;
using Driveline.Cases.Members;

namespace Driveline.Tests.Cases;

/// <summary>Finds a shipped case in which a member of the case file changes an answer, when it is taken away or put in.</summary>
internal sealed class MembersThatCount
{
    private const int Samples = 16;
    private const int Most = 300;

    private readonly RememberedRuns runs = new();
    private readonly Dictionary<string, CaseAnswers?> answers = new(StringComparer.Ordinal);

    private static IEnumerable<string> Demos => DemoCases.Names.Except(RemovalLaw.Simulated).Concat(RemovalLaw.Simulated);

    public bool Counts(MemberTable table, Member member) => Counts(table, member, false) || Counts(table, member, true);

    /// <summary>
    /// True when facts that hold the member, put at a place of a demo, answer otherwise than without it or with another value.
    /// </summary>
    public bool CountsIn(string demo, string place, string facts, Member member)
    {
        JsonObject root = Put(demo, place, facts);
        string with = root.ToJsonString();
        JsonObject holder = Objects(root, CaseFileMembers.Table).First(o => o.Owner.GetPath().StartsWith(
            "$." + place, StringComparison.Ordinal) && o.Table.Members.Contains(member)).Owner;
        holder.Remove(member.Name);
        return Differ(root.ToJsonString(), with, true) || Enumerable.Range(0, Samples).Any(seed =>
        {
            holder[member.Name] = CaseGenerator.Sample(new Random(seed), member);
            return Differ(root.ToJsonString(), with, true);
        });
    }

    /// <summary>True when a demo answers otherwise with some facts at a place than with others.</summary>
    public bool CountsBetween(string demo, string place, string facts, string others) =>
        Differ(Put(demo, place, facts).ToJsonString(), Put(demo, place, others).ToJsonString(), true);

    private static JsonObject Put(string demo, string place, string facts)
    {
        var root = (JsonObject)JsonNode.Parse(DemoCases.Json(demo))!;
        JsonObject owner = Objects(root, CaseFileMembers.Table).Single(o => o.Owner.GetPath() == "$." + place).Owner;
        foreach ((string name, JsonNode? value) in (JsonObject)JsonNode.Parse(facts)!)
        {
            owner.Remove(name);
            if (value is not null)
            {
                owner.Add(name, value.DeepClone());
            }
        }

        return root;
    }

    private bool Counts(MemberTable table, Member member, bool inAll) => Demos.SelectMany(name => Stated(name, table, member))
        .Concat(Demos.SelectMany(name => Made(name, table, member)))
        .Take(Most)
        .Any(pair => pair.Without != pair.With && Differ(pair.Without, pair.With, inAll));

    private bool Differ(string without, string with, bool inAll) =>
        Answers(without) is { } less && Answers(with) is { } more && less.DifferFrom(more, inAll);

    // A case that states the member, and without it or with another value.
    private static IEnumerable<(string Without, string With)> Stated(string name, MemberTable table, Member member)
    {
        string with = DemoCases.Json(name);
        var root = (JsonObject)JsonNode.Parse(with)!;
        foreach (JsonObject owner in Objects(root, CaseFileMembers.Table).Where(o => o.Table == table).Select(o => o.Owner)
            .Where(o => o.ContainsKey(member.Name)).ToArray())
        {
            JsonNode? value = owner[member.Name]?.DeepClone();
            owner.Remove(member.Name);
            yield return (root.ToJsonString(), with);
            for (int seed = 0; seed < 4; seed++)
            {
                owner[member.Name] = CaseGenerator.Sample(new Random(seed), member);
                yield return (root.ToJsonString(), with);
            }

            owner[member.Name] = value;
        }
    }

    // A case into which an object of the table is put, or another value into the one that is there; what contradicts it goes.
    private static IEnumerable<(string Without, string With)> Made(string name, MemberTable table, Member member)
    {
        string json = DemoCases.Json(name);
        (string Path, MemberTable Table)[] objects =
            [.. Objects((JsonObject)JsonNode.Parse(json)!, CaseFileMembers.Table).Select(o => (o.Owner.GetPath(), o.Table))];
        for (int seed = 0; seed < Samples; seed++)
        {
            foreach ((string path, MemberTable kind) in objects)
            {
                var random = new Random(seed);
                var root = (JsonObject)JsonNode.Parse(json)!;
                JsonObject? place = Place(random, root, path, kind, table, member);
                if (place is null)
                {
                    continue;
                }

                place[member.Name] = CaseGenerator.Sample(random, member);
                if (CaseGenerator.Mended(root) is not null && place.ContainsKey(member.Name) && place.Root == root)
                {
                    string with = root.ToJsonString();
                    place.Remove(member.Name);
                    yield return (root.ToJsonString(), with);
                    place[member.Name] = CaseGenerator.Sample(random, member);
                    yield return (root.ToJsonString(), with);
                }
            }
        }
    }

    private static JsonObject? Place(Random random, JsonObject root, string path, MemberTable kind, MemberTable table, Member member)
    {
        JsonObject owner = Objects(root, CaseFileMembers.Table).First(o => o.Owner.GetPath() == path).Owner;
        Member? holder = kind.Members.FirstOrDefault(m => (m as ObjectMember)?.Table == table || (m as ListMember)?.Table == table);
        if (holder is ObjectMember && CaseGenerator.Sample(random, holder) is JsonObject made)
        {
            owner[holder.Name] = made;
            return made;
        }

        if (holder is ListMember && ((JsonArray)CaseGenerator.Sample(random, holder)).OfType<JsonObject>()
            .FirstOrDefault(o => o.ContainsKey(member.Name)) is { } item)
        {
            if (owner[holder.Name] is not JsonArray items)
            {
                owner[holder.Name] = items = [];
            }

            var put = (JsonObject)item.DeepClone();
            items.Insert(items.Count / 2, put);
            return put;
        }

        return kind == table ? owner : null;
    }

    private static IEnumerable<(JsonObject Owner, MemberTable Table)> Objects(JsonObject owner, MemberTable table) => table.Members
        .SelectMany(m => (m, owner[m.Name]) switch
        {
            (ObjectMember o, JsonObject inner) => Objects(inner, o.Table),
            (ListMember l, JsonArray items) => items.OfType<JsonObject>().SelectMany(i => Objects(i, l.Table)),
            _ => [],
        }).Prepend((owner, table));

    private CaseAnswers? Answers(string json)
    {
        if (!answers.TryGetValue(json, out CaseAnswers? known))
        {
            known = CaseAnswers.Of(json, runs);
            answers.Add(json, known);
        }

        return known;
    }
}
