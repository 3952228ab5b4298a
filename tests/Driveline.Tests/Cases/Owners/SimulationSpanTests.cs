using System.Text.RegularExpressions;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Wording;

namespace Driveline.Tests.Cases.Owners;

/// <summary>What usual values in place of rare facts give, and that nothing rests on them.</summary>
public class SimulationSpanTests
{
    private const string Sudden = """
        {
          "implement": { "kind": "flailMower", "width": "1 m" },
          "tractor": { "ptoSpeed": "540 rpm", "ptoClutch": { "kind": "handLever", "capacity": "600 N.m" } },
          "driveline": [ { "shaft": "tube", "inertia": "0.5 kg.m2" }, { "rotor": "flails" } ],
          "work": { "engagement": { "manner": "abrupt" } }
        }
        """;

    [Fact]
    public void Simulate_ShippedCasesThatNameAnInertia_AreAnsweredAllButTwo()
    {
        string[] named = [.. DemoCases.Names.Where(n => DemoCases.Json(n).Contains("\"inertia\"", StringComparison.Ordinal))];
        string[] silent = [.. named.Where(n => !DemoCases.Simulation(n).IsAnswered)];
        Assert.True(named.Length >= 22 && silent.Length <= 2, string.Join(", ", silent));
    }

    [Fact]
    public void Span_SuddenBiteOnAShaftOfUnknownStiffness_CarriesTheClosedFormAtItsCorners()
    {
        // A torque T at once on a free line, J₁ half the shaft's 0.5 kg·m², J₂ the other half with 0.22, √(0.22 · 1.3) = 0.53479 or 1.3
        // kg·m² of flails a meter: 2·T·J₂/(J₁ + J₂), whatever the stiffness. 1200·0.47/0.72 = 783.3; 1200·0.78479/1.03479 = 910.1;
        // 1200·1.55/1.80 = 1033.3.
        SimulationSpan span = Of(Sudden).Span!;
        Band tube = span.Loads.Single(l => l.Element.Name == "tube").WithoutProtection!.SiBand;
        Close.Relative(783.3, tube.Low, 1e-4, "hand, one decimal");
        Close.Relative(910.1, tube.Expected, 1e-4, "hand, one decimal");
        Close.Relative(1033.3, tube.High, 1e-4, "hand, one decimal");
        Assert.Equal(5, span.Runs);   // one expected, two stiffnesses times two inertias
        Assert.Null(span.RunsThatTrip);
        Assert.Equal([SupposedQuantity.Stiffness, SupposedQuantity.Inertia], span.Supposed.Select(f => f.Quantity));
    }

    [Fact]
    public void Span_WithoutPartsAndClutch_TakesThemFromKindWidthAndPower()
    {
        // 26 kW at 540 min⁻¹ are 459.78 N·m: 1.2 to 2.5 times are 551.7 to 1149.5 N·m.
        SimulationSpan span = Of("""
            { "implement": { "kind": "rotaryCutter", "width": "1.5 m" }, "tractor": { "ptoPower": "26 kW", "ptoSpeed": "540 rpm" },
              "driveline": [ { "gearbox": "main gearbox" } ] }
            """).Span!;
        SupposedFact capacity = span.Supposed.Single(f => f.Quantity == SupposedQuantity.PtoClutchCapacity);
        Assert.Equal((551.7, 1149.5), (Math.Round(capacity.Low, 1), Math.Round(capacity.High, 1)));
        Assert.Equal(["PTO shaft", "rotor"], span.Supposed.Where(f => f.IsPartSupposed).Select(f => f.Name));
        SupposedFact ratio = span.Supposed.Single(f => f.Quantity == SupposedQuantity.SpeedRatio);
        Assert.Equal((1.485, 1.792), (Math.Round(ratio.Low, 3), Math.Round(ratio.High, 3)));   // 2·63/1.5/56.549; 2·76/1.5/56.549
    }

    [Fact]
    public void Span_StatedJoint_NarrowsTheShaft()
    {
        SimulationSpan span = Of(Sudden.Replace(
            "\"driveline\": [ ", "\"driveline\": [ { \"universalJoint\": \"joint\", \"cross\": \"27 x 74.6\" }, ",
            StringComparison.Ordinal)).Span!;
        SupposedFact stiffness = span.Supposed.Single(f => f.Quantity == SupposedQuantity.Stiffness);
        Assert.Equal((3200, 12500), (stiffness.Low, stiffness.High));   // series 4
    }

    [Fact]
    public void Span_NeverDecides_NoAnswerAndNoBoundRestsOnIt()
    {
        string asked = DemoCases.Json("thornbeck-bolt-right").Replace(
            "\"peaksPerHour\": 40,", "\"peaksPerHour\": 40, \"peaks\": \"simulated\",", StringComparison.Ordinal);
        Assert.Contains("simulated", asked, StringComparison.Ordinal);
        CaseSimulation run = Of(asked);
        Assert.NotNull(run.Span);
        Assert.Null(run.Check!.With);
        Assert.All(run.Check.Loads, l => Assert.Equal((Answer.NotKnown, Answer.NotKnown), (l.DamagedWith, l.DamagedWithout)));
        Assert.False(run.Simulation!.RestsOnFacts);
        Engagement engagement = CaseQuestion.Of(CaseReader.Read(asked).Case!).Question!.Engagement;
        Assert.Null(engagement.Peak);
        Assert.Null(engagement.PeakAtMost);
    }

    [Fact]
    public void Span_FactsThatSuffice_IsNone()
    {
        Assert.Null(DemoCases.Simulation("ravensmoor-rock").Span);
        Assert.Null(Of(Sudden.Replace("{ \"shaft\": \"tube\", \"inertia\": \"0.5 kg.m2\" }, { \"rotor\": \"flails\"",
            "{ \"shaft\": \"tube\", \"stiffness\": \"2000 N.m/rad\" }, { \"rotor\": \"flails\", \"inertia\": \"3 kg.m2\"",
            StringComparison.Ordinal)).Span);
    }

    [Fact]
    public void Text_OfASpan_ListsEveryUsualValueWithItsBasis_InBothLanguages()
    {
        CaseSimulation run = Of(Sudden);
        string english = OneLine(SimulationText.Of(run.Check!, run.Span, ReportOptions.Default));
        string spanish = OneLine(SimulationText.Of(run.Check!, run.Span, ReportOptions.Default.WithLanguage(Language.Spanish)));
        Assert.Contains("decides nothing", english, StringComparison.Ordinal);
        Assert.Contains("1500 N·m/rad", english, StringComparison.Ordinal);
        Assert.Contains("none measured", english, StringComparison.Ordinal);
        Assert.DoesNotContain("nothing can be simulated", english, StringComparison.Ordinal);
        Assert.Contains("no decide nada", spanish, StringComparison.Ordinal);
        Assert.Contains("ninguna medida", spanish, StringComparison.Ordinal);
        Assert.Contains("\"span\":", SimulationJson.Of(run).ToString(), StringComparison.Ordinal);
    }

    private static string OneLine(string text) => Regex.Replace(text, @"\s+", " ");

    private static CaseSimulation Of(string json)
    {
        CaseReadResult read = CaseReader.Read(json);
        Assert.True(read.IsRead, string.Join("; ", read.Errors));
        return CaseSimulation.Of(read.Case!);
    }
}
