using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <summary>watch TELEMETRY --json as another program reads it: a line an event, then the whole.</summary>
public sealed partial class WatchContractTests : IDisposable
{
    private const string Head = "time_s,inputSpeed_rpm,outputSpeed_rpm,torque_Nm\n";

    private static readonly string[] Members =
    [
        "samples", "rejected", "hours", "overloads", "trips", "slips", "cycles", "damageShaft", "damageBolt", "maxClutchTempC",
        "workPeakNm",
    ];

    private readonly string folder = Directory.CreateTempSubdirectory("driveline").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Json_OfALog_IsALineAnEventAndTheWhole()
    {
        CliRun run = Watch(Head + """
            0.0,540,540,100
            0.1,540,540,600
            0.2,540,0,1100
            0.3,540,0,1100
            0.4,540,540,100
            0.4,540,540,100
            0.5,540,540
            0.5,540,,100
            0.3,540,540,100
            3.5,540,540,NaN
            3.5,540,540,100
            """);
        JsonElement[] lines = Lines(run);
        Assert.Equal(["slip", "overload", "gap"], lines[..^1].Select(e => e.GetProperty("event").GetString()));

        // 540 rpm are 18π rad/s: 18π · (0.05 · 850 + 0.1 · 1100 + 0.05 · 600) = 10 320.1 J, from 0.1 to 0.4 s.
        AssertEvent(lines[0], ("timeS", 0.1), ("durationS", 0.3), ("peakNm", 1100), ("energyJ", 10320.1319));

        // 1000 N·m are crossed after 4/5 of the step from 600 to 1100 N·m, 900 after 1/5 of that from 1100 to 100 N·m.
        AssertEvent(lines[1], ("timeS", 0.18), ("durationS", 0.14), ("peakNm", 1100));
        AssertEvent(lines[2], ("timeS", 0.5), ("durationS", 3));
        JsonElement whole = lines[^1];
        Assert.Equal(Members, whole.EnumerateObject().Select(m => m.Name));
        Assert.Equal(7, whole.GetProperty("samples").GetInt32());
        JsonElement rejected = whole.GetProperty("rejected");
        Assert.Equal(["late", "missing", "nan", "duplicate"], rejected.EnumerateObject().Select(m => m.Name));
        Assert.Equal([1, 29, 2, 1], rejected.EnumerateObject().Select(m => m.Value.GetInt32()));   // 29: between 0.5 and 3.5 s
        Assert.Equal(0.5 / 3600, whole.GetProperty("hours").GetDouble(), 1e-12);
        Assert.Equal(1, whole.GetProperty("overloads").GetInt32());
        Assert.Equal(0, whole.GetProperty("trips").GetInt32());
        Assert.Equal(1, whole.GetProperty("slips").GetInt32());
        Assert.Equal(1, whole.GetProperty("cycles").GetDouble());                                  // 100 to 1100 and back: two halves
        Assert.Equal(JsonValueKind.Null, whole.GetProperty("damageBolt").ValueKind);
        Assert.Equal(["low", "expected", "high"], whole.GetProperty("workPeakNm").EnumerateObject().Select(m => m.Name));
        Assert.Equal(
            ["Line 8: the number of cells is not that of the head.", "Line 7: its time is that of the sample before.",
                "Line 10: its time lies before that of a sample already taken.", "Line 11: a value that is no finite number."],
            run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line["driveline: ".Length..].TrimEnd()));
    }

    // W_p = π · 0.03³ / 16 = 5.30144e-6 m³; on a shaft at the PTO 0 to 1060 to 0 N·m is one cycle of 199.946 MPa: on category 100 MPa
    // 1.99946⁵ / 2·10⁶ = 1.59783e-5, and 2⁵ times as much on one of 50 MPa.
    [Theory]
    [InlineData("100 MPa", 1.59783e-5)]
    [InlineData("50 MPa", 5.11306e-4)]
    public void Damage_OfAShaftWithItsCategory_IsWorked(string category, double damage)
    {
        string path = Write("a.case.json", $$"""
            { "driveline": [ { "shaft": "tube", "outerDiameter": "30 mm", "fatigueCategory": "{{category}}" } ] }
            """);
        CliRun run = Watch(Head + "0,540,540,0\n1,540,540,1060\n2,540,540,0\n", "--case", path);
        double seen = Lines(run)[^1].GetProperty("damageShaft").GetDouble();
        Assert.InRange(seen, 0.97 * damage, 1.03 * damage);   // a class is 15.6 N·m, 0.7 % of the range to either side, in the fifth power
    }

    [Fact]
    public void Damage_OfABoltThatYields_IsUnbounded()
    {
        string path = Write("a.case.json", """
            { "driveline": [ { "shearBolt": { "thread": "M8", "grade": "8.8", "layout": "throughShaft", "shaftDiameter": "30 mm",
                "planeThrough": "shank", "hub": "free" } } ] }
            """);
        JsonElement whole = Lines(Watch(Head + "0,540,540,0\n1,540,540,5000\n2,540,540,0\n", "--case", path))[^1];
        Assert.Equal("unbounded", whole.GetProperty("damageBolt").GetString());
        Assert.Equal(JsonValueKind.Null, whole.GetProperty("damageShaft").ValueKind);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(63)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(150)]
    [InlineData(299)]
    public void Resume_AtAnyRow_TellsWhatOnePassTells(int cut)
    {
        string[] rows = Rows(300);
        CliRun whole = Watch(Head + string.Concat(rows));
        string state = Path.Combine(folder, "a.state");
        CliRun first = Watch(Head + string.Concat(rows[..cut]), "--save", state);
        CliRun second = Watch(Head + string.Concat(rows[cut..]), "--resume", state);
        Assert.Equal(whole.Output, Events(first) + second.Output);
        Assert.True(new FileInfo(state).Length < 35_000);
    }

    // A batch sent again is left out, however long it is.
    [Fact]
    public void Log_SentAgainAfterResume_ChangesNoResult()
    {
        string log = Head + string.Concat(Rows(300)), state = Path.Combine(folder, "a.state");
        JsonElement once = Lines(Watch(log, "--save", state))[^1];
        CliRun again = Watch(log, "--resume", state, "--save", state);
        Assert.Empty(Events(again));
        JsonElement twice = Lines(again)[^1];
        Assert.Equal(Members.Where(m => m != "rejected").Select(m => once.GetProperty(m).GetRawText()),
            Members.Where(m => m != "rejected").Select(m => twice.GetProperty(m).GetRawText()));
        JsonElement anew = Lines(Watch(log, "--resume", state, "--new-clock"))[^1];
        Assert.Equal(2 * once.GetProperty("samples").GetInt32(), anew.GetProperty("samples").GetInt32());
    }

    [Fact]
    public void Resume_OfWhatIsNoState_IsRefused()
    {
        string state = Path.Combine(folder, "a.state"), log = Head + string.Concat(Rows(100));
        Watch(log, "--save", state);
        string text = File.ReadAllText(state);
        Assert.Contains("another case, other options", Refused(log, "--resume", state, "--ratio", "2"), StringComparison.Ordinal);
        Assert.Contains("no state", Refused(log, "--resume", Write("b", "soft")), StringComparison.Ordinal);
        Assert.Contains("no state", Refused(log, "--resume", Write("b", new string('A', 40_000))), StringComparison.Ordinal);
        Assert.Contains("no file", Refused(log, "--resume", Path.Combine(folder, "none")), StringComparison.Ordinal);
        char other = text[200] == 'A' ? 'B' : 'A';
        Assert.Contains("damaged", Refused(log, "--resume", Write("b", text[..200] + other + text[201..])), StringComparison.Ordinal);
    }

    // Engine 38 - 13 - 0 % of 800 N·m, 1605.5 over 540 rpm: 594.6 N·m, an upper bound.
    [Theory]
    [InlineData("(1.0) can0 18FEDF00#8AA0287D7DFFFFF5", "(1.01) can0 18FE43F0#E010FFFF7FFFFFFF", "can0 0CF00400#FFFFA32C32FFFFFF")]
    [InlineData("(1.0)  can0  18FEDF00   [8]  8A A0 28 7D 7D FF FF F5", "(1.01)  can0  18FE43F0   [8]  E0 10 FF FF 7F FF FF FF",
        "can0  0CF00400   [8]  FF FF A3 2C 32 FF FF FF")]
    [InlineData("(1.0)  can0  RX - -  18FEDF00   [8]  8A A0 28 7D 7D FF FF F5   '..(}}...'", "(1.01) can0 18FE43F0#E010FFFF7FFFFFFF R",
        "can0  RX - -  0CF00400   [5]  FF FF A3 2C 32")]
    public void Frames_OfALogAsCandumpWritesIt_GiveTheUpperBound(string friction, string pto, string engine)
    {
        string others = "(1.03) can0 123#00\n(1.03) can0 18FEDF00##100\njunk\n";
        string log = $"{friction}\n{pto}\n(1.02) {engine}\n{others}(1.04) {engine}\n(1.05) can0 0CF0";
        CliRun run = CliRun.WithInput(log, "watch", "-", "--overload", "500 N.m", "--reference-torque", "800 N.m", "--json");
        JsonElement[] lines = Lines(run);
        Assert.Equal(594.63, lines[0].GetProperty("peakNm").GetDouble(), 0.01);
        Assert.Equal("""{"low":0,"expected":null,"high":null}""", lines[^1].GetProperty("workPeakNm").GetRawText());
        Assert.Equal(2, lines[^1].GetProperty("samples").GetInt32());
        Assert.Equal(2, lines[^1].GetProperty("rejected").GetProperty("nan").GetInt32());
        Assert.Contains("Line 6: no CAN frame with its time.", run.Error, StringComparison.Ordinal);
        Assert.Contains("Line 8: no CAN frame", run.Error, StringComparison.Ordinal);
        Assert.Contains("SPN 544", CliRun.Refused(log, "watch", "-", "--overload", "500 N.m"), StringComparison.Ordinal);
    }

    [Fact]
    public void ReferenceTorque_OfALogWithTorques_IsRefused() => Assert.Contains(
        "belongs to a log of CAN frames", Refused(Head + "0,540,540,1\n", "--reference-torque", "800 N.m"), StringComparison.Ordinal);

    // A clock that jumps back: what is late is counted, and its first lines are named.
    [Fact]
    public void Clock_ThatJumpsBack_IsCountedAndNamed()
    {
        var log = new StringBuilder(Head);
        for (int k = 0; k < 200; k++)
        {
            log.Append(CultureInfo.InvariantCulture, $"{(k < 100 ? 1000 + k : k)},540,540,100\n");
        }

        CliRun run = Watch(log.ToString());
        JsonElement whole = Lines(run)[^1];
        Assert.Equal(100, whole.GetProperty("samples").GetInt32());
        Assert.Equal(100, whole.GetProperty("rejected").GetProperty("late").GetInt32());
        Assert.Contains("Line 102: its time lies before", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Line 107:", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1,1e9,540,100\n", "Line 3: a value out of range.")]
    [InlineData("1,540,540,NaN\n", "Line 3: a value that is no finite number.")]
    [InlineData("1,Infinity,540,100\n", "Line 3: a value that is no finite number.")]
    [InlineData("1,540,5", "Line 3: the number of cells is not that of the head.")]
    [InlineData("1,540,540,", "Line 3: no number in torque_Nm.")]
    [InlineData("\0\u0001\u0002\uFFFD;\u001B[31m\n", "Line 3: the number of cells is not that of the head.")]
    public void Row_ThatIsWrong_IsCountedAndNamed(string row, string words)
    {
        CliRun run = Watch(Head + "0,540,540,100\n" + row);
        Assert.Equal(1, Lines(run)[^1].GetProperty("rejected").GetProperty("nan").GetInt32());
        Assert.Contains(words, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', run.Error);
    }

    // A line without an end is passed over, not kept.
    [Fact]
    public void Line_OfAMillionLetters_IsPassedOver()
    {
        CliRun run = Watch(Head + "0,540,540,100\n" + new string('7', 1_000_000) + "\n1,540,540,100\n" + new string('8', 5000));
        JsonElement whole = Lines(run)[^1];
        Assert.Equal(2, whole.GetProperty("samples").GetInt32());
        Assert.Equal(2, whole.GetProperty("rejected").GetProperty("nan").GetInt32());
        Assert.Contains("Line 3: too long for a row.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Garbage_InPlaceOfALog_IsRefusedOrCounted()
    {
        var random = new Random(5);
        for (int k = 0; k < 20; k++)
        {
            byte[] bytes = new byte[20_000];
            random.NextBytes(bytes);
            string text = Encoding.UTF8.GetString(bytes);
            Assert.NotEmpty(Refused("x" + text));
            Assert.Equal(0, Watch(Head + text).Code);
            Assert.Equal(0, CliRun.WithInput("(0) can0 18FE43F0#00\n" + text, "watch", "-", "--overload", "1 kN.m", "--json").Code);
        }

        Assert.Contains("empty", Refused(string.Empty), StringComparison.Ordinal);
        Assert.Contains("too long", Refused(new string('\0', 10_000)), StringComparison.Ordinal);
        Assert.Equal(0, Lines(Watch(Head))[^1].GetProperty("samples").GetInt32());
    }
}
