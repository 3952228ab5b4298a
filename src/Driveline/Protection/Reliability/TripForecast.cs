using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Protection;

/// <summary>When one fitted device is likely to act in normal work: all peaks meet the strength of the one specimen.</summary>
/// <remarks>
/// The specimen's strength s is drawn once. Given s, peaks that reach it arrive at random at the rate λ q(s), with λ the rate of
/// work peaks [1/s] and q(s) = P(peak ≥ s): P(acts within t) = ∫ f_S(s) · [1 − exp(−λ t q(s))] ds. A weak specimen goes soon,
/// a strong one lasts, so the chance falls with the hours already stood. The band of the work peaks is read as the scatter from
/// peak to peak. A fatigue life, where given, is a lower bound: the device counts as gone when it ends.
/// </remarks>
internal sealed class TripForecast
{
    private const double LongestS = 3600.0 * 1e9;

    private readonly StrengthNode[] nodes;
    private readonly double perSecond;
    private readonly double? fatigueS;
    private readonly bool hasMean;
    private readonly Basis basis;

    private TripForecast(StrengthNode[] nodes, double perSecond, double? fatigueS, bool hasMean, Basis basis)
    {
        this.nodes = nodes;
        this.perSecond = perSecond;
        this.fatigueS = fatigueS;
        this.hasMean = hasMean;
        this.basis = basis;
    }

    /// <summary>Probability that one work peak makes a new device act.</summary>
    public Probability OnePeak => new(nodes.Sum(n => n.Weight * n.Reached), basis);

    /// <summary>Mean time until it acts; null when there is none, because some specimens never act.</summary>
    public Duration? ExpectedTime => fatigueS is { } end ? Duration.FromSeconds(MeanUpTo(end))
        : hasMean ? Duration.FromSeconds(nodes.Sum(n => n.Weight / (perSecond * n.Reached)))
        : null;

    /// <summary>The time by which half of the devices have acted; null when fewer than half ever do.</summary>
    public Duration? MedianTime => TimeOf(0.5);

    /// <summary>The forecast for one fitted device.</summary>
    /// <param name="peak">One peak of normal work, at the device.</param>
    /// <param name="trip">The torque at which the device acts, over specimens.</param>
    /// <param name="peaksPerHour">Work peaks an hour; above 0.</param>
    public static TripForecast Of(Distribution peak, Distribution trip, double peaksPerHour)
    {
        Guard.NotNull(peak, nameof(peak));
        Guard.NotNull(trip, nameof(trip));
        double perSecond = Guard.Positive(peaksPerHour, "Peaks per hour", "1/h", nameof(peaksPerHour)) / 3600;
        bool hasMean = peak.UnboundedShare > 0 || (trip.UnboundedShare == 0 && trip.Supremum < peak.Supremum);
        return new TripForecast(Interference.Nodes(peak, trip), perSecond, null, hasMean, Basis.Weakest(peak.Basis, trip.Basis));
    }

    /// <summary>The same forecast with a lower-bound fatigue life of the device.</summary>
    /// <param name="life">Time at the stated peaks until fatigue may end it; above 0.</param>
    /// <param name="source">Where the life comes from.</param>
    public TripForecast WithFatigueLife(Duration life, Basis source) => new(
        nodes, perSecond, Guard.Positive(Si.Seconds(life), "Fatigue life", "s", nameof(life)), hasMean, Basis.Weakest(basis, source));

    /// <summary>Probability that it acts within a time of work.</summary>
    /// <param name="time">Time of work; 0 or more.</param>
    public Probability Within(Duration time) => new(WithinS(Guard.NotNegative(Si.Seconds(time), "Time of work", "s", nameof(time))), basis);

    /// <summary>Mean time until it acts or the horizon ends, whichever comes first; it always exists.</summary>
    /// <param name="horizon">The horizon; above 0.</param>
    public Duration ExpectedTimeUpTo(Duration horizon)
    {
        double s = Guard.Positive(Si.Seconds(horizon), "Horizon", "s", nameof(horizon));
        return Duration.FromSeconds(MeanUpTo(fatigueS is { } end ? Math.Min(end, s) : s));
    }

    /// <summary>The time by which a share of the devices have acted; null when that share never does.</summary>
    /// <param name="share">Share, above 0 and below 1.</param>
    public Duration? TimeOf(double share)
    {
        if (!(share > 0 && share < 1))
        {
            throw Guard.OutOfRange("Share of devices", "above 0 and below 1", share, string.Empty, nameof(share));
        }

        double high = Math.Min(LongestS, fatigueS ?? LongestS);
        if (WithinS(high) < share)
        {
            return null;
        }

        double low = 0;
        for (int k = 0; k < 200 && high - low > 1e-12 * high; k++)
        {
            double middle = low > 0 && high / low > 4 ? Math.Sqrt(low * high) : low > 0 ? (low + high) / 2 : high * 1e-3;
            if (WithinS(middle) < share)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return Duration.FromSeconds(high);
    }

    private double WithinS(double seconds)
    {
        if (seconds >= fatigueS)
        {
            return 1;
        }

        double p = 0;
        foreach (StrengthNode node in nodes)
        {
            p += node.Weight * Interference.OneMinusExp(perSecond * seconds * node.Reached);
        }

        return p;
    }

    // E[min(T, H)] given q: (1 − exp(−λ q H)) / (λ q), which is H for q = 0.
    private double MeanUpTo(double horizonS)
    {
        double mean = 0;
        foreach (StrengthNode node in nodes)
        {
            double rate = perSecond * node.Reached;
            double y = rate * horizonS;
            mean += node.Weight * (y < 1e-12 ? horizonS : Interference.OneMinusExp(y) / rate);
        }

        return mean;
    }
}
