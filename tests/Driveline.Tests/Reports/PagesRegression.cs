using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>
/// Whole pages and pictures of demos as files, whose diff shows every change. To accept one, copy the received file named in the failure
/// over tests/Driveline.Tests/Reports/approved/.
/// </summary>
public class PagesRegression
{
    [Theory]
    [InlineData("thornbeck-bolt-right.report.en.html")]
    [InlineData("thornbeck-bolt-right.report.es.md")]
    [InlineData("thornbeck-bolt-right.calculation.en.md")]
    [InlineData("thornbeck-bolt-right.quote.en.html")]
    [InlineData("thornbeck-bolt-right.ladder.en.svg")]
    [InlineData("thornbeck-bolt-right.planes.en.svg")]
    [InlineData("thornbeck-bolt-right.grades.en.svg")]
    [InlineData("thornbeck-too-strong.choice.en.html")]
    [InlineData("dunmarsh-clutch-well-set.ladder.es.svg")]
    [InlineData("dunmarsh-clutch-well-set.clutch-calculation.es.md")]
    [InlineData("dunmarsh-clutch-well-set.clutch.en.md")]
    [InlineData("dunmarsh-clutch-well-set.setting.en.svg")]
    [InlineData("dunmarsh-clutch-well-set.temperature.en.svg")]
    [InlineData("dunmarsh-clutch-well-set.section.en.svg")]
    [InlineData("dunmarsh-clutch-well-set.clutch.en.html")]
    [InlineData("dunmarsh-clutch-well-set.clutch-calculation.en.html")]
    [InlineData("larkfield-soft-bolts.costs.en.svg")]
    [InlineData("larkfield-soft-bolts.advice.en.html")]
    [InlineData("ravensmoor-rock.strike.en.md")]
    [InlineData("ravensmoor-rock.strike.es.html")]
    [InlineData("ravensmoor-rock.traces.en.svg")]
    public void Page_OfADemo_IsTheApprovedOne(string file)
    {
        string[] parts = file.Split('.');
        ReportOptions options = ReportOptions.Default.WithTitle(parts[0]).WithLanguage(Languages.Parse(parts[2]));
        string received = PageKinds.Of(parts[0], parts[1], parts[3], options);
        string folder = Path.Combine(AppContext.BaseDirectory, "approved-pages");
        string approved = Path.Combine(folder, file);
        string expected = File.Exists(approved) ? File.ReadAllText(approved).Replace("\r\n", "\n", StringComparison.Ordinal) : string.Empty;
        if (received != expected)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(approved + ".received", received);
            Assert.Fail("The page changed; see " + approved + ".received");
        }
    }
}
