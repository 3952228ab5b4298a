using System.Reflection;
using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <summary>One version for all: it stands in Directory.Build.props, and every assembly and result has it from there.</summary>
public class VersionTests
{
    private static readonly string[] Libraries =
    [
        "Driveline", "Driveline.Wording", "Driveline.Cases", "Driveline.Reports", "Driveline.Sweeps", "Driveline.Fleet", "Driveline.Cli",
    ];

    private static string Held => System.Xml.Linq.XDocument.Load(Path.Combine(AppContext.BaseDirectory, "version", "Directory.Build.props"))
        .Descendants("Version").Single().Value;

    [Fact]
    public void Assemblies_OfOneBuild_HaveTheVersionThatStandsInOnePlace() => Assert.All(Libraries, name => Assert.Equal(
        Held, Assembly.Load(name).GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0]));

    [Fact]
    public void Result_Library_IsThatVersion()
    {
        using JsonDocument json = JsonDocument.Parse(CliRun.Of("strength", "--thread", "M10", "--grade", "8.8", "--json").Output);
        Assert.Equal(Held, json.RootElement.GetProperty("library").GetString());
    }

    [Theory]
    [InlineData("gearbox-hurt.cs")]
    [InlineData("slip-torque.cs")]
    [InlineData("which-factor.cs")]
    public void Script_OfTheDocs_AsksForThatVersion(string script) => Assert.StartsWith(
        "#:package Driveline.Sweeps@" + Held + "\n",
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "scripts", script)).Replace("\r\n", "\n", StringComparison.Ordinal),
        StringComparison.Ordinal);
}
