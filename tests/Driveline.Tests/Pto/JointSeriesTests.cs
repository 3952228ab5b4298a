using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class JointSeriesTests
{
    // Trade lists: 460 N·m at 540 and 380 at 1000 for 27 × 74.6; 30 hp at 540,
    // 30 × 745.7 W / 56.55 rad/s = 395.6, against 390 N·m for 27 × 70.
    [Theory]
    [InlineData("27 x 74.6 mm", 540.0, 460)]
    [InlineData("27x74,6", 1000.0, 380)]
    [InlineData("27.2 x 75.0", 540.0, 460)]
    [InlineData("series 3", 540.0, 390)]
    [InlineData("8", 540.0, 1200)]
    [InlineData("8", null, 1032)]
    public void RatedTorque_OfCross_IsTheLowerOfTheTradeLists(string text, double? rpm, double expected)
    {
        Assert.True(JointSeries.TryParse(text, out JointSeries? series, out string? problem), problem);
        RotationalSpeed? at = rpm is { } speed ? RotationalSpeed.FromRevolutionsPerMinute(speed) : null;
        Assert.Equal(expected, series!.RatedTorque(at).NewtonMeters, 1e-9);
    }

    [Theory]
    [InlineData("27 x 72")]
    [InlineData("9")]
    [InlineData("big one")]
    public void TryParse_NoSuchCross_NamesThoseHeld(string text)
    {
        Assert.False(JointSeries.TryParse(text, out _, out string? problem));
        Assert.Contains("27 x 74.6 (series 4)", problem, StringComparison.Ordinal);
    }
}
