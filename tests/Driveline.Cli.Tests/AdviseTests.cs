using System.Text.Json;
using Driveline.Cases;

namespace Driveline.Cli.Tests;

public sealed class AdviseTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("driveline-advise").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Advise_BuiltInLetter_AnswersInBothForms()
    {
        CliRun text = CliRun.Of("advise", "larkfield-oak-root");
        Assert.Equal(0, text.Code);
        Assert.Contains("The clutch is stuck by rust.", text.Output, StringComparison.Ordinal);
        Assert.Contains("Is the tractor hurt? We can't tell from here.", text.Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.Of("advise", "larkfield-oak-root", "--json").Output);
        Assert.Equal("cause.clutchStuck", json.RootElement.GetProperty("causes")[0].GetProperty("code").GetString());
        Assert.NotEqual(0, json.RootElement.GetProperty("inspect").GetArrayLength());
        Assert.Contains("El embrague está pegado por el óxido.", CliRun.Of("advise", "larkfield-oak-root", "--language", "es").Output,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Interview_FromNothing_AsksSavesAndAnswers()
    {
        string file = Path.Combine(folder, "so-far.case.json");
        // A cutter with a slip clutch. A word that is no answer is asked again. 1: nothing gave. No power, one answer, then stop.
        CliRun run = CliRun.WithInput("1\nslipClutch\nperhaps\n1\n\n1\nq\n", "advise", "--interview", "--save", file);
        Assert.Equal(0, run.Code);
        Assert.Contains("\"perhaps\" is none of the answers.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Stopped.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Take care", run.Output, StringComparison.Ordinal);
        Assert.True(CaseReader.Read(File.ReadAllText(file)).IsRead);
        Assert.Equal("nothingGaveAtStrike", Told(file).GetProperty("symptom").GetString());
        Assert.Equal(3, Told(file).EnumerateObject().Count());   // the symptom, the device and one answer
        Assert.Single(Directory.GetFiles(folder));            // whole or not at all: nothing half-written is left

        // It goes on from the file and does not ask what is told.
        CliRun more = CliRun.WithInput("\n0\n", "advise", file, "--interview", "--save", file);
        Assert.DoesNotContain("What is wrong?", more.Output, StringComparison.Ordinal);
        Assert.Equal(4, Told(file).EnumerateObject().Count());
    }

    [Fact]
    public void Interview_WithJson_KeepsTheDialogueOutOfTheAnswer()
    {
        CliRun run = CliRun.WithInput("1\n2\n1\n", "advise", "--interview", "--json");
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal("NothingGaveAtStrike", json.RootElement.GetProperty("symptom").GetString());
        Assert.Contains("What is wrong?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Interview_AtTheMachine_SaysKeyOutBeforeItAsks()
    {
        // A hundred times "I do not know" reaches every question.
        string output = string.Join(
            " ", CliRun.WithInput("0\n1\n1\n" + string.Concat(Enumerable.Repeat("\n", 100)), "advise", "--interview").Output
            .Split([' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        int question = output.IndexOf("take the bolt out and compare its head marks", StringComparison.Ordinal);
        Assert.True(question > 0);
        int caution = output.IndexOf("! Before you reach near the driveline", StringComparison.Ordinal);
        int again = output.LastIndexOf("(Key out and everything still, as before.)", question, StringComparison.Ordinal);
        Assert.True(caution > 0 && caution < question && question - Math.Max(caution, again) < 1500);
        Assert.Equal(caution, output.LastIndexOf("! Before you reach near the driveline", StringComparison.Ordinal));   // said once
        Assert.Contains("We have no further questions.", output, StringComparison.Ordinal);
    }

    // Machine 1, bolt, breaks often, no power; the first answer is taken back and given again as not known, then l lists what stands.
    [Fact]
    public void Interview_BackAndList_TakeBackOneAnswerAndShowTheRest()
    {
        string file = Path.Combine(folder, "back.case.json");
        CliRun run = CliRun.WithInput("1\n1\n1\n\n1\nb\n0\nl\nq\n", "advise", "--interview", "--save", file);
        Assert.Contains("  - The shear bolt keeps breaking.", run.Output, StringComparison.Ordinal);
        Assert.Contains("  - It has a shear bolt.", run.Output, StringComparison.Ordinal);
        Assert.Equal(3, Told(file).EnumerateObject().Count());
        Assert.Single(Told(file).EnumerateObject(), m => m.Value.GetString() == "notKnown");
        Assert.Contains("Your machine", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Interview_ManualsBolt_IsTakenAsThreadAndGrade()
    {
        string file = Path.Combine(folder, "manual.case.json");
        CliRun.WithInput(
            "5\n1\n1\n35 hp\n" + string.Concat(Enumerable.Repeat("\n", 40)), "advise", "--interview", "--save", file);
        using JsonDocument saved = JsonDocument.Parse(File.ReadAllText(file));
        Assert.Equal("35 hp", saved.RootElement.GetProperty("tractor").GetProperty("ptoPower").GetString());
        CliRun.WithInput("3/8-16 UNC, SAE 5\n", "advise", file, "--interview", "--save", file);
        using JsonDocument more = JsonDocument.Parse(File.ReadAllText(file));
        JsonElement bolt = more.RootElement.GetProperty("specified").GetProperty("shearBolt");
        Assert.Equal(("3/8-16 UNC", "SAE 5"), (bolt.GetProperty("thread").GetString(), bolt.GetProperty("grade").GetString()));
    }

    [Fact]
    public void Questions_OfABuiltInCase_IsOneSheetWithBoxesAndPhotographs()
    {
        string sheet = CliRun.Of("advise", "hay-bottom-silent-clutch", "--questions").Output;
        Assert.Contains("What we would like to know", sheet, StringComparison.Ordinal);
        Assert.Contains("- [ ] ", sheet, StringComparison.Ordinal);
        Assert.Contains("[ ] A spring of the clutch with a rule beside it", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("The head of the bolt", sheet, StringComparison.Ordinal);
        Assert.Contains("Before you reach near the driveline", sheet, StringComparison.Ordinal);
        Assert.DoesNotMatch("[0-9]%", sheet);
    }

    [Fact]
    public void Advise_BadUse_IsRefused()
    {
        Assert.Contains("CASE is missing", CliRun.Refused(string.Empty, "advise"), StringComparison.Ordinal);
        Assert.Contains(
            "add --interview", CliRun.Refused(string.Empty, "advise", "larkfield-oak-root", "--save", "x"), StringComparison.Ordinal);
        Assert.Contains("the case must be a file", CliRun.Refused("{}", "advise", "-", "--interview"), StringComparison.Ordinal);
        Assert.Contains("is a folder; a file is wanted", CliRun.WithInput("q\n", "advise", "--interview", "--save", folder).Error,
            StringComparison.Ordinal);
        Assert.Contains("complaint.hubTurns", CliRun.Refused(
            """{ "driveline": [ { "shearBolt": { "hub": "seized" } } ], "complaint": { "symptom": "breaksOften","""
                + """ "hubTurns": "freely" } }""", "advise", "-"), StringComparison.Ordinal);
    }

    [Fact]
    public void Advise_Out_WritesReports()
    {
        Assert.Equal(0, CliRun.Of("advise", "larkfield-soft-bolts", "--out", folder).Code);
        Assert.Equal(
            ["larkfield-soft-bolts.advice.html", "larkfield-soft-bolts.advice.md"],
            Directory.GetFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    private static JsonElement Told(string file) => JsonDocument.Parse(File.ReadAllText(file)).RootElement.GetProperty("complaint");
}
