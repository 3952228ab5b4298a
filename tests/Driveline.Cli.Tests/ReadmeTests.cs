using System.Text;
using Driveline.Cli.Tests.Examples;

namespace Driveline.Cli.Tests;

/// <summary>What the README shows is what the code does.</summary>
public class ReadmeTests
{
    [Fact]
    public async Task Readme_Service_AnswersAndListsErrors()
    {
        using var good = new MemoryStream(Encoding.UTF8.GetBytes(SampleCase.Bare));
        using var response = new MemoryStream();
        Assert.Empty(await ReadmeServiceExample.Assess(good, response, CancellationToken.None));
        Assert.Contains("\"title\": \"Bare\"", Encoding.UTF8.GetString(response.ToArray()), StringComparison.Ordinal);
        using var bad = new MemoryStream(Encoding.UTF8.GetBytes("{ \"titel\": 1 }"));
        Assert.Equal(["titel"], (await ReadmeServiceExample.Assess(bad, response, CancellationToken.None)).Keys);
    }

    [Fact]
    public void Readme_Letter_IsWhatTheToolPrints()
    {
        string letter = CliRun.Of("advise", "larkfield-soft-bolts", "--units", "us").Output.Replace("\r\n", "\n", StringComparison.Ordinal);
        string page = letter[..letter.IndexOf("\nTake care\n", StringComparison.Ordinal)].TrimEnd();
        bool isShown = DocsPage.Text("README.md").Contains("```text\n" + page + "\n```", StringComparison.Ordinal);
        Assert.True(isShown, "README.md does not show\n" + page);
    }

    [Fact]
    public void Readme_Json_IsACaseThatAnswers()
    {
        string json = DocsPage.Text("README.md").Split("```json\n")[1].Split("```")[0];
        CliRun assess = CliRun.WithInput(json, "assess", "-");
        Assert.Equal((1, string.Empty), (assess.Code, assess.Error));
        Assert.Contains("softer grade than the manual", CliRun.WithInput(json, "advise", "-").Output, StringComparison.Ordinal);
    }
}
