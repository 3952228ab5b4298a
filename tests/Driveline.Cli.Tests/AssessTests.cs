using System.Diagnostics;
using System.Text;
using System.Text.Json;

namespace Driveline.Cli.Tests;

public class AssessTests
{
    [Fact]
    public void Assess_StandardInput_AnswersAndExitsOneWhenNotProtected()
    {
        CliRun run = CliRun.WithInput(SampleCase.Bare, "assess", "-");
        Assert.Equal(1, run.Code);
        Assert.Empty(run.Error);
        Assert.StartsWith("Bare\n====\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("stop the engine", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', run.Output);
    }

    [Fact]
    public void Assess_Doubt_IsShownOnlyWhenAskedFor()
    {
        Assert.Contains("Where the doubt comes from", CliRun.WithInput(SampleCase.Bare, "assess", "-", "--doubt").Output,
            StringComparison.Ordinal);
        Assert.DoesNotContain("Where the doubt comes from", CliRun.WithInput(SampleCase.Bare, "assess", "-").Output,
            StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.WithInput(SampleCase.Bare, "assess", "-", "--doubt", "--json").Output);
        Assert.NotEmpty(json.RootElement.GetProperty("doubt").GetProperty("devices").EnumerateArray());
    }

    [Fact]
    public void Assess_Json_HasTheMembersInOrder()
    {
        CliRun run = CliRun.WithInput(SampleCase.Bare, "assess", "-", "--json");
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal(
            [
                "contract", "library", "result", "language", "units", "title", "date",
                "standing", "verdict", "guards", "quiet", "asSpecified", "history", "fittedAgainstSpecified", "tripTorqueNm",
                    "workPeakNm", "weakestPart",
                    "workMargin", "guardMargin",
                "parts", "devices", "gradeSteps", "findings", "measureNext", "cautions", "weakestBasis", "doubt",
            ],
            json.RootElement.EnumerateObject().Select(m => m.Name));
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("workPeakNm").ValueKind);
        // Those of every verdict, and one of a bolt that is taken out.
        Assert.Equal(6, json.RootElement.GetProperty("cautions").GetArrayLength());
        Assert.Equal(2100, json.RootElement.GetProperty("weakestPart").GetProperty("damagedAtNm").GetProperty("low").GetDouble());
    }

    [Theory]
    [InlineData("", "line 1")]
    [InlineData("{", "line 1")]
    [InlineData("[]", "")]
    [InlineData("{} x", "line 1")]
    [InlineData("{ \"driveline\": [ { \"shaft\": \"a\", \"damagedAt\": \"NaN N.m\" } ] }", "driveline[0].damagedAt")]
    [InlineData("{ \"driveline\": [ { \"shaft\": \"a\", \"damagedAt\": NaN } ] }", "line 1")]
    [InlineData("{ \"driveline\": [ { \"shaft\": \"a\", \"damagedAt\": \"-5 N.m\" } ] }", "driveline[0].damagedAt")]
    [InlineData("{ \"driveline\": [ { \"shaft\": \"a\", \"damagedAt\": \"26 kW\" } ] }", "driveline[0].damagedAt")]
    [InlineData("{ \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10 x\", \"grade\": \"8.8\" } } ] }", "driveline[0].shearBolt.thread")]
    [InlineData("{ \"driveline\": [ { \"shearBolt\": { \"thread\": \"M10\", \"grade\": \"SAE 10\" } } ] }", "driveline[0].shearBolt.grade")]
    [InlineData("{ \"title\": \"a\", \"title\": \"b\", \"driveline\": [ { \"shaft\": \"a\" } ] }", "title")]
    [InlineData("{ \"titel\": \"a\", \"driveline\": [ { \"shaft\": \"a\" } ] }", "title")]
    public void Assess_BadCase_IsRefusedAndNamed(string json, string named)
    {
        var clock = Stopwatch.StartNew();
        Assert.Contains(named, CliRun.Refused(json, "assess", "-"), StringComparison.Ordinal);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), "takes " + clock.Elapsed);
    }

    [Fact]
    public void Assess_SeveralMistakes_ListsThemAll()
    {
        string error = CliRun.Refused(
            "{ \"titel\": \"a\", \"driveline\": [ { \"shaft\": \"a\", \"damagedAt\": \"5 kW\" }, { \"gearbox\": \"b\", \"ratio\": -1 } ] }",
                "assess", "-");
        Assert.Equal(3, error.TrimEnd().Split('\n').Length);
    }

    [Fact]
    public void Assess_TenThousandBrackets_IsRefusedAtOnce() =>
        Assert.Single(CliRun.Refused(new string('[', 10000) + new string(']', 10000), "assess", "-").TrimEnd().Split('\n'));

    [Fact]
    public void Assess_HugeInput_IsRefused() =>
        Assert.Contains("4 MiB", CliRun.Refused(new string(' ', 5 * 1024 * 1024), "assess", "-"), StringComparison.Ordinal);

    [Theory]
    [InlineData("assess", "thornbeck-bolt-right")]
    [InlineData("choose", "larkfield-soft-bolts")]
    [InlineData("clutch", "wickerby-clutch-oiled")]
    [InlineData("simulate", "ravensmoor-stump")]
    [InlineData("advise", "Larkfield-Soft-Bolts")]
    public void Case_NameOfABuiltInCase_IsAnsweredAsItsFile(string verb, string name)
    {
        string file = Path.Combine(AppContext.BaseDirectory, "cases", name.ToLowerInvariant() + ".case.json");
        Assert.Equal(CliRun.Of(verb, file, "--json").Output, CliRun.Of(verb, name, "--json").Output);
    }

    [Fact]
    public void Case_NameOfABuiltInCaseWithAFolderBeforeIt_IsAFile() =>
        Assert.Contains(
            "There is no file", CliRun.Refused(string.Empty, "assess", Path.Combine("none", "ravensmoor-stump")), StringComparison.Ordinal);

    [Fact]
    public void Assess_MissingFileOrFolder_IsRefused()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        Assert.Contains(
            "There is no file", CliRun.Refused(string.Empty, "assess", Path.Combine(folder, "none.case.json")), StringComparison.Ordinal);
        Assert.Contains("is a folder", CliRun.Refused(string.Empty, "assess", folder), StringComparison.Ordinal);
        Directory.Delete(folder);
    }

    [Fact]
    public void Assess_HugeOrBinaryFile_IsRefused()
    {
        string file = Path.GetTempFileName();
        File.WriteAllBytes(file, new byte[(4 * 1024 * 1024) + 1]);
        Assert.Contains("4 MiB", CliRun.Refused(string.Empty, "assess", file), StringComparison.Ordinal);
        File.WriteAllBytes(file, [0xFF, 0xFE, 0x00, 0x80]);
        CliRun.Refused(string.Empty, "assess", file);
        File.Delete(file);
    }

    [Fact]
    public void Assess_TerminalTricksInAName_AreNotPrinted()
    {
        string json =
            "{ \"title\": \"a\\u001b[31m\\u0007\\u202Eb\", \"driveline\": [ { \"shaft\": \"\\u001b]0;x\\u0007\", \"damagedAt\": \"5 "
                + "\\u001b[2J\" } ] }";
        string error = CliRun.Refused(json, "assess", "-");
        Assert.DoesNotContain(error, c => char.IsControl(c) && c is not ('\n' or '\r'));
    }

    [Fact]
    public void Assess_Out_WritesThreeWholeFilesIntoANewFolder()
    {
        string folder = Path.Combine(Directory.CreateTempSubdirectory("driveline").FullName, "new", "folder");
        CliRun run = CliRun.WithInput(SampleCase.Bare, "assess", "-", "--out", folder);
        Assert.Equal(1, run.Code);
        Assert.Equal(
            ["case.ladder.svg", "case.report.html", "case.report.md"],
            Directory.GetFiles(folder).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.EndsWith("</svg>\n", File.ReadAllText(Path.Combine(folder, "case.ladder.svg")), StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", File.ReadAllText(Path.Combine(folder, "case.report.html")), StringComparison.Ordinal);
        Assert.Contains(
            "](<case.ladder.svg>)", File.ReadAllText(Path.Combine(folder, "case.report.md"), Encoding.UTF8), StringComparison.Ordinal);
        Assert.Contains("--force", CliRun.Refused(SampleCase.Bare, "assess", "-", "--out", folder), StringComparison.Ordinal);
        CliRun again = CliRun.WithInput(SampleCase.Bare, "assess", "-", "--out", folder, "--force");
        Assert.Equal(1, again.Code);
        Assert.Equal(3, Directory.GetFileSystemEntries(folder).Length);
    }

    [Theory]
    [InlineData("en", "## Yoke bolt", "## Slip clutch")]
    [InlineData("es", "## Yoke bolt", "## Embrague de fricción")]
    public void Assess_OutOfCalculatedDevices_WritesTheirCalculation(string language, string bolt, string clutch)
    {
        const string Json = """
            { "driveline": [
              { "shearBolt": { "name": "yoke bolt", "thread": "M8", "grade": "8.8", "layout": "tangential", "radius": "50 mm" } },
              { "slipClutch": { "outerDiameter": "165 mm", "innerDiameter": "100 mm", "faces": 4, "facing": "moulded organic lining",
                  "springs": { "coil": { "count": 8, "rate": "150 N/mm", "freeLength": "40 mm", "solidLength": "30 mm" } },
                  "springLength": "34.2 mm", "wear": "0 mm", "surface": "cleanInWork", "runIn": "runIn" } } ] }
            """;
        string folder = Path.Combine(Directory.CreateTempSubdirectory("driveline").FullName, "new");
        Assert.Equal(1, CliRun.WithInput(Json, "assess", "-", "--out", folder, "--language", language).Code);
        string sheet = File.ReadAllText(Path.Combine(folder, "case.calculation.md"), Encoding.UTF8);
        Assert.Contains(bolt, sheet, StringComparison.Ordinal);
        Assert.Contains(clutch, sheet, StringComparison.Ordinal);

        // hand: 8 springs of 150 N/mm, 40 - 34.2 = 5.8 mm down: 6960 N
        Assert.Contains("= 6960 N", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Assess_OutOverAFolderOrFile_IsRefusedAndNothingWritten()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        Directory.CreateDirectory(Path.Combine(folder, "case.report.md"));
        Assert.Contains("is a folder", CliRun.Refused(SampleCase.Bare, "assess", "-", "--out", folder), StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(folder));
        string file = Path.Combine(folder, "file");
        File.WriteAllText(file, "x");
        Assert.Contains("is a file", CliRun.Refused(SampleCase.Bare, "assess", "-", "--out", file), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Assess_Units_ChangeTheWordsNotTheData()
    {
        Assert.Contains("lb·ft", CliRun.WithInput(SampleCase.Bare, "assess", "-", "--units", "us").Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.WithInput(SampleCase.Bare, "assess", "-", "--json", "--units", "us").Output);
        Assert.Equal(2100, json.RootElement.GetProperty("weakestPart").GetProperty("damagedAtNm").GetProperty("low").GetDouble());
    }
}
