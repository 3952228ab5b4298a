using Driveline.Findings;
using Driveline.Loads;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class OverrunTests
{
    // ½ × 1.5 × 56.549² = 2398 J (WE27's rotor).
    [Theory]
    [InlineData(nameof(OverrunClutch.None), PtoClutchKind.None, 2398, 2398)]
    [InlineData(nameof(OverrunClutch.NotKnown), PtoClutchKind.NotKnown, 2398, 2398)]
    [InlineData(nameof(OverrunClutch.NotKnown), PtoClutchKind.HandLever, 2398, 0)]
    [InlineData(nameof(OverrunClutch.None), PtoClutchKind.Electric, 2398, 0)]
    [InlineData(nameof(OverrunClutch.None), PtoClutchKind.Hydraulic, 2398, 0)]
    [InlineData(nameof(OverrunClutch.Fitted), PtoClutchKind.None, 0, 0)]
    [InlineData(nameof(OverrunClutch.Fitted), PtoClutchKind.NotKnown, 0, 0)]
    public void Energy_ByClutches_GoesIntoLineAndTractor(string clutch, PtoClutchKind pto, double line, double tractor)
    {
        Overrun overrun = Overrun.Of(KgM2(1.5), Rated, Enum.Parse<OverrunClutch>(clutch), pto);
        Close.Relative(2398, overrun.Stored.Expected!.Value.Joules, 1e-3, "WE27");
        Close.Relative(line, overrun.IntoLine.High!.Value.Joules, 1e-3, "WE27");
        Close.Relative(tractor, overrun.IntoTractor.High!.Value.Joules, 1e-3, "WE27");
        Assert.Equal(0, overrun.IntoLine.Low.Joules);
        Assert.Equal(tractor > 0, overrun.Findings.Any(f => f.Code == LoadsFindings.OverrunPushesTractor && f.Severity == Severity.Danger));
        Assert.Equal(clutch != nameof(OverrunClutch.None),
            overrun.Findings.Any(f => f.Code == LoadsFindings.OverrunRotorTurnsOn && f.Severity == Severity.Danger));
        Assert.Equal(clutch == nameof(OverrunClutch.NotKnown), overrun.Findings.Any(f => f.Code == LoadsFindings.OverrunNotKnown));
    }

    [Fact]
    public void CoastTime_SteadyDrag_IsMomentumOverDrag()
    {
        Overrun overrun = Overrun.Of(KgM2(1.5), Rated, OverrunClutch.Fitted, PtoClutchKind.HandLever);
        Close.Relative(8.48, overrun.CoastTime(Nm(10)).Expected!.Value.Seconds, 1e-3, "hand: 1.5 × 56.549 / 10");
        Assert.False(overrun.CoastTime(Nm(0, 10, 20)).IsBounded);
        Close.Relative(4.241, overrun.CoastTime(Nm(0, 10, 20)).Low.Seconds, 1e-3, "hand: 1.5 × 56.549 / 20");
        Assert.False(overrun.CoastTime(Nm(0)).HasExpected);
    }

    // 2398 J against 800 N: 2.998 m.
    [Fact]
    public void PushDistance_WithoutFreewheel_IsEnergyOverForce()
    {
        Overrun pushing = Overrun.Of(KgM2(1.5), Rated, OverrunClutch.None, PtoClutchKind.None);
        Close.Relative(2.998, pushing.PushDistance(Force.FromNewtons(800)).High!.Value.Meters, 1e-3, "hand: 2398 / 800");
        Assert.Throws<ArgumentOutOfRangeException>(() => pushing.PushDistance(Force.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Overrun.Of(KgM2(1.5), RotationalSpeed.FromRevolutionsPerMinute(-1), OverrunClutch.None, PtoClutchKind.None));
    }
}
