using System.Text.Json;

namespace Driveline.Cli.Tests;

public class ChooseTests
{
    /// <summary>Every fact known; a bolt beside its shaft and a stock with prices.</summary>
    private const string Known = """
        { "title": "Known", "tractor": { "ptoType": 1, "stubDamagedAt": "2600 N.m", "ptoClutch": { "kind": "handLever",
          "capacity": "400 N.m" } },
          "implement": { "kind": "rotaryCutter" },
          "driveline": [
            { "shaft": "drive tube", "damagedAt": "2400 N.m" },
            { "universalJoint": "front joint", "damagedAt": "2600 N.m" },
            { "shearBolt": { "name": "yoke bolt", "thread": "M8", "grade": "8.8", "layout": "tangential", "radius": "50 mm", "planes": 1,
              "standOff": "0 mm",
                "planeThrough": "shank", "hub": "free", "holeFit": "tight", "permittedHole": "6.5 mm" } },
            { "gearbox": "main", "ratio": 1.5, "efficiency": 0.96, "damagedAt": "2500 N.m" },
            { "rotor": "blades", "inertia": "4 kg.m2" } ],
          "partsComplete": true, "stock": "M8, 8.8, 0.4; M8, 10.9, 0.6; M6, 10.9",
          "specified": { "shearBolt": { "thread": "M8", "grade": "8.8" } },
          "work": { "steadyPeak": "500 N.m", "peaksPerHour": 30 } }
        """;

    /// <summary>A slip clutch whose setting the manual names, every fact known.</summary>
    private const string Clutch = """
        { "title": "Clutch", "date": "2026-05-04", "tractor": { "ptoType": 1, "stubDamagedAt": "2600 N.m",
          "ptoClutch": { "kind": "handLever", "capacity": "400 N.m" } },
          "implement": { "kind": "rotaryCutter" },
          "driveline": [
            { "shaft": "drive tube", "damagedAt": "1500 N.m" },
            { "universalJoint": "front joint", "damagedAt": "1700 N.m" },
            { "slipClutch": { "outerDiameter": "165 mm", "innerDiameter": "100 mm", "faces": 4, "facing": "moulded organic lining",
                "springs": { "coil": { "count": 8, "rate": "150 N/mm", "freeLength": "40 mm", "solidLength": "30 mm" } },
                "springLength": "34.2 mm", "threadPitch": "1.5 mm", "surface": "cleanInWork", "runIn": "runIn",
                "lastSlipTest": "2026-05-02", "slipTestResult": "slipped" } },
            { "gearbox": "main", "ratio": 1.5, "efficiency": 0.96, "damagedAt": "2500 N.m" },
            { "rotor": "blades", "inertia": "4 kg.m2" } ],
          "partsComplete": true, "specified": { "slipTorque": "650 N.m" },
          "work": { "steadyPeak": "270 N.m", "peaksPerHour": 40 } }
        """;

    [Fact]
    public void Choose_StandardInput_AnswersInPlainWords()
    {
        CliRun run = CliRun.WithInput(Known, "choose", "-");
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        Assert.StartsWith("Known\n=====\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("yoke bolt", run.Output, StringComparison.Ordinal);
        Assert.Contains("0.40 each", run.Output, StringComparison.Ordinal);
        Assert.Contains("hole 6.50 mm", run.Output, StringComparison.Ordinal);
        Assert.Contains("stop the engine", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', run.Output);
    }

    [Fact]
    public void Choose_Json_HasTheMembersInOrder()
    {
        CliRun run = CliRun.WithInput(Known, "choose", "-", "--json");
        Assert.Equal(0, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal(
            ["contract", "library", "result", "language", "units", "title", "date", "device", "fitted", "specified", "best",
                "isManualsInStock", "manuals", "choices", "leftOut", "settings", "findings",
                "cautions"],
            json.RootElement.EnumerateObject().Select(m => m.Name));
        JsonElement[] choices = [.. json.RootElement.GetProperty("choices").EnumerateArray()];
        Assert.Equal(3, choices.Length);
        Assert.Equal(
            [
                "name", "thread", "grade", "tripTorqueNm", "workMargin", "guardMargin", "tripsPerHour", "passProbability",
                "isStrongerThanFitted",
                "isStrongerThanSpecified", "isFitted", "isSpecified", "isLoose", "leavesRoom", "guards", "quiet", "onePeakTripsProbability",
                    "damagedFirstProbability",
                "fatigueHoursAtLeast", "holeMm", "needsRedrilling", "price", "currency", "sku", "gradeSteps", "cautions",
            ],
            choices[0].EnumerateObject().Select(m => m.Name));
        Assert.Equal(json.RootElement.GetProperty("best").GetString(),
            choices[0].GetProperty("thread").GetString() + " " + choices[0].GetProperty("grade").GetString());
        Assert.All(choices.Where(c => c.GetProperty("isStrongerThanSpecified").GetBoolean()), c => Assert.Contains(
            "caution.onlyTheManual", c.GetProperty("cautions").EnumerateArray().Select(x => x.GetProperty("code").GetString())));
    }

    [Fact]
    public void Choose_NothingKnown_OffersNothingAndSaysWhy()
    {
        CliRun run = CliRun.WithInput(
            "{ \"driveline\": [ { \"shaft\": \"a\" }, { \"shearBolt\": { \"thread\": \"M8\" } } ] }", "choose", "-", "--json");
        Assert.Equal(0, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal(0, json.RootElement.GetProperty("choices").GetArrayLength());
        Assert.Equal("choosing.limitsNotKnown", json.RootElement.GetProperty("findings")[0].GetProperty("code").GetString());
        Assert.NotEqual(0, json.RootElement.GetProperty("cautions").GetArrayLength());
    }

    [Fact]
    public void Choose_NamedBolt_IsChosenForAndAnUnknownNameRefused()
    {
        Assert.Equal(CliRun.WithInput(Known, "choose", "-").Output, CliRun.WithInput(Known, "choose", "-", "--bolt", "yoke bolt").Output);
        Assert.Contains("there are: yoke bolt", CliRun.Refused(Known, "choose", "-", "--bolt", "front bolt"), StringComparison.Ordinal);
    }

    [Fact]
    public void Choose_Units_ChangeTheWordsNotTheData()
    {
        Assert.Contains("lb·ft", CliRun.WithInput(Known, "choose", "-", "--units", "us").Output, StringComparison.Ordinal);
        using JsonDocument si = JsonDocument.Parse(CliRun.WithInput(Known, "choose", "-", "--json").Output);
        using JsonDocument us = JsonDocument.Parse(CliRun.WithInput(Known, "choose", "-", "--json", "--units", "us").Output);
        Assert.Equal(si.RootElement.GetProperty("choices").GetRawText(), us.RootElement.GetProperty("choices").GetRawText());
    }

    [Fact]
    public void Choose_Spanish_HasSpanishMessagesAndTheSameCodes()
    {
        Assert.Contains(
            "primero el que más margen deja", CliRun.WithInput(Known, "choose", "-", "--language", "es").Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.WithInput(SampleCase.Bare, "choose", "-", "--json", "--language", "es").Output);
        Assert.Contains("llave", json.RootElement.GetProperty("cautions")[0].GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "line 1")]
    [InlineData("{ \"stock\": \"M10\", \"driveline\": [ { \"shaft\": \"a\" } ] }", "stock")]
    [InlineData("{ \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10\", \"holeDiameter\": \"6 mm\" } } ] }",
        "driveline[0].shearBolt.holeDiameter")]
    [InlineData("{ \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10\", \"permittedHole\": \"5 N.m\" } } ] }",
        "driveline[0].shearBolt.permittedHole")]
    public void Choose_BadCase_IsRefusedAndNamed(string json, string named) =>
        Assert.Contains(named, CliRun.Refused(json, "choose", "-"), StringComparison.Ordinal);

    [Fact]
    public void Choose_ClutchAlone_HasAWindowBesideNoBolt()
    {
        CliRun run = CliRun.WithInput(Clutch, "choose", "-", "--json");
        Assert.Equal(0, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal(0, json.RootElement.GetProperty("choices").GetArrayLength());
        JsonElement setting = Assert.Single(json.RootElement.GetProperty("settings").EnumerateArray());
        Assert.Equal(["device", "window", "best", "manuals", "findings", "cautions"], setting.EnumerateObject().Select(m => m.Name));
        JsonElement window = setting.GetProperty("window");
        Assert.Equal(["lowNm", "highNm", "springLengthMm", "nutTurns"], window.EnumerateObject().Select(m => m.Name));
        JsonElement best = setting.GetProperty("best");
        Assert.Equal(
            ["slipTorqueNm", "breakawayTorqueNm", "springLengthMm", "nutTurns", "workMargin", "guardMargin"],
                best.EnumerateObject().Select(m => m.Name));
        Assert.InRange(best.GetProperty("slipTorqueNm").GetProperty("expected").GetDouble(), window.GetProperty("lowNm").GetDouble(),
            window.GetProperty("highNm").GetDouble());
        Assert.True(window.GetProperty("springLengthMm").GetProperty("atLow").GetDouble() > window.GetProperty("springLengthMm")
            .GetProperty("atHigh").GetDouble());
        Assert.Equal("choosing.slipAfterSetting", setting.GetProperty("findings")[0].GetProperty("code").GetString());
        Assert.Contains("caution.onlyTheManualsSetting",
            setting.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()));
    }

    [Theory]
    [InlineData("\"slipTestResult\": \"slipped\"", "\"slipTestResult\": \"didNotSlip\"", "choosing.settingNeeds.freeClutch")]
    [InlineData("\"damagedAt\": \"1500 N.m\"", "\"damagedAt\": { \"low\": \"1500 N.m\" }", null)]
    [InlineData(", \"damagedAt\": \"1500 N.m\"", "", "choosing.settingNeeds.part")]
    [InlineData("\"partsComplete\": true", "\"partsComplete\": false", "choosing.settingNeeds.list")]
    [InlineData("\"faces\": 4, ", "", "choosing.settingNeeds.clutch")]
    public void Choose_StuckOrNotKnown_GetsNoSetting(string old, string replacement, string? code)
    {
        Assert.Contains(old, Clutch, StringComparison.Ordinal);
        CliRun run = CliRun.WithInput(Clutch.Replace(old, replacement, StringComparison.Ordinal), "choose", "-", "--json");
        Assert.Equal(0, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement setting = Assert.Single(json.RootElement.GetProperty("settings").EnumerateArray());
        Assert.Equal(code is null, setting.GetProperty("window").ValueKind == JsonValueKind.Object);
        Assert.Equal(code is null, setting.GetProperty("best").ValueKind == JsonValueKind.Object);
        Assert.Contains(code ?? "choosing.slipAfterSetting",
            setting.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()));
    }

    [Theory]
    [InlineData("en", "Set to slip at ", "turns of every nut", "Only the spring length or slip torque in the machine's manual")]
    [InlineData("es", "Ajustado para patinar entre ", "vueltas de cada tuerca",
        "Solo la longitud de resorte o el par de patinado del manual")]
    public void Choose_ClutchAlone_AnswersInPlainWordsWithoutABolt(string language, string lead, string turns, string caution)
    {
        CliRun run = CliRun.WithInput(Clutch, "choose", "-", "--language", language);
        string text = run.Output.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal);
        Assert.Equal(0, run.Code);
        Assert.Contains(lead, text, StringComparison.Ordinal);
        Assert.Contains(turns, text, StringComparison.Ordinal);
        Assert.Contains(caution, text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"[{}]|NaN|∞|[a-z]\.\.", text);
        Assert.DoesNotContain("shear bolt", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Choose_BoltAndClutch_HasBoth()
    {
        string both = Clutch.Replace(
            "{ \"slipClutch\"",
            "{ \"shearBolt\": { \"thread\": \"M8\", \"grade\": \"8.8\", \"layout\": \"tangential\", \"radius\": \"45 mm\", \"planes\": "
                + "1, \"standOff\": \"0 mm\", \"planeThrough\": \"shank\", \"hub\": \"free\", \"holeFit\": \"tight\" } }, { \"slipClutch\"",
                StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.WithInput(both, "choose", "-", "--json").Output);
        Assert.NotEqual(0, json.RootElement.GetProperty("choices").GetArrayLength());
        Assert.Equal(1, json.RootElement.GetProperty("settings").GetArrayLength());
        string text = CliRun.WithInput(both, "choose", "-").Output;
        Assert.Contains("most room first", text, StringComparison.Ordinal);
        Assert.Contains("Setting of the slip clutch", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ }")]
    [InlineData("{ \"driveline\": [ { \"shaft\": \"drive tube\" } ] }")]
    [InlineData("{ \"driveline\": [ { \"cutOut\": { \"kind\": \"cam\" } } ] }")]
    public void Choose_NeitherBoltNorClutch_IsRefusedAndSaysSo(string json) =>
        Assert.Contains("neither a shear bolt nor a slip clutch", CliRun.Refused(json, "choose", "-"), StringComparison.Ordinal);

    [Fact]
    public void Choose_NoCase_IsRefusedWithAHint() =>
        Assert.Contains("--help", CliRun.Refused(string.Empty, "choose"), StringComparison.Ordinal);
}
