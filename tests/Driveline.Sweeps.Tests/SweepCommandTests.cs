using System.Diagnostics;
using System.Text.Json;

namespace Driveline.Sweeps.Tests;

public class SweepCommandTests
{
    private static string StudyFile => Path.Combine(AppContext.BaseDirectory, "cases", "thornbeck-scatter.study.json");

    [Fact]
    public void Sweep_KilledAndResumed_GivesTheSameBytes()
    {
        using var folder = new TestFolder();
        string study = Small(folder, 2000, "\"rowsPerGroup\": 100, ");
        Assert.Equal(0, Run("sweep", study, "--to", folder["whole.parquet"], "--threads", "1").Code);
        string killed = folder["killed.parquet"];
        using (Process process = Start("sweep", study, "--to", killed, "--threads", "2"))
        {
            var since = Stopwatch.StartNew();
            while (!(File.Exists(killed + ".partial") && new FileInfo(killed + ".partial").Length > 4) && !process.HasExited
                && since.Elapsed.TotalSeconds < 60)
            {
                Thread.Sleep(5);
            }

            process.Kill();
            process.WaitForExit();
        }

        Assert.False(File.Exists(killed));
        Assert.True(File.Exists(killed + ".partial"));
        Assert.Equal(0, Run("sweep", study, "--to", killed, "--resume").Code);
        Assert.Equal(File.ReadAllBytes(folder["whole.parquet"]), File.ReadAllBytes(killed));
    }

    [Fact]
    public void Sweep_ShardsMergedAndResumed_GiveFiguresAndPictures()
    {
        using var folder = new TestFolder();
        string study = Small(folder, 64, "\"rowsPerGroup\": 32, ");
        Assert.Equal(0, Run("sweep", study, "--to", folder["a1.csv"], "--shard", "1/2").Code);
        Assert.Equal(0, Run("sweep", study, "--to", folder["a2.csv"], "--shard", "2/2").Code);
        Assert.Contains("320 rows", Run("merge", folder["a2.csv"], folder["a1.csv"], "--to", folder["a.csv"]).Output,
            StringComparison.Ordinal);
        (int code, string output, _) = Run("sweep", study, "--to", folder["a.csv"], "--resume", "--json", "--out", folder["pictures"]);
        Assert.Equal(0, code);
        using JsonDocument json = JsonDocument.Parse(output);
        JsonElement root = json.RootElement;
        Assert.Equal("Sweep", root.GetProperty("result").GetString());
        Assert.Equal(320, root.GetProperty("rows").GetInt64());
        Assert.Equal(0, root.GetProperty("failed").GetInt64());
        Assert.True(root.GetProperty("quantiles").GetProperty("assess.guardMargin").GetProperty("p50").GetDouble() > 0.9);
        Assert.Equal(1, root.GetProperty("shares").GetProperty("assess.verdict").EnumerateObject().Sum(s => s.Value.GetDouble()), 1e-9);
        Assert.Equal(9, root.GetProperty("sensitivity").GetArrayLength());
        Assert.True(root.GetProperty("rowsPerSecond").GetDouble() > 0);
        Assert.Contains(Directory.GetFiles(folder["pictures"]), f => f.EndsWith("a.assess-guardMargin.tornado.svg",
            StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--shard", "3/2", "I from 1 to N")]
    [InlineData("--threads", "0", "from 1 to 1024")]
    [InlineData("--to", "a.txt", ".csv or .parquet")]
    public void Sweep_BadOption_IsRefused(string option, string value, string says)
    {
        using var folder = new TestFolder();
        string[] args = option == "--to" ? ["sweep", StudyFile, "--to", folder[value]]
            : ["sweep", StudyFile, "--to", folder["a.csv"], option, value];
        (int code, string output, string error) = Run(args);
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains(says, error, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Merge_FilesOfTwoKinds_AreRefusedWithoutTheNameOfAParameter()
    {
        using var folder = new TestFolder();
        File.WriteAllText(folder["a.parquet"], string.Empty);
        (int code, _, string error) = Run("merge", folder["a.parquet"], "--to", folder["b.csv"]);
        Assert.Equal(2, code);
        Assert.Contains("All files must be of one kind", error, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Merge_FileThatIsNotThere_IsNamed()
    {
        using var folder = new TestFolder();
        (int code, _, string error) = Run("merge", folder["none.csv"], "--to", folder["b.csv"]);
        Assert.Equal(2, code);
        Assert.Contains("There is no file '" + folder["none.csv"] + "'.", error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["b.csv"]));
    }

    [Theory]
    [InlineData("en", "4 rows in ")]
    [InlineData("es", "4 filas en ")]
    public void Merge_InALanguage_SaysItInIt(string language, string says)
    {
        using var folder = new TestFolder();
        string study = Small(folder, 4, "");
        File.WriteAllText(study, File.ReadAllText(study).Replace(",\n  \"sensitivity\": true", string.Empty, StringComparison.Ordinal));
        Assert.Equal(0, Run("sweep", study, "--to", folder["a.csv"], "--shard", "1/1").Code);
        Assert.StartsWith(says, Run("merge", folder["a.csv"], "--to", folder["b.csv"], "--language", language).Output,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "rows in")]
    [InlineData("es", "filas en")]
    public void Sweep_InALanguage_SaysItInIt(string language, string says)
    {
        using var folder = new TestFolder();
        Assert.Contains(says, Run("sweep", Small(folder, 4, ""), "--to", folder["a.csv"], "--language", language).Output,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("thornbeck-scatter")]
    [InlineData("ravensmoor-how-often")]
    public void Studies_OfTheRepository_AreRead(string name) =>
        Assert.Empty(StudyReader.ReadFile(Path.Combine(AppContext.BaseDirectory, "cases", name + ".study.json")).Errors);

    private static string Small(TestFolder folder, int points, string more)
    {
        string text = File.ReadAllText(StudyFile)
            .Replace("\"n\": 4096", "\"n\": " + points, StringComparison.Ordinal)
            .Replace("\"outputs\": [\"assess.verdict\", \"assess.guardMargin\", \"assess.workMargin\", ",
                more + "\"outputs\": [\"assess.verdict\", \"assess.guardMargin\", \"assess.workMargin\", ", StringComparison.Ordinal);
        File.WriteAllText(folder["s.study.json"], text);
        File.Copy(TestStudies.CaseFile("thornbeck-bolt-right"), folder["thornbeck-bolt-right.case.json"]);
        return folder["s.study.json"];
    }

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        var output = new StringWriter();
        var error = new StringWriter();
        int code = Cli.Cli.Run(args, TextReader.Null, output, error);
        return (code, output.ToString(), error.ToString());
    }

    private static Process Start(params string[] args)
    {
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.ArgumentList.Add(typeof(Cli.Cli).Assembly.Location);
        Array.ForEach(args, start.ArgumentList.Add);
        return Process.Start(start)!;
    }
}
