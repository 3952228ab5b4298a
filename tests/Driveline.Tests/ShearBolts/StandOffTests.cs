using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>What a gap between the faces leaves of a bolt.</summary>
public class StandOffTests
{
    [Theory]
    [InlineData(0, 12, 0.6, 0.6, 1, "faces together: nothing is taken off")]
    [InlineData(3, 12, 0.6, 0.6, 0.6, "8 · 0.6 · 3 / (1.5 · 0.6 · 12) = 4/3; 1/√(1 + 16/9) = 3/5")]
    [InlineData(6, 24, 0.6, 0.6, 0.6, "twice the gap of a bolt twice as thick")]
    [InlineData(3, 12, 0.3, 0.6, 0.83205, "half the shear ratio: 2/3; 1/√(1 + 4/9) = 3/√13")]
    [InlineData(3, 12, 0.6, 0.3, 0.35112, "half the yield ratio: 8/3; 1/√(1 + 64/9) = 3/√73")]
    [InlineData(3, 0, 0.6, 0.6, 0, "a bolt of no width bends at once")]
    public void Factor_WorkedCase_MatchesAndIsRecorded(
        double gap, double diameter, double ratio, double yield, double expected, string working)
    {
        StepList log = StepList.New();
        Close.Absolute(expected, StandOff.Factor(gap / 1000, diameter / 1000, ratio, yield, ref log), 1e-5, working);
        CalculationLine line = Assert.Single(log.Lines);
        Assert.Equal("standOffFactor", line.Formula.Code);
        Close.Absolute(expected, line.Value, 1e-5, working);
    }

    // A neck whose width nobody knows may be nothing, and a gap leaves nothing of nothing.
    [Fact]
    public void Torque_GapAndNeckNotKnown_LowIsNothing()
    {
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("M12"), Iso898.Class8_8).With(PlaneThrough.Neck);
        ShearBoltJoint joint = ShearBoltJoint.Tangential(bolt, Length.FromMillimeters(60)).WithStandOff(Length.FromMillimeters(2));
        Band torque = BreakTorque.Of(joint).IfHubFree.SiBand;
        Assert.Equal(0, torque.Low);
        Assert.True(torque.IsBounded);
    }
}
