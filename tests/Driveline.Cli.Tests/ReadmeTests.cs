using System.Text;
using System.Text.RegularExpressions;

namespace Driveline.Cli.Tests;

/// <summary>What the README and the docs show is what the code does.</summary>
public partial class ReadmeTests
{
    [Theory]
    [InlineData("README.md", "ReadmeExample.cs")]
    [InlineData("README.md", "ReadmeCaseExample.cs")]
    [InlineData("README.md", "ReadmeServiceExample.cs")]
    [InlineData("monitoring.md", "MonitoringExample.cs")]
    [InlineData("own-data.md", "OwnDataExample.cs")]
    [InlineData("from-code.md", "FromCodeExample.cs")]
    [InlineData("break-torque.md", "BreakTorqueExample.cs")]
    public void Page_Example_IsTheCompiledOne(string page, string example)
    {
        string[] parts = Marker().Split(Text(example));
        string code = parts[1].Trim() + "\n\n" + string.Join(
            '\n', WithoutIndent(parts[3].Trim('\n').Split('\n'))).Trim();
        Assert.Contains(code.Replace("console.", "Console.", StringComparison.Ordinal), Text(page), StringComparison.Ordinal);
    }

    [Fact]
    public void Readme_Output_IsWhatTheExamplePrints() => AssertPrints("README.md", ReadmeExample.Run);

    [Fact]
    public void Readme_OutputOfTheCase_IsWhatTheExamplePrints() => AssertPrints("README.md", ReadmeCaseExample.Run);

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
        Assert.True(Text("README.md").Contains("```text\n" + page + "\n```", StringComparison.Ordinal), "README.md does not show\n" + page);
    }

    [Fact]
    public void Readme_Json_IsACaseThatAnswers()
    {
        string json = Text("README.md").Split("```json\n")[1].Split("```")[0];
        CliRun assess = CliRun.WithInput(json, "assess", "-");
        Assert.Equal((1, string.Empty), (assess.Code, assess.Error));
        Assert.Contains("softer grade than the manual", CliRun.WithInput(json, "advise", "-").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Monitoring_Output_IsWhatTheExamplePrints() => AssertPrints("monitoring.md", MonitoringExample.Run);

    [Fact]
    public void FromCode_Output_IsWhatTheExamplePrints() => AssertPrints("from-code.md", FromCodeExample.Run);

    [Fact]
    public void OwnData_Output_IsWhatTheExamplePrints() => AssertPrints("own-data.md", OwnDataExample.Run);

    [Fact]
    public void BreakTorque_Output_IsWhatTheExamplePrints() => AssertPrints("break-torque.md", BreakTorqueExample.Run);

    private static void AssertPrints(string page, Action<TextWriter> example)
    {
        using var console = new StringWriter { NewLine = "\n" };
        example(console);
        Assert.True(Text(page).Contains("```text\n" + console + "```", StringComparison.Ordinal), page + " does not show\n" + console);
    }

    private static IEnumerable<string> WithoutIndent(string[] lines)
    {
        int indent = lines.Where(l => l.Length > 0).Min(l => l.Length - l.TrimStart().Length);
        return lines.Select(l => l.Length > 0 ? l[indent..] : l);
    }

    private static string Text(string file) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, file)).Replace("\r\n", "\n", StringComparison.Ordinal);

    [GeneratedRegex("[ ]*// (?:README|Docs) example: [a-z ]+\n")]
    private static partial Regex Marker();
}
