using Driveline.Chains;
using Driveline.Protection;

namespace Driveline.Tests.Protection;

public class ExperienceTests
{
    private static readonly ProtectiveDevice Bolt = Thornbeck.Bolt(1150, 1300, 1500);

    private static BreakHistory Free(double hours) => BreakHistory.Of(hours, 0).WithFrom(HistoryStart.Season).WithChanged(false);

    private static ProtectionQuestion NoTorqueKnown => ProtectionQuestion.About(DrivelineChain.Of(Part.Shaft("drive tube"), Bolt));

    [Theory]
    [InlineData(0, 2.9957)]   // −ln 0.05
    [InlineData(1, 4.744)]    // hand: e^−4.744 (1 + 4.744) = 0.008704 × 5.744 = 0.0500
    [InlineData(2, 6.296)]    // hand: e^−6.296 (1 + 6.296 + 19.82) = 0.001844 × 27.12 = 0.0500
    [InlineData(3, 7.754)]    // hand: e^−7.754 (1 + 7.754 + 30.06 + 77.70) = 0.0004290 × 116.5 = 0.0500
    [InlineData(10, 16.962)]  // half of chi square 33.924 at 22 degrees of freedom, tables of the 0.95 quantile
    public void BreaksPerHourAtMost_InOneHour_IsTheExactPoissonBound(int breaks, double expected) =>
        Assert.Equal(expected, BreakHistory.Of(1, breaks).BreaksPerHourAtMost, 0.001);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0.0513)]   // −ln 0.95
    [InlineData(2, 0.3554)]   // hand: 1 − e^−0.3554 × 1.3554 = 1 − 0.7009 × 1.3554 = 0.0500
    [InlineData(10, 5.425)]   // half of chi square 10.851 at 20 degrees of freedom, tables of the 0.05 quantile
    public void BreaksPerHourAtLeast_InOneHour_IsTheExactPoissonBound(int breaks, double expected) =>
        Assert.Equal(expected, BreakHistory.Of(1, breaks).BreaksPerHourAtLeast, 0.001);

    [Fact]
    public void BreaksPerHourAtMost_ThousandBreaks_StaysFinite() =>
        Assert.InRange(BreakHistory.Of(1, 1000).BreaksPerHourAtMost, 1050, 1058);   // 1000 + 1.645 √1000 = 1052, a little more by skewness

    // hand: 2.9957 × 25 = 74.9 hours without a break; 4.744 × 25 = 118.6 hours with one
    [Theory]
    [InlineData(74, 0, Answer.Maybe)]
    [InlineData(75, 0, Answer.Yes)]
    [InlineData(118, 1, Answer.NotKnown)]
    [InlineData(119, 1, Answer.Yes)]
    public void Quiet_NoTorqueKnown_IsYesFromEnoughHoursOn(double hours, int breaks, Answer expected)
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(
            NoTorqueKnown.WithHistory(BreakHistory.Of(hours, breaks).WithFrom(HistoryStart.Fitting).WithChanged(false)));
        Assert.Equal(expected, verdict.Quiet);
        Assert.Equal(Answer.NotKnown, verdict.Guards);
        Assert.Equal(expected == Answer.Yes, verdict.Findings.Any(f => f.Code == ProtectionFindings.QuietByExperience));
        Assert.Equal(expected == Answer.Yes, !verdict.Doubts.Any(d => d.OnQuiet));
    }

    [Fact]
    public void Quiet_PolicyOfTenHours_NeedsThirtyFreeHours()
    {
        ProtectionPolicy policy = ProtectionPolicy.Default.WithHoursPerBreak(10);   // hand: 2.9957 × 10
        Assert.Equal(Answer.Yes, ProtectionCheck.Run(NoTorqueKnown.WithHistory(Free(30)), policy).Quiet);
        Assert.Equal(Answer.Maybe, ProtectionCheck.Run(NoTorqueKnown.WithHistory(Free(29.9)), policy).Quiet);
    }

    [Fact]
    public void Quiet_ChangedOrNotToldOrNoStart_IsNoYes()
    {
        BreakHistory history = Free(300);
        Assert.All([history.WithChanged(true), history.WithChanged(null), history.WithFrom(HistoryStart.NotKnown)],
            h => Assert.NotEqual(Answer.Yes, ProtectionCheck.Run(NoTorqueKnown.WithHistory(h)).Quiet));
        Assert.Contains(ProtectionCheck.Run(NoTorqueKnown.WithHistory(history.WithChanged(null))).Findings,
            f => f.Code == ProtectionFindings.HistoryIncomplete);
    }

    [Fact]
    public void Quiet_NumbersSayNo_IsMaybeAndNamesBoth()
    {
        // hand: the bolt is expected at 700 N·m, work at 800
        ProtectionQuestion question = Thornbeck.With(Thornbeck.Bolt(600, 700, 900));
        Assert.Equal(Answer.No, ProtectionCheck.Run(question).Quiet);
        ProtectionVerdict verdict = ProtectionCheck.Run(question.WithHistory(Free(500)));
        Assert.Equal(Answer.Maybe, verdict.Quiet);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.TripBelowWork);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.ExperienceAgainstNumbers);
    }

    [Fact]
    public void Quiet_SeenToTrip_StaysNoWhateverTheHours() => Assert.Equal(Answer.No,
        ProtectionCheck.Run(Thornbeck.With(Bolt).WithTripsInNormalWork(true).WithHistory(Free(5000))).Quiet);

    [Fact]
    public void Quiet_BreaksAtEngagement_AreCountedApart()
    {
        // hand: 3 at engagement in 100 h: 7.754 / 100 = 0.078 > 0.04; none in work
        BreakHistory history = Free(100).WithBreaksAtEngagement(3);
        Assert.Equal(0.02996, history.BreaksPerHourAtMost, 0.0001);
        Assert.Equal(0.07754, history.EngagementBreaksPerHourAtMost, 0.0001);
        Assert.NotEqual(Answer.Yes, ProtectionCheck.Run(NoTorqueKnown.WithHistory(history)).Quiet);
        Assert.Equal(Answer.Yes, ProtectionCheck.Run(NoTorqueKnown.WithHistory(Free(200).WithBreaksAtEngagement(3))).Quiet);
    }

    [Fact]
    public void Quiet_BreaksOftenAgainstNumbersOfYes_IsMaybe()
    {
        // hand: at least 5.425 in 20 h, one in 3.7 h, more often than one in 25 h
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(Bolt).WithHistory(BreakHistory.Of(20, 10)));
        Assert.Equal(Answer.Yes, ProtectionCheck.Run(Thornbeck.With(Bolt)).Quiet);
        Assert.Equal(Answer.Maybe, verdict.Quiet);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.BreaksOften);
    }

    [Fact]
    public void Quiet_NeverSeenToTrip_LiftsNotKnownToMaybeAndNothingElse()
    {
        Assert.Equal(Answer.Maybe, ProtectionCheck.Run(NoTorqueKnown.WithTripsInNormalWork(false)).Quiet);
        Assert.Equal(Answer.NotKnown, ProtectionCheck.Run(NoTorqueKnown).Quiet);
        ProtectionQuestion acts = Thornbeck.With(Thornbeck.Bolt(600, 700, 900));
        Assert.Equal(Answer.No, ProtectionCheck.Run(acts.WithTripsInNormalWork(false)).Quiet);
    }

    [Fact]
    public void WithChain_AnotherBolt_TakesNoExperienceAlong()
    {
        ProtectionQuestion other = NoTorqueKnown.WithHistory(Free(500)).WithTripsInNormalWork(false)
            .WithChain(DrivelineChain.Of(Thornbeck.Bolt(100, 200, 300)));
        Assert.Null(other.History);
        Assert.Equal(Answer.NotKnown, ProtectionCheck.Run(other).Quiet);
    }

    [Law(MaxTest = 300)]
    public void MoreFreeHours_NeverWorsenQuiet_NeverTouchGuards(int seed, byte breaks, byte more)
    {
        ProtectionQuestion question = ProtectionSpec.Random(seed).Check().Question;
        BreakHistory history = BreakHistory.Of(1 + (seed & 255), breaks % 8).WithFrom(HistoryStart.Season).WithChanged(false);
        ProtectionVerdict one = ProtectionCheck.Run(question.WithHistory(history));
        ProtectionVerdict longer = ProtectionCheck.Run(question.WithHistory(
            BreakHistory.Of(history.Hours + more, history.Breaks).WithFrom(HistoryStart.Season).WithChanged(false)));
        Assert.True(Rank(longer.Quiet) >= Rank(one.Quiet));
        Assert.Equal(ProtectionCheck.Run(question).Guards, longer.Guards);
        Assert.Equal(longer.Quiet != Answer.Yes, longer.Doubts.Any(d => d.OnQuiet));
    }

    [Law(MaxTest = 300)]
    public void RemovingPartOfTheHistory_NeverCreatesAYes(int seed, byte breaks)
    {
        ProtectionQuestion question = ProtectionSpec.Random(seed).Check().Question.WithWork(null);
        BreakHistory history = BreakHistory.Of(1 + (seed & 255), breaks % 3).WithFrom(HistoryStart.Season).WithChanged(false);
        Answer full = ProtectionCheck.Run(question.WithHistory(history)).Quiet;
        Assert.All([null, history.WithFrom(HistoryStart.NotKnown), history.WithChanged(null)], less =>
            Assert.False(ProtectionCheck.Run(question.WithHistory(less)).Quiet == Answer.Yes && full != Answer.Yes));
    }

    private static int Rank(Answer quiet) => quiet switch { Answer.No => 0, Answer.NotKnown => 1, Answer.Maybe => 2, _ => 3 };
}
