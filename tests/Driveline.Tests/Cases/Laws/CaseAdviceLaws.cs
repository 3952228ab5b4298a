using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Findings;

namespace Driveline.Tests.Cases;

/// <summary>Laws of the advice, through the case file.</summary>
public class CaseAdviceLaws
{
    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [MemberData(nameof(Demos))]
    public void AnyDemo_NeutralEvidence_ChangesNothing(string name)
    {
        CaseFile file = DemoCases.Read(name);
        Diagnosis before = GoodAdvice.Of(name).Diagnosis;
        Diagnosis neutral = GoodAdvice.Of(file.With("complaint.boltPlace", "\"yoke\"").Case!).Diagnosis;
        Diagnosis asked = GoodAdvice.Of(file.With("complaint.modifications", "\"notKnown\"").Case!).Diagnosis;
        Diagnosis without = GoodAdvice.Of(file.With("complaint.modifications", null).Case!).Diagnosis;
        Assert.All(before.Causes, c => Assert.Equal(c.Probability.Value, neutral.ProbabilityOf(c.Cause).Value, 1e-12));
        Assert.All(without.Causes, c => Assert.Equal(c.Probability.Value, asked.ProbabilityOf(c.Cause).Value, 1e-12));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void AnyDemo_InterviewToItsEnd_NeverWorksUnderARunningPto_AndResumesFromItsFile(string name)
    {
        CaseInterview interview = CaseInterview.From(DemoCases.Read(name), DemoCases.AdviceOf);
        interview = interview.NeedsSymptom ? interview.Complain(Symptom.BreaksOften) : interview;
        for (int k = 0; interview.Next is { } question && k < 40; k++)
        {
            Assert.True(question.Place == CheckPlace.Desk || question.Cautions.Contains(Caution.StopAndKeyOut), question.Code);
            interview = interview.Answer(k % 3 == 0 ? Fact.NotKnown : question.Answers[k % question.Answers.Count]);
            CaseInterview resumed = CaseInterview.From(CaseReader.Read(CaseWriter.ToJson(interview.File)).Case!, DemoCases.AdviceOf);
            Assert.Equal(interview.Next?.Code, resumed.Next?.Code);
            Assert.Equal(interview.Advice.Diagnosis.Causes.Select(c => c.Probability.Value),
                resumed.Advice.Diagnosis.Causes.Select(c => c.Probability.Value));
        }

        Assert.Null(interview.Next);
    }
}
