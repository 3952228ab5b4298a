using Driveline.Loads;
using Driveline.Monitoring;
using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

public class WorkPeakEstimateTests
{
    private static readonly Duration Season = Duration.FromHours(2);

    // Peaks of 600 + 0 … 40 N·m, one in 60 s, 41 in 41 minutes: the tail of ParetoTailTests. The highest of 2 h is that of
    // 41 · 120/41 = 120 peaks: 600 + 43.3333 · (1 - 120^-0.857143) = 600 + 43.3333 · (1 - 0.0165142) = 642.618.
    [Fact]
    public void Peak_OfEvenlySpacedPeaks_Worked()
    {
        WorkPeakEstimate learned = Worked().LearnWorkPeak(Season, ActedInWork.Never);
        Assert.Equal(41, learned.Peaks);
        Close.Relative(41 / 60.0, learned.Worked.Hours, 1e-9, "hand");
        Close.Absolute(642.618, learned.Torque!.Expected!.Value.NewtonMeters, 0.02, "hand");
        Assert.True(learned.Torque.High!.Value.NewtonMeters >= 642.618);
        Assert.InRange(learned.Torque.Low.NewtonMeters, 600, 642.6);
    }

    [Fact]
    public void Peak_Learned_IsAWorkPeakOfBasisGiven()
    {
        WorkPeak peak = WorkPeak.Stated(Worked().LearnWorkPeak(Season, ActedInWork.Never).Torque!);
        Assert.False(peak.IsAssumed);
        Assert.Equal(BasisKind.Given, peak.Torque.Basis.Weakest.Kind);
        Assert.StartsWith("measured: 41 peaks above 600 N·m in 0.683 h", peak.Torque.Basis.Weakest.Document, StringComparison.Ordinal);
    }

    [Fact]
    public void Peak_NothingSlipped_IsBoundedWithoutAnybodySayingSo() =>
        Assert.NotNull(Worked().LearnWorkPeak(Season).Torque!.High);

    // What cuts a peak leaves its height unknown, unless somebody says it was no work.
    [Theory]
    [InlineData(true, MonitoringFindings.ActedInWork)]
    [InlineData(false, MonitoringFindings.SpeedOutNotMeasured)]
    public void Peak_ThatMayHaveBeenCut_HasNoUpperEnd(bool slips, string code)
    {
        OverloadMonitor monitor = Worked(speedOut: slips ? 50 : double.NaN);
        if (slips)
        {
            Streams.Feed(monitor, [new TorqueSample(1e5, 50, 50, 700), new TorqueSample(1e5 + 0.1, 50, 20, 700),
                new TorqueSample(1e5 + 0.2, 50, 50, 100)]);
        }

        WorkPeakEstimate learned = monitor.LearnWorkPeak(Season);
        Assert.Null(learned.Torque!.High);
        Assert.NotNull(learned.Torque.Expected);
        Assert.Contains(learned.Findings, f => f.Code == code);
        Assert.NotNull(monitor.LearnWorkPeak(Season, ActedInWork.Never).Torque!.High);
    }

    [Fact]
    public void Peak_WithASlipInIt_IsSetAside()
    {
        OverloadMonitor monitor = Worked();
        Streams.Feed(monitor,
        [
            new TorqueSample(1e5, 50, 50, 900), new TorqueSample(1e5 + 0.1, 50, 20, 950),
                new TorqueSample(1e5 + 0.2, 50, 50, 100), new TorqueSample(1e5 + 10, 50, 50, 100),
        ]);
        Assert.Equal(41, monitor.LearnWorkPeak(Season, ActedInWork.Never).Peaks);
    }

    [Fact]
    public void Peak_OfFewPeaks_IsAtLeastTheHighestSeen()
    {
        WorkPeakEstimate learned = Worked(peaks: 29).LearnWorkPeak(Season, ActedInWork.Never);
        Assert.Equal(628, learned.Torque!.Low.NewtonMeters);
        Assert.Null(learned.Torque.Expected);
        Assert.Contains(learned.Findings, f => f.Code == MonitoringFindings.TooFewPeaks);
    }

    [Fact]
    public void Peak_OfNone_IsNotKnown()
    {
        Assert.Null(Worked(peaks: 0).LearnWorkPeak(Season).Torque);
        Assert.Null(new OverloadMonitor(Streams.Settings()).LearnWorkPeak(Season).Torque);
    }

    [Fact]
    public void Peak_FarAhead_HasNoUpperEnd()
    {
        WorkPeakEstimate learned = Worked().LearnWorkPeak(Duration.FromHours(7), ActedInWork.Never);
        Assert.Null(learned.Torque!.High);
        Assert.Contains(learned.Findings, f => f.Code == MonitoringFindings.FarAhead);
    }

    [Theory]
    [InlineData(0.02, true, null)]
    [InlineData(0.05, true, MonitoringFindings.SlowForPeaks)]
    [InlineData(0.1, true, MonitoringFindings.SlowForPeaks)]
    [InlineData(0.2, false, MonitoringFindings.TooSlowForPeaks)]
    public void Peak_OfSlowSamples_SaysSo(double periodS, bool bounded, string? code)
    {
        WorkPeakEstimate learned = Worked(periodS: periodS).LearnWorkPeak(Season, ActedInWork.Never);
        Assert.Equal(bounded, learned.Torque!.High is not null);
        Assert.Equal(code is not null, learned.Findings.Any(f => f.Code == code));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2e5)]
    public void Horizon_OutOfRange_IsRefused(double hours) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Worked().LearnWorkPeak(Duration.FromHours(hours)));

    // More than 512 peaks: the lowest go, and the level rises to the highest of those.
    [Fact]
    public void Peaks_MoreThanAreKept_RaiseTheLevel()
    {
        WorkPeakEstimate learned = Worked(peaks: 612).LearnWorkPeak(Season, ActedInWork.Never);
        Assert.Equal(512, learned.Peaks);
        Assert.Equal(699, learned.Level.NewtonMeters);
    }

    // Peaks of 600, 601, … N·m in a mixed order, one a minute, with a pause of torque between them.
    private static OverloadMonitor Worked(int peaks = 41, double speedOut = 50, double periodS = 0.01)
    {
        var monitor = new OverloadMonitor(Streams.Settings(periodS).WithLongestStep(Duration.FromSeconds(60)));
        var samples = new List<TorqueSample> { new(0, 50, speedOut, 100) };
        int count = Math.Max(peaks, 1);
        for (int k = 0; k < count; k++)
        {
            samples.Add(new TorqueSample((60 * k) + 20, 50, speedOut, peaks == 0 ? 100 : 600 + (k * 7 % count)));
            samples.Add(new TorqueSample((60 * k) + 40, 50, speedOut, 100));
            samples.Add(new TorqueSample((60 * k) + 60, 50, speedOut, 100));
        }

        Streams.Feed(monitor, [.. samples]);
        return monitor;
    }
}
