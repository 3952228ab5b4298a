using System.Text;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>No case file, however made, takes more than its share of work; told by work counted, not by time.</summary>
public class CaseLimitsTests
{
    private const string Ramp = "\"low\": \"3 s\", \"expected\": \"4 s\", \"high\": \"5 s\"";

    [Theory]
    [InlineData("1000000 N.m/rad", "0.012 kg.m2")]
    [InlineData("1000000000 N.m/rad", "0.012 kg.m2")]
    [InlineData("1000000000 N.m/rad", "0.000001 kg.m2")]
    public void Question_OfAStiffLineOfFewParts_EndsWithinTheUsualWork(string stiffness, string inertia)
    {
        // At √(10⁹/10⁻⁶) = 32 million rad/s a second has 16 million steps of 2 rad; what is stiff no longer sets the step.
        CaseQuestion asked = CaseQuestion.Of(Stiff(stiffness, inertia, 0));
        Assert.InRange(asked.SimulationWork, 1, SimulationLimits.Usual.Work);
        Assert.DoesNotContain(asked.Question!.Notes, f => f.Code == SimulationFindings.TooMuchWork);
    }

    [Theory]
    [InlineData("1000000000 N.m/rad", "0.000001 kg.m2", 20)]
    [InlineData("1000000000 N.m/rad", "0.000001 kg.m2", 150)]
    [InlineData("9000 N.m/rad", "0.012 kg.m2", 190)]
    public void Question_OfAStiffCase_EndsInTheFindingWithinItsWork(string stiffness, string inertia, int more)
    {
        CaseFile file = Stiff(stiffness, inertia, more);
        CaseQuestion asked = CaseQuestion.Of(file);

        // The step that passes the limit is the last one: of 320 links and rotors 8 · 320 · 29 for its series, and its search.
        Assert.InRange(asked.SimulationWork, 1, SimulationLimits.Usual.Work + 10_000_000);
        Assert.Contains(asked.Question!.Notes, f => f.Code == SimulationFindings.TooMuchWork);
        Assert.Null(asked.Question.Engagement.Peak);
        Assert.NotEqual(Answer.Yes, ProtectionCheck.Run(asked.Question).Quiet);
    }

    [Theory]
    [InlineData("1000000000 N.m/rad", "0.000001 kg.m2", 150)]
    public void SimulationAndAdvice_OfAStiffCase_StayWithinTheirWork(string stiffness, string inertia, int more)
    {
        CaseFile file = Stiff(stiffness, inertia, more);
        SimulationCheck check = CaseSimulation.Of(file).Check!;
        Assert.InRange(check.Work, 1, SimulationLimits.Usual.Work + 10_000_000);
        Assert.Contains(check.Findings, f => f.Code == SimulationFindings.TooMuchWork && f.Severity == Severity.Warning);
        Assert.InRange(CaseAdvice.Of(file).SimulationWork, 1, SimulationLimits.Usual.Work + 10_000_000);
    }

    [Fact]
    public void Demos_AllOfThem_StayWithinTheUsualLimits()
    {
        foreach (string name in DemoCases.Names)
        {
            Assert.True(DemoCases.Advice(name).SimulationWork <= SimulationLimits.Usual.Work, name);
            Assert.DoesNotContain(DemoCases.Simulation(name).Findings, f => f.Code == SimulationFindings.TooMuchWork);
        }
    }

    [Fact]
    public void Limits_OfNoWork_RunNothingAndSayIt()
    {
        CaseFile file = DemoCases.Read("ravensmoor-clutch-let-in-gently");
        SimulationLimits none = SimulationLimits.OfWork(0);
        CaseQuestion asked = CaseQuestion.Of(file, none);
        Assert.Equal(0, asked.SimulationWork);
        Assert.Null(asked.Question!.Engagement.Peak);
        Assert.Single(asked.Question.Notes, f => f.Code == SimulationFindings.TooMuchWork);
        Assert.NotNull(CaseQuestion.Of(file).Question!.Engagement.Peak);
    }

    [Fact]
    public void Strike_CutOffAnywhere_DecidesNothingThatTheWholeRunDoesNot()
    {
        CaseFile file = DemoCases.Read("ravensmoor-rock");
        SimulationCheck whole = DemoCases.Simulation("ravensmoor-rock").Check!;
        for (int part = 0; part < 10; part++)
        {
            SimulationCheck cut = CaseSimulation.Of(file, SimulationLimits.OfWork(whole.Work * part / 10)).Check!;
            Assert.Contains(cut.Findings, f => f.Code == SimulationFindings.TooMuchWork);
            Assert.All(cut.Loads.Zip(whole.Loads), pair =>
            {
                Assert.True(pair.First.DamagedWith is Answer.Maybe or Answer.NotKnown || pair.First.DamagedWith == pair.Second.DamagedWith,
                    pair.First.Element.Name);
                Assert.True(pair.First.DamagedWithout is Answer.Maybe or Answer.NotKnown
                    || pair.First.DamagedWithout == pair.Second.DamagedWithout, pair.First.Element.Name);
            });
        }
    }

    [Fact]
    public void Advice_UnderLimitsOfItsOwn_ReusesTheStrikeOfItsQuestion()
    {
        CaseFile file = DemoCases.Read("ravensmoor-rock");
        Assert.Equal(CaseQuestion.Of(file).SimulationWork, CaseAdvice.Of(file).SimulationWork);
    }

    [Fact]
    public void Reader_TwentyBranchesOf180Elements_RefusesTheElementAfterTheThousandth()
    {
        // Five whole branches are 905 elements, the sixth branch is the 906th, its element [94] the 1001st.
        CaseReadResult read = CaseReader.Read(Branches(20, 180));
        Assert.Null(read.Case);
        CaseError error = Assert.Single(read.Errors);
        Assert.Equal(CaseErrorKind.OutOfRange, error.Kind);
        Assert.Equal("driveline[5].driveline[94]", error.Path);
        Assert.Equal(7, error.Line);
    }

    [Theory]
    [InlineData(199, true, "5 · 200")]
    [InlineData(200, false, "5 · 201")]
    public void Reader_FiveBranches_TakesAThousandElements(int inEach, bool isRead, string total)
    {
        CaseReadResult read = CaseReader.Read(Branches(5, inEach));
        Assert.True((read.Case is not null) == isRead, total);
    }

    private static string Branches(int branches, int inEach)
    {
        var json = new StringBuilder("{ \"driveline\": [\n");
        for (int b = 0; b < branches; b++)
        {
            json.Append(b == 0 ? string.Empty : ",\n").Append("{ \"branch\": \"b").Append(b)
                .Append("\", \"powerShare\": 0.01, \"driveline\": [");
            json.Append(string.Join(",", Enumerable.Range(0, inEach).Select(k => "{ \"yoke\": \"y" + b + "-" + k + "\" }"))).Append("] }");
        }

        return json.Append("\n] }").ToString();
    }

    private static CaseFile Stiff(string stiffness, string inertia, int more)
    {
        string shafts = string.Concat(Enumerable.Range(0, more).Select(k =>
            "{ \"shaft\": \"x" + k + "\", \"stiffness\": \"" + stiffness + "\", \"inertia\": \"" + inertia
                + "\", \"damping\": \"4 N.m.s/rad\" },"));
        string json = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "cases", "ravensmoor-clutch-let-in-gently.case.json"))
            .Replace(Ramp, "\"low\": \"20 s\", \"expected\": \"20 s\", \"high\": \"20 s\"", StringComparison.Ordinal)
            .Replace("9000 N.m/rad", stiffness, StringComparison.Ordinal)
            .Replace("\"inertia\": \"0.012 kg.m2\"", "\"inertia\": \"" + inertia + "\"", StringComparison.Ordinal)
            .Replace("{ \"gearbox\"", shafts + "{ \"gearbox\"", StringComparison.Ordinal);
        CaseReadResult read = CaseReader.Read(json);
        Assert.Empty(read.Errors);
        return read.Case!;
    }
}
