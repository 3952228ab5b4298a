using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <summary>simulate --model: hand-worked answers, every kind of bad input, limits.</summary>
public class SimulateModelTests
{
    private const string Two = """ "duration": 1, "rotors": [ { "name": "a", "inertia": 1 }, { "name": "b", "inertia": 2 } ] """;
    private const string Joined = Two + """, "shafts": [ { "name": "s", "from": "a", "to": "b", "stiffness": 100 } ] """;

    [Fact]
    public void StoppedRotor_Json_IsTheClosedForm()
    {
        using JsonDocument json = Answer(File("stopped-rotor"));
        JsonElement peak = Named(json.RootElement.GetProperty("peaks"), "element", "shaft");
        Near(1264.9110640673518, peak.GetProperty("torqueNm"), "ω·√(J·k) = 40·√1000");
        Near(1264.9110640673518, peak.GetProperty("springTorqueNm"), "no damper: the same");
        Near(0.024836470664490255, peak.GetProperty("timeS"), "(π/2)·√(J/k) = (π/2)·√(1/4000)");
        Assert.Empty(json.RootElement.GetProperty("events").EnumerateArray());
        Assert.Empty(json.RootElement.GetProperty("findings").EnumerateArray());
        Near(400, json.RootElement.GetProperty("energy").GetProperty("startJ"), "½·0.5·40²");
    }

    [Fact]
    public void BreakBetweenTwo_Json_IsTheClosedForm()
    {
        using JsonDocument json = Answer(File("break-between-two"));
        JsonElement broke = Assert.Single(json.RootElement.GetProperty("events").EnumerateArray());
        Assert.Equal("Broke", broke.GetProperty("kind").GetString());
        Assert.Equal("bolt", broke.GetProperty("element").GetString());
        Near(0.005305740094832914, broke.GetProperty("timeS"), "asin(100/178.8854382)/111.8033989");
        Near(100, Named(json.RootElement.GetProperty("peaks"), "element", "bolt").GetProperty("torqueNm"), "its capacity");
        JsonElement end = json.RootElement.GetProperty("finalState");
        Near(29.6583123951777, Named(end.GetProperty("rotors"), "name", "driving").GetProperty("speedRadS"),
            "28 + 0.2·10·√(1 − (100/178.885)²)");
        Near(21.3667504192892, Named(end.GetProperty("rotors"), "name", "driven").GetProperty("speedRadS"),
            "28 − 0.8·10·√(1 − (100/178.885)²)");
        Assert.Equal(0, Named(end.GetProperty("shafts"), "name", "bolt").GetProperty("torqueNm").GetDouble());
        Near(2.5, json.RootElement.GetProperty("energy").GetProperty("slipJ"), "½·100²/2000, set free by the break");
    }

    [Fact]
    public void Damper_AtContact_CountsInTheTorqueAndNotInTheSpring()
    {
        // a 1 kg·m² at 10 rad/s meets k 400 N·m/rad, c 40 N·m·s/rad: critically damped, ω₀ = 20 rad/s. T(0) = c·ω = 400 N·m.
        // δ = 10·t·e^(−20t): greatest at 1/20 s, k·δ = 400·10·0.05/e = 73.5758882 N·m. T = (400 − 4000·t)·e^(−20t): falls from the start.
        using JsonDocument json = Answer(Input("""
            "duration": 0.05, "rotors": [ { "name": "a", "inertia": 1 }, { "name": "far", "heldAt": 10 } ],
            "shafts": [ { "name": "s", "from": "far", "to": "a", "stiffness": 1e-9 } ],
            "obstacles": [ { "name": "o", "rotor": "a", "kind": "ties", "stiffness": 400, "damping": 40 } ], "start": { "speed": 10 }
            """));
        JsonElement peak = Named(json.RootElement.GetProperty("peaks"), "element", "o");
        Near(400, peak.GetProperty("torqueNm"), "c·ω");
        Assert.Equal(0, peak.GetProperty("timeS").GetDouble());
        Near(200 / Math.E, peak.GetProperty("springTorqueNm"), "k·ω/(ω₀·e)");
        Near(0.05, peak.GetProperty("springTimeS"), "1/ω₀", 1e-6);
    }

    [Theory]
    [InlineData("pushes", 0, 1)]
    [InlineData("ties", 20, 0)]
    public void Obstacle_AfterHalfAPeriod_PullsOnlyWhenItTies(string kind, double reverseNm, int parted)
    {
        // b 1 kg·m² at 2 rad/s on k 100 N·m/rad: peak 2·√100 = 20 N·m each way if it ties; half a period is π/10 s.
        using JsonDocument json = Answer(Input($$"""
            "duration": 0.6, "rotors": [ { "name": "b", "inertia": 1 }, { "name": "far", "heldAt": 0 } ],
            "shafts": [ { "name": "s", "from": "b", "to": "far", "stiffness": 1e-9 } ],
            "obstacles": [ { "name": "o", "rotor": "b", "kind": "{{kind}}", "stiffness": 100 } ], "start": { "speeds": { "b": 2 } }
            """));
        JsonElement peak = Named(json.RootElement.GetProperty("peaks"), "element", "o");
        Near(20, peak.GetProperty("forwardTorqueNm"), "ω·√(J·k)");
        Assert.Equal(reverseNm, peak.GetProperty("reverseTorqueNm").GetDouble(), 1e-8);
        Assert.Equal(
            parted, json.RootElement.GetProperty("events").EnumerateArray().Count(e => e.GetProperty("kind").GetString() == "FacesParted"));
    }

    [Fact]
    public void DriveLine_WithViscousLoad_SettlesWhereTheyMeet()
    {
        // 300 + 20·(56 − ω) = 5·ω: ω = 1420/25 = 56.8 rad/s; the shaft carries 5·56.8 = 284 N·m.
        using JsonDocument json = Answer(Input("""
            "duration": 10, "rotors": [ { "name": "a", "inertia": 1 }, { "name": "b", "inertia": 2 } ],
            "shafts": [ { "name": "s", "from": "a", "to": "b", "stiffness": 4000, "damping": 10 } ],
            "drive": { "rotor": "a", "torque": "300 N.m", "speed": 56, "slope": 20 }, "loads": [ { "rotor": "b", "viscous": 5 } ]
            """));
        JsonElement end = json.RootElement.GetProperty("finalState");
        Near(56.8, Named(end.GetProperty("rotors"), "name", "b").GetProperty("speedRadS"), "1420/25");
        Near(284, Named(end.GetProperty("shafts"), "name", "s").GetProperty("torqueNm"), "5·56.8");
    }

    [Theory]
    [InlineData("", "line 1")]
    [InlineData("[]", "object")]
    [InlineData("{ \"duration\": NaN }", "NaN")]
    [InlineData("{}", "duration")]
    [InlineData("{" + Joined + ", \"colour\": 1 }", "colour")]
    [InlineData("{" + Joined + ", \"duration\": 2 }", "stated twice")]
    [InlineData("{" + Two + "}", "\"b\" is detached")]
    [InlineData("{ \"duration\": 0, \"rotors\": [ { \"name\": \"a\", \"inertia\": 1 } ] }", "at least 2 rotors; got 1")]
    [InlineData("{ \"duration\": -1, \"rotors\": [] }", "duration (line 1, column 15): This must be above 0 s")]
    [InlineData("{ \"duration\": 1e999, \"rotors\": [] }", "duration")]
    [InlineData("{ \"duration\": \"NaN s\", \"rotors\": [] }", "not a finite number")]
    [InlineData("{ \"duration\": \"5\", \"rotors\": [] }", "has no unit")]
    [InlineData("{ \"duration\": \"5 N.m\", \"rotors\": [] }", "duration")]
    [InlineData("{ \"duration\": 1, \"rotors\": [ { \"name\": \"a\", \"inertia\": 0 }, { \"name\": \"b\", \"inertia\": -1 } ] }",
        "rotors[1].inertia")]
    [InlineData("{ \"duration\": 1, \"rotors\": [ { \"name\": \"a\" }, { \"name\": \"b\", \"inertia\": 1, \"heldAt\": 2 } ] }",
        "exclude each other")]
    [InlineData("{ \"duration\": 1, \"rotors\": [ { \"name\": \"a\", \"heldAt\": 0 }, { \"name\": \"b\", \"heldAt\": 0 } ] }",
        "free to move")]
    [InlineData("{ \"duration\": 1, \"rotors\": [ { \"name\": \"a\", \"inertia\": 1 }, { \"name\": \"a\", \"inertia\": 1 } ] }",
        "rotors[1].name")]
    [InlineData("{" + Two + ", \"shafts\": [ { \"name\": \"s\", \"from\": \"a\", \"to\": \"b\", \"stiffness\": -5 } ] }",
        "shafts[0].stiffness")]
    [InlineData("{" + Two + ", \"shafts\": [ { \"name\": \"s\", \"from\": \"a\", \"to\": \"b\", \"stiffness\": 1e400 } ] }",
        "shafts[0].stiffness")]
    [InlineData("{" + Two + ", \"shafts\": [ { \"name\": \"s\", \"from\": \"a\", \"to\": \"b\", \"stiffness\": \"infinite\" } ] }",
        "shafts[0].stiffness")]
    [InlineData("{" + Two + ", \"shafts\": [ { \"name\": \"s\", \"from\": \"a\", \"to\": \"b\" } ] }", "\"stiffness\" must be stated")]
    [InlineData("{" + Two + ", \"shafts\": [ { \"name\": \"s\", \"from\": \"a\", \"to\": \"bb\", \"stiffness\": 5 } ] }",
        "There is no rotor \"bb\"; there are: a, b")]
    [InlineData("{" + Two + ", \"shafts\": [ { \"name\": \"s\", \"from\": \"a\", \"to\": \"a\", \"stiffness\": 5 } ] }", "two rotors")]
    [InlineData("{" + Joined + ", \"couplings\": [ { \"name\": \"c\", \"from\": \"a\", \"to\": \"b\", \"slipsAt\": 5 } ] }",
        "closes a ring")]
    [InlineData("{" + Joined + ", \"couplings\": [ { \"name\": \"c\", \"from\": \"a\", \"to\": \"b\" } ] }",
        "needs one of breaksAt, slipsAt")]
    [InlineData("{" + Joined + ", \"loads\": [ { \"rotor\": \"x\", \"viscous\": 1 } ] }", "loads[0].rotor")]
    [InlineData("{" + Joined + ", \"loads\": [ { \"rotor\": \"a\", \"viscous\": 1, \"torque\": 1 } ] }", "loads[0].torque")]
    [InlineData("{" + Joined + ", \"loads\": [ { \"rotor\": \"a\", \"viscous\": 1, \"from\": 1 } ] }", "means nothing without")]
    [InlineData("{" + Joined + ", \"drive\": { \"rotor\": \"c\", \"torque\": 1 } }", "drive.rotor")]
    [InlineData("{" + Joined + ", \"drive\": { \"rotor\": \"a\", \"torque\": 1, \"slope\": -1 } }", "drive.slope")]
    [InlineData("{" + Joined + ", \"drive\": { \"name\": \"s\", \"rotor\": \"a\", \"torque\": 1 } }", "the name of the drive already")]
    [InlineData("{" + Joined + ", \"drive\": { \"rotor\": \"a\", \"torque\": 1, \"least\": 5, \"most\": 5 } }", "below \\\"most\\\"")]
    [InlineData("{" + Joined + ", \"obstacles\": [ { \"rotor\": \"a\" } ] }", "obstacles[0].stiffness")]
    [InlineData("{" + Joined + ", \"obstacles\": [ { \"rotor\": \"a\", \"kind\": \"jams\", \"stiffness\": 5 } ] }", "without give")]
    [InlineData("{" + Joined + ", \"obstacles\": [ { \"rotor\": \"a\", \"stiffness\": 5, \"at\": -1 } ] }", "obstacles[0].at")]
    [InlineData("{" + Joined + ", \"start\": { \"speeds\": { \"c\": 1 } } }", "start.speeds.c")]
    [InlineData("{" + Joined + ", \"start\": { \"speeds\": { \"a\": 1, \"a\": 2 } } }", "stated twice")]
    [InlineData("{" + Joined + ", \"start\": { \"torques\": { \"a\": 1 } } }", "There is no shaft \"a\"")]
    public void BadModel_IsRefusedAndNamed(string json, string named) =>
        Assert.Contains(named.Replace("\\\"", "\"", StringComparison.Ordinal), CliRun.Refused(json, "simulate", "--model", "-", "--json"),
            StringComparison.Ordinal);

    [Fact]
    public void BadModel_SeveralMistakes_AreAllListed()
    {
        string error = CliRun.Refused(
            """{ "duration": 0, "rotors": [ { "name": "a", "inertia": 0 }, { "name": "b", "inertia": "2 N" } ],"""
                + """ "shafts": [ { "name": "s", "from": "a", "to": "c", "stiffness": -1, "twist": 1 } ] }""",
            "simulate", "--model", "-");
        Assert.Equal(6, error.TrimEnd().Split('\n').Length);
    }

    [Fact]
    public void Simulate_NoModelFolderOrNoFile_IsRefused()
    {
        Assert.Contains("--model", CliRun.Refused(string.Empty, "simulate"), StringComparison.Ordinal);
        Assert.Contains(
            "There is no file", CliRun.Refused(string.Empty, "simulate", "--model", "none.model.json"), StringComparison.Ordinal);
        Assert.Contains("is a folder; a torsional model is wanted",
            CliRun.Refused(string.Empty, "simulate", "--model", AppContext.BaseDirectory), StringComparison.Ordinal);
    }

    [Fact]
    public void StiffLineOfLongDuration_RunsToItsEnd()
    {
        using JsonDocument json = Answer(Input("""
            "duration": 1000000, "rotors": [ { "name": "a", "inertia": 1e-9 }, { "name": "b", "inertia": 1 } ],
            "shafts": [ { "name": "s", "from": "a", "to": "b", "stiffness": 1e9, "damping": 1e-9 } ], "start": { "speeds": { "a": 1 } }
            """));
        Assert.True(json.RootElement.GetProperty("isComplete").GetBoolean());
    }

    [Fact]
    public void ManyEvents_StopAndSaySo()
    {
        // Play 0.02 rad, free rattling: two contacts each few milliseconds for 1000 s are more than 10 000.
        using JsonDocument json = Answer(Input("""
            "duration": 1000, "rotors": [ { "name": "a", "inertia": 1 }, { "name": "b", "inertia": 1 } ],
            "shafts": [ { "name": "s", "from": "a", "to": "b", "stiffness": 100000, "backlash": 0.02 } ], "start": { "speeds": { "a": 5 } }
            """));
        Assert.False(json.RootElement.GetProperty("isComplete").GetBoolean());
        Assert.Equal("torsion.tooManyEvents", json.RootElement.GetProperty("findings")[0].GetProperty("code").GetString());
    }

    [Fact]
    public void RigidStop_StruckAtSpeed_HasNoBoundAndAFinding()
    {
        using JsonDocument json = Answer("{" + Joined
            + """, "obstacles": [ { "name": "wall", "rotor": "b", "kind": "stops", "at": 0.1 } ], "start": { "speed": 3 } }""");
        JsonElement peak = Named(json.RootElement.GetProperty("peaks"), "element", "wall");
        Assert.Equal("unbounded", peak.GetProperty("torqueNm").GetString());
        Assert.Equal(JsonValueKind.Null, peak.GetProperty("springTorqueNm").ValueKind);
        Assert.Equal("torsion.rigidBlow", json.RootElement.GetProperty("findings")[0].GetProperty("code").GetString());
        Near(9, json.RootElement.GetProperty("energy").GetProperty("impactJ"), "½·2·3²");
    }

    [Fact]
    public void Text_EnglishAndSpanish_NameTheBreakAndThePeak()
    {
        CliRun english = CliRun.Of("simulate", "--model", Path("break-between-two"));
        Assert.Equal(0, english.Code);
        Assert.StartsWith("A coupling that breaks between two inertias\n", english.Output, StringComparison.Ordinal);
        Assert.Contains("5.31 ms  broke  bolt", english.Output.Replace("   ", "  ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("100 N·m", english.Output, StringComparison.Ordinal);
        CliRun spanish = CliRun.Of("simulate", "--model", Path("break-between-two"), "--language", "es");
        Assert.Contains("se rompió", spanish.Output, StringComparison.Ordinal);
        Assert.Contains(
            "lb·ft", CliRun.Of("simulate", "--model", Path("stopped-rotor"), "--units", "us").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void SchemaOfTheModel_IsJsonSchema()
    {
        using JsonDocument json = JsonDocument.Parse(CliRun.Of("schema", "--model").Output);
        Assert.Equal("Driveline torsional model", json.RootElement.GetProperty("title").GetString());
    }

    private static string Path(string name) => System.IO.Path.Combine(AppContext.BaseDirectory, "cases", name + ".model.json");

    private static string File(string name) => System.IO.File.ReadAllText(Path(name));

    private static string Input(string members) => "{" + members + "}";

    private static JsonDocument Answer(string model)
    {
        CliRun run = CliRun.WithInput(model, "simulate", "--model", "-", "--json");
        Assert.True(run.Code == 0, run.Error);
        Assert.Empty(run.Error);
        return JsonDocument.Parse(run.Output);
    }

    private static JsonElement Named(JsonElement list, string member, string name) => list.EnumerateArray()
        .Single(e => e.GetProperty(member).GetString() == name);

    private static void Near(double expected, JsonElement actual, string working, double relative = 1e-9) =>
        Assert.True(Math.Abs(actual.GetDouble() - expected) <= relative * Math.Abs(expected),
            FormattableString.Invariant($"expected {expected:R}, got {actual.GetDouble():R}; {working}"));
}
