using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <summary>The clutch command: its JSON, its text, its exit codes.</summary>
public class ClutchTests
{
    private const string Known = """
        { "date": "2026-05-04", "tractor": { "ptoSpeed": "540 rpm" }, "driveline": [ { "slipClutch": {
            "outerDiameter": "165 mm", "innerDiameter": "100 mm", "faces": 4, "facing": "moulded organic lining",
            "springs": { "coil": { "count": 8, "rate": "150 N/mm", "freeLength": "40 mm", "solidLength": "30 mm" } },
            "springLength": "34.2 mm", "threadPitch": "1.5 mm", "wear": "0 mm", "surface": "dry", "runIn": "runIn",
              "plateThickness": "12 mm" } } ] }
        """;

    [Fact]
    public void Clutch_Json_HasEveryMemberOfTheContract()
    {
        using JsonDocument json = Json(Known);
        JsonElement root = json.RootElement;
        Assert.Equal(645.54, root.GetProperty("slipTorqueNm").GetProperty("expected").GetDouble(), 1e-6);   // 4 × 0.35 × 6960 N × 66.25 mm
        Assert.Equal("unbounded", root.GetProperty("breakawayTorqueNm").GetProperty("high").GetString());
        Assert.Equal(6960, root.GetProperty("clampForceN").GetDouble(), 1e-6);                              // 8 × 150 N/mm × 5.8 mm
        Assert.Equal(34.2, root.GetProperty("springLengthMm").GetDouble(), 1e-9);
        Assert.Equal(4.2, root.GetProperty("travelToSolidMm").GetDouble(), 1e-9);
        Assert.Equal(514.47, root.GetProperty("facingPressureKPa").GetDouble(), 0.005);                     // 6960 N / 0.0135285 m²
        JsonElement heat = root.GetProperty("heat");
        Assert.Equal(36504, heat.GetProperty("powerW").GetDouble(), 1.0);                                   // 645.54 N·m × 56.549 rad/s
        Assert.InRange(heat.GetProperty("timeToLimitS").GetDouble(), 0.1, heat.GetProperty("timeToSmokeS").GetDouble());
        Assert.NotEqual(0, root.GetProperty("findings").GetArrayLength());
        Assert.NotEqual(0, root.GetProperty("cautions").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("nutTurns").ValueKind);
    }

    [Fact]
    public void Clutch_Set_GivesLengthTurnsAndTheirEffect()
    {
        using JsonDocument json = Json(Known, "--set", "650 N.m");
        JsonElement root = json.RootElement;
        double clamp = 650 / (4 * 0.35 * 0.06625);                                                          // T = N · μ · F · r
        Assert.Equal(650, root.GetProperty("slipTorqueNm").GetProperty("expected").GetDouble(), 1e-9);
        Assert.Equal(40 - (clamp / 1200), root.GetProperty("springLengthMm").GetDouble(), 1e-9);
        Assert.Equal(clamp / 1200 / 1.5, root.GetProperty("nutTurns").GetDouble(), 1e-9);
        // 1200 N/mm × 1.5 mm × 4 × 0.35 × 66.25 mm
        Assert.Equal(166.95, root.GetProperty("torquePerTurnNm").GetDouble(), 1e-9);
        Assert.Equal(111.3, root.GetProperty("torquePerMmWearNm").GetDouble(), 1e-9);                       // the same for 1 mm
    }

    [Fact]
    public void Clutch_SetBeyondTheSprings_IsAnAnswer()
    {
        using JsonDocument json = Json(Known, "--set", "3 kN.m");
        Assert.False(json.RootElement.GetProperty("isReached").GetBoolean());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("nutTurns").ValueKind);
    }

    [Fact]
    public void Clutch_NothingKnown_HasNullsAndNoSafeWord()
    {
        using JsonDocument json = Json("{ \"driveline\": [ { \"slipClutch\": {} } ] }");
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("slipTorqueNm").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("heat").GetProperty("powerW").ValueKind);
        CliRun run = CliRun.WithInput("{ \"driveline\": [ { \"slipClutch\": {} } ] }", "clutch", "-");
        Assert.Contains("we can't work out yet at what torque it slips", Line(run.Output), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run-in", "Running in the slip clutch")]
    [InlineData("yearly", "Yearly check of the slip clutch")]
    [InlineData("slip-test", "Scratch a straight line across the edges of all plates")]
    [InlineData("lever", "Measuring and setting the slip torque with a lever")]
    [InlineData("wear", "When the linings are worn out")]
    [InlineData("all", "Storing a machine with a slip clutch")]
    public void Clutch_Steps_AreShownWithTheCautions(string steps, string words)
    {
        CliRun run = CliRun.WithInput(Known, "clutch", "-", "--steps", steps);
        Assert.Equal(0, run.Code);
        Assert.Contains(words, Line(run.Output), StringComparison.Ordinal);
        Assert.Contains("stop the engine, take the key out", Line(run.Output), StringComparison.Ordinal);
        using JsonDocument json = Json(Known, "--steps", steps);
        JsonElement step = json.RootElement.GetProperty("service")[0].GetProperty("steps")[0];
        Assert.NotEqual(0, step.GetProperty("cautions").GetArrayLength());
        Assert.NotEmpty(step.GetProperty("source").GetProperty("document").GetString()!);
    }

    [Fact]
    public void Clutch_NeverSlipped_IsToldToMakeASlipTestFirst()
    {
        string text = Line(CliRun.WithInput(Known, "clutch", "-").Output);
        Assert.Contains("Do not rely on it before a slip test.", text, StringComparison.Ordinal);
        Assert.Contains("Scratch a straight line", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("es", "si", "Par mientras patina", "N·m")]
    [InlineData("en", "us", "Torque while it slips", "lb·ft")]
    public void Clutch_LanguageAndUnits_AreThoseOfChoice(string language, string units, string words, string unit)
    {
        CliRun run = CliRun.WithInput(Known, "clutch", "-", "--language", language, "--units", units);
        Assert.Equal(0, run.Code);
        Assert.Contains(words, run.Output, StringComparison.Ordinal);
        Assert.Contains(unit, run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("has no slip clutch", SampleCase.Bare)]
    [InlineData("--set needs outerDiameter", "{ \"driveline\": [ { \"slipClutch\": {} } ] }", "--set", "650 N.m")]
    [InlineData("--set", Known, "--set", "650 miles")]
    [InlineData("--set must be above 0 N.m", Known, "--set", "0 N.m")]
    [InlineData("There is no slip clutch 'other'; there are: slip clutch.", Known, "--name", "other")]
    [InlineData("'slip-test'", Known, "--steps", "dance")]
    [InlineData("innerDiameter",
        "{ \"driveline\": [ { \"slipClutch\": { \"outerDiameter\": \"100 mm\", \"innerDiameter\": \"120 mm\" } } ] }")]
    public void Clutch_BadInput_IsRefused(string named, string input, params string[] args) =>
        Assert.Contains(named, CliRun.Refused(input, ["clutch", "-", .. args]), StringComparison.Ordinal);

    [Fact]
    public void Assess_ClutchDemos_HaveTheExitCodeOfTheVerdict()
    {
        using JsonDocument json = JsonDocument.Parse(CliRun.Of("demo", "cranley-baler-flywheel", "--json").Output);
        Assert.Equal("SlipClutch", json.RootElement.GetProperty("devices")[0].GetProperty("kind").GetString());
        Assert.Equal("TorqueHeld", json.RootElement.GetProperty("devices")[0].GetProperty("afterTrip").GetString());
        Assert.Contains(
            json.RootElement.GetProperty("findings").EnumerateArray(), f => f.GetProperty("code").GetString() == "protection.actsFirst");
        Assert.Equal(1, CliRun.WithInput(Known, "assess", "-").Code);
    }

    private static JsonDocument Json(string input, params string[] args)
    {
        CliRun run = CliRun.WithInput(input, ["clutch", "-", "--json", .. args]);
        Assert.Equal(0, run.Code);
        return JsonDocument.Parse(run.Output);
    }

    private static string Line(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
