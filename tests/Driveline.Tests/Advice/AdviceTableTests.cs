using Driveline.Advice;
using Driveline.Wording;

namespace Driveline.Tests.Advice;

public class AdviceTableTests
{
    [Fact]
    public void EveryCode_HasWords()
    {
        IReadOnlyCollection<string> codes = Texts.English.Codes;
        Assert.All(Enum.GetValues<Symptom>(), s => Assert.Contains(AdviceCodes.Of(s), codes));
        Assert.All(Enum.GetValues<Cause>(), c => Assert.Contains(AdviceCodes.Of(c), codes));
        Assert.All(Enum.GetValues<CheckPlace>(), p => Assert.Contains(AdviceCodes.Of(p), codes));
        Assert.All(Remedies.Codes, r => Assert.Contains(r, codes));
        Assert.All(FactQuestion.All, q => Assert.Contains(q.TextCode, codes));
        Assert.All(FactQuestion.All.SelectMany(q => q.Answers.Select(a => Fact.Of(q.Code, a).Code)), c => Assert.Contains(c, codes));
        Assert.All(
            new[] { ModelEvidence.TripAgainstDamage, ModelEvidence.WorkAgainstTrip, ModelEvidence.EngagementAgainstTrip,
                ModelEvidence.FittedAgainstSpecified, ModelEvidence.StrikeAgainstTrip },
            c => Assert.Contains(c, codes));
    }

    [Fact]
    public void Enums_HaveNoMoreValuesThanTheTableHolds()
    {
        Assert.Equal(AdviceCodes.Causes, Enum.GetValues<Cause>().Length);
        Assert.Equal(AdviceCodes.Symptoms, Enum.GetValues<Symptom>().Length);
    }

    [Fact]
    public void Table_AnswersOfEachQuestion_AddToOneUnderEachCause()
    {
        foreach (FactQuestion question in FactQuestion.All)
        {
            for (int c = 0; c < AdviceCodes.Causes; c++)
            {
                Assert.Equal(1, question.Answers.Sum(a => LikelihoodTable.Held.Likelihood(question.Code, a)[c]), 1e-12);
            }
        }
    }

    [Theory]
    [InlineData("fracture", "rings", Cause.BoltFatigue, 0.763359, "hand: 0.15·10 / (0.55·0.3 + 0.15·10 + 0.3) = 1.5 / 1.965")]
    [InlineData("fracture", "rings", Cause.JointAngle, 0.15, "no factor: the base share")]
    [InlineData("holes", "round", Cause.LooseHoles, 0.051383, "hand: 0.65·0.15 / (0.0975 + 0.2·6 + 0.15·4) = 0.0975 / 1.8975 = 0.051383")]
    public void Table_WorkedLikelihood_Matches(string question, string answer, Cause cause, double expected, string working) =>
        Assert.True(Math.Abs(LikelihoodTable.Held.Likelihood(question, answer)[(int)cause] - expected) < 1e-6, working);

    // The answer that is the fault itself can't speak against it, nor leave it as likely as before.
    [Fact]
    public void Shown_AnswersThatAreTheFault_SpeakForTheirCause()
    {
        int shown = 0;
        foreach (Fact fact in FactQuestion.All.SelectMany(q => q.Answers.Select(a => Fact.Of(q.Code, a))))
        {
            foreach (Cause cause in Enum.GetValues<Cause>().Where(c => LikelihoodTable.Held.Shows(fact, c)))
            {
                double[] likelihood = LikelihoodTable.Held.Likelihood(fact.Question, fact.Answer);
                Assert.True(likelihood[(int)cause] > likelihood[0], fact + " shows " + cause);
                shown++;
            }
        }

        Assert.True(shown >= 20);
    }

    [Theory]
    [InlineData("when", "engaging", false)]                // circumstances: nobody said how it was engaged
    [InlineData("ptoClutch", "electric", false)]
    [InlineData("engagementManner", "abruptly", true)]
    public void AbruptEngagement_IsSeen_OnlyWhereSomebodySaysSo(string question, string answer, bool expected)
    {
        Diagnosis diagnosis = Diagnosis.Of(Complaint.Of(Symptom.BreaksOften).With(Fact.Of(question, answer)));
        Assert.Equal(expected, diagnosis.Causes.Single(c => c.Cause == Cause.AbruptEngagement).IsSeen);
    }

    [Fact]
    public void EveryCause_StandsBehindSomeSymptom_AndSomeFactTellsOfIt()
    {
        foreach (Cause cause in Enum.GetValues<Cause>().Where(c => c != Cause.NotKnown))
        {
            Assert.Contains(Enum.GetValues<Symptom>().Skip(1), s => LikelihoodTable.Held.Prior(s)[(int)cause] > 0.02);
            Assert.Contains(FactQuestion.All, q => q.Answers.Any(a =>
                LikelihoodTable.Held.Likelihood(q.Code, a)[(int)cause] > 1.3 * LikelihoodTable.Held.Likelihood(q.Code, a)[0]));
        }
    }

    [Theory]
    [InlineData("base,x,y,0.5", "of a question that is asked")]
    [InlineData("prior,breaksOften,noSuchCause,1", "is not a cause")]
    [InlineData("prior,noSuchSymptom,overload,1", "is not a symptom")]
    [InlineData("prior,breaksOften,overload,-1", "a number above 0")]
    [InlineData("ask,x,underThePto,1", "desk, standstill or seat")]
    public void Read_BadLine_IsRefusedWithItsReason(string line, string reason)
    {
        var error = Assert.Throws<FormatException>(() => LikelihoodTable.Read(new StringReader(line)));
        Assert.Contains(reason, error.Message, StringComparison.Ordinal);
        Assert.Contains(line, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Fact_UnknownAnswer_ListsWhatIsKnown()
    {
        var error = Assert.Throws<ArgumentException>(() => Fact.Of("hubTurns", "maybe"));
        Assert.Contains("freely, stiffly, notAtAll, notKnown", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Fact.Of("weather", "fine"));
    }

    [Theory]
    [InlineData(nameof(BoltMark.NoMark), nameof(BoltMark.Low), "unmarked")]
    [InlineData(nameof(BoltMark.NoMark), nameof(BoltMark.Medium), "softer")]
    [InlineData(nameof(BoltMark.Low), nameof(BoltMark.Medium), "softer")]
    [InlineData(nameof(BoltMark.Medium), nameof(BoltMark.Medium), "same")]
    [InlineData(nameof(BoltMark.Medium), nameof(BoltMark.Low), "stronger")]
    [InlineData(nameof(BoltMark.NotKnown), nameof(BoltMark.Low), null)]
    [InlineData(nameof(BoltMark.Low), nameof(BoltMark.NotKnown), null)]
    public void GradeFacts_MarksAgainstManual_CompareAsTheTradeDoes(string seen, string manual, string? answer) => Assert.Equal(
        answer, GradeFacts.Compare(Enum.Parse<BoltMark>(seen), Enum.Parse<BoltMark>(manual))?.Answer);
}
