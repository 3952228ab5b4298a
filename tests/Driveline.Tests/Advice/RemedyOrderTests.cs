using Driveline.Advice;
using Driveline.Loads;
using Driveline.Protection;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Advice;

/// <summary>The order of remedies, what they leave undone, and causes that one remedy cures.</summary>
public class RemedyOrderTests
{
    [Fact]
    public void Remedies_CauseKnown_ComeCureThenFreeHabitsThenTheRest()
    {
        // A bolt softer than the manual's, and a driver who drops the clutch in: the bolt first, then the habit, then what costs.
        Diagnosis diagnosis = Diagnosis.Of(ComplaintCases.With(
            Symptom.BreaksOften,
            "gradeAgainstManual=softer;engagementManner=abruptly;holes=oval;when=engaging;hoursBetweenBreaks=under1h"));
        Remedy[] remedies = [.. diagnosis.Remedies];
        Assert.True(remedies[0].Cures(diagnosis.Causes[0].Cause), diagnosis.Causes[0] + ": " + remedies[0]);
        int lastFree = Array.FindLastIndex(remedies, r => r.IsFreeHabit);
        int firstOther = Array.FindIndex(remedies, r => !r.IsFreeHabit && !r.Cures(diagnosis.Causes[0].Cause));
        Assert.True(lastFree >= 0 && firstOther > lastFree, string.Join(", ", remedies.Select(r => r.Code)));
    }

    [Fact]
    public void Remedies_CauseNotKnown_BeginWithWhatCostsNothing()
    {
        Diagnosis diagnosis = Diagnosis.Of(Complaint.Of(Symptom.BreaksWhenEngaging));
        Assert.True(diagnosis.Remedies[0].IsFreeHabit, diagnosis.Remedies[0].Code);
    }

    [Fact]
    public void Remedy_ThatLeavesTheGuardMarginBelow1_StillFailsAndSaysWhatItTakes()
    {
        // The bolt acts up to 2400 N·m, the tube is damaged from 2100: 0.875. A gentle driver cures the breaks, not that.
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(1600, 2000, 2400)));
        Complaint complaint = ComplaintCases.With(Symptom.BreaksWhenEngaging, "engagementManner=abruptly")
            .WithModel(ModelEvidence.Of(verdict));
        Remedy gentle = Diagnosis.Of(complaint).Remedies.Single(r => r.Code == Remedies.EngageGently);
        Assert.True(gentle.StillFails);
        Assert.Equal(0.875, gentle.GuardMargin!.Value, 9);
        Assert.Equal(2100, gentle.MustActBelow!.Value.NewtonMeters, 6);
        Assert.Equal(1000, gentle.MustHold!.Value.NewtonMeters, 6);
        Assert.False(gentle.NothingFits);
    }

    [Fact]
    public void Remedy_WithoutAModel_SaysNothingOfWhetherItIsEnough()
    {
        Remedy remedy = Diagnosis.Of(Complaint.Of(Symptom.BreaksWhenEngaging)).Remedies[0];
        Assert.Null(remedy.StillFails);
        Assert.Null(remedy.MustHold);
    }

    [Fact]
    public void Remedy_ThatChangesNothing_IsNotOffered()
    {
        // The manual's bolt is the fitted one: to fit it again changes no answer and no margin.
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(1150, 1300, 1500)).WithSpecified(Bolt(1150, 1300, 1500)));
        Complaint complaint = Complaint.Of(Symptom.BreaksOften).WithModel(ModelEvidence.Of(verdict));
        Assert.DoesNotContain(Diagnosis.Of(complaint).Remedies, r => r.Code == Remedies.SpecifiedBolt);
        Assert.Contains(Diagnosis.Of(Complaint.Of(Symptom.BreaksOften)).Remedies, r => r.Code == Remedies.SpecifiedBolt);
    }

    [Fact]
    public void Causes_CuredByTheSameRemedy_CountTogether()
    {
        // Bitten off at the start: whether by the manner or by the engine speed, the same slow start cures it. Neither alone is known.
        Diagnosis diagnosis = Diagnosis.Of(Complaint.Of(Symptom.BreaksWhenEngaging));
        Assert.Equal(
            new[] { Cause.AbruptEngagement, Cause.EngagementSpeedTooHigh }.ToHashSet(), diagnosis.Pooled.ToHashSet());
        Assert.True(diagnosis.Causes[0].Probability.Value < 0.5, diagnosis.Causes[0].ToString());
        Assert.True(diagnosis.IsEnoughKnown);
    }

    [Fact]
    public void Fact_ThatRestatesTheSymptom_CountsOnce()
    {
        Assert.Equal(
            Diagnosis.Of(Complaint.Of(Symptom.HolesOval)).ProbabilityOf(Cause.LooseHoles).Value,
            Diagnosis.Of(Complaint.Of(Symptom.HolesOval).With(OwnerFacts.Holes.Oval)).ProbabilityOf(Cause.LooseHoles).Value, 12);
        Assert.Equal(
            Diagnosis.Of(Complaint.Of(Symptom.ClutchNeverSlips)).ProbabilityOf(Cause.ClutchStuck).Value,
            Diagnosis.Of(Complaint.Of(Symptom.ClutchNeverSlips).With(OwnerFacts.LastTrip.Never))
                .ProbabilityOf(Cause.ClutchStuck).Value, 12);
        Assert.True(Diagnosis.Of(Complaint.Of(Symptom.HolesOval)).Causes.Single(c => c.Cause == Cause.LooseHoles).IsSeen);
    }

    [Theory]
    [InlineData(Symptom.NothingGaveAtStrike,
        "device=shearBolt;engineAtJam=stalls;hubTurns=freely;gradeAgainstManual=same;boltSize=asManual;rotorAtStrike=stoppedDead",
        Cause.TractorTooWeak, "remedy.stopAtOnce")]
    [InlineData(Symptom.NothingGaveAtStrike,
        "device=shearBolt;engineAtJam=ptoClutchSlips;hubTurns=freely;gradeAgainstManual=same;boltSize=asManual",
        Cause.PtoClutchSlipsFirst, "remedy.stopAtOnce")]
    [InlineData(Symptom.ClutchSettingDrifts, "linings=notRunIn", Cause.LiningsNotRunIn, "remedy.runIn")]
    [InlineData(Symptom.ClutchSlipsInWork, "oilFrom=leakingSeal;facings=oily", Cause.OilLeak, "remedy.mendLeak")]
    [InlineData(Symptom.BreaksOften,
        "boltHole=another;gradeAgainstManual=same;boltSize=asManual;holes=round;planeThrough=shank;fracture=cleanShear;growth=light",
        Cause.WrongHole, "remedy.rightHole")]
    public void Cause_SeenByItsOwnSign_IsLikeliestAndItsCureComesFirst(Symptom symptom, string facts, Cause cause, string remedy)
    {
        Diagnosis diagnosis = Diagnosis.Of(ComplaintCases.With(symptom, facts));
        Assert.Equal(cause, diagnosis.Causes[0].Cause);
        Assert.True(diagnosis.Causes[0].IsSeen);
        Assert.Contains(remedy, diagnosis.Remedies.Take(2).Select(r => r.Code));
    }

    [Fact]
    public void PtoClutch_WeakerThanTheBolt_SpeaksForSlippingFirst()
    {
        // 800 N·m against a bolt expected to act at 2000: (2000/800)^4 = 39, kept to 20.
        ProtectionQuestion question = With(Bolt(1600, 2000, 2400));
        Complaint complaint = Complaint.Of(Symptom.NothingGaveAtStrike);
        double Chance(Engagement engagement) => Diagnosis.Of(complaint.WithModel(
            ModelEvidence.Of(ProtectionCheck.Run(question.WithEngagement(engagement))).Without(ModelEvidence.EngagementAgainstTrip)))
            .ProbabilityOf(Cause.PtoClutchSlipsFirst).Value;
        double before = Chance(Engagement.NotKnown);
        double after = Chance(Engagement.NotKnown.WithCapacity(Nm(700, 800, 900)));
        Close.Relative(20 * before / (1 - before), after / (1 - after), 1e-9, "odds times 20");
    }
}
