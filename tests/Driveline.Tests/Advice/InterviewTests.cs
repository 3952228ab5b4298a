using Driveline.Advice;

namespace Driveline.Tests.Advice;

public class InterviewTests
{
    [Fact]
    public void Interview_OfAnOwnerWhoKnows_EndsWithACause()
    {
        // An owner whose hub is rusted fast; every other answer is the usual one.
        var truth = new Dictionary<string, string>
        {
            ["device"] = "shearBolt",
            ["hubTurns"] = "notAtAll",
            ["hubGreased"] = "never",
            ["lastTrip"] = "never",
            ["gradeAgainstManual"] = "same",
            ["rotorAtStrike"] = "stoppedDead",
            ["whatStruck"] = "blade",
            ["storage"] = "outdoors",
            ["climate"] = "moist",
            ["boltSize"] = "asManual",
            ["damageSeen"] = "nothing",
            ["modifications"] = "none",
        };
        Interview interview = Interview.Start(Symptom.NothingGaveAtStrike);
        int asked = 0;
        while (interview.Next is { } question)
        {
            interview = interview.Answer(truth.TryGetValue(question.Code, out string? answer) ? answer : Fact.NotKnown);
            asked++;
        }

        Assert.Equal(Cause.HubSeized, interview.Diagnosis.Causes[0].Cause);
        Assert.True(interview.Diagnosis.IsEnoughKnown);
        Assert.InRange(asked, 2, 12);
    }

    [Fact]
    public void Interview_OfAnOwnerWhoKnowsNothing_EndsWithoutACause()
    {
        Interview interview = Interview.Start(Symptom.BreaksOften);
        var seen = new HashSet<string>();
        while (interview.Next is { } question)
        {
            Assert.True(seen.Add(question.Code), "asked twice: " + question.Code);
            interview = interview.Answer(Fact.NotKnown);
        }

        Assert.False(interview.Diagnosis.IsEnoughKnown);
        Assert.Equal(
            Diagnosis.Of(Complaint.Of(Symptom.BreaksOften)).Causes.Select(c => c.Probability.Value),
            interview.Diagnosis.Causes.Select(c => c.Probability.Value));
    }

    [Fact]
    public void Resume_FromSavedFacts_AsksOnAsIfNeverStopped()
    {
        Interview interview = Interview.Start(Symptom.ClutchSmokes).Answer(Fact.Of("device", "slipClutch"));
        interview = interview.Answer(interview.Next!.Answers[0]);
        Interview resumed = Interview.Resume(Symptom.ClutchSmokes, interview.Complaint.Facts.Select(f => Fact.Of(f.Question, f.Answer)));
        Assert.Equal(interview.Next!.Code, resumed.Next!.Code);
        Assert.Equal(
            interview.Diagnosis.Causes.Select(c => c.Probability.Value), resumed.Diagnosis.Causes.Select(c => c.Probability.Value));
    }

    [Fact]
    public void With_ContradictingFact_IsRefused_AndANotKnownMayBeFilled()
    {
        Complaint complaint = Complaint.Of(Symptom.BreaksOften).With("when", "engaging");
        var error = Assert.Throws<ArgumentException>(() => complaint.With("when", "working"));
        Assert.Contains("answered with 'engaging' already", error.Message, StringComparison.Ordinal);
        Assert.Same(complaint, complaint.With("when", "engaging"));
        Assert.Equal(
            "working", Complaint.Of(Symptom.BreaksOften).With("when", Fact.NotKnown).With("when", "working").Facts.Single().Answer);
    }

    [Fact]
    public void Answer_WhenOver_IsRefused()
    {
        Interview over = Interview.Start(Symptom.NothingGaveAtStrike).Answer(Fact.Of("device", "none"));
        Assert.True(over.IsOver);
        Assert.Equal(Cause.ProtectionMissing, over.Diagnosis.Causes[0].Cause);
        Assert.Throws<InvalidOperationException>(() => over.Answer("freely"));
    }
}
