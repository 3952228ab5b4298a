using System.Text;

namespace Driveline.Cli.Tests;

/// <summary>--report, --out and the head of pages, for every command that makes one.</summary>
public class PageTests
{
    private static string Cases => Path.Combine(AppContext.BaseDirectory, "cases");

    [Theory]
    [InlineData("assess", "thornbeck-bolt-right", "report")]
    [InlineData("advise", "larkfield-soft-bolts", "advice")]
    [InlineData("choose", "thornbeck-too-soft", "choice")]
    [InlineData("clutch", "wickerby-clutch-too-hot", "clutch")]
    [InlineData("simulate", "ravensmoor-rock", "strike")]
    public void Report_OfEachCommand_IsOneWholePageInTheFolder(string command, string name, string kind)
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        CliRun run = CliRun.Of(
            command, CaseOf(name), "--report", "html", "--out", folder, "--dealer", "A & B <Supply>", "--number", "Q-17");
        Assert.InRange(run.Code, 0, 1);
        Assert.Empty(run.Output);
        string file = Path.Combine(folder, name + "." + kind + ".html");
        Assert.Equal([file], Directory.GetFiles(folder));
        string page = File.ReadAllText(file, Encoding.UTF8);
        Assert.Contains("<dt>Dealer</dt><dd>A &amp; B &lt;Supply&gt;</dd>", page, StringComparison.Ordinal);
        Assert.Contains("<dt>Number</dt><dd>Q-17</dd>", page, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", page, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("html", "<!DOCTYPE html>")]
    [InlineData("md", "# ")]
    [InlineData("text", "Brush cutter")]
    public void Report_WithoutAFolder_IsPrinted(string form, string begins) => Assert.StartsWith(
        begins, CliRun.Of("assess", CaseOf("thornbeck-bolt-right"), "--report", form).Output, StringComparison.Ordinal);

    [Fact]
    public void Report_OfSeveralCases_HasAPageThatListsThem()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        CliRun run = CliRun.Of("assess", CaseOf("thornbeck-bolt-right"), CaseOf("thornbeck-too-soft"), "--report", "html", "--out", folder);
        Assert.Equal(1, run.Code);   // not each is protected
        string index = File.ReadAllText(Path.Combine(folder, "index.html"), Encoding.UTF8);
        Assert.Contains("<a href=\"thornbeck-bolt-right.report.html\">", index, StringComparison.Ordinal);
        Assert.Contains("<a href=\"thornbeck-too-soft.report.html\">", index, StringComparison.Ordinal);
        Assert.Equal(3, Directory.GetFiles(folder).Length);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Report_FileThere_IsNotWrittenOverWithoutForce()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        string file = Path.Combine(folder, "thornbeck-bolt-right.report.md");
        File.WriteAllText(file, "mine");
        string[] args = ["assess", CaseOf("thornbeck-bolt-right"), "--report", "md", "--out", folder];
        Assert.Contains("is there already", CliRun.Refused(string.Empty, args), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(file));
        Assert.Equal(0, CliRun.Of([.. args, "--force"]).Code);
        Assert.StartsWith("# Brush cutter", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(folder));
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("advise")]
    [InlineData("choose")]
    public void Json_OfSeveralCases_IsRefused(string command) => Assert.Contains("several were given", CliRun.Refused(
        string.Empty, command, CaseOf("thornbeck-bolt-right"), CaseOf("thornbeck-too-soft"), "--json"), StringComparison.Ordinal);

    [Fact]
    public void SameCase_Twice_IsRefused() => Assert.Contains("would be one file", CliRun.Refused(
        string.Empty, "assess", CaseOf("thornbeck-bolt-right"), CaseOf("thornbeck-bolt-right")), StringComparison.Ordinal);

    private static string CaseOf(string name) => Path.Combine(Cases, name + ".case.json");
}
