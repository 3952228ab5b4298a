using System.Text.RegularExpressions;

namespace Driveline.Cli.Tests;

/// <summary>What the README shows is what the code does.</summary>
public partial class ReadmeTests
{
    private static string Readme => Text("README.md");

    [Fact]
    public void Readme_Example_IsTheCompiledOne()
    {
        string[] parts = Marker().Split(Text("ReadmeExample.cs"));
        string code = parts[1].Trim() + "\n\n" + string.Join('\n', parts[3].Trim('\n').Split('\n').Select(l => l.StartsWith("        ", StringComparison.Ordinal) ? l[8..] : l)).Trim();
        Assert.Contains(code.Replace("console.", "Console.", StringComparison.Ordinal), Readme, StringComparison.Ordinal);
    }

    [Fact]
    public void Readme_Output_IsWhatTheExamplePrints()
    {
        using var console = new StringWriter { NewLine = "\n" };
        ReadmeExample.Run(console);
        Assert.Contains("```text\n" + console.ToString() + "```", Readme, StringComparison.Ordinal);
    }

    private static string Text(string file) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, file)).Replace("\r\n", "\n", StringComparison.Ordinal);

    [GeneratedRegex("[ ]*// README example: [a-z ]+\n")]
    private static partial Regex Marker();
}
