using Driveline.Advice;
using Driveline.Cases;
using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Tests.Cases.Owners;

/// <summary>
/// Invented owners with what owners know, mostly without any torque. What a practitioner would answer is stated beside each, before the
/// answer.
/// </summary>
public class OwnerCasesTests
{
    private const string Bolt = "\"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\", \"layout\": \"throughShaft\", "
        + "\"shaftDiameter\": \"1 1/4 in\", \"planeThrough\": \"shank\", \"holeFit\": \"tight\"";

    private const string Manual = "\"specified\": { \"shearBolt\": { \"thread\": \"3/8-16 UNC\", \"grade\": \"SAE 5\" } }";

    private static string Line(string device) =>
        "\"driveline\": [ { \"universalJoint\": \"front joint\" }, { \"shaft\": \"drive tube\" }, " + device
            + ", { \"gearbox\": \"gearbox\" }, { \"rotor\": \"rotor\" } ]";

    private static string Fitted(string more) => "{ \"shearBolt\": { " + Bolt + more + " } }";

    private static CaseAssessment Owner(string machine, params string[] members)
    {
        CaseAssessment asked = CaseAssessment.Of(
            "{ \"date\": \"2026-05-01\", \"implement\": { \"kind\": \"" + machine + "\" }, " + string.Join(", ", members) + " }");
        Assert.True(asked.IsGood, string.Join("; ", asked.Errors));
        return asked;
    }

    private static string First(CaseAssessment asked) => asked.Verdict().MeasureNext[0].Code;

    [Fact]
    public void RotaryCutter_ManualsBoltFreeHubTwoQuietSeasons_IsAsSpecifiedAndQuiet()
    {
        // A practitioner: the right bolt, it has worked for 200 hours; go on, once you have looked it over.
        CaseAssessment asked = Owner("rotaryCutter", Line(Fitted(", \"hub\": \"free\"")), Manual,
            "\"history\": { \"from\": \"season\", \"hours\": 200, \"breaks\": 0, \"changed\": false }");
        ProtectionVerdict verdict = asked.Verdict();
        Assert.Equal(Headline.AsSpecified, verdict.Headline);
        Assert.True(verdict.IsQuietByExperience);
        Assert.Equal(StandingState.WithCare, verdict.Standing.State);
        Assert.All(verdict.MeasureNext, m => Assert.NotEqual(MeasurementPlace.Maker, m.Place));
    }

    [Fact]
    public void RotaryCutter_HubNeverTried_IsToldToTurnItByHandFirst()
    {
        // A practitioner: nobody knows whether the bolt protects anything until the hub has been turned.
        CaseAssessment asked = Owner("rotaryCutter", Line(Fitted(string.Empty)), Manual);
        Assert.Equal(StandingState.NotKnown, asked.Verdict().Standing.State);
        Assert.Equal(Measurements.HubTurn, First(asked));
    }

    [Fact]
    public void FlailMower_GradeEightForFive_IsStopped()
    {
        // A practitioner: take it out; put the manual's bolt back.
        CaseAssessment asked = Owner("flailMower",
            Line(Fitted(", \"hub\": \"free\"").Replace("SAE 5", "SAE 8", StringComparison.Ordinal)), Manual);
        Assert.Equal(Answer.No, asked.Verdict().AsSpecified.Answer);
        Assert.Equal(StandingState.Stop, asked.Verdict().Standing.State);
        Assert.True(asked.Verdict().Standing.Has(StandingFindings.FittedStronger));
    }

    [Fact]
    public void RotaryTiller_ClutchSmokes_IsStoppedAndNotAskedAboutBlades()
    {
        // A practitioner: stop, let it cool, look at springs and linings; nothing about blades or the height of cut.
        CaseAssessment asked = Owner("rotaryTiller", Line("{ \"slipClutch\": { } }"), "\"complaint\": { \"symptom\": \"clutchSmokes\" }");
        Assert.True(asked.Verdict().Standing.Has(StandingFindings.ClutchSmokes));
        Assert.Equal(StandingState.Stop, asked.Verdict().Standing.State);
        Diagnosis diagnosis = asked.Advice().Diagnosis;
        Assert.DoesNotContain(diagnosis.Remedies, r => r.Code is "remedy.sharpenBlades" or "remedy.easeTheWork");
        Assert.Equal(0, diagnosis.ProbabilityOf(Cause.GradeTooSoft).Value);
    }

    [Fact]
    public void SmallSquareBaler_BreaksInWork_IsNotAskedAboutTheDeck()
    {
        // A practitioner: too much at a time, a soft bolt or loose holes; a baler has no deck and scalps nothing.
        CaseAssessment asked = Owner("smallSquareBaler", Line(Fitted(", \"hub\": \"free\"")),
            "\"complaint\": { \"symptom\": \"breaksOften\", \"when\": \"working\" }");
        Assert.Equal(Headline.TripsInWork, asked.Verdict().Headline);
        Diagnosis diagnosis = asked.Advice().Diagnosis;
        Assert.Equal(0, diagnosis.ProbabilityOf(Cause.DeckNoseDown).Value);
        Assert.Equal("from10to50h", Owner("smallSquareBaler", Line(Fitted(", \"hub\": \"free\"")),
            "\"history\": { \"hours\": 40, \"breaks\": 2 }", "\"complaint\": { \"symptom\": \"breaksOften\" }")
            .Advice().Diagnosis.Complaint.AnswerTo("hoursBetweenBreaks"));   // 40 h over 2 breaks: counted already, so not asked for
        Assert.DoesNotContain(
            diagnosis.Next!.Question.Code, new[] { "scalping", "deckAttitude", "cuttingHeight", "bladeCondition", "blades" });
    }

    [Fact]
    public void PostHoleAuger_SoftBoltsForTheManuals_AreTheCause()
    {
        // A practitioner: grade 2 where 5 belongs; and first of all no bolt may stand out of a turning shaft.
        CaseAssessment asked = Owner("postHoleAuger",
            Line(Fitted(", \"hub\": \"free\"").Replace("SAE 5", "SAE 2", StringComparison.Ordinal)), Manual,
            "\"complaint\": { \"symptom\": \"breaksOften\", \"when\": \"working\" }");
        Assert.Contains(asked.Advice().Diagnosis.Causes.Take(2), c => c.Cause == Cause.GradeTooSoft);
        Assert.Contains(Caution.NoProudBolt, asked.Verdict().Cautions.Take(1));
        Assert.DoesNotContain(asked.Advice().Diagnosis.Remedies, r => r.Code is "remedy.sharpenBlades" or "remedy.raiseTheCut");
    }

    [Fact]
    public void SnowBlower_ElectricPtoBreaksAtEngaging_IsNotToldToLetItInSlowly()
    {
        // A practitioner: the switch snaps in; engage at low engine speed, ask the dealer about a soft start.
        CaseAssessment asked = Owner("snowBlower", "\"tractor\": { \"ptoClutch\": { \"kind\": \"electric\" } }",
            Line(Fitted(", \"hub\": \"free\"")), Manual, "\"complaint\": { \"symptom\": \"breaksWhenEngaging\" }");
        Diagnosis diagnosis = asked.Advice().Diagnosis;
        Assert.Contains(diagnosis.Causes.Take(2), c => c.Cause is Cause.AbruptEngagement or Cause.EngagementSpeedTooHigh);
        Assert.Contains(diagnosis.Remedies, r => r.Code == "remedy.engageAtLowSpeed");
        Assert.DoesNotContain(diagnosis.Remedies, r => r.Code == Remedies.EngageGently);
    }

    [Fact]
    public void Spreader_ClutchStoodOutdoorsAndNeverSlips_IsProbablyStuck()
    {
        // A practitioner: rusted together; take it as no protection until it has slipped in a test.
        CaseAssessment asked = Owner("spreader", Line("{ \"slipClutch\": { } }"),
            "\"complaint\": { \"symptom\": \"clutchNeverSlips\", \"storage\": \"outdoors\" }");
        Assert.Equal(Cause.ClutchStuck, asked.Advice().Diagnosis.Causes[0].Cause);
        Assert.Equal(Answer.NotKnown, asked.Verdict().Guards);
        Assert.Contains(asked.Verdict().MeasureNext.Take(3), m => m.Code is Measurements.SlipTest or Measurements.ClutchSprings);
    }

    [Fact]
    public void FeedMixer_HubSeized_IsToldToFreeItFirst()
    {
        // A practitioner: stop; free the hub before anything else.
        CaseAssessment asked = Owner("feedMixer", Line(Fitted(", \"hub\": \"seized\"")), Manual);
        Assert.Equal(Headline.DoesNotProtect, asked.Verdict().Headline);
        Assert.Equal(StandingState.Stop, asked.Verdict().Standing.State);
        Assert.Equal(Measurements.FreeHub, First(asked));
    }

    [Fact]
    public void RoundBaler_TubeTwisted_IsStoppedThoughTheBoltIsTheManuals()
    {
        // A practitioner: no work with a twisted tube, and find out why the bolt let that happen.
        CaseAssessment asked = Owner("roundBaler", Line(Fitted(", \"hub\": \"free\"")), Manual,
            "\"complaint\": { \"symptom\": \"nothingGaveAtStrike\", \"damageSeen\": \"tubeTwisted\" }");
        Assert.Equal(StandingState.Stop, asked.Verdict().Standing.State);
        Assert.NotEqual(Headline.AsSpecified, asked.Verdict().Headline);
    }

    [Fact]
    public void RotaryCutter_NothingFitted_IsStopped()
    {
        // A practitioner: nothing gives; stop. An empty list says nothing of the kind.
        string line = "\"driveline\": [ { \"universalJoint\": \"j\" }, { \"shaft\": \"s\" }, "
            + "{ \"gearbox\": \"g\" }, { \"rotor\": \"r\" } ]";
        Assert.Equal(StandingState.Stop, Owner("rotaryCutter", line, "\"partsComplete\": true").Verdict().Standing.State);
        Assert.Equal(StandingState.NotKnown, Owner("rotaryCutter", line).Verdict().Standing.State);
    }

    [Fact]
    public void Spreader_RatingsReadFromPlateAndCross_RaiseNoAlarm()
    {
        // A practitioner: a small bolt under every rating; nothing speaks against it, but no maker says what breaks the parts.
        CaseAssessment asked = Owner("spreader", "\"tractor\": { \"ptoSpeed\": \"540 rpm\", \"ptoType\": 1 }",
            "\"driveline\": [ { \"universalJoint\": \"j\", \"cross\": \"30.2 x 92\" }, { \"shaft\": \"s\", \"ratedTorque\": \"830 N.m\" }, "
            + "{ \"shearBolt\": { \"thread\": \"M6\", \"grade\": \"8.8\", \"layout\": \"throughShaft\", \"shaftDiameter\": \"30 mm\", "
            + "\"planeThrough\": \"shank\", \"hub\": \"free\", \"holeFit\": \"tight\", \"shaftYieldStrength\": \"355 MPa\" } }, "
            + "{ \"gearbox\": \"g\", \"ratio\": 1, \"efficiency\": 0.96, \"ratedPower\": \"45 kW\", \"ratedSpeed\": \"540 rpm\" } ]");
        ProtectionVerdict verdict = asked.Verdict();
        Assert.Equal(Answer.Maybe, verdict.Guards);
        Assert.DoesNotContain(verdict.Findings, f => f.Severity == Severity.Danger);
        Assert.All(verdict.Parts.Where(p => p.Part.Name is "j" or "s" or "g"), p => Assert.Equal(Answer.Yes, p.Guards));
    }
}
