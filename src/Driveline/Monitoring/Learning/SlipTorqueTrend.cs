using System.Diagnostics.CodeAnalysis;
using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>How the slip torque of a clutch drifts from slip to slip, as a line nobody's outlier can bend.</summary>
/// <remarks>
/// Slope: the median of the slopes of all pairs (H. Theil 1950); its interval of 95 % by the ranks of those slopes, C = 1.96 ·
/// √(n·(n - 1)·(2·n + 5)/18) (P. K. Sen, "Estimates of the regression coefficient based on Kendall's tau", Journal of the
/// American Statistical Association 63 (1968), 1379-1389). The line runs through the median of what is left, y - slope · x. Fewer
/// than 8 slips give none.
/// </remarks>
public sealed class SlipTorqueTrend
{
    /// <summary>Fewer slips give no trend.</summary>
    public const int LeastSlips = 8;

    private const double Normal95 = 1.959963984540054;

    private readonly double slope;
    private readonly double low;
    private readonly double high;
    private readonly double nowNm;

    private SlipTorqueTrend(int slips, double slope, double low, double high, double nowNm)
    {
        Slips = slips;
        this.slope = slope;
        this.low = low;
        this.high = high;
        this.nowNm = nowNm;
    }

    /// <summary>Slips it rests on; of many, an even choice.</summary>
    public int Slips { get; }

    /// <summary>Change of the slip torque in an hour of the turning PTO, N·m/h; below zero when it falls.</summary>
    public double NewtonMetersPerHour => slope;

    /// <summary>Low end of its interval of 95 %, N·m/h.</summary>
    public double LowNewtonMetersPerHour => low;

    /// <summary>High end of its interval of 95 %, N·m/h.</summary>
    public double HighNewtonMetersPerHour => high;

    /// <summary>Slip torque at the last slip, on the line.</summary>
    public Torque Now => Torque.FromNewtonMeters(nowNm);

    /// <summary>What a caller must notice: that it falls or rises for certain.</summary>
    public IReadOnlyList<Finding> Findings => low > 0
        ? [Drift(MonitoringFindings.SlipTorqueRises, slope)]
        : high < 0 ? [Drift(MonitoringFindings.SlipTorqueFalls, -slope)] : [];

    /// <summary>The trend of torques over hours; false for too few, or when all hours are the same.</summary>
    /// <param name="hours">Hours; finite.</param>
    /// <param name="torquesNm">Slip torques, N·m; finite; as many.</param>
    /// <param name="trend">The trend.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or a value is not finite.</exception>
    public static bool TryOf(ReadOnlySpan<double> hours, ReadOnlySpan<double> torquesNm, [NotNullWhen(true)] out SlipTorqueTrend? trend)
    {
        int n = hours.Length;
        if (torquesNm.Length != n)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"Hours and torques must be equally many; got {n} and {torquesNm.Length}."), nameof(torquesNm));
        }

        var slopes = new List<double>();
        for (int j = 0; j < n; j++)
        {
            if (!Guard.IsFinite(hours[j]) || !Guard.IsFinite(torquesNm[j]))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Hours and torques must be finite; got {hours[j]} and {torquesNm[j]}."), nameof(hours));
            }

            for (int i = 0; i < j; i++)
            {
                if (!hours[i].Equals(hours[j]))
                {
                    slopes.Add((torquesNm[j] - torquesNm[i]) / (hours[j] - hours[i]));
                }
            }
        }

        trend = null;
        if (n < LeastSlips || slopes.Count == 0)
        {
            return false;
        }

        slopes.Sort();
        double middle = Median(slopes);
        var offsets = new List<double>();
        for (int j = 0; j < n; j++)
        {
            offsets.Add(torquesNm[j] - (middle * hours[j]));
        }

        offsets.Sort();
        double ranks = Normal95 * Math.Sqrt(n * (n - 1.0) * ((2.0 * n) + 5) / 18);
        trend = new SlipTorqueTrend(
            n,
            middle,
            slopes[Place((slopes.Count - ranks) / 2, slopes.Count)],
            slopes[Place(((slopes.Count + ranks) / 2) + 1, slopes.Count)],
            Math.Max(0, Median(offsets) + (middle * hours[n - 1])));
        return true;
    }

    /// <summary>The slip torque now and how it changes.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Now.NewtonMeters:G4} N·m, {NewtonMetersPerHour:+0.###;-0.###;0} N·m/h");

    private static int Place(double rank, int count) => (int)Math.Min(count - 1, Math.Max(0, Math.Round(rank) - 1));

    private static double Median(List<double> sorted) => (sorted[sorted.Count / 2] + sorted[(sorted.Count - 1) / 2]) / 2;

    private Finding Drift(string code, double nmPerHour) => Finding.Of(code, Severity.Warning)
        .With("perHour", QuantityKind.Torque, nmPerHour)
        .With("now", QuantityKind.Torque, nowNm)
        .With("slips", QuantityKind.Count, Slips);
}
