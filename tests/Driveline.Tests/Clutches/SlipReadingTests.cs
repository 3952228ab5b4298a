using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class SlipReadingTests
{
    private static readonly DateTime Day = new(2026, 4, 28);

    private static readonly TorqueBand Stated = TorqueBand.Exactly(Torque.FromNewtonMeters(600), Basis.Given("a test"));

    // hand: 433 N · 1.5 m = 649.5 N·m, read within 10 %
    [Fact]
    public void ForceOnALever_ThatSlipped_IsReadWithinTenPercent()
    {
        SlipTest test = Lever(SlipTestOutcome.Slipped, null).On(Day);
        Assert.Equal(SlipTestOutcome.Slipped, test.Outcome);
        Close.Absolute(584.55, test.Running!.SiBand.Low, 1e-9, "0.9 · 649.5");
        Close.Absolute(649.5, test.Running.SiBand.Expected, 1e-9, "433 · 1.5");
        Close.Absolute(714.45, test.Running.SiBand.High, 1e-9, "1.1 · 649.5");
        Assert.Null(test.Breakaway);
    }

    // hand: 500 N · 1.5 m = 750 N·m at the first movement
    [Fact]
    public void ForceAtTheFirstMovement_IsTheBreakaway() => Close.Absolute(
        750, Lever(SlipTestOutcome.Slipped, Force.FromNewtons(500)).On(Day).Breakaway!.SiBand.Expected, 1e-9, "500 · 1.5");

    [Fact]
    public void ForceOnALever_ThatDidNotSlip_IsWhatItWithstood()
    {
        SlipTest test = Lever(SlipTestOutcome.DidNotSlip, null).On(Day);
        Assert.Equal(SlipTestOutcome.DidNotSlip, test.Outcome);
        Assert.Null(test.Running);
        Assert.Equal(Band.Exactly(649.5), test.Breakaway!.SiBand);
    }

    [Fact]
    public void Reading_OfATestNobodyRecorded_IsNoTorque()
    {
        SlipTest test = Lever(SlipTestOutcome.NotKnown, null).On(Day);
        Assert.Equal(SlipTestOutcome.NotKnown, test.Outcome);
        Assert.Null(test.Running);
        Assert.Null(test.Breakaway);
    }

    [Fact]
    public void StatedTorque_GoesBeforeAForce()
    {
        var reading = new SlipReading
        {
            Outcome = SlipTestOutcome.Slipped,
            Torque = Stated,
            Force = Force.FromNewtons(433),
            Arm = Length.FromMeters(1.5),
        };
        Assert.Equal(600, reading.On(Day).Running!.SiBand.Expected);
    }

    private static SlipReading Lever(SlipTestOutcome outcome, Force? first) => new()
    {
        Outcome = outcome,
        Force = Force.FromNewtons(433),
        BreakawayForce = first,
        Arm = Length.FromMeters(1.5),
    };
}
