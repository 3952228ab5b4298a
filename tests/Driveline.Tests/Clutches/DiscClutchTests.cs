using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class DiscClutchTests
{
    [Theory]
    [InlineData(175, 175, 2)]
    [InlineData(174, 175, 2)]
    [InlineData(2001, 175, 2)]
    [InlineData(250, 0, 2)]
    [InlineData(250, 175, 0)]
    [InlineData(250, 175, 41)]
    [InlineData(double.PositiveInfinity, 175, 2)]
    public void Of_BadGeometry_IsRefused(double outerMm, double innerMm, int faces)
    {
        if (double.IsInfinity(outerMm))
        {
            outerMm = 1e300;
        }

        Assert.Throws<ArgumentOutOfRangeException>(
            () => DiscClutch.Of(
                Length.FromMillimeters(outerMm), Length.FromMillimeters(innerMm), faces, Facings.MouldedLining, Build.NinePack()));
    }

    [Fact]
    public void Of_InnerNotBelowOuter_NamesBoth()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(
            () => DiscClutch.Of(Length.FromMillimeters(150), Length.FromMillimeters(175), 2, Facings.MouldedLining, Build.NinePack()));
        Assert.Contains("above the inner diameter of 0.175 m and at most 2 m; got 0.15 m", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WithSpringLength_UnboundedOrNothing_IsRefused()
    {
        Assert.Throws<ArgumentException>(
            () => Build.NineSprings().WithSpringLength(LengthBand.AtLeast(Length.FromMillimeters(40), Build.Stated)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Build.NineSprings().WithSpringLength(Length.Zero, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Build.NineSprings().WithSpringLength(Length.FromMillimeters(1), Length.FromMillimeters(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Build.NineSprings().WithNutTurns(-1, Length.FromMillimeters(1.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Build.NineSprings().WithNutTurns(40, Length.FromMillimeters(1.5)));
    }

    [Fact]
    public void With_ChangedPart_LeavesTheOriginal()
    {
        DiscClutch clutch = Build.NineSprings();
        Assert.Equal(2, clutch.WithFacing(Facings.SinteredMetal).Faces);
        Assert.Same(clutch.Springs, clutch.WithFacing(Facings.SinteredMetal).Springs);
        Assert.Equal("exact", clutch.Facing.Name);
        Assert.Null(clutch.WearLimitPerFace);
        Assert.NotNull(clutch.WithWearLimitPerFace(LengthBand.Exactly(Length.FromMillimeters(1.6), Build.Stated)).WearLimitPerFace);
    }

    [Fact]
    public void FacesOf_NoDisc_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => DiscClutch.FacesOf(1, 0));
}
