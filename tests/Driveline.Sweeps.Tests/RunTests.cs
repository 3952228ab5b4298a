namespace Driveline.Sweeps.Tests;

public class RunTests
{
    [Fact]
    public void Rows_ThatFail_AreRecordedAndCounted()
    {
        StudyResult result = Sweep.Run(TestStudies.Mixed(1000));
        StudyTable table = result.Table!;
        int low = table.Numbers("y").ToArray().Count(y => y < 1.5);
        Assert.True(low > 10);
        Assert.Equal(low, result.Failed);
        for (int k = 0; k < table.Rows; k++)
        {
            bool fails = table.Numbers("y")[k] < 1.5;
            Assert.Equal(fails ? "InvalidOperationException: y is too small for this" : null, table.ErrorOf(k));
            Assert.Equal(fails, double.IsNaN(table.Numbers("double")[k]));
        }

        Cases.Results.FailureFigures failure = Assert.Single(result.Figures.Failures);
        Assert.Equal(low, failure.Rows);
    }

    [Fact]
    public void Shares_OfWords_AreThoseOfTheRowsThatHaveOne()
    {
        StudyResult result = Sweep.Run(TestStudies.Mixed(4000));
        string?[] words = result.Table!.Words("word").ToArray();
        Assert.Equal(words.Count(w => w == "small") / (double)words.Count(w => w is not null), result.ShareOf("word", "small"), 1e-12);
        Assert.Equal(1, result.ShareOf("word", "small") + result.ShareOf("word", "large, very"), 1e-12);
    }

    [Fact]
    public void Progress_OfARun_EndsWithAllRows()
    {
        var told = new List<StudyProgress>();
        Sweep.Run(TestStudies.Mixed(1000), SweepOptions.Default.WithProgress(told.Add), default);
        Assert.Equal(1000, told[^1].Done);
        Assert.Equal(1000, told[^1].Rows);
        Assert.Equal(TimeSpan.Zero, told[^1].Left);
    }

    [Fact]
    public void Run_Stopped_Throws()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Sweep.Run(TestStudies.Mixed(1000), SweepOptions.Default.WithThreads(3),
            stop.Token));
    }

    [Fact]
    public void Run_GroupsOfUnevenCost_StayInOrder()
    {
        Study study = Study.Of("uneven").WithFactors(Factor.Uniform("x", 0, 1)).WithDesign(Design.Random(400, 1)).WithRowsPerGroup(7)
            .WithOutputs(StudyOutput.Of("y", x =>
            {
                Thread.SpinWait((int)(20_000 * x[0] * x[0]));
                return x[0];
            }));
        StudyTable table = Sweep.Run(study, SweepOptions.Default.WithThreads(5), default).Table!;
        Assert.Equal(table.Numbers("x").ToArray(), table.Numbers("y").ToArray());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Run_ColumnOutput_AllocatesNothingPerRow(int million)
    {
        Study Of(int rows) => Study.Of("closed form").WithFactors(Factor.Uniform("f", 0.2, 0.5), Factor.Uniform("n", 6e3, 8e3))
            .WithDesign(Design.Sobol(rows, 1)).WithOutputs(StudyOutput.OfColumns("t", ClosedForm.SlipTorque(4, 0, 1, 0.066)));
        var plan = StudyPlan.Of(Of(1 << 17));
        var group = new Running.RowGroup(plan);
        var work = new Running.GroupWork(plan);
        var tally = new Statistics.GroupTally(plan, isCounting: true);
        work.Compute(0, group, default);
        tally.Take(group);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int k = 0; k < million; k++)
        {
            work.Compute(1, group, default);
            tally.Take(group);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Theory]
    [InlineData(1 << 20)]
    [InlineData((1 << 20) + 70_000)]
    public void Run_MoreRowsThanAreKept_HasTheSameFiguresOnAnyNumberOfThreads(int rows)
    {
        Study study = Study.Of("many").WithFactors(Factor.Uniform("x", -1, 3)).WithDesign(Design.Random(rows, 1))
            .WithOutputs(StudyOutput.OfColumns("y", (x, into) => x[0].CopyTo(into)));
        string Figures(int threads) => Sweep.Run(study, SweepOptions.Default.WithThreads(threads), default)
            .Document().ToJson().Split("\"quantiles\"")[1];
        Assert.Equal(Figures(1), Figures(3));
    }

    [Fact]
    public void Study_HowOftenTheGearboxIsHurt_HasMoreThanOneAnswer()
    {
        Study study = StudyReader.ReadFile(Path.Combine(AppContext.BaseDirectory, "cases", "ravensmoor-how-often.study.json")).Study!;
        StudyResult result = Sweep.Run(study.WithDesign(Design.Sobol(48, 7)));
        Assert.Equal(0, result.Failed);
        Assert.All(new[] { "Yes", "No" }, answer => Assert.InRange(result.ShareOf("simulate.damaged[main gearbox]", answer), 0.04, 0.96));
        Assert.True(result.RankCorrelation("simulate.peakTorqueNm[main gearbox]", "strike.force") > 0.2);
    }

    [Fact]
    public void Study_WithoutFactorsOrOutputs_SaysWhatIsMissing()
    {
        Assert.Contains("factor", Study.Of("t").Problem, StringComparison.Ordinal);
        Assert.Contains("output", Study.Of("t").WithFactors(Factor.Uniform("x", 0, 1)).Problem, StringComparison.Ordinal);
        Assert.Contains("twice", Study.Of("t").WithFactors(Factor.Uniform("x", 0, 1))
            .WithOutputs(StudyOutput.Of("x", _ => 1)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Study_GridOf10To12Points_IsRefusedWithTheCount() => Assert.Contains(
        "1,000,000,000,000 rows",
        Study.Of("t").WithFactors(TestFunctions.Units(4)).WithDesign(Design.Grid(1000)).WithOutputs(StudyOutput.Of("y", _ => 1)).Problem,
        StringComparison.Ordinal);

    [Fact]
    public void Study_CorrelatedFactorsWithSensitivity_IsRefusedWithAWordWhy() => Assert.Contains(
        "independent",
        Study.Of("t").WithFactors(TestFunctions.Units(2)).WithCorrelation(new double[,] { { 1, 0.5 }, { 0.5, 1 } })
            .WithOutputs(StudyOutput.Of("y", _ => 1)).WithSensitivity(true).Problem,
        StringComparison.Ordinal);

    [Fact]
    public void Study_CorrelatedFactors_AreSoInItsRows()
    {
        Study study = Study.Of("t").WithFactors(Factor.Lognormal("a", 5, 1), Factor.Uniform("b", 0, 1))
            .WithCorrelation(new double[,] { { 1, 0.7 }, { 0.7, 1 } }).WithDesign(Design.Sobol(8192, 1))
            .WithOutputs(StudyOutput.Of("a again", x => x[0]));
        Assert.Equal(6 / Math.PI * Math.Asin(0.35), Sweep.Run(study).RankCorrelation("a again", "b")!.Value, 0.01);
    }
}
