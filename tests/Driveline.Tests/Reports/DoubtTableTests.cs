using System.Text.Json;
using Driveline.Cases.Results;
using Driveline.Findings;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

public class DoubtTableTests
{
    [Theory]
    [InlineData("thornbeck-bolt-right", Language.English, "Where the doubt comes from", "would narrow it most if it were known")]
    [InlineData("thornbeck-unmarked", Language.English, "Where the doubt comes from", "This leaves an end open")]
    [InlineData("dunmarsh-clutch-well-set", Language.Spanish, "De dónde viene la duda", "Lo que más lo estrecharía")]
    public void Report_DoubtsAskedFor_SaysWhatWouldNarrowTheBandMost(string name, Language language, string head, string most)
    {
        ReportOptions options = ReportOptions.Default.WithLanguage(language).WithTextWidth(200);
        Assert.DoesNotContain(head, VerdictText.Of(DemoCases.Verdict(name), options), StringComparison.Ordinal);
        string text = VerdictText.Of(DemoCases.Verdict(name), options.WithDoubts(true));
        Assert.Contains(head, text, StringComparison.Ordinal);
        Assert.Contains(most, text, StringComparison.Ordinal);
        Assert.Contains(head, VerdictHtml.Of(DemoCases.Verdict(name), options.WithDoubts(true)), StringComparison.Ordinal);
        Assert.Contains(head, VerdictMarkdown.Of(DemoCases.Verdict(name), options.WithDoubts(true)), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_OfEveryDemo_HasItsDoubtsOnlyWhenAskedFor()
    {
        foreach (string name in DemoCases.Names)
        {
            using JsonDocument without = JsonDocument.Parse(VerdictJson.Of(DemoCases.Verdict(name)).ToJson());
            Assert.Equal(JsonValueKind.Null, without.RootElement.GetProperty("doubt").ValueKind);
            using JsonDocument with = JsonDocument.Parse(
                VerdictJson.Of(DemoCases.Verdict(name), ResultOptions.Default.WithDoubts(true)).ToJson());
            foreach (JsonElement device in with.RootElement.GetProperty("doubt").GetProperty("devices").EnumerateArray())
            {
                JsonElement[] bounded = [.. device.GetProperty("sources").EnumerateArray()
                    .Where(s => s.GetProperty("share").ValueKind == JsonValueKind.Number)];
                double shares = bounded.Sum(s => s.GetProperty("share").GetDouble());
                Assert.True(bounded.Length == 0 || Math.Abs(shares - 1) < 1e-9, name);
                Assert.Equal(shares, device.GetProperty("byBasis").EnumerateArray().Sum(b => b.GetProperty("share").GetDouble()), 9);
            }
        }
    }

    [Fact]
    public void Source_EveryCode_HasWordsInBothLanguages() => Assert.All(
        typeof(DoubtCodes).GetFields().Select(f => (string)f.GetRawConstantValue()!),
        code => Assert.All([Texts.English, Texts.Spanish], texts => Assert.Contains(code, texts.Codes)));
}
