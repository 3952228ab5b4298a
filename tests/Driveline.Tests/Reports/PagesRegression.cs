using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>
/// Whole pages of two demos as files, whose diff shows every change. To accept one, copy the received file named in the failure over
/// tests/Driveline.Tests/Reports/approved/.
/// </summary>
public class PagesRegression
{
    [Theory]
    [InlineData("thornbeck-bolt-right.en.html")]
    [InlineData("thornbeck-bolt-right.es.md")]
    [InlineData("thornbeck-bolt-right.en.svg")]
    [InlineData("dunmarsh-clutch-well-set.es.svg")]
    public void Page_OfADemo_IsTheApprovedOne(string file)
    {
        string[] parts = file.Split('.');
        ReportOptions options = ReportOptions.Default.WithTitle(parts[0]).WithLanguage(Languages.Parse(parts[1]));
        string received = parts[2] switch
        {
            "html" => VerdictHtml.Of(DemoCases.Verdict(parts[0]), options),
            "md" => VerdictMarkdown.Of(DemoCases.Verdict(parts[0]), options),
            _ => TorqueLadderPicture.Svg(DemoCases.Verdict(parts[0]), options),
        };
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
