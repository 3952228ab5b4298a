using Driveline.Chains;
using Driveline.Protection;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

public class ProtectionProbabilitiesTests
{
    [Fact]
    public void Of_ProtectedVerdict_HasRareDamageAndRareTrips()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(1200, 1500, 2000)));
        ProtectionProbabilities risks = ProtectionProbabilities.Of(verdict);
        Assert.True(risks.OnePeakTrips!.IsBelowFloor);
        Assert.True(risks.MostAtRisk!.DamagedFirst.IsBelowFloor);
        Assert.Equal(["PTO stub", "universal joint", "drive tube", "gearbox"], risks.Parts.Select(p => p.Part.Name));
        Assert.False(risks.IsAtLeast);
    }

    [Fact]
    public void Of_OverstrongBolt_NamesThePartThatGoesFirst()
    {
        ProtectionProbabilities risks = ProtectionProbabilities.Of(ProtectionCheck.Run(With(Bolt(2200, 2600, 3200))));
        Assert.Equal("drive tube", risks.MostAtRisk!.Part.Name);
        Assert.InRange(risks.MostAtRisk.DamagedFirst.Value, 0.8, 1);   // expected trip 2600 at the high end of the tube, 2600
    }

    [Fact]
    public void Of_NothingFitted_DamageIsSure()
    {
        ProtectionProbabilities risks = ProtectionProbabilities.Of(
            ProtectionCheck.Run(With(DrivelineChain.Of(Stub, Joint, Tube, Gearbox, Blades))));
        Assert.Equal(1, risks.MostAtRisk!.DamagedFirst.Value);
        Assert.Null(risks.OnePeakTrips);
        Assert.Null(risks.FirstToAct);
    }

    [Fact]
    public void Of_UnknownDevice_GivesNull_NotSafety()
    {
        ProtectionProbabilities risks = ProtectionProbabilities.Of(ProtectionCheck.Run(With(StatedDevice.NotIdentified("bolt"))));
        Assert.Null(risks.OnePeakTrips);
        Assert.Null(risks.MostAtRisk);
        Assert.True(risks.IsAtLeast);
    }

    [Fact]
    public void Of_PartWithoutLimit_IsOnlyALowerBound()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(DrivelineChain.Of(Stub, Joint, Part.Shaft("drive tube"), Bolt(1200, 1500, 2000), Gearbox, Blades)));
        Assert.True(ProtectionProbabilities.Of(verdict).IsAtLeast);
    }

    [Fact]
    public void Forecast_TooSoftABolt_BreaksWithinHours()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(700, 850, 1000)));
        TripForecast forecast = ProtectionProbabilities.Of(verdict).Forecast(verdict.Devices[0], 40)!;
        Assert.InRange(forecast.MedianTime!.Value.Hours, 0.001, 1);
    }
}
