using Driveline.Fasteners;
using Driveline.Fatigue;
using Driveline.Monitoring;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

public class ConsumedLifeTests
{
    private static readonly double[] Example = [-2, 1, -3, 5, -1, 3, -4, 4, -2];

    // The example of ASTM E1049-85 with 50 MPa for each N·m: RainflowTests works it out, Σ n (Δτ/100)⁵ / 2·10⁶ = 2119.9375/2·10⁶.
    [Fact]
    public void Damage_OfTheStandardsExample_Worked()
    {
        ConsumedLife life = Fed(Example).ConsumedLife(Detail());
        Close.Relative(2119.9375 / 2e6, life.Damage.Expected!.Value, 1e-12, "hand: fifth powers of the counted ranges");

        // One class of 1 N·m wider: 0.5 · 4⁵ + 1.5 · 5⁵ + 0.5 · 7⁵ + 1 · 9⁵ + 0.5 · 10⁵ = 122 652 times (50/100)⁵ / 2·10⁶.
        Close.Relative(122_652 / 32.0 / 2e6, life.Damage.High!.Value, 1e-12, "hand");
        Assert.True(life.Damage.Low < life.Damage.Expected);
        Assert.Empty(life.Findings);
    }

    [Fact]
    public void Damage_BeyondTheScale_HasNoUpperEnd()
    {
        ConsumedLife life = Fed([0, 300, 0]).ConsumedLife(Detail());
        Assert.Null(life.Damage.High);
        Assert.Equal(MonitoringFindings.BeyondScale, Assert.Single(life.Findings).Code);
    }

    // 200 peaks from 0 to 100 N·m are 200 cycles, apart from the last half.
    [Fact]
    public void Damage_OfBolts_IsThatOfTheirLowerBoundLife()
    {
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(
            ShearBolt.Of(ScrewThread.Parse("M8"), Iso898.Class8_8).With(PlaneThrough.Shank),
                Length.FromMillimeters(30)).WithHub(HubState.Free);
        double nm = Math.Floor(0.8 * BoltFatigue.LowestShearYieldPa(joint.Bolt) / BoltFatigue.LowerBoundLife(joint,
            Torque.FromNewtonMeters(1), 0).Range.Pascals);
        double[] history = [.. Enumerable.Range(0, 401).Select(k => k % 2 == 0 ? 0 : nm)];
        ConsumedLife life = Fed(history, 256 * Math.Ceiling(nm / 128)).ConsumedLife(FatigueDetail.Bolts("bolt", joint));
        double cycles = BoltFatigue.LowerBoundLife(joint, Torque.FromNewtonMeters(nm), 0).Cycles!.Value;
        Assert.InRange(200 / cycles, life.Damage.Low, life.Damage.High!.Value);
        Assert.Equal(BasisKind.FromMemory, life.Damage.Basis.Weakest.Kind);
    }

    [Fact]
    public void Damage_OfBoltsThatYield_IsNotKnown()
    {
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(
            ShearBolt.Of(ScrewThread.Parse("M8"), Iso898.Class8_8).With(PlaneThrough.Shank),
                Length.FromMillimeters(30)).WithHub(HubState.Free);
        ConsumedLife life = Fed([0, 5000, 0], 10_000).ConsumedLife(FatigueDetail.Bolts("bolt", joint));
        Assert.Null(life.Damage.Expected);
        Assert.Equal(MonitoringFindings.AboveCurve, Assert.Single(life.Findings).Code);
    }

    [Fact]
    public void Damage_OfAShaft_IsThatOfItsStress()
    {
        // W_p = π · 0.03³ / 16 = 5.30144e-6 m³: 1060 N·m are 199.946 MPa; one cycle on category 100: (1.99946)⁵ / 2·10⁶ = 1.59783e-5.
        FatigueDetail shaft = FatigueDetail.Shaft("shaft", ShaftSection.Solid(Length.FromMillimeters(30)),
            SNCurve.Shear(Pressure.FromMegapascals(100), Basis.Given("test")));
        ConsumedLife life = Fed([0, 1060, 0], 256 * 20).ConsumedLife(shaft);
        Close.Relative(1.59783e-5, life.Damage.Expected!.Value, 1e-4, "hand");
        Assert.Throws<ArgumentException>(() =>
            FatigueDetail.Shaft("shaft", ShaftSection.Profile(SectionShape.LemonTube), SNCurve.BoltsInShear));
    }

    private static FatigueDetail Detail() => FatigueDetail.Of(
        "weld", SNCurve.BoltsInShear, Pressure.FromMegapascals(50), Torque.FromNewtonMeters(1), Basis.Given("test"));

    private static OverloadMonitor Fed(double[] history, double scaleNm = 256)
    {
        var monitor = new OverloadMonitor(
            MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(1)).WithScale(Torque.FromNewtonMeters(scaleNm)));
        Streams.Feed(monitor, [.. history.Select((nm, k) => new TorqueSample(k, 50, nm))]);
        return monitor;
    }
}
