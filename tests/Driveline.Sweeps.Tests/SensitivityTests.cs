using Driveline.Tests;

namespace Driveline.Sweeps.Tests;

public class SensitivityTests
{
    private const int Points = 1 << 16;

    private static readonly Lazy<StudyResult> Ishigami = new(() => Sweep.Run(Of(3, StudyOutput.Of("y", u => TestFunctions.Ishigami(u)),
        Points)));
    private static readonly double[] A8 = [0, 1, 4.5, 9, 99, 99, 99, 99];
    private static readonly Lazy<StudyResult> G8 = new(() => Sweep.Run(Of(8, StudyOutput.Of("y", u => TestFunctions.G(u, A8)), Points)));

    public static TheoryData<ReferenceRow> IshigamiRows => Rows("I_S");

    public static TheoryData<ReferenceRow> GRows => Rows("G8_S");

    public static Study Of(int factors, StudyOutput output, int points) => Study.Of("indices")
        .WithFactors(TestFunctions.Units(factors)).WithDesign(Design.Sobol(points, 3)).WithOutputs(output).WithSensitivity(true);

    [Theory]
    [MemberData(nameof(IshigamiRows))]
    public void Indices_Ishigami_AreThoseOfTheClosedForm(ReferenceRow row) => AssertIndex(Ishigami.Value, row, "I_");

    [Theory]
    [MemberData(nameof(GRows))]
    public void Indices_SobolG_AreThoseOfTheClosedForm(ReferenceRow row) => AssertIndex(G8.Value, row, "G8_");

    [Fact]
    public void Indices_LinearNormals_AreTheirSharesOfTheVariance()
    {
        // f = x1 + 2 x2 + 3 x3 + 4 x4, standard normal: 1/30, 4/30, 9/30, 16/30 (row L0).
        Study study = Study.Of("linear")
            .WithFactors([.. Enumerable.Range(1, 4).Select(k => Factor.Normal("x" + k, 0, 1))])
            .WithDesign(Design.Sobol(4096, 1)).WithSensitivity(true)
            .WithOutputs(StudyOutput.Of("y", x => x[0] + (2 * x[1]) + (3 * x[2]) + (4 * x[3])));
        Assert.All(Sweep.Run(study).Sensitivity.Select((s, k) => (s, (k + 1) * (k + 1) / 30.0)), pair =>
        {
            Assert.Equal(pair.Item2, pair.s.First!.Value, 0.01);
            Assert.Equal(pair.Item2, pair.s.Total!.Value, 0.01);
        });
    }

    [Fact]
    public void Indices_OutputThatDoesNotVary_AreNotKnown() =>
        Assert.All(Sweep.Run(Of(2, StudyOutput.Of("y", _ => 5), 64)).Sensitivity, s => Assert.Null(s.First));

    [Fact]
    public void Indices_OutputThatIsNotAlwaysKnown_AreNotKnown() => Assert.All(
        Sweep.Run(Of(2, StudyOutput.Of("y", u => u[0] < 0.01 ? double.NaN : u[0]), 64)).Sensitivity, s => Assert.Null(s.Total));

    [Theory]
    [InlineData(16)]
    [InlineData(3)]
    public void Indices_Threads_ChangeNoBit(int threads)
    {
        Study study = Of(3, StudyOutput.Of("y", u => TestFunctions.Ishigami(u)), 500).WithRowsPerGroup(37);
        string One(int count) => Sweep.Run(study, SweepOptions.Default.WithThreads(count),
            default).Document().ToJson().Split("\"quantiles\"")[1];
        Assert.Equal(One(1), One(threads));
    }

    [Fact]
    public void Morris_LinearFunction_HasItsSlopesAndNoSpread()
    {
        // f = 3 x1 − 2 x2, x from 0 to 10: effects over the whole range are 30 and −20.
        Study study = Study.Of("Morris").WithFactors(Factor.Uniform("x1", 0, 10), Factor.Uniform("x2", 0, 10))
            .WithDesign(Design.Morris(20, 1)).WithOutputs(StudyOutput.Of("y", x => (3 * x[0]) - (2 * x[1])));
        Cases.Results.EffectFigures[] effects = [.. Sweep.Run(study).Figures.Morris];
        Assert.Equal([30, -20], effects.Select(e => Math.Round(e.Mu!.Value, 9)));
        Assert.Equal([30, 20], effects.Select(e => Math.Round(e.MuStar!.Value, 9)));
        Assert.All(effects, e => Assert.Equal(0, e.Sigma!.Value, 1e-9));
    }

    [Fact]
    public void Tornado_FactorThatMattersMore_StandsFirst()
    {
        // y = x1 + 10 x2, each uniform from 0 to 1: the tenths' medians of x are 0.05 and 0.95, those of the other 0.5.
        Study study = Study.Of("tornado").WithFactors(TestFunctions.Units(2)).WithDesign(Design.Sobol(4096, 2))
            .WithOutputs(StudyOutput.Of("y", x => x[0] + (10 * x[1])));
        Cases.Results.SwingFigures first = Sweep.Run(study).Figures.Tornado[0];
        Assert.Equal("x2", first.Factor);
        Assert.Equal(0.5 + 0.5, first.AtLow!.Value, 0.05);
        Assert.Equal(0.5 + 9.5, first.AtHigh!.Value, 0.05);
    }

    // A factor of one value swings nothing. One of two values, a and b, in half of the rows each: all rows of a are its lowest tenth.
    // y = 100 b + x, x uniform from 0 to 1: the medians are 0.5 and 100.5.
    [Fact]
    public void Tornado_FactorOfFewValues_TakesAllRowsOfAValue()
    {
        Study study = Study.Of("few").WithFactors(Factor.Uniform("x", 0, 1), Factor.Choice("half", "a", "b"), Factor.Values("one", 7))
            .WithDesign(Design.Sobol(4096, 2)).WithOutputs(StudyOutput.Of("y", v => v[0] + (100 * v[1])));
        Cases.Results.SwingFigures[] swings = [.. Sweep.Run(study).Figures.Tornado];
        Assert.Equal("half", swings[0].Factor);
        Assert.Equal(0.5, swings[0].AtLow!.Value, 0.001);
        Assert.Equal(100.5, swings[0].AtHigh!.Value, 0.001);
        Cases.Results.SwingFigures one = swings.Single(s => s.Factor == "one");
        Assert.Equal(one.AtLow, one.AtHigh);
    }

    private static TheoryData<ReferenceRow> Rows(string prefix) => ReferenceTable.Where("sweeps", "sensitivity.csv", r =>
        r["id"].StartsWith(prefix, StringComparison.Ordinal) && r["id"].Length <= prefix.Length + 2
            && char.IsDigit(r["id"][^1]) && (r["id"].Length == prefix.Length + 1 || r["id"][prefix.Length] == 'T'));

    private static void AssertIndex(StudyResult result, ReferenceRow row, string prefix)
    {
        bool isTotal = row["id"].StartsWith(prefix + "ST", StringComparison.Ordinal);
        SensitivityIndex found = result.Sensitivity.Single(s => s.Factor == "x" + row["id"][^1]);
        double expected = row.Number("value");
        (double? value, double? low, double? high) = isTotal ? (found.Total, found.TotalLow, found.TotalHigh)
            : (found.First, found.FirstLow, found.FirstHigh);
        Assert.Equal(expected, value!.Value, 0.01);
        Assert.InRange(expected, low!.Value, high!.Value);
    }
}
