using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>What a machine of its kind needs stands in for work of which no torque or power is stated.</summary>
public class WorkNeedTests
{
    private const string Baler = "tarn-hollow-baler-not-measured";

    // Hand: the rows for round balers give 4 + 1.1 · 15 = 20.5 kW and 2.5 + 1.8 · 15 = 29.5 kW, each ± 50 %, so 10.25, 25 and 44.25 kW; at
    // 540 / min (56.549 rad/s) 181.3, 442.1 and 782.5 N·m. The engine stalls at 30 kW · 0.922 · 1.3 / 56.549 rad/s = 635.9 N·m at most.
    // Peaks over means: 1.2, 2, 3.5.
    [Theory]
    [InlineData("", 217.5, 884.2, 2225.6, "635.9 · 3.5")]
    [InlineData("tractor.torqueReserve", 217.5, 884.2, 2738.8, "without a reserve nothing caps: 782.5 · 3.5")]
    [InlineData("tractor.enginePower", 217.5, 884.2, 2738.8, "782.5 · 3.5")]
    public void WorkPeak_OfAFeedRate_IsTheNeedWithinTheEngine(string without, double low, double expected, double high, string why)
    {
        Assert.NotEmpty(why);
        ProtectionVerdict verdict = Verdict(without.Length == 0 ? DemoCases.Read(Baler) : DemoCases.Read(Baler).With(without, null).Case!);
        Assert.Equal(low, verdict.WorkPeak!.Low.NewtonMeters, 0.1);
        Assert.Equal(expected, verdict.WorkPeak.Expected!.Value.NewtonMeters, 0.1);
        Assert.Equal(high, verdict.WorkPeak.High!.Value.NewtonMeters, 0.1);
        Assert.Equal(Answer.Maybe, verdict.Quiet);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.WorkAssumed && f.Because.Contains("implement"));
        Assert.Contains(verdict.Findings, f => f.Code == LoadsFindings.PowerFromMemory);
    }

    // Hand: 0.1 t/h at most 1.5 · 4.11 kW / 56.549 rad/s · 3.5 = 382 N·m, against a bolt that holds 1035 N·m at least.
    [Fact]
    public void Quiet_NeedFarBelowTheBolt_IsNoYes()
    {
        ProtectionVerdict verdict = Verdict(DemoCases.Read(Baler).With("implement.massFlow", "\"0.1 t/h\"").Case!);
        Assert.True(verdict.WorkMargin > 2, "work margin " + verdict.WorkMargin);
        Assert.Equal(Answer.Maybe, verdict.Quiet);
    }

    // Hand: the three rows for rotary cutters give 9.8 to 15.3 kW for each metre: 1.5 m at most 22.9 kW / 56.549 rad/s · 3.5 = 1418 N·m.
    [Fact]
    public void WorkPeak_OfAWidth_IsTheNeedOfItsKind()
    {
        ProtectionVerdict verdict = Verdict(DemoCases.Read("larkfield-soft-root"));
        Assert.InRange(verdict.WorkPeak!.High!.Value.NewtonMeters, 1400, 1430);
        Assert.Null(Verdict(DemoCases.Read("larkfield-soft-root").With("implement.width", null).Case!).WorkPeak);
    }

    [Theory]
    [InlineData("work.steadyMean", "\"300 N.m\"")]
    [InlineData("work.meanPower", "\"20 kW\"")]
    [InlineData("work.steadyPeak", "\"600 N.m\"")]
    public void Need_WorkStated_IsNotAsked(string path, string value) =>
        Assert.Null(CaseWork.Need(DemoCases.Read(Baler).With(path, value).Case!));

    [Fact]
    public void Need_NoStop_ComesOfIt()
    {
        ProtectionVerdict verdict = Verdict(DemoCases.Read(Baler).With("implement.massFlow", "\"900 t/h\"").Case!);
        Assert.NotEqual(Answer.No, verdict.Quiet);
        Assert.NotEqual(StandingState.Stop, verdict.Standing.State);
    }

    private static ProtectionVerdict Verdict(CaseFile file) => ProtectionCheck.Run(CaseQuestion.Of(file).Question!);
}
