using System.Text.Json;

namespace Driveline.Cli.Tests;

public class DemoTests
{
    [Fact]
    public void DemoList_NamesEveryCaseOfTheFolder()
    {
        string[] files = [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "cases"), "*.case.json")
            .Select(f => Path.GetFileName(f).Replace(".case.json", string.Empty, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        Assert.NotEmpty(files);
        CliRun run = CliRun.Of("demo", "--list");
        Assert.Equal(0, run.Code);
        string[] listed = run.Output.TrimEnd().Split(Environment.NewLine);
        Assert.Equal("thornbeck-bolt-right", listed[0]);   // the case in which all is well comes first
        Assert.Equal(files, listed.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Demo_All_ShowsOverviewAndTheFirstInFull()
    {
        CliRun run = CliRun.Of("demo");
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        Assert.DoesNotContain('\u001b', run.Output);
        Assert.All(Names(), name => Assert.Contains(name, run.Output, StringComparison.Ordinal));
        Assert.Contains("The three questions", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Demo_EachCase_AnswersInBothForms() => Assert.All(Names(), name =>
    {
        Assert.Contains("Take care", CliRun.Of("demo", name).Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(CliRun.Of("demo", name, "--json").Output);
        Assert.True(json.RootElement.TryGetProperty("verdict", out _));
    });

    [Fact]
    public void Demo_UnknownName_IsRefusedWithTheNames() =>
        Assert.Contains(Names()[0], CliRun.Refused(string.Empty, "demo", "no-such-case"), StringComparison.Ordinal);

    private static string[] Names() => CliRun.Of("demo", "--list").Output.TrimEnd().Split(Environment.NewLine);
}
