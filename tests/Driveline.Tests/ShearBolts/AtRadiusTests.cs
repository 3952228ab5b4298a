using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>A device moved to another radius is the one made there: the rows of a study keep what a radius does not touch.</summary>
public class AtRadiusTests
{
    private static readonly Basis Stated = Basis.Given("stated");

    private static readonly Dictionary<string, Func<ShearBoltJoint, ShearBoltJoint>> Told = new()
    {
        ["nothing"] = j => j,
        ["free"] = j => j.WithHub(HubState.Free).WithHoleFit(HoleFit.Tight),
        ["seized"] = j => j.WithHub(HubState.Seized),
        ["stiff, measured"] = j => j.WithHub(HubState.Stiff).WithHubFriction(TorqueBand.Exactly(Torque.FromNewtonMeters(30), Stated)),
        ["old"] = j => j.WithHub(HubState.Free).WithHubSeen(new DateTime(2020, 1, 1), new DateTime(2024, 1, 1)),
        ["worn holes"] = j => j.WithHub(HubState.Free).WithHoleFit(HoleFit.Worn),
        ["wide hole"] = j => j.WithHub(HubState.Free).WithHole(Length.FromMillimeters(12)),
        ["gap"] = j => j.WithHub(HubState.Free).WithStandOff(Length.FromMillimeters(3)),
        ["friction"] = j => j.WithHub(HubState.Free).WithFlangeFriction(TorqueBand.Exactly(Torque.FromNewtonMeters(20), Stated)),
        ["shaft"] = j => j.WithHub(HubState.Free).WithShaftYield(StressBand.Exactly(Pressure.FromMegapascals(350), Stated)),
        ["yoke"] = j => j.WithYoke(Length.FromMillimeters(6), StressBand.Exactly(Pressure.FromMegapascals(250), Stated)),
    };

    public static TheoryData<string, string, PlaneThrough> Joints
    {
        get
        {
            var rows = new TheoryData<string, string, PlaneThrough>();
            foreach (string told in Told.Keys)
            {
                foreach (string layout in new[] { "shaft", "circle", "tangential" })
                {
                    rows.Add(told, layout, PlaneThrough.Shank);
                    rows.Add(told, layout, PlaneThrough.NotKnown);
                }
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Joints))]
    public void Device_AtAnotherRadius_IsTheOneMadeThere(string told, string layout, PlaneThrough plane)
    {
        ShearBoltDevice from = Device(told, layout, plane, 0.016);
        foreach (double radiusM in new[] { 0.0101, 0.0155, 0.02, 0.06 })
        {
            ShearBoltDevice moved = from.AtRadius(radiusM);
            ShearBoltDevice made = Device(told, layout, plane, radiusM);
            Assert.Equal(made.BreakTorque.Torque, moved.BreakTorque.Torque);
            Assert.Equal(made.BreakTorque.IfHubFree, moved.BreakTorque.IfHubFree);
            Assert.Equal(made.Breakaway, moved.Breakaway);
            Assert.Equal(made.Findings, moved.Findings);
            Assert.Equal(made.GuardBars, moved.GuardBars);
            Assert.Equal(made.QuietBars, moved.QuietBars);
            Assert.Equal(made.BarsUnder(300), moved.BarsUnder(300));
            Assert.Equal(made.ImpliedParts.Select(p => p.Limit?.DamagedAt), moved.ImpliedParts.Select(p => p.Limit?.DamagedAt));
        }
    }

    [Fact]
    public void Device_AtTheRadiusOfItsBolt_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Device("free", "shaft", PlaneThrough.Shank, 0.016).AtRadius(0.0047));

    private static ShearBoltDevice Device(string told, string layout, PlaneThrough plane, double radiusM)
    {
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(plane);
        ShearBoltJoint joint = layout switch
        {
            "shaft" => ShearBoltJoint.ThroughShaft(bolt, Length.FromMeters(2 * radiusM)),
            "circle" => ShearBoltJoint.BoltCircle(bolt, Length.FromMeters(2 * radiusM), 2),
            _ => ShearBoltJoint.Tangential(bolt, Length.FromMeters(radiusM)),
        };
        return ShearBoltDevice.Of("bolt", Told[told](joint));
    }
}
