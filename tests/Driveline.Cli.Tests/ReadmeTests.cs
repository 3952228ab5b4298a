using System.Text.RegularExpressions;

namespace Driveline.Cli.Tests;

/// <summary>What the README and the docs show is what the code does.</summary>
public partial class ReadmeTests
{
    [Theory]
    [InlineData("README.md", "ReadmeExample.cs")]
    [InlineData("monitoring.md", "MonitoringExample.cs")]
    public void Page_Example_IsTheCompiledOne(string page, string example)
    {
        string[] parts = Marker().Split(Text(example));
        string code = parts[1].Trim() + "\n\n" + string.Join(
            '\n', parts[3].Trim('\n').Split('\n').Select(l => l.StartsWith("        ", StringComparison.Ordinal) ? l[8..] : l)).Trim();
        Assert.Contains(code.Replace("console.", "Console.", StringComparison.Ordinal), Text(page), StringComparison.Ordinal);
    }

    [Fact]
    public void Readme_Output_IsWhatTheExamplePrints() => AssertPrints("README.md", ReadmeExample.Run);

    [Fact]
    public void Monitoring_Output_IsWhatTheExamplePrints() => AssertPrints("monitoring.md", MonitoringExample.Run);

    private static void AssertPrints(string page, Action<TextWriter> example)
    {
        using var console = new StringWriter { NewLine = "\n" };
        example(console);
        Assert.Contains("```text\n" + console.ToString() + "```", Text(page), StringComparison.Ordinal);
    }

    private static string Text(string file) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, file)).Replace("\r\n", "\n", StringComparison.Ordinal);

    [GeneratedRegex("[ ]*// (?:README|Docs) example: [a-z ]+\n")]
    private static partial Regex Marker();
}
