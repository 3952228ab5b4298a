using System.Text.Json;

namespace Driveline.Cli.Tests;

public class ChooseTests
{
    /// <summary>Every fact known; a bolt beside its shaft and a stock with prices.</summary>
    private const string Known = """
        { "title": "Known", "tractor": { "ptoType": 1, "stubDamagedAt": "2600 N.m", "ptoClutch": { "kind": "handLever", "capacity": "400 N.m" } },
          "implement": { "kind": "rotaryCutter" },
          "driveline": [
            { "shaft": "drive tube", "damagedAt": "2400 N.m" },
            { "shearBolt": { "name": "yoke bolt", "thread": "M8", "grade": "8.8", "layout": "tangential", "radius": "50 mm", "planes": 1, "standOff": "0 mm",
                "planeThrough": "shank", "hub": "free", "holeFit": "tight", "permittedHole": "6.5 mm" } },
            { "gearbox": "main", "ratio": 1.5, "efficiency": 0.96, "damagedAt": "2500 N.m" },
            { "rotor": "blades", "inertia": "4 kg.m2" } ],
          "partsComplete": true, "stock": "M8, 8.8, 0.4; M8, 10.9, 0.6; M6, 10.9",
          "specified": { "shearBolt": { "thread": "M8", "grade": "8.8" } },
          "work": { "steadyPeak": "500 N.m", "peaksPerHour": 30 } }
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
            ["device", "fitted", "specified", "best", "choices", "findings", "cautions"],
            json.RootElement.EnumerateObject().Select(m => m.Name));
        JsonElement[] choices = [.. json.RootElement.GetProperty("choices").EnumerateArray()];
        Assert.Equal(3, choices.Length);
        Assert.Equal(
            [
                "grade", "size", "tripTorqueNm", "workMargin", "guardMargin", "tripsPerHour", "passProbability", "isStrongerThanFitted",
                "isStrongerThanSpecified", "isFitted", "leavesRoom", "guards", "quiet", "onePeakTripsProbability", "damagedFirstProbability",
                "fatigueHoursAtLeast", "holeMm", "needsRedrilling", "price", "gradeSteps", "cautions",
            ],
            choices[0].EnumerateObject().Select(m => m.Name));
        Assert.Equal(json.RootElement.GetProperty("best").GetString(), choices[0].GetProperty("size").GetString() + " " + choices[0].GetProperty("grade").GetString());
        Assert.All(choices.Where(c => c.GetProperty("isStrongerThanSpecified").GetBoolean()), c => Assert.Contains(
            "caution.onlyTheManual", c.GetProperty("cautions").EnumerateArray().Select(x => x.GetProperty("code").GetString())));
    }

    [Fact]
    public void Choose_NothingKnown_OffersNothingAndSaysWhy()
    {
        CliRun run = CliRun.WithInput("{ \"driveline\": [ { \"shaft\": \"a\" }, { \"shearBolt\": { \"thread\": \"M8\" } } ] }", "choose", "-", "--json");
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
        Assert.Contains("lbf·ft", CliRun.WithInput(Known, "choose", "-", "--units", "us").Output, StringComparison.Ordinal);
        using JsonDocument si = JsonDocument.Parse(CliRun.WithInput(Known, "choose", "-", "--json").Output);
        using JsonDocument us = JsonDocument.Parse(CliRun.WithInput(Known, "choose", "-", "--json", "--units", "us").Output);
        Assert.Equal(si.RootElement.GetProperty("choices").GetRawText(), us.RootElement.GetProperty("choices").GetRawText());
    }

    [Fact]
    public void Choose_Spanish_HasSpanishMessagesAndTheSameCodes()
    {
        Assert.Contains("el mejor primero", CliRun.WithInput(Known, "choose", "-", "--language", "es").Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.WithInput(SampleCase.Bare, "choose", "-", "--json", "--language", "es").Output);
        Assert.Contains("llave", json.RootElement.GetProperty("cautions")[0].GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "line 1")]
    [InlineData("{ \"stock\": \"M10\", \"driveline\": [ { \"shaft\": \"a\" } ] }", "stock")]
    [InlineData("{ \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10\", \"holeDiameter\": \"6 mm\" } } ] }", "driveline[0].shearBolt.holeDiameter")]
    [InlineData("{ \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10\", \"permittedHole\": \"5 N.m\" } } ] }", "driveline[0].shearBolt.permittedHole")]
    public void Choose_BadCase_IsRefusedAndNamed(string json, string named) =>
        Assert.Contains(named, CliRun.Refused(json, "choose", "-"), StringComparison.Ordinal);

    [Fact]
    public void Choose_NoCase_IsRefusedWithAHint() => Assert.Contains("--help", CliRun.Refused(string.Empty, "choose"), StringComparison.Ordinal);
}
