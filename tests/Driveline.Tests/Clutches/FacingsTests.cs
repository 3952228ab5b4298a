using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class FacingsTests
{
    [Fact]
    public void Friction_DocumentedExample_Matches()
    {
        // Example of the documentation: dry 0.30 to 0.40, expected 0.35; hot: 0.21 to 0.40, expected 0.2975.
        Facing facing = Facing.OfFriction("any", RatioBand.Between(0.30, 0.35, 0.40, Build.Stated));
        RatioBand hot = facing.Friction(SurfaceState.Hot).Running;
        Assert.Equal(0.21, hot.Low, 1e-12);
        Assert.Equal(0.2975, hot.Expected!.Value, 1e-12);
        Assert.Equal(0.40, hot.High!.Value, 1e-12);
        Assert.Equal(BasisKind.FromMemory, hot.Basis.Low.Kind);
        Assert.Equal(BasisKind.Given, hot.Basis.High.Kind);
    }

    [Fact]
    public void Friction_NoState_IsBelowNotKnownOrAboveDry()
    {
        foreach (Facing facing in Facings.All)
        {
            Band unknown = facing.Friction(SurfaceState.NotKnown).Running.SiBand;
            Band dry = facing.Friction(SurfaceState.Dry).Running.SiBand;
            foreach (SurfaceState state in Enum.GetValues<SurfaceState>())
            {
                FrictionBand band = facing.Friction(state);
                Assert.True(band.Running.SiBand.Low >= unknown.Low - 1e-12, facing + " " + state);
                Assert.True(band.Running.SiBand.High >= dry.High - 1e-12, facing + " " + state);
            }
        }
    }

    [Fact]
    public void NotKnown_SpansEveryFacingHeld()
    {
        Band unknown = Facings.NotKnown.Friction(SurfaceState.Dry).Running.SiBand;
        foreach (Facing facing in Facings.All.Concat(new[] { "DD", "EE", "FF", "GG", "HH" }.Select(Facings.OfFrictionCode)))
        {
            Band dry = facing.Friction(SurfaceState.Dry).Running.SiBand;
            Assert.True(unknown.Low <= dry.Low && unknown.High >= dry.High, facing.ToString());
            Assert.False(facing.Limits.HighPressurePa < Facings.NotKnown.Limits.HighPressurePa, facing.ToString());
            Assert.False(facing.Limits.MaximumK < Facings.NotKnown.Limits.MaximumK, facing.ToString());
            Assert.False(facing.Limits.HighPowerWPerM2 < Facings.NotKnown.Limits.HighPowerWPerM2, facing.ToString());
        }
    }

    [Theory]
    [InlineData("FE", 0.35, 0.45, 0.25)]
    [InlineData("gg", 0.45, 0.55, 0.45)]
    [InlineData(" ED ", 0.25, 0.35, 0.15)]
    public void OfFrictionCode_TwoLetters_GiveCoolAndHot(string code, double low, double high, double hotLow)
    {
        Facing facing = Facings.OfFrictionCode(code);
        RatioBand dry = facing.Friction(SurfaceState.Dry).Running;
        Assert.Equal(low, dry.Low, 1e-12);
        Assert.Equal(high, dry.High!.Value, 1e-12);
        Assert.Equal(hotLow, facing.Friction(SurfaceState.Hot).Running.Low, 1e-12);
        Assert.Equal(BasisKind.CommonPractice, dry.WeakestBasis.Kind);
        Assert.Null(facing.PressureLimit);
    }

    [Theory]
    [InlineData("")]
    [InlineData("F")]
    [InlineData("FZ")]
    [InlineData("AB")]
    [InlineData("FEE")]
    public void OfFrictionCode_NotTwoLetters_IsRefused(string code) => Assert.Throws<ArgumentException>(() => Facings.OfFrictionCode(code));

    [Fact]
    public void Named_NotHeld_ListsWhatIs()
    {
        var error = Assert.Throws<ArgumentException>(() => Facings.Named("leather"));
        Assert.Contains("moulded organic lining", error.Message, StringComparison.Ordinal);
        Assert.True(Facings.TryNamed(" Moulded Organic Lining ", out Facing? facing));
        Assert.Same(Facings.MouldedLining, facing);
    }

    [Fact]
    public void All_Names_AreDistinct() => Assert.Equal(Facings.All.Count, Facings.All.Select(f => f.Name).Distinct().Count());

    [Theory]
    [InlineData(2.0, true)]
    [InlineData(2.01, false)]
    public void OfFriction_CoefficientAtTwo_IsTheLimit(double mu, bool accepted)
    {
        RatioBand band = RatioBand.Exactly(mu, Build.Stated);
        if (accepted)
        {
            Assert.Equal(mu, Facing.OfFriction("any", band).Friction(SurfaceState.Dry).Running.Low);
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => Facing.OfFriction("any", band));
        }
    }

    [Fact]
    public void OfFriction_Unbounded_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Facing.OfFriction("any", RatioBand.AtLeast(0.3, Build.Stated)));

    [Fact]
    public void WithTemperatureLimits_MaximumBelowContinuous_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => Facings.MouldedLining.WithTemperatureLimits(
            Temperature.FromDegreesCelsius(200), Temperature.FromDegreesCelsius(199), Build.Stated));
}
