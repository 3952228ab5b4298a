using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Quantities;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Cases;

/// <summary>
/// Makes cases of every shape for the laws, from the rows of the tables: each fact stated or not, each number anywhere in its range
/// and in any unit. Facts that contradict each other are taken away again, as the reader names them.
/// </summary>
internal static class CaseGenerator
{
    private const int Deepest = 6;

    private static readonly string[] Texts =
        ["front", "“quoted” \"name\"", "half \\ slash", "tab\tand line\n", "größe ½ 日本 🚜", "<b>&'", " x "];

    private static readonly string[] Threads = ["1/2-13 UNC", "M10", "M10x1.25", "3/8 in"];

    private static readonly double[] Sizes = [2, 8, 10, 20, 40, 50, 80, 100, 200, 1000];

    public static Gen<CaseFile> Case => Gen.Choose(int.MinValue, int.MaxValue).Select(seed => Make(new Random(seed)));

    public static CaseFile Make(Random r)
    {
        JsonObject root = Object(r, MemberTables.All[0], 0);
        return Mended(root) ?? throw new InvalidOperationException("No good case came of " + root.ToJsonString());
    }

    /// <summary>A value that a member may have by itself.</summary>
    public static JsonNode Sample(Random r, Member member) => Value(r, member, 1);

    /// <summary>The case of a file once all that is wrong is taken away from it; null when nothing good is left.</summary>
    public static CaseFile? Mended(JsonObject root)
    {
        for (int attempt = 0; attempt < 200; attempt++)
        {
            CaseReadResult read = CaseReader.Read(root.ToJsonString());
            if (read.Case is { } good)
            {
                return good;
            }

            foreach (CaseError error in read.Errors)
            {
                TakeAway(root, error.Path);
            }
        }

        return null;
    }

    private static JsonObject Object(Random r, MemberTable table, int depth)
    {
        var made = new JsonObject();
        Member[] naming = [.. table.Members.Where(m => m.NamedKind != ElementKind.NotKnown)];
        Member[] devices = [.. naming.Where(m => m is ObjectMember)];
        Member? named = naming.Length == 0 ? null : Pick(r, r.Next(2) == 0 ? devices : naming);
        foreach (Member member in table.Members)
        {
            bool mayHave = named is null || member == named
                || (member.NamedKind == ElementKind.NotKnown && member.AppliesTo(named.NamedKind));
            if (mayHave && (member == named || member.IsRequired || r.Next(4) < (member is ListMember or ObjectMember ? 3 : 2)))
            {
                made[member.Name] = Value(r, member, depth);
            }
        }

        // A series holds few diameters and no other measure: chance alone would hardly ever make one.
        if (table == DiscSpringsMembers.Table && made.ContainsKey(DiscSpringsMembers.Series.Name))
        {
            foreach (string measure in new[] { "innerDiameter", "thickness", "reducedThickness", "freeHeight" })
            {
                made.Remove(measure);
            }

            made[DiscSpringsMembers.OuterDiameter.Name] = "100 mm";
        }

        return made;
    }

    private static JsonNode Value(Random r, Member member, int depth) => member switch
    {
        ObjectMember o => depth < Deepest ? Object(r, o.Table, depth + 1) : [],
        ListMember l => new JsonArray(
            [.. Enumerable.Range(0, depth < 4 ? r.Next(depth == 0 ? 8 : 3) : 0).Select(_ => (JsonNode)Object(r, l.Table, depth + 2))]),
        FlagMember => r.Next(2) == 0,
        DateMember => Day(r, member == CaseFileMembers.Date),
        TextMember => Pick(r, Texts),
        { Quantity: { } quantity, ValueWords: { } words } => words.Contains("low", StringComparison.Ordinal) && r.Next(3) > 0
            ? Band(r, quantity) : Quantity(r, quantity, r.NextDouble()),
        _ => OfSchema(r, member),
    };

    private static JsonNode Day(Random r, bool isToday)
    {
        DateTime day = new DateTime(isToday ? 2010 : 1990, 1, 1).AddDays(r.Next(5000));
        return day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
    }

    private static JsonObject Band(Random r, QuantityValue quantity)
    {
        double[] at = [.. new[] { r.NextDouble(), r.NextDouble(), r.NextDouble() }.Order()];
        var band = new JsonObject { ["low"] = Quantity(r, quantity, at[0]) };
        switch (r.Next(4))
        {
            case 0:
                break;
            case 1:
                band["high"] = "unbounded";
                break;
            case 2:
                band["high"] = Quantity(r, quantity, at[2]);
                break;
            default:
                band["expected"] = Quantity(r, quantity, at[1]);
                band["high"] = Quantity(r, quantity, at[2]);
                break;
        }

        return band;
    }

    // Spread over the powers of ten of the range, at most six of them below its upper end, in any unit that the reader takes; or a usual
    // size.
    private static JsonNode Quantity(Random r, QuantityValue quantity, double at)
    {
        ValueRange range = quantity.Range;
        double least = Math.Max(range.Low, range.High * 1e-6);
        double si = range.Low < 0 ? range.Low + (at * (range.High - range.Low))
            : least * Math.Pow(range.High / least, 0.001 + (0.998 * at));
        if (range.Dimension == Dimension.Number)
        {
            return r.Next(2) == 0 ? si : FormattableString.Invariant($"{(decimal)(si * 100)} %");
        }

        double[] sizes = [.. Sizes.Select(mm => mm / 1000).Where(range.Contains)];
        if (range.Dimension == Dimension.Length && sizes.Length > 0 && r.Next(2) == 0)
        {
            return QuantityText.Format(Pick(r, sizes), Dimension.Length);
        }

        WrittenUnit unit = Pick(r, [.. WrittenUnits.Of(range.Dimension)]);
        decimal written = (decimal)unit.FromSi(si);
        return FormattableString.Invariant($"{written} {unit.Symbol}");
    }

    // Choices and whole numbers as their schema permits them; a text that names something, from the examples of its row.
    private static JsonNode OfSchema(Random r, Member member)
    {
        JsonObject schema = Schema(member);
        if (schema["items"]?["enum"] is JsonArray each)
        {
            return new JsonArray([.. each.Where(_ => r.Next(2) == 0).Select(name => name!.DeepClone())]);
        }

        JsonNode? permitted = schema["enum"] ?? schema["anyOf"]?[1]?["enum"];
        return schema["minimum"] is { } least ? r.Next((int)least, (int)schema["maximum"]! + 1)
            : permitted is JsonArray names && (schema["anyOf"] is null || r.Next(2) == 0) ? names[r.Next(names.Count)]!.DeepClone()
            : permitted is not null ? 0.01 * Math.Pow(1e7, r.NextDouble())
            : Pick(r, Examples(member));
    }

    private static string[] Examples(Member member) =>
    [
        .. Regex.Matches(member.Doc, "\"([^\"]+)\"").Select(m => m.Groups[1].Value)
            .Concat(member is ParsedMember<Driveline.Fasteners.ScrewThread> ? Threads : Texts)
            .Where(text => IsTaken(member, text)),
    ];

    private static bool IsTaken(Member member, string text)
    {
        byte[] utf8 = JsonSerializer.SerializeToUtf8Bytes(text);
        var walk = new CaseWalk(utf8);
        var reader = new Utf8JsonReader(utf8);
        reader.Read();
        member.Read(ref reader, walk);
        return !walk.HasErrors;
    }

    private static JsonObject Schema(Member member)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            writer.WriteStartObject();
            member.WriteSchema(writer);
            writer.WriteEndObject();
        }

        return (JsonObject)JsonNode.Parse(Encoding.UTF8.GetString(stream.ToArray()))!;
    }

    // What is wrong goes; where something is missing, or the wrong stands there no more, its owner goes.
    private static void TakeAway(JsonObject root, string path)
    {
        string[] steps = path.Replace("[", ".[", StringComparison.Ordinal).Split('.');
        JsonNode? owner = root;
        foreach (string step in steps.Take(steps.Length - 1))
        {
            owner = owner is JsonArray list ? list.ElementAtOrDefault(Index(step)) : (owner as JsonObject)?[step];
        }

        string last = steps[steps.Length - 1];
        if (owner is JsonObject o && !o.Remove(last) && o.Parent is not null)
        {
            TakeAway(root, o.GetPath().Replace("$.", string.Empty, StringComparison.Ordinal));
        }
        else if (owner is JsonArray a && Index(last) < a.Count)
        {
            a.RemoveAt(Index(last));
        }
    }

    private static int Index(string step) => int.Parse(step.Trim('[', ']'), CultureInfo.InvariantCulture);

    private static T Pick<T>(Random r, params T[] items) => items[r.Next(items.Length)];
}
