using Driveline.Advice;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Advice;

/// <summary>What a fitted device answers of an advice's questions by itself.</summary>
public class SeenDeviceTests
{
    private static readonly DateTime Today = new(2026, 5, 4);

    [Fact]
    public void Bolt_ToldWhole_AnswersHubPlaneHolesAndLastTrip() => Assert.Equal(
        [OwnerFacts.HubTurns.Stiffly, OwnerFacts.PlaneThrough.Shank, OwnerFacts.Holes.Oval, OwnerFacts.LastTrip.ThisMonth],
        SeenBolt.Of(FittedBolt.AsOf("bolt", Today).With(StatedBolt.NotKnown.With(PlaneThrough.Shank)).WithHub(HubState.Stiff)
            .WithHoleFit(HoleFit.Worn).WithLastTrip(Today.AddDays(-31))));

    [Fact]
    public void Bolt_ToldNothing_AnswersNothing() => Assert.Empty(SeenBolt.Of(FittedBolt.Undated("bolt").WithLastTrip(Today)));

    // M10 8.8 is 800 MPa at least, 10.9 1040 MPa, 4.6 400 MPa; a neck of 9.8 mm is within 2 % of 10 mm.
    [Theory]
    [InlineData("10.9", 10, "stronger", "asManual")]
    [InlineData("4.6", 10, "softer", "asManual")]
    [InlineData("8.8", 9.8, "same", "asManual")]
    [InlineData("8.8", 9, "same", "smaller")]
    public void Bolt_AgainstTheManuals_ComparesGradeAndNarrowestSize(string grade, double neckMm, string strength, string size)
    {
        ShearBolt manual = ShearBolt.Of(ScrewThread.Parse("M10"), BoltGrade.Parse("8.8"));
        ShearBolt fitted = ShearBolt.Of(ScrewThread.Parse("M10"), BoltGrade.Parse(grade)).WithNeckDiameter(Length.FromMillimeters(neckMm));
        Assert.Equal([strength, size], SeenBolt.AgainstManual(fitted, manual).Select(f => f.Answer));
    }

    [Fact]
    public void Clutch_OfItsTestAndStorage_Answers()
    {
        FittedClutch clutch = FittedClutch.AsOf("clutch", Today).WithClimate(StorageClimate.Moist);
        Assert.Equal([OwnerFacts.SlipTest.DoesNotSlip, OwnerFacts.Climate.Moist], SeenClutch.Of(clutch.FoundStuck().Device));
        Assert.Equal(OwnerFacts.SlipCheck.OverYear,
            SeenClutch.Of(clutch.WithSlipTest(SlipTest.Slipped(Today.AddDays(-367))).Device)[0]);
        Assert.Equal(OwnerFacts.SlipCheck.WithinYear,
            SeenClutch.Of(clutch.WithSlipTest(SlipTest.Slipped(Today.AddDays(-366))).Device)[0]);
    }
}
