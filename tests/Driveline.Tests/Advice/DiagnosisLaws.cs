using Driveline.Advice;
using Driveline.Findings;

namespace Driveline.Tests.Advice;

public class DiagnosisLaws
{
    [Law(MaxTest = 60)]
    public void Probabilities_AddToOne(int seed) =>
        Assert.Equal(1, Diagnosis.Of(Any(seed)).Causes.Sum(c => c.Probability.Value), 1e-12);

    [Law(MaxTest = 60)]
    public void OrderOfFacts_IsIrrelevant(int seed)
    {
        Complaint complaint = Any(seed);
        Complaint reversed = complaint.Facts.Reverse().Aggregate(Complaint.Of(complaint.Symptom), (c, f) => c.With(f));
        Diagnosis one = Diagnosis.Of(complaint);
        Diagnosis other = Diagnosis.Of(reversed);
        Assert.Equal(one.Causes.Select(c => (c.Cause, c.Probability.Value)), other.Causes.Select(c => (c.Cause, c.Probability.Value)));
        Assert.Equal(one.Next?.Question.Code, other.Next?.Question.Code);
    }

    [Law(MaxTest = 60)]
    public void NeutralEvidence_ChangesNothing(int seed, bool yoke)
    {
        Complaint complaint = Any(seed);
        Diagnosis before = Diagnosis.Of(complaint);
        Diagnosis neutral = Diagnosis.Of(complaint.With("boltPlace", yoke ? "yoke" : "throughShaftAtGearbox"));
        Assert.All(before.Causes, c => Assert.Equal(c.Probability.Value, neutral.ProbabilityOf(c.Cause).Value, 1e-12));
        string? open = FactQuestion.All.Select(q => q.Code).FirstOrDefault(q => complaint.Facts.All(f => f.Question != q));
        if (open is not null)
        {
            Diagnosis skipped = Diagnosis.Of(complaint.With(open, Fact.NotKnown));
            Assert.All(before.Causes, c => Assert.Equal(c.Probability.Value, skipped.ProbabilityOf(c.Cause).Value));
        }
    }

    [Law(MaxTest = 60)]
    public void NextCheck_IsNeverBesideARunningPto_AndNeverAskedTwice(int seed)
    {
        Complaint complaint = Any(seed);
        if (Diagnosis.Of(complaint).Next is not { } next)
        {
            return;
        }

        Assert.NotEqual(CheckPlace.NotKnown, next.Question.Place);
        Assert.True(next.Question.Place == CheckPlace.Desk || next.Question.Cautions.Contains(Caution.StopAndKeyOut));
        Assert.DoesNotContain(complaint.Facts, f => f.Question == next.Question.Code);
        Assert.True(next.Bits > 0);
    }

    [Law(MaxTest = 40)]
    public void StrongerBolt_IsNeverOfferedWithoutAModel_AndRemediesKeepTheirOrder(int seed)
    {
        Diagnosis diagnosis = Diagnosis.Of(Any(seed));
        Assert.DoesNotContain(diagnosis.Remedies, r => r.Code == Remedies.StrongerBolt);
        bool isKnown = diagnosis.IsEnoughKnown || diagnosis.Causes[0].IsSeen;
        int[] ranks = [.. diagnosis.Remedies.Select(r => isKnown && r.Cures(diagnosis.Causes[0].Cause) ? 0 : r.IsFreeHabit ? 1 : 2)];
        Assert.Equal(ranks.Order(), ranks);
    }

    [Fact]
    public void Catalogue_WorkAtTheMachine_SaysKeyOut()
    {
        // The words themselves must say it: a renderer may show the question alone.
        foreach (FactQuestion question in FactQuestion.All.Where(q => q.Place == CheckPlace.Standstill && q.Code != "fracture"))
        {
            Assert.Contains("key out", Driveline.Wording.Texts.English.Of(question.TextCode), StringComparison.Ordinal);
        }

        FactQuestion[] fromSeat = [.. FactQuestion.All.Where(q => q.Place == CheckPlace.Seat)];
        Assert.Equal("slipTest", fromSeat.Single().Code);
        Assert.Contains("nobody near", Driveline.Wording.Texts.English.Of("ask.slipTest"), StringComparison.Ordinal);
    }

    private static Complaint Any(int seed)
    {
        var random = new Random(seed);
        Complaint complaint = Complaint.Of((Symptom)random.Next(AdviceCodes.Symptoms));
        foreach (FactQuestion question in FactQuestion.All.Where(q => q.Code != "boltPlace" && random.Next(4) == 0))
        {
            complaint = complaint.With(question.Code, question.Answers[random.Next(question.Answers.Count)]);
        }

        return complaint;
    }
}
