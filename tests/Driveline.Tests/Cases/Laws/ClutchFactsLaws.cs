using System.Text.Json.Nodes;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>Random facts about a clutch in a driveline of which all else is known.</summary>
public class ClutchFactsLaws
{
    private const string Machine = """
        {
          "date": "2026-05-04",
          "tractor": { "ptoPower": "26 kW", "ptoType": 1, "ptoSpeed": "540 rpm", "stubDamagedAt": "2600 N.m",
            "ptoClutch": { "kind": "hydraulic", "capacity": "800 N.m" } },
          "implement": { "kind": "rotaryCutter" },
          "driveline": [
            { "shaft": "drive tube", "damagedAt": "1500 N.m" },
            { "slipClutch": {} },
            { "universalJoint": "joint", "damagedAt": "2600 N.m" },
            { "gearbox": "gearbox", "ratio": 1.47, "efficiency": 0.96, "damagedAt": "1800 N.m" },
            { "rotor": "blades", "inertia": "4.2 kg.m2" }
          ],
          "partsComplete": true,
          "work": { "steadyPeak": { "low": "240 N.m", "expected": "300 N.m", "high": "340 N.m" } }
        }
        """;

    [Law(MaxTest = 60)]
    public void RemovingAClutchFact_NeverCreatesAYes(int seed)
    {
        JsonObject clutch = RandomClutch(new Random(seed));
        if (Verdict(clutch) is not { } full)
        {
            return;
        }

        foreach (string[] path in Paths(clutch, []))
        {
            JsonObject without = (JsonObject)clutch.DeepClone();
            JsonObject parent = path[..^1].Aggregate(without, (o, name) => (JsonObject)o[name]!);
            parent.Remove(path[^1]);
            if (Verdict(without) is { } less)
            {
                Assert.False(less.Guards == Answer.Yes && full.Guards != Answer.Yes,
                    "guards became Yes without " + string.Join(".", path) + " of " + clutch);
                Assert.False(less.Quiet == Answer.Yes && full.Quiet != Answer.Yes,
                    "quiet became Yes without " + string.Join(".", path) + " of " + clutch);
            }
        }
    }

    [Law(MaxTest = 60)]
    public void AgeingAClutchWithoutASlipTest_NeverImprovesGuards(int seed, ushort days)
    {
        JsonObject clutch = RandomClutch(new Random(seed));
        DateTime later = new DateTime(2026, 5, 4).AddDays(days % 2000);
        if (Verdict(clutch) is { } young && Verdict(clutch, later) is { } old)
        {
            Assert.True(Rank(old.Guards) <= Rank(young.Guards), "guards went from " + young.Guards + " to " + old.Guards + " by "
                + later.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) + " for " + clutch);
        }
    }

    [Fact]
    public void RandomClutches_ReachEveryAnswer()
    {
        // The laws above would prove nothing over clutches that never have a Yes.
        ProtectionVerdict[] verdicts =
            [.. Enumerable.Range(1, 400).Select(seed => Verdict(RandomClutch(new Random(seed)))).OfType<ProtectionVerdict>()];
        Assert.Contains(verdicts, v => v.Headline == Headline.Protected);
        Assert.Contains(verdicts, v => v.Guards == Answer.No);
        Assert.Contains(verdicts, v => v.Guards == Answer.Maybe);
        Assert.Contains(verdicts, v => v.Guards == Answer.NotKnown);
        Assert.Contains(verdicts, v => v.Quiet == Answer.No);
        Assert.Contains(verdicts, v => v.Guards == Answer.Yes && v.Quiet != Answer.Yes);
    }

    private static int Rank(Answer answer) => answer switch { Answer.Yes => 2, Answer.No => 0, _ => 1 };

    private static ProtectionVerdict? Verdict(JsonObject clutch, DateTime? day = null)
    {
        JsonNode root = JsonNode.Parse(Machine)!;
        root["driveline"]![1]!["slipClutch"] = clutch.DeepClone();
        if (day is { } today)
        {
            root["date"] = today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        }

        CaseReadResult read = CaseReader.Read(root.ToJsonString());
        return read.Case is { } file && CaseQuestion.Of(file).Question is { } question ? ProtectionCheck.Run(question) : null;
    }

    // Most facts are there and most are good, so that a Yes is not rare.
    private static JsonObject RandomClutch(Random r)
    {
        var clutch = new JsonObject();
        void Maybe(string name, Func<JsonNode> value)
        {
            if (r.Next(12) > 0)
            {
                clutch[name] = value();
            }
        }

        string Pick(params string[] words) => words[r.Next(words.Length)];
        string Mm(double low, double high) => FormattableString.Invariant($"{low + (r.NextDouble() * (high - low)):F2} mm");
        Maybe("outerDiameter", () => "165 mm");
        Maybe("innerDiameter", () => Mm(80, 120));
        Maybe("faces", () => 4);
        Maybe("facing", () => Pick("moulded organic lining", "moulded organic lining", "FE", "CC", "sintered metal", "GC"));
        Maybe("springs", () => new JsonObject { ["coil"] = Coil(r, Mm) });
        Maybe("springLength", () => r.Next(8) == 0 ? Mm(26, 44) : Mm(33, 36));
        Maybe("threadPitch", () => "1.5 mm");
        Maybe("wear", () => r.Next(3) == 0 ? Mm(0, 20) : "0 mm");
        Maybe("surface", () => Pick("dry", "dry", "cleanInWork", "dry", "damp", "oiled", "glazed"));
        Maybe("runIn", () => Pick("new", "runIn"));
        bool isTested = r.Next(12) > 0;
        if (isTested)
        {
            clutch["lastSlipTest"] = Pick("2026-05-04", "2026-04-28", "2026-04-28", "2025-05-01");
            Maybe("slipTestResult", () => Pick("slipped", "slipped", "slipped", "slipped", "didNotSlip"));
            string torque = FormattableString.Invariant($"{500 + r.Next(700)} N.m");
            Maybe("leverTorque", () => r.Next(2) == 0 ? torque
                : new JsonObject { ["low"] = "500 N.m", ["expected"] = torque, ["high"] = "1200 N.m" });
        }

        Maybe("statedTorque", () => FormattableString.Invariant($"{400 + r.Next(500)} N.m"));
        Maybe("lastStorage", () => Pick("2026-04-20", "2026-04-20", "2026-05-01", "2025-03-01"));
        Maybe("storedMonths", () => r.Next(20));
        Maybe("climate", () => Pick("moist", "dry"));
        Maybe("plateThickness", () => Mm(2, 12));
        Maybe("slipsPerHour", () => r.Next(3) == 0 ? r.Next(40) : 0);
        Maybe("slipTime", () => FormattableString.Invariant($"{1 + r.Next(5)} s"));
        return clutch;
    }

    private static JsonObject Coil(Random r, Func<double, double, string> mm)
    {
        var coil = new JsonObject { ["count"] = 8, ["freeLength"] = "40 mm" };
        if (r.Next(4) > 0)
        {
            coil["rate"] = "150 N/mm";
            coil["solidLength"] = mm(24, 34);
        }

        if (r.Next(3) == 0)
        {
            coil["wire"] = "5.5 mm";
            coil["meanDiameter"] = "28 mm";
            coil["coils"] = 5;
            coil["ends"] = r.Next(2) == 0 ? "squared" : "squaredGround";
        }

        return coil;
    }

    private static IEnumerable<string[]> Paths(JsonObject node, string[] above) => node.SelectMany(m =>
    {
        string[] path = [.. above, m.Key];
        return m.Value is JsonObject inner && m.Key != "leverTorque" ? Paths(inner, path).Prepend(path) : [path];
    });
}
