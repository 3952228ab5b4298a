using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <summary>watch TELEMETRY as a script uses it.</summary>
public class WatchTests
{
    private const string Case = """
        {
          "driveline": [
            { "shearBolt": { "name": "bolt", "thread": "M8", "grade": "8.8", "layout": "throughShaft", "shaftDiameter": "30 mm",
                             "planeThrough": "shank", "hub": "free" } },
            { "gearbox": "box", "damagedAt": "5000 N.m" }
          ],
          "work": { "steadyMean": "200 N.m", "tripsInNormalWork": false }
        }
        """;

    private const string Slip = """
        # invented
        timeS,speedInRpm,speedOutRpm,torqueNm,note
        0.0,540,540,100,a
        0.1,540,540,600,a
        0.2,540,0,1100,a
        0.3,540,0,1100,a
        0.4,540,540,100,a
        0.4,540,540,100,twice
        0.5,540,540
        0.6,540,540,high,a

        0.5,540,540,100,a
        """;

    [Fact]
    public void Report_OfALog_HasAllThereIsToSay()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        string target = Path.Combine(folder, "all.json");
        Assert.Equal(0, CliRun.WithInput(Slip, "watch", "-", "--overload", "1000 N.m", "--report", target).Code);
        JsonElement json = JsonDocument.Parse(File.ReadAllText(target)).RootElement;
        Directory.Delete(folder, recursive: true);
        JsonElement samples = json.GetProperty("samples");
        Assert.Equal(6, samples.GetProperty("taken").GetInt32());
        Assert.Equal(1, samples.GetProperty("duplicate").GetInt32());
        Assert.Equal(2, samples.GetProperty("badRows").GetInt32());
        JsonElement[] rows = [.. samples.GetProperty("firstBadRows").EnumerateArray()];
        Assert.Equal(9, rows[0].GetProperty("line").GetInt32());
        Assert.Equal("Cells", rows[0].GetProperty("trouble").GetString());
        Assert.Equal("torqueNm", rows[1].GetProperty("column").GetString());
        Assert.Equal("Duplicate", rows[2].GetProperty("trouble").GetString());

        // 540 rpm are 18π rad/s: (0.05 + 0.1 + 0.05) s · 18π = 11.3097 rad; 850, 1100 and 600 N·m on the way:
        // 18π · (0.05 · 850 + 0.1 · 1100 + 0.05 · 600) = 10 320.1 J.
        JsonElement history = json.GetProperty("history");
        Assert.Equal(1, history.GetProperty("slips").GetInt32());
        Assert.Equal(11.3097, history.GetProperty("slipAngleRad").GetDouble(), 1e-3);
        Assert.Equal(10320.1, history.GetProperty("slipEnergyJ").GetDouble(), 0.5);
        Assert.Equal(["Slip", "Overload"], json.GetProperty("events").EnumerateArray().Select(e =>
            e.GetProperty("kind").GetString()).Order(StringComparer.Ordinal).Reverse());
        Assert.Equal(0, json.GetProperty("eventsLeftOut").GetInt32());
        Assert.Equal(JsonValueKind.Null, json.GetProperty("slipTorque").ValueKind);
        Assert.Contains(
            "monitor.tooFewPeaks", json.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()));
        Assert.Contains("caution.notASafetyFunction",
            json.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()));
    }

    [Theory]
    [InlineData("en", "not a safety function", "Line 9:")]
    [InlineData("es", "no es una función de seguridad", "Línea 9:")]
    public void Text_OfALog_NamesBadRowsAndWarns(string language, string caution, string row)
    {
        CliRun run = CliRun.WithInput(Slip, "watch", "-", "--overload", "1000 N.m", "--language", language);
        Assert.Equal(0, run.Code);
        string flat = run.Output.Replace("\n  ", " ", StringComparison.Ordinal);
        Assert.Contains(caution, flat, StringComparison.Ordinal);
        Assert.Contains(row, flat, StringComparison.Ordinal);
    }

    [Fact]
    public void Out_OfALogWithPeaks_MakesACaseThatAssessAnswersWith()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        string source = Path.Combine(folder, "a.case.json"), target = Path.Combine(folder, "b.case.json"),
            log = Path.Combine(folder, "a.csv");
        File.WriteAllText(source, Case);
        File.WriteAllText(log, Work(60));
        CliRun run = CliRun.Of("watch", log, "--case", source, "--hours", "0.5", "--out", target, "--json", "--peaks-from", "300 N.m");
        Assert.Equal(0, run.Code);
        JsonElement learned = JsonDocument.Parse(run.Output).RootElement.GetProperty("workPeakNm");
        JsonElement verdict = JsonDocument.Parse(CliRun.Of("assess", target, "--json").Output).RootElement;
        Assert.Equal(learned.GetProperty("high").GetDouble(), verdict.GetProperty("workPeakNm").GetProperty("high").GetDouble(), 0.5);
        JsonElement history = JsonDocument.Parse(File.ReadAllText(target)).RootElement.GetProperty("history");
        Assert.Equal((60 * 250 - 1) * 0.02 / 3600, history.GetProperty("hours").GetDouble(), 1e-9);
        Assert.Equal(0, history.GetProperty("breaks").GetInt32());
        Assert.Equal(0, history.GetProperty("breaksAtEngagement").GetInt32());
        Assert.Contains("60 peaks above 300 N·m", File.ReadAllText(target), StringComparison.Ordinal);
        Assert.Equal(learned.GetProperty("expected").GetDouble(),
            verdict.GetProperty("workPeakNm").GetProperty("expected").GetDouble(), 0.5);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Out_WithoutAnyPeak_IsRefused() => Assert.Contains(
        "no peak of work", CliRun.Refused("timeS,speedInRpm,torqueNm\n0,540,1\n1,540,1\n", "watch", "-", "--overload", "1 kN.m",
            "--out", "x.case.json"), StringComparison.Ordinal);

    [Fact]
    public void Out_OfACaseThatStatesItsWorkElsewhere_IsRefused()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        string source = Path.Combine(folder, "a.case.json"), log = Path.Combine(folder, "a.csv"),
            target = Path.Combine(folder, "b.case.json");
        File.WriteAllText(source, Case.Replace("\"steadyMean\"", "\"at\": \"box\", \"steadyMean\"", StringComparison.Ordinal));
        File.WriteAllText(log, Work(3));
        Assert.Contains("work.at", CliRun.Refused(string.Empty, "watch", log, "--case", source, "--peaks-from", "300 N.m",
            "--out", target), StringComparison.Ordinal);
        Assert.False(File.Exists(target));
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("time,torqueNm\n", "needs a column time_s or timeS or timeMs")]
    [InlineData("timeS,timeMs,speedInRpm,torqueNm\n", "more than one column")]
    public void Head_ThatIsWrong_IsRefused(string log, string words) =>
        Assert.Contains(words, CliRun.Refused(log, "watch", "-", "--overload", "1 kN.m"), StringComparison.Ordinal);

    [Theory]
    [InlineData("--overload TORQUE")]
    [InlineData("--overload", "--overload", "soft")]
    [InlineData("--hours", "--overload", "1 kN.m", "--hours", "0")]
    [InlineData("--ratio", "--overload", "1 kN.m", "--ratio", "-1")]
    public void Options_ThatAreWrong_AreRefused(string words, params string[] options) =>
        Assert.Contains(words, CliRun.Refused(Slip, ["watch", "-", .. options]), StringComparison.Ordinal);

    // Anything for a log: an answer or a refusal, never a fault.
    [Fact]
    public void Log_OfAnything_IsNoFault()
    {
        var random = new Random(4);
        string[] cells = ["0", "1", "-1", "1e300", "NaN", "", "x", "\"5\"", "540", "1e-320", "Infinity"];
        for (int k = 0; k < 50; k++)
        {
            var log = new StringBuilder("timeMs;speedInRadPerS;speedOutRadPerS;torqueLbfFt\n");
            for (int row = 0; row < 60; row++)
            {
                log.AppendJoin(';', Enumerable.Range(0, random.Next(3, 6)).Select(_ => cells[random.Next(cells.Length)])).Append('\n');
            }

            Assert.Equal(0, CliRun.WithInput(log.ToString(), "watch", "-", "--overload", "1 kN.m", "--json").Code);
        }
    }

    // A peak of 310 to 369 N·m every 5 s, sampled every 20 ms.
    private static string Work(int peaks)
    {
        var log = new StringBuilder("timeS,speedInRpm,speedOutRpm,torqueNm\n");
        for (int k = 0; k < peaks * 250; k++)
        {
            double torque = k % 250 == 100 ? 310 + (k / 250 * 7 % peaks) : 100 + (k % 7);
            log.Append(CultureInfo.InvariantCulture, $"{k * 0.02:F2},540,540,{torque}\n");
        }

        return log.ToString();
    }
}
