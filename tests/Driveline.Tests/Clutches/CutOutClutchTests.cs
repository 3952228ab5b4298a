using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class CutOutClutchTests
{
    private static readonly TorqueBand Trip =
        TorqueBand.Between(Torque.FromNewtonMeters(260), Torque.FromNewtonMeters(300), Torque.FromNewtonMeters(340), Build.Stated);

    [Fact]
    public void Cam_AfterTrip_CarriesNothingUntilSlow()
    {
        // LP57, LP58: loader-wagon operator manual: torque zero after the trip, takes hold again below 200 rpm
        CutOutClutch cam = CutOutClutch.Of(CutOutKind.Cam, Trip);
        Assert.Equal(0, cam.Residual!.High!.Value.NewtonMeters);
        Assert.Equal(200, cam.ReengagesBelow!.Value.RevolutionsPerMinute, 1e-9);
        Assert.Contains(cam.Findings, f => f.Code == ClutchFindings.CutOutHoldsOpen);
    }

    [Theory]
    [InlineData(CutOutKind.NotKnown)]
    [InlineData(CutOutKind.Ratchet)]
    [InlineData(CutOutKind.RadialPin)]
    public void Others_AfterTrip_MayStillPulseToTheTrip(CutOutKind kind)
    {
        CutOutClutch clutch = CutOutClutch.Of(kind, Trip);
        Assert.Equal(0, clutch.Residual!.Low.NewtonMeters);
        Assert.Equal(340, clutch.Residual.High!.Value.NewtonMeters, 1e-9);
        Assert.Null(clutch.ReengagesBelow);
    }

    [Fact]
    public void TripNotKnown_IsFound()
    {
        CutOutClutch clutch = CutOutClutch.Of(CutOutKind.Ratchet);
        Assert.Null(clutch.Residual);
        Assert.Contains(clutch.Findings, f => f.Code == ClutchFindings.CutOutTripNotKnown);
    }

    [Fact]
    public void With_StatedFacts_ReplaceTheHeldOnes()
    {
        CutOutClutch clutch = CutOutClutch.Of(CutOutKind.Ratchet, Trip)
            .WithAfterTrip(RatioBand.Between(0.2, 0.3, 0.5, Build.Stated))
            .WithReengagement(RotationalSpeed.FromRevolutionsPerMinute(150), Build.Stated);
        Assert.Equal(170, clutch.Residual!.High!.Value.NewtonMeters, 1e-9); // hand: 0.5 × 340
        Assert.Equal(150, clutch.ReengagesBelow!.Value.RevolutionsPerMinute, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => clutch.WithAfterTrip(RatioBand.Exactly(1.01, Build.Stated)));
        Assert.Throws<ArgumentException>(() => clutch.WithAfterTrip(RatioBand.AtLeast(0.1, Build.Stated)));
        Assert.Throws<ArgumentOutOfRangeException>(() => clutch.WithReengagement(RotationalSpeed.Zero, Build.Stated));
    }
}
