using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Tests.Cases;

/// <summary>What a case file means as a simulation.</summary>
public class CaseSimulationTests
{
    private const string Full = """
        {
          "tractor": { "ptoPower": "30 kW", "engineSpeed": "2160 rpm", "ptoSpeed": "540 rpm", "flywheelInertia": "0.05 kg.m2",
            "torqueReserve": 0.2,
            "engineTorqueLine": { "torque": "100 N.m", "fall": "10 N.m.s/rad" },
            "ptoClutch": { "kind": "hydraulic", "capacity": "4000 N.m" } },
          "driveline": [
            { "shaft": "tube", "stiffness": "2000 N.m/rad", "inertia": "0.0001 kg.m2", "damagedAt": { "low": "1000 N.m",
              "expected": "1200 N.m", "high": "1500 N.m" } },
            { "shearBolt": { "name": "bolt", "thread": "5/16-18 UNC", "grade": "SAE 2", "layout": "throughShaft",
              "shaftDiameter": "1 1/4 in", "planeThrough": "shank", "hub": "free" } },
            { "rotor": "blades", "inertia": "3 kg.m2" }
          ],
          "work": { "steadyMean": "100 N.m", "peaks": "simulated", "engagement": { "manner": "abrupt", "engineSpeed": "1080 rpm",
            "load": "0 N.m", "rampTime": "0.5 s" } },
          "strike": { "kind": "rigid", "what": "blade" }
        }
        """;

    [Fact]
    public void Strike_OfTheCase_CarriesTheClosedForm()
    {
        // Engine 0.05·(2160/540)² = 0.8 kg·m², half the shaft 0.00005, without the bolt: 100 + 18π·√(0.80005·2000) = 2362.02 N·m.
        CaseSimulation run = Of(Full.Replace("10 N.m.s/rad", "0 N.m.s/rad", StringComparison.Ordinal));
        Assert.Equal(SimulatedEvent.Strike, run.Event);
        Assert.Empty(run.Missing);
        Assert.Empty(run.Simulation!.Missing);
        Assert.Empty(run.Simulation.Assumed);
        SimulatedLoad tube = run.Check!.Loads[0];
        Close.Relative(2362.02, tube.WithoutProtection!.Value.NewtonMeters, 5e-6, "hand, two decimals");
        Assert.Equal(Answer.Yes, tube.DamagedWithout);
        Assert.True(run.Check.Tripped);
    }

    [Fact]
    public void Engagement_OfTheCase_StartsAtItsEngineSpeed()
    {
        CaseSimulation run = CaseSimulation.Engagement(Read(Full));
        Assert.Equal(270, run.Simulation!.Drive.Speed.RevolutionsPerMinute, 6);   // 540·1080/2160
        Assert.Equal(0.8, run.Simulation.Drive.EngineInertia!.Expected!.Value.KilogramSquareMeters, 12);
        Assert.Equal(0.5, run.Simulation.Drive.Rise!.Expected!.Value.Seconds, 12);
        Assert.True(run.Simulation.RestsOnFacts, string.Join(", ", run.Simulation.Assumed));
    }

    [Theory]
    [InlineData("\"kind\": \"yielding\", \"torque\": \"900 N.m\", \"travel\": \"30 deg\"")]
    [InlineData("\"kind\": \"yielding\", \"force\": \"1800 N\", \"radius\": \"0.5 m\", \"distance\": \"261.79938779914944 mm\"")]
    public void Yielding_ByTorqueOrByForce_IsTheSame(string kind)
    {
        // 1800 N at 0.5 m is 900 N·m; 261.8 mm at 0.5 m are 30°.
        CaseSimulation run = Of(Full.Replace("\"kind\": \"rigid\"", kind, StringComparison.Ordinal));
        CaseSimulation one = Of(
            Full.Replace(
            "\"kind\": \"rigid\"", "\"kind\": \"yielding\", \"torque\": \"900 N.m\", \"travel\": \"30 deg\"", StringComparison.Ordinal));
        Assert.Equal(
            one.Check!.Loads[0].WithoutProtection!.Value.NewtonMeters, run.Check!.Loads[0].WithoutProtection!.Value.NewtonMeters, 6);
        Assert.True(run.Check.Loads[0].WithoutProtection!.Value.NewtonMeters < Of(
            Full).Check!.Loads[0].WithoutProtection!.Value.NewtonMeters);
    }

    [Fact]
    public void Shaft_OfSizeAndLength_TwistsAsSteelDoes()
    {
        // Solid 20 mm, 250 mm: 79 GPa·π·0.02⁴/32/0.25 = 4964 N·m/rad expected.
        CaseSimulation run = Of(
            Full.Replace(
            "\"stiffness\": \"2000 N.m/rad\"", "\"outerDiameter\": \"20 mm\", \"length\": \"250 mm\"", StringComparison.Ordinal));
        Assert.Equal(4964, run.Chain!.Parts.Single(p => p.Name == "tube").Stiffness!.Expected!.Value.NewtonMetersPerRadian, 0.5);
    }

    [Theory]
    [InlineData("\"ptoSpeed\": \"540 rpm\",", SimulationFindings.SpeedNotKnown, "tractor.ptoSpeed")]
    [InlineData("\"kind\": \"rigid\",", SimulationFindings.StrikeNotKnown, "strike.kind")]
    [InlineData(", \"inertia\": \"3 kg.m2\"", SimulationFindings.InertiaNotKnown, "the rotor's inertia")]
    [InlineData("\"stiffness\": \"2000 N.m/rad\",", SimulationFindings.StiffnessSupposed, "the tube's stiffness")]
    [InlineData("\"steadyMean\": \"100 N.m\",", SimulationFindings.LoadSupposed, "the torque of work")]
    [InlineData("\"flywheelInertia\": \"0.05 kg.m2\",", SimulationFindings.EngineHeld, "the flywheel")]
    [InlineData(", \"capacity\": \"4000 N.m\"", SimulationFindings.NoClutchCap, "the PTO clutch")]
    [InlineData(", \"what\": \"blade\"", SimulationFindings.PlaceNotKnown, "what was hit")]
    public void OneFactLess_IsNamed_AndNothingIsDecided(string less, string code, string what)
    {
        Assert.Contains(less, Full, StringComparison.Ordinal);
        CaseSimulation run = Of(Full.Replace(less, string.Empty, StringComparison.Ordinal));
        Assert.True(run.Findings.Any(f => f.Code == code), what + ": got " + string.Join(", ", run.Findings));
        Assert.All(run.Check?.Loads ?? [],
            load => Assert.True(load.DamagedWith is Answer.Maybe or Answer.NotKnown
            && load.DamagedWithout is Answer.Maybe or Answer.NotKnown, what + ": " + load));
        Assert.DoesNotContain(
            run.Findings, f => f.Code is StrikeFindings.ShouldHaveTripped or StrikeFindings.BelowTrip or StrikeFindings.Overloaded);
    }

    [Fact]
    public void SimulatedPeaks_FeedTheEngagement_NeverTheSteadyPeak()
    {
        ProtectionVerdict simulated = Verdict(Full);
        ProtectionVerdict stated = Verdict(Full.Replace("\"peaks\": \"simulated\",", string.Empty, StringComparison.Ordinal));
        Assert.Equal(stated.WorkPeak!.ToString(), simulated.WorkPeak!.ToString());
        Assert.Null(stated.Question.Engagement.Peak);
        Assert.NotNull(simulated.Question.Engagement.Peak);
        Assert.Contains(simulated.Findings, f => f.Code == StrikeFindings.ShouldHaveTripped);
        Assert.DoesNotContain(stated.Findings, f => f.Code == StrikeFindings.ShouldHaveTripped);
        Assert.NotEqual(Headline.NoSettingFits, simulated.Headline);
    }

    [Fact]
    public void SimulatedPeaks_WithoutAFact_LeaveTheEngagementNotKnown()
    {
        ProtectionVerdict verdict = Verdict(
            Full.Replace("\"rampTime\": \"0.5 s\"", "\"rampTime\": { \"low\": \"0.5 s\" }", StringComparison.Ordinal));
        Assert.Null(verdict.Question.Engagement.Highest);
        Assert.Contains(verdict.Findings, f => f.Code == SimulationFindings.FactUnbounded);
        Assert.NotEqual(Answer.Yes, verdict.Quiet);
    }

    [Theory]
    [InlineData("\"at\": \"blade\", \"kind\": \"rigid\"", "strike.at", "is the name of no element", "blades")]
    [InlineData("\"kind\": \"rigid\", \"torque\": \"5 N.m\"", "strike.torque", "does not belong", "Yielding")]
    [InlineData("\"kind\": \"yielding\", \"torque\": \"5 N.m\", \"force\": \"5 N\"", "strike.force", "state one of them", "torque")]
    [InlineData("\"kind\": \"yielding\", \"travel\": \"5 deg\"", "strike.travel", "means nothing without", "torque")]
    [InlineData("\"kind\": \"soft\"", "strike.kind", "must be one of", "yielding")]
    public void Contradiction_IsNamedAtItsPlace(string kind, string path, string says, string names)
    {
        CaseError error = CaseReaderTests.ReadOneError(Full.Replace("\"kind\": \"rigid\"", kind, StringComparison.Ordinal));
        Assert.Equal(path, error.Path);
        string text = error.ToString() + error.Message;
        Assert.True(text.Contains(says, StringComparison.Ordinal), text);
        Assert.Contains(names, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Engagement_AtLowEngineSpeed_EngineDoesNotRaceUp()
    {
        // Rigid line, seen at the PTO: engine 0.9·4² = 14.4 kg·m², the rest 0.044 + 4.204·1.47² = 9.128; ω0 = 300 min⁻¹ = 31.416 rad/s,
        // c = 1050 N·m / 4 s = 262.5, K = 40, τ = 14.4/40 = 0.36 s, load 40 N·m from t0 = 40/262.5 = 0.152 s.
        // Engine: ω0 − (c/K)·(t − τ·(1 − e^(−t/τ))); rotor: (c/2)·(t − t0)²/J2. They meet at t = 1.450 s: T = c·t = 380.7 N·m.
        // Heat, ∫ c·t·(ω1 − ω2) dt = 4403 J; ½·J2·ω0² = 4505 J. The shafts swing a little about that.
        DrivelineSimulation simulation = DemoCases.Simulation("ravensmoor-clutch-let-in-gently").Simulation!;
        SimulationOutcome gentle = simulation.Run(SimulatedDevices.Fitted, BandPoint.Expected);
        Assert.InRange(gentle.SlipEnergy.Joules, 4403 * 0.98, 4403 * 1.02);
        Assert.InRange(gentle.Peak(simulation.Chain.Elements.Single(e => e.Name == "drive tube")).NewtonMeters, 380.7 * 0.98, 380.7 * 1.03);
    }

    [Theory]
    [InlineData("\"fall\": \"40 N.m.s/rad\", ", "", "the fall is not stated")]
    [InlineData("40 N.m.s/rad", "0 N.m.s/rad", "a torque without fall has no governor to shift")]
    public void Engagement_EngineLineWithoutFall_EngineIsHeld(string stated, string instead, string why)
    {
        string json = DemoCases.Json("ravensmoor-clutch-let-in-gently");
        string other = json.Replace(stated, instead, StringComparison.Ordinal);
        Assert.NotEqual(json, other);
        Assert.True(Of(other).Simulation!.Assumed.Any(f => f.Code == SimulationFindings.EngineHeld), why);
    }

    [Fact]
    public void Engagement_EngineInertiaTakenAway_KeepsItsBoundAndTheQuietYes()
    {
        string json = DemoCases.Json("ravensmoor-clutch-let-in-gently");
        string less = json.Replace(" \"flywheelInertia\": \"0.9 kg.m2\",", string.Empty, StringComparison.Ordinal);
        Assert.NotEqual(json, less);
        ProtectionVerdict verdict = ProtectionCheck.Run(CaseQuestion.Of(Read(less)).Question!);
        Assert.Null(verdict.Question.Engagement.Peak);
        Assert.True(verdict.Question.Engagement.PeakAtMost!.High!.Value.NewtonMeters < verdict.Trip!.Low.NewtonMeters);
        Assert.Equal(Answer.Yes, verdict.Quiet);
    }

    private static CaseFile Read(string json) => CaseReaderTests.ReadGood(json);

    private static CaseSimulation Of(string json)
    {
        CaseSimulation run = CaseSimulation.Of(Read(json));
        Assert.Empty(run.Errors);
        return run;
    }

    private static ProtectionVerdict Verdict(string json) => ProtectionCheck.Run(CaseQuestion.Of(Read(json)).Question!);
}
