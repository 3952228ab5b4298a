using Driveline.Cases.Questions;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>Torques of work stated at an element of the driveline are referred to the PTO, in the verdict and in simulations.</summary>
public class CaseWorkTests
{
    [Theory]
    [InlineData("pto", 500, 650, "as stated")]
    [InlineData("main gearbox", 500, 650, "its input turns as fast as the PTO")]
    [InlineData("blades and carrier", 765.6, 995.3, "500 and 650 · 1.47/0.96")]
    public void SteadyPeak_StatedElsewhere_IsReferred(string place, double expected, double high, string sum)
    {
        ProtectionVerdict verdict = Verdict(
            "thornbeck-bolt-right", "\"peaksPerHour\": 40,", "\"peaksPerHour\": 40, \"at\": \"" + place + "\",");
        Close.Relative(expected, verdict.WorkPeak!.Expected!.Value.NewtonMeters, 1e-4, sum);
        Close.Relative(high, verdict.WorkPeak.High!.Value.NewtonMeters, 1e-4, sum);
    }

    [Fact]
    public void SteadyPeak_AtTheRotor_LeavesLessRoomThanAtThePto()
    {
        // 1200 N·m at the rotor are 1837.5 at the PTO: above all that a weak bolt holds, 1035.
        ProtectionVerdict verdict = Verdict("thornbeck-bolt-right", "\"high\": \"650 N.m\" }, \"peaksPerHour\": 40,",
            "\"high\": \"1200 N.m\" }, \"peaksPerHour\": 40, \"at\": \"blades and carrier\",");
        Assert.NotEqual(Answer.Yes, verdict.Quiet);
        Assert.Contains(verdict.Findings, f => f.Because.Contains("work.at"));   // taken away, the same torque would stand at the PTO
    }

    [Fact]
    public void SteadyPeak_BehindAnUnknownRatio_IsNotKnown()
    {
        ProtectionVerdict verdict = Verdict("thornbeck-bolt-right", "\"ratio\": 1.47, ", string.Empty, "\"peaksPerHour\": 40,",
            "\"peaksPerHour\": 40, \"at\": \"blades and carrier\",");
        Assert.Null(verdict.WorkPeak);
        Assert.NotEqual(Answer.Yes, verdict.Quiet);
    }

    [Fact]
    public void SteadyMean_AtTheRotor_IsTheReferredLoadOfAStrike()
    {
        CaseSimulation run = CaseSimulation.Of(CaseReaderTests.ReadGood(DemoCases.Json("ravensmoor-rock").Replace(
            "\"steadyMean\": \"300 N.m\",", "\"steadyMean\": \"150 N.m\", \"at\": \"blades and carrier\",", StringComparison.Ordinal)));
        Close.Relative(229.7, run.Simulation!.Drive.Load!.Expected!.Value.NewtonMeters, 1e-3, "150 · 1.47/0.96");
    }

    [Fact]
    public void Traces_OfAStrike_BeginAtTheTorqueBeforeContact()
    {
        // Work takes 300 N·m at the PTO, 300/1.47 = 204.08 behind the gearbox, whatever runs.
        CaseSimulation run = CaseSimulation.Of(DemoCases.Read("ravensmoor-rock"));
        foreach (SimulatedLoad load in run.Check!.Loads.Where(l => l.Element.Name != "blades and carrier"))
        {
            double begin = load.Element.Name == "blade shaft" ? 300 / 1.47 : 300;
            Close.Relative(begin, run.Check.With!.Trace(load.Element, 5)[0], 1e-12, load.Element.Name + ", with");
            Close.Relative(begin, run.Check.Without!.Trace(load.Element, 5)[0], 1e-12, load.Element.Name + ", without");
        }
    }

    private static ProtectionVerdict Verdict(string name, params string[] replaced)
    {
        string json = DemoCases.Json(name);
        for (int k = 0; k < replaced.Length; k += 2)
        {
            Assert.Contains(replaced[k], json, StringComparison.Ordinal);
            json = json.Replace(replaced[k], replaced[k + 1], StringComparison.Ordinal);
        }

        return ProtectionCheck.Run(CaseQuestion.Of(CaseReaderTests.ReadGood(json)).Question!);
    }
}
