using System.Text.Json;

namespace Driveline.Cli.Tests;

/// <summary>--language es on every command that prints texts; errors and help stay English.</summary>
public class SpanishTests
{
    [Theory]
    [InlineData("Tenga cuidado", "demo", "thornbeck-too-soft")]
    [InlineData("¿A tiempo?", "demo")]
    [InlineData("nada sirve", "demo")]
    [InlineData("Otro caso completo: driveline demo NAME.", "demo")]
    [InlineData("Carga que lo rompe", "strength", "--thread", "M10", "--grade", "8.8")]
    [InlineData("Una marca acota la clase; nunca la demuestra.", "identify", "--lines", "3", "--size", "1/2 in")]
    public void AnyCommand_Spanish_AnswersInSpanish(string words, params string[] args)
    {
        CliRun run = CliRun.Of([.. args, "--language", "es"]);
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        Assert.Contains(words, run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(words, CliRun.Of(args).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Assess_Spanish_HasTheExitCodeOfTheVerdict()
    {
        CliRun run = CliRun.WithInput(SampleCase.Bare, "assess", "-", "--language", "es");
        Assert.Equal(1, run.Code);
        Assert.Contains("pare el motor, saque la llave", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("stop the engine", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Assess_SpanishJson_HasSpanishMessagesAndTheSameCodes()
    {
        using JsonDocument english = JsonDocument.Parse(CliRun.WithInput(SampleCase.Bare, "assess", "-", "--json").Output);
        using JsonDocument spanish = JsonDocument.Parse(
            CliRun.WithInput(SampleCase.Bare, "assess", "-", "--json", "--language", "es").Output);
        Assert.Equal(Strings(english, "findings", "code"), Strings(spanish, "findings", "code"));
        Assert.Empty(Strings(english, "findings", "text").Intersect(Strings(spanish, "findings", "text")));
        Assert.Empty(Strings(english, "measureNext", "text").Intersect(Strings(spanish, "measureNext", "text")));
        Assert.Contains("llave", Strings(spanish, "cautions", "text")[0], StringComparison.Ordinal);
        Assert.Equal(english.RootElement.GetProperty("verdict").GetString(), spanish.RootElement.GetProperty("verdict").GetString());
    }

    [Theory]
    [InlineData("ción", "demo")]
    [InlineData("ción", "identify", "--size", "1/2 in")]
    public void Json_Spanish_KeepsItsLettersReadable(string letters, params string[] args)
    {
        CliRun run = CliRun.Of([.. args, "--json", "--language", "es"]);
        Assert.Contains(letters, run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\\u00", run.Output.Replace("\\u0022", string.Empty, StringComparison.Ordinal)
            .Replace("\\u0027", string.Empty, StringComparison.Ordinal).Replace("\\u00B7", string.Empty, StringComparison.Ordinal)
            .Replace("\\u002B", string.Empty, StringComparison.Ordinal),
                StringComparison.Ordinal);
    }

    [Fact]
    public void Assess_SpanishOut_WritesSpanishFiles()
    {
        string folder = Directory.CreateTempSubdirectory("driveline").FullName;
        Assert.Equal(1, CliRun.WithInput(SampleCase.Bare, "assess", "-", "--out", folder, "--language", "es").Code);
        Assert.Contains("<html lang=\"es\" ", File.ReadAllText(Path.Combine(folder, "case.report.html")), StringComparison.Ordinal);
        Assert.Contains("## Tenga cuidado", File.ReadAllText(Path.Combine(folder, "case.report.md")), StringComparison.Ordinal);
        Assert.Contains(
            "Par en la toma de fuerza del tractor", File.ReadAllText(Path.Combine(folder, "case.ladder.svg")), StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void HelpAndErrors_Spanish_StayEnglish()
    {
        Assert.Equal(CliRun.Of("assess", "--help").Output, CliRun.Of("assess", "--help", "--language", "es").Output);
        Assert.Contains(
            "There is no demo case", CliRun.Refused(string.Empty, "demo", "no-such-case", "--language", "es"), StringComparison.Ordinal);
    }

    private static string[] Strings(JsonDocument json, string list, string member) =>
        [.. json.RootElement.GetProperty(list).EnumerateArray().Select(e => e.GetProperty(member).GetString()!)];
}
