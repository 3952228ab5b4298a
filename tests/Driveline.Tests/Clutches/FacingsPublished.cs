using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Clutches;

public class FacingsPublished
{
    private const string Handbook = "The Tribology Handbook, 2nd ed., Table 7.4";

    // As printed: friction, pressure kN/m², continuous/maximum °C, power W/mm².
    [Theory]
    [InlineData("woven lining", 0.35, 0.40, 175, 520, 150, 250, 0.3, 0.6)]
    [InlineData("millboard lining", 0.40, 0.40, 175, 700, 150, 250, 0.3, 0.6)]
    [InlineData("wound tape and yarn", 0.40, 0.40, 175, 700, 200, 350, 0.3, 1.2)]
    [InlineData("moulded organic lining", 0.35, 0.35, 175, 700, 200, 350, 0.6, 1.2)]
    [InlineData("sintered metal", 0.30, 0.30, 350, 2800, 300, 500, 1.7, 1.7)]
    public void Facing_HandbookRow_IsHeld(
        string name, double low, double high, double lowKpa, double highKpa, double continuousC, double maximumC, double lowPower,
            double highPower)
    {
        Close.Cite(Handbook);
        Facing facing = Facings.Named(name);
        RatioBand dry = facing.Friction(SurfaceState.Dry).Running;
        Close.Within((low + high) / 2, dry.Expected!.Value, 1e-12);
        Assert.True(dry.Low <= low && dry.High >= high);
        Assert.Equal(BasisKind.Published, dry.Basis.Expected.Kind);
        Close.Within(lowKpa, facing.LowestWorkingPressure!.Value.Kilopascals, 1e-9);
        Close.Within(highKpa, facing.PressureLimit!.Value.Kilopascals, 1e-9);
        Close.Within(continuousC, facing.ContinuousTemperature!.Value.DegreesCelsius, 1e-9);
        Close.Within(maximumC, facing.MaximumTemperature!.Value.DegreesCelsius, 1e-9);
        Close.Within(lowPower, facing.LowPowerRating!.Value.WattsPerSquareMeter / 1e6, 1e-9);
        Close.Within(highPower, facing.HighPowerRating!.Value.WattsPerSquareMeter / 1e6, 1e-9);
        Assert.Equal(BasisKind.Published, facing.LimitBasis.Kind);
    }

    [Fact]
    public void SinteredMetal_Breakaway_IsThePrintedStaticValue()
    {
        Close.Cite(Handbook);   // 0.36 / 0.30
        Close.Within(0.36, Facings.SinteredMetal.Friction(SurfaceState.Dry).Breakaway.Expected!.Value, 1e-12);
    }
}
