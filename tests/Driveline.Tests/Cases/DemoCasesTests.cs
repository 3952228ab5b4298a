using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Cases;

public class DemoCasesTests
{
    [Theory]
    [InlineData("thornbeck-bolt-right", Headline.Protected)]
    [InlineData("thornbeck-too-soft", Headline.TripsInWork)]
    [InlineData("thornbeck-too-strong", Headline.DoesNotProtect)]
    [InlineData("thornbeck-unmarked", Headline.Doubtful)]
    [InlineData("thornbeck-seized-hub", Headline.DoesNotProtect)]
    [InlineData("hollinmoor-no-bolt-fits", Headline.NoSettingFits)]
    [InlineData("ashby-lane-facts-missing", Headline.NotKnown)]
    [InlineData("saltmere-spreader-pin", Headline.Protected)]
    [InlineData("fenwick-auger-plain-bolt", Headline.DoesNotProtect)]
    [InlineData("millbrook-feed-auger", Headline.Doubtful)]
    [InlineData("ravensmoor-clutch-dropped-in", Headline.TripsInWork)]
    [InlineData("ravensmoor-clutch-let-in-gently", Headline.Protected)]
    [InlineData("ravensmoor-rock", Headline.Protected)]
    [InlineData("ravensmoor-stump", Headline.Protected)]
    [InlineData("ravensmoor-soft-branch", Headline.Protected)]
    [InlineData("ravensmoor-rusted-clutch-rock", Headline.DoesNotProtect)]
    [InlineData("ravensmoor-pan-on-stump", Headline.Protected)]
    [InlineData("dunmarsh-clutch-well-set", Headline.Protected)]
    [InlineData("dunmarsh-clutch-rusted", Headline.DoesNotProtect)]
    [InlineData("dunmarsh-clutch-never-slipped", Headline.Doubtful)]
    [InlineData("wickerby-clutch-coil-bound", Headline.DoesNotProtect)]
    [InlineData("wickerby-clutch-oiled", Headline.TripsInWork)]
    [InlineData("wickerby-clutch-too-hot", Headline.Doubtful)]
    [InlineData("cranley-baler-flywheel", Headline.Protected)]
    [InlineData("larkfield-soft-bolts", Headline.Doubtful)]
    [InlineData("larkfield-soft-root", Headline.AsSpecified)]
    [InlineData("larkfield-oak-root", Headline.NotKnown)]
    [InlineData("fenwick-twisted-tube", Headline.NotKnown)]
    [InlineData("hay-bottom-silent-clutch", Headline.NotKnown)]
    [InlineData("tarn-hollow-baler-not-measured", Headline.Doubtful)]
    public void Demo_Verdict_IsWhatItsTitleSays(string name, Headline headline)
    {
        ProtectionVerdict verdict = DemoCases.Verdict(name);
        Assert.True(headline == verdict.Headline,
            verdict + "; " + string.Join("; ", verdict.Devices.Select(d => d + " " + d.Device.Breakaway)) + "; "
            + string.Join("; ", verdict.Parts.Select(p => p + " " + p.Part.Limit?.DamagedAt + " acts " + p.ActsAt)) + "; "
                + string.Join("; ", verdict.Doubts.Select(o => o.Finding.Code)));
    }

    [Fact]
    public void SeizedHub_CountsAsNoDevice_WhateverElseIsKnown()
    {
        ProtectionVerdict verdict = DemoCases.Verdict("thornbeck-seized-hub");
        Assert.Equal(Answer.No, verdict.Guards);
        Assert.Equal(DemoCases.Verdict("thornbeck-bolt-right").Quiet, verdict.Quiet);
        Assert.All(verdict.Parts, p => Assert.Equal(Answer.No, p.Guards));
        Assert.True(verdict.Trip!.Low.NewtonMeters > 1000, "the bolt holds at least what it does on a free hub");
        Assert.Null(verdict.Trip.Expected);
        Assert.Null(verdict.Trip.High);
        ProtectionProbabilities chances = ProtectionProbabilities.Of(verdict);
        Assert.Null(chances.OnePeakTrips);
        Assert.Null(chances.MostAtRisk);
        Assert.Null(chances.Forecast(verdict.Devices[0], 40));

        ProtectionQuestion question = verdict.Question;
        ProtectionQuestion noLimits = question.WithChain(
            DrivelineChain.Of([.. question.Chain.Elements.Select(e => e is Part p ? Part.Of(p.Kind, p.Name) : e)]));
        Assert.Equal(Answer.No, ProtectionCheck.Run(noLimits.WithPartsComplete(false)).Guards);
    }

    [Fact]
    public void SeizedHub_BesideADeviceThatActs_LeavesThatOneToGuard()
    {
        ProtectionQuestion question = DemoCases.Verdict("thornbeck-seized-hub").Question;
        ProtectiveDevice second = StatedDevice.Of(
            "second", DeviceKind.CutOut, AfterTrip.TorqueGone, TorqueBand.Exactly(Torque.FromNewtonMeters(1500), Basis.Given("row")));
        ProtectionVerdict verdict = ProtectionCheck.Run(question.WithChain(DrivelineChain.Of([second, .. question.Chain.Elements])));
        Assert.All(verdict.Parts.Where(p => p.Part.Limit is not null), p => Assert.NotEqual(Answer.No, p.Guards));
    }

    [Theory]
    [InlineData("thornbeck-seized-hub", "measure.freeHub",
        "the bolt is the right one; only the hub stands in the way, and it is known to be seized")]
    [InlineData("thornbeck-unmarked", "measure.identifyDevice", "nothing but the bolt's identity is open")]
    [InlineData("ashby-lane-facts-missing", "measure.identifyDevice", "without the device there is no answer at all")]
    public void Demo_MeasureFirst_IsWhatWouldSettleIt(string name, string code, string why) =>
        Assert.True(DemoCases.Verdict(name).MeasureNext[0].Code == code,
            why + "; got " + string.Join(", ", DemoCases.Verdict(name).MeasureNext));

    [Theory]
    [InlineData("ravensmoor-clutch-dropped-in", SimulatedEvent.Engagement, true, null)]
    [InlineData("ravensmoor-clutch-let-in-gently", SimulatedEvent.Engagement, false, null)]
    [InlineData("ravensmoor-rock", SimulatedEvent.Strike, true, StrikeFindings.ShouldHaveTripped)]
    [InlineData("ravensmoor-stump", SimulatedEvent.Strike, false, StrikeFindings.BelowTrip)]
    [InlineData("ravensmoor-soft-branch", SimulatedEvent.Strike, false, StrikeFindings.BelowTrip)]
    [InlineData("ravensmoor-rusted-clutch-rock", SimulatedEvent.Strike, false, StrikeFindings.PassedOn)]
    [InlineData("ravensmoor-pan-on-stump", SimulatedEvent.Strike, null, SimulationFindings.PanAsWedged)]
    public void Demo_Simulation_IsWhatItsTitleSays(string name, SimulatedEvent happened, bool? trips, string? code)
    {
        CaseSimulation run = DemoCases.Simulation(name);
        Assert.Equal(happened, run.Event);
        Assert.Equal(trips, run.Check!.Tripped);
        Assert.True(run.Simulation!.RestsOnFacts || happened == SimulatedEvent.Strike, string.Join(", ", run.Simulation.Assumed));
        Assert.True(code is null || run.Findings.Any(f => f.Code == code), code + "; got " + string.Join(", ", run.Findings));
    }

    [Fact]
    public void Demo_PtoClutchOfTheSameMachine_GentlePeaksLower()
    {
        double abrupt = DemoCases.Simulation("ravensmoor-clutch-dropped-in").Simulation!.EngagementPeak()!.Expected!.Value.NewtonMeters;
        double gentle = DemoCases.Simulation("ravensmoor-clutch-let-in-gently").Simulation!.EngagementPeak()!.Expected!.Value.NewtonMeters;
        Assert.True(gentle < 0.7 * abrupt, gentle + " against " + abrupt);
    }

    [Fact]
    public void Demo_RustedClutch_DamagesTheTubeThatAFreeOneSaves()
    {
        CaseSimulation run = DemoCases.Simulation("ravensmoor-rusted-clutch-rock");
        Assert.Equal(Answer.Yes, run.Check!.Loads.Single(l => l.Element.Name == "drive tube").DamagedWith);
        Assert.Contains(DemoCases.Verdict("ravensmoor-rusted-clutch-rock").Findings, f => f.Code == StrikeFindings.PassedOn);
    }

    [Fact]
    public void Demos_Together_ShowAllHeadlines() =>
        Assert.Equal(Enum.GetValues<Headline>().Order(), DemoCases.Names.Select(n => DemoCases.Verdict(n).Headline).Distinct().Order());

    [Fact]
    public void Demos_WrittenAndReadAgain_AreEqual() => Assert.All(DemoCases.Names, name =>
    {
        CaseFile once = DemoCases.Read(name);
        Assert.Equal(once, CaseReader.Read(CaseWriter.Write(once)).Case);
    });
}
