using System.IO.Pipelines;
using System.Text;
using Driveline.Advice;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

public class CaseAssessmentTests
{
    private const string Contradiction = """
        {
          "driveline": [ { "shearBolt": { "thread": "1/2-13 UNC", "grade": "SAE 2", "hub": "free" } } ],
          "complaint": { "symptom": "breaksOften", "hubTurns": "notAtAll" }
        }
        """;

    [Fact]
    public void Assessment_GoodCase_HasFileAndNoErrors()
    {
        CaseAssessment asked = CaseAssessment.Of(Sample.BrushCutter);
        Assert.True(asked.IsGood);
        Assert.Equal("Brush cutter, Thornbeck common", asked.File.Title);
        Assert.Empty(asked.Errors);
        Assert.Empty(asked.ErrorsByPath());
    }

    [Fact]
    public void Assessment_UnreadableCase_ListsEachErrorWithItsPlace()
    {
        CaseAssessment asked = CaseAssessment.Of("{\n  \"titel\": \"x\",\n  \"partsComplete\": 3\n}");
        Assert.False(asked.IsGood);
        Assert.Equal(["titel", "partsComplete"], asked.Errors.Select(e => e.Path));
        Assert.Equal([(2, 3), (3, 20)], asked.Errors.Select(e => (e.Line, e.Column)));
        IDictionary<string, string[]> byPath = asked.ErrorsByPath();
        Assert.Equal(["titel", "partsComplete"], byPath.Keys);
        Assert.EndsWith("(line 2, column 3)", Assert.Single(byPath["titel"]), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => asked.Verdict());
    }

    [Fact]
    public void Assessment_ComplaintAgainstTheDriveline_IsAnErrorInTheSameList()
    {
        CaseAssessment asked = CaseAssessment.Of(Contradiction);
        CaseError error = Assert.Single(asked.Errors);
        Assert.Equal((CaseErrorKind.Contradiction, "complaint.hubTurns", 3), (error.Kind, error.Path, error.Line));
    }

    [Fact]
    public void Assessment_AnswerAskedTwice_IsComputedOnce()
    {
        CaseAssessment asked = CaseAssessment.Of(Sample.BrushCutter);
        Assert.Same(asked.Verdict(), asked.Verdict());
        Assert.Same(asked.Choice(), asked.Choice());
        Assert.Same(asked.Settings(), asked.Settings());
        Assert.Same(asked.Advice(), asked.Advice());
        Assert.Same(asked.Simulation(), asked.Simulation());
        Assert.Same(asked.Clutches(), asked.Clutches());
    }

    [Fact]
    public void Assessment_AskedByManyThreads_GivesAllTheSameVerdict()
    {
        CaseAssessment asked = CaseAssessment.Of(Sample.BrushCutter);
        var verdicts = new ProtectionVerdict[16];
        Parallel.For(0, verdicts.Length, k => verdicts[k] = asked.Verdict());
        Assert.All(verdicts, v => Assert.Same(verdicts[0], v));
    }

    [Fact]
    public void Assessment_LimitsOfNoWork_ReachTheSimulationThatTheCaseAsksFor()
    {
        CaseAssessment asked = CaseAssessment.Of(DemoCases.Read("ravensmoor-rock"));
        Assert.DoesNotContain(asked.Verdict().Findings, f => f.Code == SimulationFindings.TooMuchWork);
        Assert.Contains(
            asked.WithLimits(SimulationLimits.OfWork(0)).Verdict().Findings, f => f.Code == SimulationFindings.TooMuchWork);
    }

    [Fact]
    public void Assessment_Stopped_ThrowsAndAnswersAfterwards()
    {
        CaseAssessment asked = CaseAssessment.Of(DemoCases.Read("ravensmoor-rock"));
        var stopped = new CancellationToken(true);
        Assert.ThrowsAny<OperationCanceledException>(() => asked.Verdict(stopped));
        Assert.ThrowsAny<OperationCanceledException>(() => asked.Simulation(stopped));
        Assert.ThrowsAny<OperationCanceledException>(() => asked.Advice(stopped));
        CaseAssessment bolt = CaseAssessment.Of(Sample.BrushCutter);
        Assert.ThrowsAny<OperationCanceledException>(() => bolt.Choice(stopped));
        Assert.NotEqual(Headline.NotKnown, bolt.Choice().AsFitted.Headline);
        Assert.NotNull(asked.Simulation().Check);
    }

    [Fact]
    public void Assessment_OrderOfAsking_ChangesNoAnswer()
    {
        CaseFile file = DemoCases.Read("ravensmoor-rock");
        CaseAssessment first = CaseAssessment.Of(file);
        OwnerAdvice advice = first.Advice();
        CaseAssessment second = CaseAssessment.Of(file);
        CaseSimulation run = second.Simulation();
        Assert.Equal(Json(s => VerdictJson.Of(first.Verdict()).Write(s)), Json(s => VerdictJson.Of(second.Verdict()).Write(s)));
        Assert.Equal(Json(s => SimulationJson.Of(first.Simulation()).Write(s)), Json(s => SimulationJson.Of(run).Write(s)));
        Assert.Equal(Json(s => AdviceJson.Of(advice).Write(s)), Json(s => AdviceJson.Of(second.Advice()).Write(s)));
    }

    [Fact]
    public async Task Read_StreamThatOnlyReadsAsynchronously_IsRead()
    {
        using var body = new AsyncOnlyStream(Encoding.UTF8.GetBytes(Sample.BrushCutter));
        CaseAssessment asked = await CaseAssessment.ReadAsync(body, CancellationToken.None);
        Assert.True(asked.IsGood);
    }

    [Fact]
    public async Task Read_Pipe_IsReadAndLimited()
    {
        using var body = new MemoryStream(Encoding.UTF8.GetBytes(Sample.BrushCutter));
        Assert.True((await CaseAssessment.ReadAsync(PipeReader.Create(body), CancellationToken.None)).IsGood);
        using var large = new MemoryStream(new byte[CaseReader.LargestBytes + 1]);
        CaseReadResult read = await CaseReader.ReadAsync(PipeReader.Create(large), CancellationToken.None);
        Assert.Equal(CaseErrorKind.TooLarge, Assert.Single(read.Errors).Kind);
    }

    [Fact]
    public async Task Read_Stopped_Throws()
    {
        using var body = new MemoryStream(Encoding.UTF8.GetBytes(Sample.BrushCutter));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => CaseAssessment.ReadAsync(body, new CancellationToken(true)));
    }

    private static string Json(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
