using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>The sheet of the torque that breaks a bolt ends at its band.</summary>
public class BreakTorqueSheetTests
{
    private static readonly ShearBoltJoint Shaft = BreakTorqueTests.Shaft;

    [Fact]
    public void Sheet_Replay_EndsWithTheBand()
    {
        BreakTorque trip = BreakTorque.Of(Shaft);
        double[] torques = [.. trip.Sheet().Where(l => l.Formula.Code == "breakTorque").Select(l => l.Value)];
        Assert.Equal([trip.Torque.SiBand.Low, trip.Torque.SiBand.Expected, trip.Torque.SiBand.High], torques);
    }

    [Fact]
    public void Sheet_GapAndDrag_CloseTheirEnds()
    {
        var drag = TorqueBand.Exactly(Torque.FromNewtonMeters(80), Basis.Given("measured"));
        BreakTorque trip = BreakTorque.Of(
            Shaft.WithStandOff(Length.FromMillimeters(3)).WithFlangeFriction(drag).WithHub(HubState.Stiff).WithHubFriction(drag));
        IReadOnlyList<CalculationLine> lines = trip.Sheet();
        Assert.Equal(trip.Torque.SiBand.Low, Assert.Single(lines, l => l.Formula.Code == "breakTorqueBent").Value);
        Assert.Equal(2, lines.Count(l => l.Formula.Code == "frictionTorque"));
        Assert.Equal("breakTorqueWithFriction", lines[^1].Formula.Code);
        Assert.Equal(trip.Torque.SiBand.High, lines[^1].Value);
    }

    [Fact]
    public void Sheet_HubSeized_StopsAtTheBolt()
    {
        IReadOnlyList<CalculationLine> lines = BreakTorque.Of(Shaft.WithHub(HubState.Seized)).Sheet();
        Assert.DoesNotContain(lines, l => double.IsInfinity(l.Value));
        Assert.Equal("breakTorque", lines[^1].Formula.Code);
    }
}
