using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Clutches;

public class FacingsPublished
{
    // Tribology Handbook, 2nd ed., Table 7.4, as printed: friction, pressure kN/m², continuous/maximum °C, power W/mm².
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
        Facing facing = Facings.Named(name);
        RatioBand dry = facing.Friction(SurfaceState.Dry).Running;
        Assert.Equal((low + high) / 2, dry.Expected!.Value, 1e-12);
        Assert.True(dry.Low <= low && dry.High >= high);
        Assert.Equal(BasisKind.Published, dry.Basis.Expected.Kind);
        Assert.Equal(lowKpa, facing.LowestWorkingPressure!.Value.Kilopascals, 1e-9);
        Assert.Equal(highKpa, facing.PressureLimit!.Value.Kilopascals, 1e-9);
        Assert.Equal(continuousC, facing.ContinuousTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(maximumC, facing.MaximumTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(lowPower, facing.LowPowerRating!.Value.WattsPerSquareMeter / 1e6, 1e-9);
        Assert.Equal(highPower, facing.HighPowerRating!.Value.WattsPerSquareMeter / 1e6, 1e-9);
        Assert.Equal(BasisKind.Published, facing.LimitBasis.Kind);
    }

    [Fact]
    public void SinteredMetal_Breakaway_IsThePrintedStaticValue() =>
        Assert.Equal(0.36, Facings.SinteredMetal.Friction(SurfaceState.Dry).Breakaway.Expected!.Value, 1e-12); // Table 7.4: 0.36 / 0.30

    // Facings known from memory only: friction range against the reference rows.
    [Theory]
    [InlineData("rigid moulded non-asbestos", "rigid moulded non-asbestos")]
    [InlineData("rigid moulded asbestos (old machines)", "rigid moulded asbestos (dry)")]
    [InlineData("rigid moulded asbestos pads (old machines)", "rigid moulded asbestos pads")]
    [InlineData("semi-rigid moulded asbestos (old machines)", "semirigid moulded asbestos")]
    [InlineData("flexible moulded asbestos (old machines)", "flexible moulded asbestos")]
    [InlineData("sintered metal, textbook range", "sintered metal (dry)")]
    [InlineData("cast iron on cast iron", "cast iron on cast iron")]
    [InlineData("powdered metal on cast iron", "powdered metal on cast iron")]
    [InlineData("powdered metal on hard steel", "powdered metal on hard steel")]
    public void Facing_RememberedRow_IsHeldAsRemembered(string name, string material)
    {
        ReferenceRow row = ReferenceTable.Read("clutch", "friction-materials.csv")
            .Single(r => r["material"] == material);
        string[] ends = row["mu_dynamic_min_max"].Split('-');
        RatioBand dry = Facings.Named(name).Friction(SurfaceState.Dry).Running;
        Assert.Equal(double.Parse(ends[0], System.Globalization.CultureInfo.InvariantCulture), dry.Low, 1e-12);
        Assert.Equal(double.Parse(ends[^1], System.Globalization.CultureInfo.InvariantCulture), dry.High!.Value, 1e-12);
        Assert.Equal(BasisKind.FromMemory, dry.WeakestBasis.Kind);
    }
}
