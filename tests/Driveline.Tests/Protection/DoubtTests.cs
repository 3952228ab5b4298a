using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Wording;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>What settles a doubt, and in whose torques it is said.</summary>
public class DoubtTests
{
    [Theory]
    [InlineData(true, Measurements.FitLimiter, "nothing is missing from the list: a limiter is")]
    [InlineData(false, Measurements.PartsList, "a device may be missing from the list")]
    public void PartsThatNothingLimits_AskForOneThing(bool isComplete, string code, string why)
    {
        // The bolt guards its own branch only; the rotor on the main line may jam.
        DrivelineChain chain = DrivelineChain.Of(
            Stub, Joint, Tube, Gearbox, Branch.Of(
                "auger drive", RatioBand.Exactly(0.3, Stated), Bolt(1200, 1500, 1800),
                Part.Shaft("auger shaft").WithDamageTorque(Nm(2500)), Blades),
            Part.Rotor("impeller", UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(3)));
        ProtectionVerdict verdict = ProtectionCheck.Run(With(chain).WithPartsComplete(isComplete));
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.PartNotGuarded);
        Assert.True(verdict.MeasureNext.Count(m => m.Code is Measurements.FitLimiter or Measurements.PartsList) == 1
            && verdict.MeasureNext.Any(m => m.Code == code), why + "; got " + string.Join(", ", verdict.MeasureNext));
    }

    [Fact]
    public void TripAboveLimit_BehindAGearbox_IsSaidAtThePart()
    {
        // The bolt's 1600 N·m expected are 1600/1.5·0.96 = 1024 N·m in the shaft behind the gearbox: the words must not say that it acts at
        // 1020.
        Part shaft = Part.Shaft("blade shaft").WithDamageTorque(Nm(700, 800, 900));
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(DrivelineChain.Of(Stub, Joint, Tube, Bolt(1200, 1600, 2000), Gearbox, shaft, Blades)));
        Finding above = verdict.Findings.Single(f => f.Code == ProtectionFindings.TripAboveLimit);
        Assert.Equal(1024, above.Parameter("tripExpected")!.Value, 6);
        Assert.Contains(
            "only when the blade shaft carries about 1020 N·m", Texts.English.Of(above, DisplayUnits.Metric), StringComparison.Ordinal);
        Assert.Contains("solo cuando «blade shaft» soporta unos", Texts.Spanish.Of(above, DisplayUnits.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void TripWithoutALowEnd_PrintsNoZero()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(0, 1500, 1800)));
        Finding doubt = verdict.Findings.Single(f => f.Code == ProtectionFindings.TripHasNoLowEnd);
        Assert.Contains(
            "Nothing says how much the shear bolt holds at least", Texts.English.Of(doubt, DisplayUnits.Metric), StringComparison.Ordinal);
        Assert.DoesNotContain(verdict.Findings, f => Texts.English.Of(f, DisplayUnits.Metric).Contains(" 0 N·m", StringComparison.Ordinal));
    }
}
