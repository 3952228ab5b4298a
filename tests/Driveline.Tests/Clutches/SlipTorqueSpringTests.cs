using Driveline.Clutches;
using Driveline.Findings;
using UnitsNet;

namespace Driveline.Tests.Clutches;

/// <summary>Springs at their solid length, at their free length, of a length not known.</summary>
public class SlipTorqueSpringTests
{
    [Theory]
    [InlineData(40.01, false, null)]
    [InlineData(40.0, true, ClutchFindings.SpringsSolid)]
    [InlineData(39.0, true, ClutchFindings.ShorterThanSolid)]
    public void Of_LengthAtSolid_HasNoHighEnd(double lengthMm, bool unbounded, string? code)
    {
        SlipTorque torque = SlipTorque.Of(At(lengthMm, 0), Build.Trusted(RunInState.RunIn));
        Assert.Equal(unbounded, !torque.Running.IsBounded);
        Assert.Equal(unbounded, !torque.Running.HasExpected);
        Assert.Equal(unbounded, !torque.Breakaway.IsBounded);
        if (code is not null)
        {
            Assert.Contains(torque.Findings, f => f.Code == code && f.Severity == Severity.Danger);
        }
    }

    [Fact]
    public void Of_ToleranceReachesSolid_LosesOnlyTheHighEnd()
    {
        SlipTorque torque = SlipTorque.Of(At(40.3, 0.4), Build.Trusted(RunInState.RunIn));
        Assert.True(torque.Running.HasExpected);
        Assert.False(torque.Running.IsBounded);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.SpringsMayBeSolid);
    }

    [Theory]
    [InlineData(49.9, false)]
    [InlineData(50.0, true)]
    [InlineData(60.0, true)]
    public void Of_LengthAtFree_CarriesNothing(double lengthMm, bool loose)
    {
        SlipTorque torque = SlipTorque.Of(At(lengthMm, 0), Build.Trusted(RunInState.RunIn));
        Assert.Equal(loose, Build.Expected(torque.Running) <= 0);
        Assert.Equal(loose, torque.Findings.Any(f => f.Code == ClutchFindings.SpringsLoose));
    }

    [Fact]
    public void Of_SpringLengthNotKnown_GivesNoNumber()
    {
        DiscClutch clutch = DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Build.Exact(0.35), Build.NinePack());
        SlipTorque torque = SlipTorque.Of(clutch, Build.Trusted(RunInState.RunIn));
        Assert.Equal(SlipTorqueSource.NotKnown, torque.Source);
        Assert.Equal(0, torque.Running.Low.NewtonMeters);
        Assert.Null(torque.Running.Expected);
        Assert.Contains(torque.Findings, f => f.Code == ClutchFindings.SpringLengthNotKnown);
        Assert.Empty(torque.Sheet());
    }

    [Fact]
    public void Of_SensitiveSprings_SayHowMuch()
    {
        // hand: 0.4 mm of 5 mm is 8 %; LP51 prints 15 % for 0.4 mm on a stiffer clutch
        Finding finding = SlipTorque.Of(Build.NineSprings(), Build.Clean(RunInState.RunIn)).Findings.Single(
            f => f.Code == ClutchFindings.SensitiveSetting);
        Assert.Equal(8, finding.Parameter("percent")!.Value, 1e-9);
    }

    private static DiscClutch At(double lengthMm, double toleranceMm) =>
        Build.NineSprings().WithSpringLength(Length.FromMillimeters(lengthMm), Length.FromMillimeters(toleranceMm));
}
