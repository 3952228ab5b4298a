using Driveline.Cases;

namespace Driveline.Sweeps.Tests;

public class StudyReaderTests
{
    private const string Shaft = "\"path\": \"driveline[2].shearBolt.shaftDiameter\"";
    private const string Sobol = "\"design\": { \"kind\": \"sobol\", \"n\": 16, \"seed\": 7 }";

    [Fact]
    public void Study_EveryDistribution_IsRead()
    {
        StudyReadResult read = StudyReader.Read(TestStudies.Json(
            Sobol,
            "{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }, { \"path\": \"work.steadyPeak\", \"band\": true }, "
                + "{ \"path\": \"driveline[1].damagedAt\", \"normal\": [\"2100 N.m\", \"50 N.m\"] }, "
                + "{ \"path\": \"driveline[0].damagedAt\", \"lognormal\": [\"2700 N.m\", \"100 N.m\"] }, "
                + "{ \"path\": \"driveline[3].damagedAt\", \"triangular\": [\"2200 N.m\", \"2500 N.m\", \"2900 N.m\"] }, "
                + "{ \"path\": \"driveline[3].efficiency\", \"pert\": [0.9, 0.95, 0.98] }, "
                + "{ \"values\": [\"SAE 2\", \"SAE 8\"], \"path\": \"driveline[2].shearBolt.grade\" }, "
                + "{ \"path\": \"driveline[2].shearBolt.bolts\", \"values\": [1, 2] }",
            "\"assess.verdict\", \"assess.guardMargin\""));
        Assert.Empty(read.Errors);
        Assert.Equal(
            ["uniform 0.03 0.034", "triangular 420 500 650", "normal 2100 50", "lognormal 2700 100", "triangular 2200 2500 2900",
                "pert 0.9 0.95 0.98", "values 0 1", "values 1 2"],
            read.Study!.Factors.Select(f => f.Distribution.Mark));
        StudyResult result = Sweep.Run(read.Study);
        Assert.Equal(16, result.Rows);
        Assert.Equal(0, result.Failed);
    }

    [Theory]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"34 mm\", \"34 mm\"] }", Sobol, "\"assess.verdict\"", "factors[0].uniform",
        "range is empty")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"3 mm\", \"34 mm\"] }", Sobol, "\"assess.verdict\"", "factors[0].uniform[0]",
        "from 5 mm to 200 mm; got \"3 mm\"")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 N\", \"34 mm\"] }", Sobol, "\"assess.verdict\"", "factors[0].uniform[0]",
        "is a force")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\"] }", Sobol, "\"assess.verdict\"", "factors[0].uniform",
        "a list of 2 quantities is wanted; got 1")]
    [InlineData("{ " + Shaft + ", \"normal\": [\"30 mm\", \"0 mm\"] }", Sobol, "\"assess.verdict\"", "factors[0].normal[1]",
        "standard deviation above 0")]
    [InlineData("{ " + Shaft + ", \"triangular\": [\"30 mm\", \"40 mm\", \"35 mm\"] }", Sobol, "\"assess.verdict\"",
        "factors[0].triangular", "within the range")]
    [InlineData("{ " + Shaft + ", \"unifrm\": [1, 2] }", Sobol, "\"assess.verdict\"", "factors[0].unifrm", "did you mean \"uniform\"?")]
    [InlineData("{ " + Shaft + " }", Sobol, "\"assess.verdict\"", "factors[0]", "needs a distribution")]
    [InlineData("{ " + Shaft + ", \"band\": true }", Sobol, "\"assess.verdict\"", "factors[0].band", "must state a band there")]
    [InlineData("{ " + Shaft + ", \"band\": true, \"values\": [\"30 mm\"] }", Sobol, "\"assess.verdict\"", "factors[0].band",
        "has one distribution")]
    [InlineData("{ \"path\": \"driveline[2].shearBolt.grade\", \"values\": [\"SAE 99\"] }", Sobol, "\"assess.verdict\"",
        "factors[0].values[0]", "not in the SAE J429 data")]
    [InlineData("{ \"path\": \"driveline[2].shearBolt.grade\", \"uniform\": [1, 2] }", Sobol, "\"assess.verdict\"", "factors[0].uniform",
        "takes values")]
    [InlineData("{ \"path\": \"work.stedyPeak\", \"uniform\": [\"30 N.m\", \"34 N.m\"] }", Sobol, "\"assess.verdict\"", "factors[0].path",
        "did you mean \"steadyPeak\"?")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }, { " + Shaft + ", \"values\": [\"30 mm\"] }", Sobol,
        "\"assess.verdict\"", "factors[1].path", "varies already")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }", Sobol, "\"assess.verdct\"", "outputs[0]",
        "did you mean \"assess.verdict\"?")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }", "\"design\": { \"kind\": \"sobl\", \"n\": 16 }",
        "\"assess.verdict\"", "design.kind", "sobol")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }", "\"design\": { \"kind\": \"morris\", \"n\": 16, \"levels\": 3 }",
        "\"assess.verdict\"", "design.levels", "even; got 3")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }",
        "\"design\": { \"kind\": \"grid\", \"n\": 16, \"maximin\": true }", "\"assess.verdict\"", "design.maximin", "latinHypercube")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }", "\"correlation\": [[1, 0.5]], " + Sobol, "\"assess.verdict\"",
        "correlation", "1 rows of 1 numbers")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }",
        "\"sensitivity\": true, \"design\": { \"kind\": \"grid\", \"n\": 4 }", "\"assess.verdict\"", "sensitivity", "design of kind sobol")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }, "
        + "{ \"path\": \"work.steadyPeak\", \"uniform\": [\"300 N.m\", \"340 N.m\"] }",
        "\"design\": { \"kind\": \"grid\", \"n\": 1000000 }", "\"assess.verdict\"", "design", "1,000,000,000,000 rows")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }, "
        + "{ \"path\": \"work.steadyPeak\", \"uniform\": [\"300 N.m\", \"340 N.m\"] }",
        "\"correlation\": [[1, 0.5], [0.5, 1]], \"sensitivity\": true, " + Sobol, "\"assess.verdict\"", "sensitivity", "independent")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }, "
        + "{ \"path\": \"work.steadyPeak\", \"uniform\": [\"300 N.m\", \"340 N.m\"] }",
        "\"correlation\": [[1, 0.5], [0.5, 1]], \"design\": { \"kind\": \"grid\", \"n\": 3 }", "\"assess.verdict\"", "correlation",
        "every combination")]
    [InlineData("{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }, "
        + "{ \"path\": \"work.steadyPeak\", \"uniform\": [\"300 N.m\", \"340 N.m\"] }",
        "\"correlation\": [[1, 0.5], [0.5, 1]], \"design\": { \"kind\": \"morris\", \"n\": 3 }", "\"assess.verdict\"", "correlation",
        "step one factor")]
    public void Study_ThatIsBad_SaysWhereAndWhy(string factors, string more, string outputs, string path, string says)
    {
        CaseError error = StudyReader.Read(TestStudies.Json(more, factors, outputs)).Errors[0];
        Assert.Equal(path, error.Path);
        Assert.Contains(says, error.Message, StringComparison.Ordinal);
        Assert.True(error.Line > 1 && error.Column > 1, error.ToString());
    }

    [Fact]
    public void Study_CorrelationThatIsNotPositiveDefinite_IsRefusedAtItsPlace()
    {
        CaseError error = Assert.Single(StudyReader.Read(TestStudies.Json(
            "\"correlation\": [[1, 0.9, 0.9], [0.9, 1, -0.9], [0.9, -0.9, 1]], " + Sobol,
            "{ " + Shaft + ", \"uniform\": [\"30 mm\", \"34 mm\"] }, { \"path\": \"work.steadyPeak\", \"band\": true }, "
                + "{ \"path\": \"driveline[1].damagedAt\", \"band\": true }",
            "\"assess.verdict\"")).Errors);
        Assert.Equal("correlation", error.Path);
        Assert.Contains("positive definite", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Study_CaseInIt_TellsErrorsOfTheCaseByTheirLine()
    {
        CaseError error = StudyReader.Read("{ \"title\": \"t\",\n  \"case\": { \"titel\": \"x\" },\n  \"factors\": [], \"outputs\": [],\n "
            + Sobol + " }").Errors[0];
        Assert.Equal((2, 13), (error.Line, error.Column));
        Assert.Contains("did you mean \"title\"?", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Study_CaseThatIsNotThere_IsNamed()
    {
        CaseError error = StudyReader.Read("{ \"title\": \"t\", \"case\": \"none.case.json\", \"factors\": [ { " + Shaft
            + ", \"uniform\": [\"30 mm\", \"34 mm\"] } ], \"outputs\": [\"assess.verdict\"], " + Sobol + " }").Errors[0];
        Assert.Contains("no case file \"none.case.json\"", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{ \"case\": 3 }")]
    [InlineData("{ \"case\": {}, \"factors\": 3, \"outputs\": {}, \"design\": [] , \"correlation\": [1], \"title\": 1 }")]
    [InlineData("{ \"case\": {}, \"factors\": [ 3, {}, { \"path\": 1 }, { \"path\": \"\", \"uniform\": {} } ], \"outputs\": [1] }")]
    public void Study_Rubbish_GivesErrorsAndNoException(string json) => Assert.NotEmpty(StudyReader.Read(json).Errors);
}
