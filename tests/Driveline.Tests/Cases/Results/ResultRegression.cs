#if !NETSTANDARD_BUILD
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;

namespace Driveline.Tests.Cases;

/// <summary>The result of every demo as JSON, frozen: a change of any number, code or answer shows as a diff of lines.</summary>
/// <remarks>
/// These are our own answers: no evidence that they are right. To accept a change read the diff, then copy the received files over
/// tests/Driveline.Tests/Cases/approved/.
/// </remarks>
public class ResultRegression
{
    public static TheoryData<string> Demos => [.. DemoCases.Names];

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "approved-results");

    [Theory]
    [MemberData(nameof(Demos))]
    public void Result_OfADemo_IsTheApprovedOne(string name)
    {
        ResultOptions options = ResultOptions.Default.WithCase(DemoCases.Read(name));
        var differing = new List<string>();
        Compare(name, "assess", VerdictJson.Of(DemoCases.Verdict(name), options), differing);
        Compare(name, "advise", AdviceJson.Of(DemoCases.Advice(name).Advice!, options), differing);
        Compare(name, "choose", ChoiceJson.Of(DemoCases.ChoiceInItsTerms(name), DemoCases.Settings(name), options), differing);
        Compare(name, "simulate", SimulationJson.Of(DemoCases.Simulation(name), options), differing);
        foreach (CaseClutch clutch in CaseAssessment.Of(DemoCases.Read(name)).Clutches())
        {
            Compare(name, "clutch", ClutchJson.Of(clutch.Review(), [], options), differing);
        }

        Assert.True(differing.Count == 0, string.Join("\n", differing));
    }

    private static void Compare(string name, string verb, ResultDocument result, List<string> differing)
    {
        string received = FrozenJson.Of(result.ToJson());
        string file = name + "." + verb + ".json";
        string path = Path.Combine(Folder, file);
        string approved = File.Exists(path) ? File.ReadAllText(path).Replace("\r\n", "\n", StringComparison.Ordinal) : string.Empty;
        if (received != approved)
        {
            string folder = Path.Combine(Folder, "received");
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, file), received);
            string[] old = approved.Split('\n');
            string[] now = received.Split('\n');
            differing.Add(Path.Combine(folder, file) + " differs\n" + string.Join("\n", now.Except(old).Take(10).Select(l => "+ " + l)
                .Concat(old.Except(now).Take(10).Select(l => "- " + l))));
        }
    }
}
#endif
