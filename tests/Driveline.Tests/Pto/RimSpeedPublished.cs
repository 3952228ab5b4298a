using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class RimSpeedPublished
{
    [Fact]
    public void Diameter_WrapSpeed_IsTheEffectiveShaft() => Close.Relative(
        76.5,
        RimSpeed.Diameter(Speed.FromFeetPerSecond(7.1), RotationalSpeed.FromRevolutionsPerMinute(540)).Millimeters,
        0.01,
        "university safety sheet: 540 min-1 wraps 7.1 ft/s; 76.5 mm computed in the pack");

    [Fact]
    public void Of_CutterBladeTip_Matches()
    {
        Speed tip = RimSpeed.Of(RotationalSpeed.FromRevolutionsPerMinute(540 * 1.47), Length.FromInches(60));
        Close.Relative(63.34, tip.MetersPerSecond, 0.001, "web answer quoting a maker: 60 in circle, 540 min-1, ratio 1.47");
        Close.Relative(12469, tip.FeetPerMinute, 0.001, "the same page, ft/min");
    }

    [Fact]
    public void Of_StopAndBadValues_BehaveAsTold()
    {
        Assert.Equal(0, RimSpeed.Of(RotationalSpeed.Zero, Length.FromMeters(1)).MetersPerSecond);
        Assert.Throws<ArgumentOutOfRangeException>(() => RimSpeed.Diameter(Speed.FromMetersPerSecond(1), RotationalSpeed.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => RimSpeed.Of(RotationalSpeed.FromRevolutionsPerMinute(-1), Length.FromMeters(1)));
    }
}
