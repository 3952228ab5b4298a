using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Tests.Cases;

/// <summary>What gives way ends: a rotor's own motion takes a short blow.</summary>
/// <remarks>
/// By hand, at the PTO: engine 0.9·4² = 14.4 kg·m², rotor 4.204·1.47² = 9.08 kg·m², tube and blade shaft in series 1/(1/9000 + 1/86436)
/// = 8151 N·m/rad. The cut takes W = F·(s − d/2), the rotor loses Δω = ω − √(ω² − 2W/J), and the line swings by
/// Δω·√(k·J₁J₂/(J₁ + J₂)) = 213 N·m·s/rad · Δω about the 300 N·m of work. A cut that takes long, and damping, lower that a little: the rows
/// are of an own integration (Runge–Kutta, four masses, 4 µs), with the sum beside them.
/// </remarks>
public class StruckThicknessTests
{
    private const string Strike = "\"force\": \"3.2 kN\", \"radius\": \"0.9 m\", \"distance\": \"60 mm\", \"thickness\": \"200 mm\"";

    [Theory]
    [InlineData("3.2 kN", "60 mm", "200 mm", 526.3, "544 J, 1.06 rad/s: 526")]
    [InlineData("3.2 kN", "60 mm", "400 mm", 797.5, "1184 J, 2.35 rad/s: 801")]
    [InlineData("3.2 kN", "60 mm", "600 mm", 1074.0, "1824 J, 3.66 rad/s: 1080")]
    [InlineData("200 N", "80 mm", "80 mm", 303.3, "8 J, 0.0156 rad/s: 303.3")]
    [InlineData("200 N", "80 mm", "10 m", 627.7, "never through while the line swings: about twice 264 N·m above work")]
    public void Thickness_AtWorkSpeed_IsTheIntegratedPeak(
        string force, string distance, string thickness, double nm, string sum)
    {
        string json = DemoCases.Json("ravensmoor-stump").Replace(
            Strike,
            "\"force\": \"" + force + "\", \"radius\": \"0.9 m\", \"distance\": \"" + distance + "\", \"thickness\": \"" + thickness + "\"",
            StringComparison.Ordinal)
            .Replace("\"torque\": \"500 N.m\"", "\"torque\": \"300 N.m\"", StringComparison.Ordinal)
            .Replace("{ \"low\": \"950 N.m\", \"expected\": \"1050 N.m\", \"high\": \"1150 N.m\" }", "\"90 kN.m\"",
                StringComparison.Ordinal);
        CaseSimulation run = CaseSimulation.Of(CaseReaderTests.ReadGood(json));
        Assert.True(run.Simulation!.RestsOnFacts, string.Join(", ", run.Simulation.Assumed));
        Close.Relative(nm, Tube(run).WithoutProtection!.Value.NewtonMeters, 0.002, sum);
    }

    [Theory]
    [InlineData("ravensmoor-stump", 507.8, "at 61.55 rad/s of the governor's line 544 J are 0.971 rad/s: 507")]
    [InlineData("ravensmoor-soft-branch", 303.0, "8 J are 0.0143 rad/s: 303.0")]
    public void Demo_ThatStatesItsThickness_LeavesTheBoltAlone(string name, double nm, string sum)
    {
        CaseSimulation run = CaseSimulation.Of(DemoCases.Read(name));
        Close.Relative(nm, Tube(run).WithoutProtection!.Value.NewtonMeters, 0.002, sum);
        Assert.Contains(run.Findings, f => f.Code == StrikeFindings.BelowTrip);
        Assert.Contains(run.Findings, f => f.Code == StrikeFindings.TakenByRotor);
        Assert.NotNull(run.Check!.Without!.ThroughTime);
    }

    [Fact]
    public void Thickness_NotStated_EndsWhenExpected_NeverWhenSevere_AndDecidesNothing()
    {
        string json = DemoCases.Json("ravensmoor-stump").Replace(", \"thickness\": \"200 mm\"", string.Empty, StringComparison.Ordinal);
        CaseSimulation run = CaseSimulation.Of(CaseReaderTests.ReadGood(json));
        Assert.Contains(run.Findings, f => f.Code == SimulationFindings.ThicknessNotKnown);
        Assert.False(run.Simulation!.RestsOnFacts);
        Assert.DoesNotContain(run.Findings, f => f.Code is StrikeFindings.ShouldHaveTripped or StrikeFindings.BelowTrip
            or StrikeFindings.TakenByRotor or StrikeFindings.SavedByDevice or StrikeFindings.Overloaded);
        Assert.All(run.Check!.Loads, load => Assert.True(load.DamagedWith is Answer.Maybe or Answer.NotKnown, load.ToString()));
        Assert.Null(run.Check.BlowAtDevice);
        Close.Relative(483, Tube(run).WithoutProtection!.Value.NewtonMeters, 0.01, "180 mm: 480 J, 0.857 rad/s");
        Assert.True(run.Simulation.TryRun(
            SimulatedDevices.Blocked, BandPoint.Expected, BandPoint.High, out SimulationOutcome? severe, out _));
        Assert.Null(severe!.ThroughTime);
        Assert.True(severe.Peak(Tube(run).Element).NewtonMeters > 1100, "nothing cuts it through: the clutch slips at 1150 N·m");
    }

    [Fact]
    public void Passes_BladesFold_CostTheirSwing()
    {
        // 100 N·m over 1.0472 rad less half of the first twentieth: 102 J, 102/(9.08·61.55) = 0.1827 rad/s, 339 N·m.
        CaseSimulation run = CaseSimulation.Of(CaseReaderTests.ReadGood(Swinging("\"swingTorque\": \"100 N.m\", \"passes\": true")));
        Close.Relative(339, Tube(run).WithoutProtection!.Value.NewtonMeters, 0.01, "sum above");
        Assert.True(run.Simulation!.RestsOnFacts);
        CaseSimulation meets = CaseSimulation.Of(CaseReaderTests.ReadGood(Swinging("\"swingTorque\": \"100 N.m\", \"passes\": false")));
        Assert.True(meets.Check!.IsBlowUnbounded);
    }

    [Theory]
    [InlineData("\"swingTorque\": \"0 N.m\", \"passes\": true", "strike.swingTorque", "above 0")]
    [InlineData("\"swingTorque\": \"9 N.m\", \"passes\": true, \"torque\": \"50 N.m\", \"travel\": \"5 deg\"", "strike.torque",
        "fold over it")]
    [InlineData("\"swingTorque\": \"9 N.m\", \"thickness\": \"9 mm\"", "strike.thickness", "means nothing without")]
    public void Contradiction_IsNamedAtItsPlace(string members, string path, string says)
    {
        CaseReadResult read = CaseReader.Read(Swinging(members));
        Assert.Contains(read.Errors, e => e.Path == path && e.ToString().Contains(says, StringComparison.Ordinal));
    }

    private static string Swinging(string members) => DemoCases.Json("ravensmoor-stump").Replace("\"yielding\"", "\"swingBack\"",
        StringComparison.Ordinal).Replace(Strike, "\"swing\": \"60 deg\", " + members, StringComparison.Ordinal);

    private static SimulatedLoad Tube(CaseSimulation run) => run.Check!.Loads.Single(l => l.Element is Part { Name: "drive tube" });
}
