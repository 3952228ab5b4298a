using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <summary>simulate CASE as a script uses it.</summary>
public class SimulateTests
{
    private const string Rock = """
        {
          "tractor": { "engineSpeed": "2160 rpm", "ptoSpeed": "540 rpm", "flywheelInertia": "0.05 kg.m2",
            "ptoClutch": { "kind": "hydraulic", "capacity": "4000 N.m" } },
          "driveline": [
            { "shaft": "tube", "stiffness": "2000 N.m/rad", "inertia": "0.0001 kg.m2", "damagedAt": { "low": "1000 N.m",
              "expected": "1200 N.m", "high": "1500 N.m" } },
            { "shearBolt": { "name": "bolt", "thread": "5/16-18 UNC", "grade": "SAE 5", "layout": "throughShaft",
              "shaftDiameter": "1 1/4 in", "planeThrough": "shank", "hub": "free" } },
            { "rotor": "blades", "inertia": "3 kg.m2" }
          ],
          "work": { "steadyMean": "100 N.m" },
          "strike": { "kind": "rigid", "what": "blade" }
        }
        """;

    [Fact]
    public void Json_OfAStrike_HasEveryMemberOfTheContract()
    {
        JsonElement json = Json(Rock, "simulate", "-", "--json");
        Assert.Equal("Strike", json.GetProperty("event").GetString());
        Assert.True(json.GetProperty("tripped").GetBoolean());
        Assert.True(json.GetProperty("tripTimeS").GetDouble() is > 0 and < 0.05);
        Assert.True(json.GetProperty("energyErrorRelative").GetDouble() < 1e-7);
        Assert.True(json.GetProperty("slipEnergyJ").GetDouble() >= 0);
        Assert.True(json.GetProperty("slipAngleRad").GetDouble() >= 0);
        JsonElement tube = json.GetProperty("peakTorqueNm").EnumerateArray().First(p => p.GetProperty("name").GetString() == "tube");

        // Engine 0.05·(2160/540)² = 0.8 kg·m², half the shaft 0.00005: 100 + 18π·√(0.80005·2000) = 2362.02 N·m.
        Assert.Equal(2362.02, tube.GetProperty("withoutProtection").GetDouble(), 0.01);
        Assert.True(tube.GetProperty("withProtection").GetDouble() < 1100);
        Assert.Equal(1000, tube.GetProperty("damagedAtNm").GetProperty("low").GetDouble(), 9);
        Assert.Equal(1200, tube.GetProperty("damagedAtNm").GetProperty("expected").GetDouble(), 9);
        Assert.Equal(1500, tube.GetProperty("damagedAtNm").GetProperty("high").GetDouble(), 9);
        Assert.Contains("strike.shouldHaveTripped", Codes(json));
        Assert.NotEmpty(json.GetProperty("cautions").EnumerateArray());
    }

    [Fact]
    public void Json_OfABareCase_NamesWhatIsMissingAndDecidesNothing()
    {
        JsonElement json = Json("{ }", "simulate", "-", "--json");
        Assert.Equal("Engagement", json.GetProperty("event").GetString());
        Assert.Equal(JsonValueKind.Null, json.GetProperty("tripped").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("tripTimeS").ValueKind);
        Assert.False(json.GetProperty("restsOnFacts").GetBoolean());
        Assert.Contains("simulation.speedNotKnown", Codes(json));
    }

    [Fact]
    public void Text_OfABareCase_SaysWhatIsMissing()
    {
        CliRun run = CliRun.WithInput("{ }", "simulate", "-");
        Assert.Equal(0, run.Code);
        Assert.Contains("speed of the PTO is not known", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Event_Chosen_IsSimulated()
    {
        string json = Rock.Replace("\"work\": { ", "\"work\": { \"engagement\": { \"manner\": \"abrupt\" }, ", StringComparison.Ordinal);
        Assert.Equal("Engagement", Json(json, "simulate", "-", "--json", "--event", "engagement").GetProperty("event").GetString());
        Assert.Contains("states no strike", CliRun.Refused("{ }", "simulate", "-", "--event", "strike"), StringComparison.Ordinal);
        Assert.NotEmpty(CliRun.Refused(string.Empty, "simulate", "-", "--event", "storm"));
    }

    [Fact]
    public void CaseAndModel_Together_AreRefused()
    {
        Assert.Contains("one of CASE and --model", CliRun.Refused(Rock, "simulate", "-", "--model", "m.json"), StringComparison.Ordinal);
        Assert.Contains("neither --event nor --out", CliRun.Refused(Rock, "simulate", "--model", "m.json", "--event", "strike"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Refused_BadCase_NamesPathAndRange()
    {
        string bad = CliRun.Refused(Rock.Replace("\"2000 N.m/rad\"", "\"0 N.m/rad\"", StringComparison.Ordinal), "simulate", "-", "--json");
        Assert.Contains("driveline[0].stiffness", bad, StringComparison.Ordinal);
    }

    [Fact]
    public void Out_WritesPictureTableAndReport()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        Assert.Equal(0, CliRun.WithInput(Rock, "simulate", "-", "--out", folder, "--language", "es").Code);
        Assert.Contains("sin protección", File.ReadAllText(Path.Combine(folder, "case.strike.svg")), StringComparison.Ordinal);
        Assert.StartsWith("time [s],", File.ReadAllText(Path.Combine(folder, "case.strike.csv")), StringComparison.Ordinal);
        Assert.Contains("Un golpe en el trabajo", File.ReadAllText(Path.Combine(folder, "case.strike.txt")), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Out_NoCurveToDraw_WritesTheReportAloneAndSaysWhy()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        string pan = Rock.Replace("\"what\": \"blade\"", "\"what\": \"deck\"", StringComparison.Ordinal);
        Assert.Equal(0, CliRun.WithInput(pan, "simulate", "-", "--out", folder).Code);
        Assert.Equal(
            ["case.strike.html", "case.strike.md", "case.strike.txt"],
            Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        Assert.Contains("There is no curve to draw", File.ReadAllText(Path.Combine(folder, "case.strike.txt")), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Out_InUsUnits_WritesTheTableInPoundFeet()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        Assert.Equal(0, CliRun.WithInput(Rock, "simulate", "-", "--out", folder, "--units", "us").Code);
        Assert.Contains("with protection [lbf.ft]", File.ReadAllText(Path.Combine(folder, "case.strike.csv")), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    private static JsonElement Json(string input, params string[] args)
    {
        CliRun run = CliRun.WithInput(input, args);
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        return JsonDocument.Parse(run.Output).RootElement;
    }

    private static string[] Codes(JsonElement json) =>
        [.. json.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()!)];
}
