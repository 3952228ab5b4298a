using Driveline.Findings;
using Driveline.Pto;
using UnitsNet;

namespace Driveline.Tests.Pto;

public class UniversalJointTests
{
    [Theory]
    [InlineData(-0.001)]
    [InlineData(90)]
    [InlineData(120)]
    public void At_AngleOutOfRange_IsRefused(double degrees)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => UniversalJoint.At(Angle.FromDegrees(degrees)));
        Assert.Contains("from 0° up to but not including 90°", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(89.9)]
    public void At_AngleInRange_IsAccepted(double degrees) =>
        Close.Absolute(degrees, UniversalJoint.At(Angle.FromDegrees(degrees)).Angle.Degrees, 1e-9, "round trip");

    [Theory]
    [InlineData(15, null)]
    [InlineData(15.1, PtoFindings.JointAngleAbovePractice)]
    [InlineData(35, PtoFindings.JointAngleAbovePractice)]
    [InlineData(35.1, PtoFindings.JointAngleTooSteep)]
    public void CheckContinuousWork_AroundThePracticeLimits_ReportsEachSide(double degrees, string? code) =>
        Assert.Equal(code, UniversalJoint.At(Angle.FromDegrees(degrees)).CheckContinuousWork().SingleOrDefault()?.Code);

    [Fact]
    public void JointAngleLimits_Conflicts_AreAllKept() => Assert.Equal(
        [15, 25, 35],
        JointAngleLimit.All.Where(l => !l.IsWideAngle && l.IsContinuous).Select(l => l.Printed.Value));

    [Fact]
    public void DrivenAcceleration_MatchesTheSlopeOfTheSpeed()
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(30));
        RotationalSpeed speed = RotationalSpeed.FromRadiansPerSecond(56.5);
        const double h = 1e-6;
        foreach (double t in new[] { 0.3, 1.0, 2.2, 4.0 })
        {
            double slope = (joint.SpeedRatioAt(Angle.FromRadians(t + h)) - joint.SpeedRatioAt(Angle.FromRadians(t - h))) / (2 * h);
            Close.Relative(
                56.5 * 56.5 * slope,
                joint.DrivenAccelerationAt(speed, Angle.FromRadians(t)).RadiansPerSecondSquared,
                1e-6,
                "α₂ = ω₁² d(ω₂/ω₁)/dθ, central difference");
        }
    }

    [Fact]
    public void PeakDrivenAcceleration_IsTheLargestOnAFineGrid()
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(35));
        RotationalSpeed speed = RotationalSpeed.FromRadiansPerSecond(1);
        double largest = Enumerable.Range(0, 36000)
            .Max(i => joint.DrivenAccelerationAt(speed, Angle.FromDegrees(i / 100.0)).RadiansPerSecondSquared);
        Close.Relative(largest, joint.PeakDrivenAcceleration(speed).RadiansPerSecondSquared, 1e-6, "search on a 0.01° grid");
    }

    [Fact]
    public void SecondaryCouple_25Degrees_IsTTanBeta() => Close.Absolute(
        466.31,
        UniversalJoint.At(Angle.FromDegrees(25)).SecondaryCouple(Torque.FromNewtonMeters(1000)).NewtonMeters,
        0.01,
        "hand: 1000 N·m × tan 25° (0.46631)");

    [Theory]
    [InlineData(JointPhasing.InPhase, 13.23, "hand: √(20² − 15²) = √175")]
    [InlineData(JointPhasing.QuarterTurnOut, 25.00, "hand: √(20² + 15²) = 25")]
    [InlineData(JointPhasing.NotKnown, 25.00, "the worse of the two")]
    public void JointPair_20And15_EquivalentAngle(object phased, double degrees, string source)
    {
        var phasing = (JointPhasing)phased;
        JointPair pair = JointPair.Of(UniversalJoint.At(Angle.FromDegrees(20)), UniversalJoint.At(Angle.FromDegrees(15)), phasing);
        Close.Absolute(degrees, pair.Equivalent.Angle.Degrees, 0.005, source);
        Assert.Equal(
            phasing == JointPhasing.NotKnown ? PtoFindings.JointPhasingNotKnown : PtoFindings.JointsDoNotCancel,
            Assert.Single(pair.Check()).Code);
    }

    [Fact]
    public void JointPair_EqualAnglesInPhase_Cancel()
    {
        UniversalJoint joint = UniversalJoint.At(Angle.FromDegrees(20));
        JointPair pair = JointPair.Of(joint, joint, JointPhasing.InPhase);
        Assert.Equal(1, pair.Equivalent.MaximumSpeedRatio);
        Assert.Empty(pair.Check());
    }

    [Fact]
    public void JointPair_ActingAs90DegreesOrMore_IsRefused()
    {
        UniversalJoint steep = UniversalJoint.At(Angle.FromDegrees(65));
        Assert.Throws<ArgumentOutOfRangeException>(() => JointPair.Of(steep, steep, JointPhasing.QuarterTurnOut));
    }

    [Fact]
    public void Findings_Severity_GrowsWithTheAngle()
    {
        Assert.Equal(Severity.Warning, UniversalJoint.At(Angle.FromDegrees(30)).CheckContinuousWork()[0].Severity);
        Assert.Equal(Severity.Danger, UniversalJoint.At(Angle.FromDegrees(40)).CheckContinuousWork()[0].Severity);
    }
}
