using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>A stop names the facts of the case that cause it, and holds while these are stated.</summary>
public class StandingCauseTests
{
    [Theory]
    [InlineData("thornbeck-seized-hub", StandingFindings.HubSeized, "driveline[2].shearBolt.hub")]
    [InlineData("dunmarsh-clutch-rusted", StandingFindings.ClutchStuck, "driveline[2].slipClutch.slipTestResult")]
    [InlineData("wickerby-clutch-coil-bound", StandingFindings.ClutchSolid,
        "driveline[2].slipClutch.springLength driveline[2].slipClutch.springs.coil.solidLength")]
    [InlineData("fenwick-twisted-tube", StandingFindings.TubeTwisted, "complaint.damageSeen")]
    [InlineData("hay-bottom-smoking-clutch", StandingFindings.ClutchSmokes, "complaint.symptom")]
    [InlineData("hollinmoor-no-bolt-fits", StandingFindings.WorkTooHeavy, "driveline[1] work.steadyPeak")]
    [InlineData("thornbeck-too-strong", StandingFindings.FittedStronger, "driveline[2] specified")]
    public void Stop_OfADemo_NamesItsCauses(string name, string reason, string causes)
    {
        StandingReason found = DemoCases.Verdict(name).Standing.Reasons.Single(r => r.Why.Code == reason);
        Assert.Equal(causes.Split(' '), found.Why.Because);
        Assert.Equal(causes.Split(' '), DemoCases.Advice(name).Advice!.Standing.Reasons.Single(r => r.Why.Code == reason).Why.Because);
    }

    [Theory]
    [InlineData("thornbeck-seized-hub", "driveline[2].shearBolt.thread")]
    [InlineData("thornbeck-seized-hub", "driveline[2].shearBolt.shaftDiameter")]
    [InlineData("wickerby-clutch-coil-bound", "driveline[2].slipClutch.faces")]
    [InlineData("wickerby-clutch-coil-bound", "driveline[2].slipClutch.springs.coil.rate")]
    public void Stop_OtherFactOfTheDeviceTakenAway_Stays(string name, string path)
    {
        CaseFile less = DemoCases.Read(name).With(path, null).Case!;
        Assert.Equal(StandingState.Stop, ProtectionCheck.Run(CaseQuestion.Of(less).Question!).Standing.State);
    }

    [Theory]
    [InlineData("thornbeck-too-strong", ProtectionFindings.TripAboveLimit, "driveline[2]")]
    [InlineData("thornbeck-too-soft", ProtectionFindings.TripBelowWork, "driveline[2] work.steadyPeak")]
    [InlineData("ashby-lane-facts-missing", ProtectionFindings.PartsNotComplete, "partsComplete")]
    public void Bar_OfADemo_NamesItsCauses(string name, string code, string causes) => Assert.Contains(
        DemoCases.Verdict(name).Findings, f => f.Code == code && causes.Split(' ').All(c => f.Because.Contains(c)));
}
