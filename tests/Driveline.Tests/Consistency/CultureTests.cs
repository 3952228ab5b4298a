using System.Globalization;
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
        string[] here = All();
        Assert.NotEqual("1.5", 1.5.ToString(CultureInfo.GetCultureInfo(culture)));   // the culture must differ for this to prove anything
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(here, All());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string[] All() => [.. DemoCases.Names.SelectMany(name =>
    {
        ProtectionVerdict verdict = DemoCases.Verdict(name);
        using var json = new MemoryStream();
        VerdictJson.Write(verdict, json);
        return new[]
        {
            Encoding.UTF8.GetString(json.ToArray()), VerdictText.Of(verdict), VerdictMarkdown.Of(verdict), VerdictHtml.Of(verdict),
            TorqueLadderPicture.Svg(verdict), CaseWriter.ToJson(DemoCases.Read(name)),
        };
    })];
}
