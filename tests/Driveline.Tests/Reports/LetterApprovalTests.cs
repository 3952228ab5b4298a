#if !NETSTANDARD_BUILD
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>Every letter of the demos in both languages, as a file that somebody has read aloud.</summary>
/// <remarks>
/// To accept a change read it, then copy the received files named in the failure over tests/Driveline.Tests/Reports/approved/.
/// </remarks>
public class LetterApprovalTests
{
    public static TheoryData<string, Language> Letters
    {
        get
        {
            var data = new TheoryData<string, Language>();
            foreach (string name in DemoCases.Names)
            {
                data.Add(name, Language.English);
                data.Add(name, Language.Spanish);
            }

            return data;
        }
    }

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "approved-letters");

    [Theory]
    [MemberData(nameof(Letters))]
    public void Letter_OfADemo_IsTheApprovedOne(string name, Language language)
    {
        string received = AdviceText.Of(DemoCases.Advice(name).Advice!, ReportOptions.Default
            .WithTitle(DemoCases.Read(name).Title)
            .WithLanguage(language)
            .WithUnits(language == Language.English ? DisplayUnits.UsCustomary : DisplayUnits.Metric));
        string file = name + "." + Languages.CodeOf(language) + ".txt";
        string path = Path.Combine(Folder, file);
        string approved = File.Exists(path) ? File.ReadAllText(path).Replace("\r\n", "\n", StringComparison.Ordinal) : string.Empty;
        if (received != approved)
        {
            string folder = Path.Combine(Folder, "received");
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, file), received);
            string[] old = approved.Split('\n');
            string[] now = received.Split('\n');
            Assert.Fail(Path.Combine(folder, file) + " differs\n" + string.Join("\n", now.Except(old).Take(10).Select(l => "+ " + l)
                .Concat(old.Except(now).Take(10).Select(l => "- " + l))));
        }
    }
}
#endif
