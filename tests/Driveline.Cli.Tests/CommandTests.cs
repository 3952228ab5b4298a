using System.Diagnostics;
using System.Text.Json;

namespace Driveline.Cli.Tests;

public class CommandTests
{
    [Theory]
    [InlineData("asess", "Did you mean 'assess'?")]
    [InlineData("--jsn", "Did you mean '--json'?")]
    [InlineData("nonsense-beyond-hope", "--help")]
    public void UnknownWord_IsRefusedWithAHint(string word, string hint) =>
        Assert.Contains(hint, CliRun.Refused(string.Empty, word), StringComparison.Ordinal);

    [Theory]
    [InlineData("assess")]
    [InlineData("strength")]
    [InlineData("strength", "--thread", "M10")]
    [InlineData("identify")]
    [InlineData("demo", "--units", "furlongs")]
    [InlineData("demo", "--language", "tlh")]
    [InlineData("assess", "-", "--unknown")]
    [InlineData("demo", "a", "b")]
    [InlineData("schema", "@file")]
    public void MissingOrWrongOption_IsRefusedWithAHint(params string[] args) =>
        Assert.Contains("--help", CliRun.Refused(string.Empty, args), StringComparison.Ordinal);

    [Fact]
    public void Help_IsAnAnswer()
    {
        CliRun run = CliRun.Of("--help");
        Assert.Equal(0, run.Code);
        Assert.Contains("assess", run.Output, StringComparison.Ordinal);
        Assert.Equal(run.Output, CliRun.Of().Output);
    }

    [Fact]
    public void Schema_IsJsonSchema()
    {
        CliRun run = CliRun.Of("schema");
        Assert.Equal(0, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Contains("2020-12", json.RootElement.GetProperty("$schema").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Strength_Json_HasThePrintedLoads()
    {
        CliRun run = CliRun.Of("strength", "--thread", "1/2-13 UNC", "--grade", "SAE 5", "--json");
        Assert.Equal(0, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement root = json.RootElement;
        Assert.Equal(91.55, root.GetProperty("stressAreaMm2").GetDouble(), 0.01);           // 0.1419 in²
        Assert.Equal(53652, root.GetProperty("proofLoadN").GetDouble(), 1.0);               // 85 ksi × 0.1419 in² = 12 061.5 lbf
        JsonElement published = root.GetProperty("published");
        Assert.Equal(53823, published.GetProperty("proofLoadN").GetDouble(), 1.0);          // rounded to 100 lbf: 12 100 lbf
        // 120 ksi × 0.1419 in² = 17 028 lbf, rounded: 17 000 lbf
        Assert.Equal(75620, published.GetProperty("tensileLoadN").GetDouble(), 1.0);
        JsonElement shear = root.GetProperty("shearLoadPerPlaneN");
        Assert.True(shear.GetProperty("shank").GetProperty("low").GetDouble() > shear.GetProperty("thread").GetProperty("low").GetDouble());
        Assert.NotEqual(0, root.GetProperty("sources").GetArrayLength());
        Assert.NotNull(root.GetProperty("weakestBasis").GetProperty("document").GetString());
    }

    [Theory]
    [InlineData("M10 x", "8.8", "--thread")]
    [InlineData("M10", "SAE 10", "--grade")]
    [InlineData("M10", "SAE 5", "is not held at")]
    public void Strength_UnknownThreadOrGrade_IsRefused(string thread, string grade, string named) =>
        Assert.Contains(named, CliRun.Refused(string.Empty, "strength", "--thread", thread, "--grade", grade), StringComparison.Ordinal);

    [Fact]
    public void Strength_Text_SaysUnitsOfChoice()
    {
        Assert.Contains(
            " lbf", CliRun.Of("strength", "--thread", "1/2-13 UNC", "--grade", "SAE 5", "--units", "us").Output, StringComparison.Ordinal);
        Assert.Contains(" N", CliRun.Of("strength", "--thread", "M10", "--grade", "8.8").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Identify_ThreeLines_IsGradeFiveFirst()
    {
        CliRun run = CliRun.Of("identify", "--lines", "3", "--size", "1/2 in", "--json");
        Assert.Equal(0, run.Code);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement first = json.RootElement.GetProperty("candidates")[0];
        Assert.Equal("SAE 5", first.GetProperty("grade").GetString());
        Assert.Equal(827, first.GetProperty("tensileMPa").GetProperty("low").GetDouble(), 1.0);   // 120 ksi
        Assert.NotEmpty(json.RootElement.GetProperty("advice").GetString()!);
    }

    [Fact]
    public void Identify_Unmarked_HasNoKnownHighEnd()
    {
        using JsonDocument json = JsonDocument.Parse(CliRun.Of("identify", "--size", "1/2 in", "--json").Output);
        JsonElement[] candidates = [.. json.RootElement.GetProperty("candidates").EnumerateArray()];
        Assert.Contains(candidates, c => c.GetProperty("tensileMPa").GetProperty("high").ToString() == "unbounded");
        Assert.Contains("no known end", CliRun.Of("identify", "--size", "1/2 in").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--lines", "-1", "--size", "1/2 in")]
    [InlineData("--lines", "25", "--size", "1/2 in")]
    [InlineData("--lines", "3", "--size", "1/2 miles")]
    [InlineData("--lines", "three", "--size", "1/2 in")]
    public void Identify_BadInput_IsRefused(params string[] args) => CliRun.Refused(string.Empty, ["identify", .. args]);

    [Fact]
    public void Process_PipedOutput_HasNoColourAndTheExitCode()
    {
        var start = new ProcessStartInfo(
            "dotnet")
        { RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "Driveline.Cli.dll"));
        start.ArgumentList.Add("assess");
        start.ArgumentList.Add("-");
        using Process process = Process.Start(start)!;
        process.StandardInput.Write("{ \"titel\": 1 }");
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        string error = process.StandardError.ReadToEnd();
        Assert.True(process.WaitForExit(60000));
        Assert.Equal(2, process.ExitCode);
        Assert.Empty(output);
        Assert.Contains("titel", error, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', error);
    }
}
