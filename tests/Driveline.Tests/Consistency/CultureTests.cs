using System.Text;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Tests.Cases;

namespace Driveline.Tests.Consistency;

/// <summary>The culture of the machine changes nothing: neither what is read nor what is written.</summary>
public class CultureTests
{
    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    public void Demos_InAnotherCulture_GiveTheSameBytes(string culture)
    {
        IReadOnlyDictionary<string, ProtectionVerdict> there = ForeignCulture.Verdicts(culture);
        foreach (string name in DemoCases.Names)
        {
            Assert.Equal(
                All(DemoCases.Verdict(name), DemoCases.Read(name)),
                ForeignCulture.In(culture, () => All(there[name], DemoCases.ReadAnew(name))));
        }
    }

    private static string[] All(ProtectionVerdict verdict, CaseFile file)
    {
        using var json = new MemoryStream();
        VerdictJson.Of(verdict).Write(json);
        return
        [
            Encoding.UTF8.GetString(json.ToArray()), VerdictText.Of(verdict), VerdictMarkdown.Of(verdict), VerdictHtml.Of(verdict),
            TorqueLadderPicture.Svg(verdict), CaseWriter.ToJson(file),
        ];
    }
}
