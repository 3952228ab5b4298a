using Driveline.Loads;

namespace Driveline.Tests.Loads;

public class SlowestSwingTests
{
    [Theory]
    [InlineData(0.8, 2000, 0.2, 0, 0, 111.80339887498948, "hand: √(2000·(1/0.8 + 1/0.2)) = √12500")]
    [InlineData(double.PositiveInfinity, 100, 4, 0, 0, 5, "hand: √(100/4)")]
    [InlineData(1, 100, 2, 100, 1, 10, "hand: ends against each other, middle still: √(100/1)")]
    [InlineData(1, 1e12, 1, 2, 1, 1.7320508075678772, "hand: √(2·(1/2 + 1)), the stiff pair as one, good to 1e-12")]
    public void RadPerS_WorkedLines_IsTheLowestAboveZero(
        double j1, double k1, double j2, double k2, double j3, double expected, string source)
    {
        var lumps = new List<Lump> { new() { InertiaKgM2 = j1 }, new() { InertiaKgM2 = j2 } };
        var links = new List<LineLink> { LineLink.Of("a", k1, 0) };
        if (k2 > 0)
        {
            lumps.Add(new Lump { InertiaKgM2 = j3 });
            links.Add(LineLink.Of("b", k2, 0));
        }

        Close.Relative(expected, SlowestSwing.RadPerS(lumps, links), 3e-12, source);
    }

    [Fact]
    public void RadPerS_LinesWithoutSprings_IsInfinite() => Assert.True(double.IsPositiveInfinity(SlowestSwing.RadPerS(
        [new Lump { InertiaKgM2 = 1 }, new Lump { InertiaKgM2 = 2 }], [LineLink.Rigid("a")])));
}
