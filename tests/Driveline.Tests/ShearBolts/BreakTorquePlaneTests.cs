using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>Where the plane of shear cuts the bolt: its shank, its thread, or nobody knows.</summary>
public class BreakTorquePlaneTests
{
    [Fact]
    public void PlaneNotKnown_Band_SpansThreadAndShank()
    {
        ShearBolt unknown = ShearBolt.Of(ScrewThread.Parse("1/2-13 UNC"), SaeJ429.Grade5);
        Band thread = ShearPlane.Of(unknown.With(PlaneThrough.Thread)).Load.SiBand;
        Band shank = ShearPlane.Of(unknown.With(PlaneThrough.Shank)).Load.SiBand;
        Band both = ShearPlane.Of(unknown).Load.SiBand;
        Assert.Equal(thread.Low, both.Low);
        Assert.Equal(shank.High, both.High);
        Close.Relative((thread.Expected + shank.Expected) / 2, both.Expected, 1e-12, "midway");
        Assert.Contains(BreakTorque.Of(ShearBoltJoint.Tangential(unknown, Length.FromMillimeters(60))).Findings,
            f => f.Code == ShearBoltFindings.PlaneNotKnown);
    }

    [Fact]
    public void ThreadInPlane_M12Class88_WorkedEnds()
    {
        // d3 = 12 − 1.22687 × 1.75 = 9.853 mm, 76.25 mm²; A_s = 84.3 mm²; R_m 800 to 1030 MPa (HV 320), 915 midway;
        // 1.08 × 84.3 = 91.0 mm²; 1.16 × 84.3 = 97.8 mm² and 0.89 × π/4 12² = 100.66 mm², the larger.
        Band load = ShearPlane.Of(ShearBolt.Of(ScrewThread.Parse("M12"), Iso898.Class8_8).With(PlaneThrough.Thread)).Load.SiBand;
        Close.Relative(0.60 * 800e6 * 76.25e-6, load.Low, 1e-3, "hand: 0.60 × 800 MPa × 76.25 mm² = 36.6 kN");
        Close.Relative(0.65 * 915e6 * 91.0e-6, load.Expected, 5e-3, "hand: 0.65 × 915 MPa × 91.0 mm² = 54.1 kN");
        Close.Relative(0.72 * 1030e6 * 100.66e-6, load.High, 5e-3, "hand: 0.72 × 1030 MPa × 100.66 mm² = 74.6 kN");
    }

    [Fact]
    public void ThreadInPlane_ThreeEighthsGrade5_CarriesWhatTestsShow()
    {
        // A_s = 0.0775 in² = 50.0 mm², shank 71.26 mm². Expected R_m 943 MPa, high 1047 MPa (see the tensile band of SAE 5).
        // Expected 0.65 × 943 × 1.08 × 50.0 = 33.1 kN; high 0.72 × 1047 × 0.89 × 71.26 = 47.8 kN. Code-like nominal 0.45 × 120 ksi × 71.26
        // = 26.5 kN.
        Band load = ShearPlane.Of(ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Thread)).Load.SiBand;
        Close.Relative(33.1e3, load.Expected, 0.005, "hand");
        Close.Relative(47.8e3, load.High, 0.005, "hand");
        Assert.True(load.Low < 26.5e3 && load.Expected > 26.5e3, load.ToString());
    }

    [Theory]
    [InlineData("1/2-13 UNC", true)]
    [InlineData("M14", true)]
    [InlineData("5/8-11 UNC", false)]
    [InlineData("M16", false)]
    public void ThreadInPlane_BelowFiveEighths_SaysExtrapolated(string size, bool extrapolated)
    {
        ScrewThread thread = ScrewThread.Parse(size);
        ShearBolt bolt = ShearBolt.Of(thread, thread.System == ThreadSystem.Inch ? SaeJ429.Grade5 : Iso898.Class8_8);
        foreach (PlaneThrough plane in new[] { PlaneThrough.Thread, PlaneThrough.Shank })
        {
            IReadOnlyList<Finding> findings = BreakTorque.Of(
                ShearBoltJoint.Tangential(bolt.With(plane), Length.FromMillimeters(60))).Findings;
            Assert.Equal(
                extrapolated && plane == PlaneThrough.Thread, findings.Any(f => f.Code == ShearBoltFindings.ThreadShareExtrapolated));
        }
    }
}
