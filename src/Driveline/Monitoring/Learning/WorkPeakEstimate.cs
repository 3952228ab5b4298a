using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>
/// The highest torque of normal steady work in a time to come, learned from the peaks seen: a band for <c>WorkPeak.Stated</c>.
/// </summary>
/// <remarks>
/// Peaks over a threshold u, one for each cluster, engagements left out; what they have above u follows a generalized Pareto distribution.
/// With n peaks in t hours the highest of H hours is u plus the excess passed once in N = n·H/t peaks, H no shorter than t. Low
/// and high are the ends of its interval of 95 %; high is never below the highest peak seen. High, or expected and high, stay
/// unbounded wherever the samples cannot tell.
/// </remarks>
public sealed class WorkPeakEstimate
{
    private const double SlowestS = 0.1;
    private const double SlowS = 0.02;
    private const double FarthestTimes = 10;
    private const double ManyMissing = 0.05;

    private WorkPeakEstimate(TorqueBand? torque, long peaks, double hours, double horizonHours, double levelNm,
        ParetoTail? tail, IReadOnlyList<Finding> findings)
    {
        Torque = torque;
        Peaks = peaks;
        Worked = Duration.FromHours(hours);
        Horizon = Duration.FromHours(horizonHours);
        Level = UnitsNet.Torque.FromNewtonMeters(levelNm);
        Tail = tail;
        Findings = findings;
    }

    /// <summary>The peak of the time asked about, basis Given ("measured …"); null when no peak was seen.</summary>
    public TorqueBand? Torque { get; }

    /// <summary>
    /// High end of the peak when the torques taken were upper bounds, so that no more is known of it; null when it has none, or the
    /// torques were measured.
    /// </summary>
    public Torque? AtMost { get; private init; }

    /// <summary>True when the torques taken were upper bounds.</summary>
    public bool IsUpperBound { get; private init; }

    /// <summary>Peaks it rests on.</summary>
    public long Peaks { get; }

    /// <summary>Time of work in which they were seen.</summary>
    public Duration Worked { get; }

    /// <summary>Time whose highest peak it is.</summary>
    public Duration Horizon { get; }

    /// <summary>The level the peaks lie above.</summary>
    public Torque Level { get; }

    /// <summary>The fitted tail; null when there are too few peaks.</summary>
    internal ParetoTail? Tail { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The learned peaks of the work, with their unit.</summary>
    public override string ToString() => Torque?.ToString() ?? "not known";

    internal static WorkPeakEstimate Of(
        WorkPeakStore store, MonitorSettings settings, SampleGate gate, double hours, double askedHours, bool acted, bool neverInWork)
    {
        var findings = new List<Finding>();
        double[] peaks = store.Peaks();
        double horizon = Math.Max(askedHours, hours);
        if (peaks.Length == 0 || !(hours > 0))
        {
            findings.Add(Finding.Of(MonitoringFindings.TooFewPeaks, Severity.Warning)
                .With("peaks", QuantityKind.Count, peaks.Length).With("needed", QuantityKind.Count, ParetoTail.LeastPeaks));
            return new WorkPeakEstimate(null, store.Clusters, hours, horizon, store.LevelNm, null, findings.AsReadOnly())
                .Of(settings.IsUpperBound);
        }

        bool isBounded = IsBounded(settings, gate, acted, neverInWork, findings);
        if (horizon > FarthestTimes * hours)
        {
            isBounded = false;
            findings.Add(Finding.Of(MonitoringFindings.FarAhead, Severity.Warning)
                .With("seen", QuantityKind.Number, hours).With("asked", QuantityKind.Number, horizon));
        }

        double levelNm = store.LevelNm;
        double[] excesses = Array.ConvertAll(peaks, nm => Math.Max(0, nm - levelNm));
        Band band;
        if (!ParetoTail.TryFit(excesses, out ParetoTail? tail))
        {
            findings.Add(peaks.Length < ParetoTail.LeastPeaks
                ? Finding.Of(MonitoringFindings.TooFewPeaks, Severity.Warning)
                    .With("peaks", QuantityKind.Count, peaks.Length).With("needed", QuantityKind.Count, ParetoTail.LeastPeaks)
                : Finding.Of(MonitoringFindings.PeaksAlike, Severity.Warning).With("peak", QuantityKind.Torque, store.HighestNm));
            band = new Band(store.HighestNm, double.PositiveInfinity, double.PositiveInfinity);
        }
        else
        {
            band = Of(tail!, peaks.Length * horizon / hours, levelNm, store.HighestNm, isBounded, findings);
        }

        Basis basis = Basis.Given(FormattableString.Invariant(
            $"measured: {peaks.Length} peaks above {levelNm:G4} N·m in {hours:G3} h, highest of {horizon:G3} h"));
        var ends = new BandBasis(basis, basis, basis, BandEnd.Interval95, BandEnd.Interval95);
        return new WorkPeakEstimate(TorqueBand.OfSi(band, ends), peaks.Length, hours, horizon, levelNm, tail, findings.AsReadOnly())
            .Of(settings.IsUpperBound);
    }

    // From bounds of the torque only a bound of the peak is learned, and nothing for a case.
    private WorkPeakEstimate Of(bool isUpperBound)
    {
        if (!isUpperBound)
        {
            return this;
        }

        TorqueBand? bound = Torque is { IsBounded: true } ? Torque : null;
        Finding finding = Finding.Of(MonitoringFindings.TorqueIsUpperBound, Severity.Warning);
        return new WorkPeakEstimate(null, Peaks, Worked.Hours, Horizon.Hours, Level.NewtonMeters, Tail, [.. Findings, finding])
        {
            AtMost = bound?.High,
            IsUpperBound = true,
        };
    }

    private static Band Of(ParetoTail tail, double onceIn, double levelNm, double highestNm, bool isBounded, List<Finding> findings)
    {
        if (!tail.HasInterval)
        {
            findings.Add(Finding.Of(MonitoringFindings.TailTooHeavy, Severity.Warning).With("shape", QuantityKind.Number, tail.Shape));
        }

        double expected = tail.ExcessOnceIn(onceIn);
        tail.IntervalOnceIn(onceIn, out double low, out double high);
        return new Band(
            levelNm + Math.Min(low, expected),
            levelNm + expected,
            isBounded ? Math.Max(levelNm + Math.Max(high, expected), highestNm) : double.PositiveInfinity);
    }

    private static bool IsBounded(MonitorSettings settings, SampleGate gate, bool acted, bool neverInWork, List<Finding> findings)
    {
        bool isBounded = true;
        if (!neverInWork && (acted || gate.WithoutSpeedOut > 0))
        {
            isBounded = false;
            findings.Add(Finding.Of(acted ? MonitoringFindings.ActedInWork : MonitoringFindings.SpeedOutNotMeasured, Severity.Warning));
        }

        if (settings.PeriodS > SlowS)
        {
            isBounded &= settings.PeriodS <= SlowestS;
            findings.Add(Finding.Of(settings.PeriodS > SlowestS ? MonitoringFindings.TooSlowForPeaks
                : MonitoringFindings.SlowForPeaks, Severity.Warning)
                .With("period", QuantityKind.Time, settings.PeriodS));
        }

        double missing = gate.Missing / (double)Math.Max(1, gate.Missing + gate.Taken);
        if (missing > ManyMissing)
        {
            findings.Add(Finding.Of(MonitoringFindings.ManyMissing, Severity.Warning).With("share", QuantityKind.Number, 100 * missing));
        }

        return isBounded;
    }
}
