using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>A measured torque in work by its mean and standard deviation.</summary>
/// <remarks>
/// Coefficient of variation v = s / T_mean; peak factor (T_mean + z · s) / T_mean = 1 + z · v. With z = 3 and a normal
/// distribution about 1 sample in 740 lies above; it is no limit.
/// </remarks>
internal sealed class LoadSpectrum
{
    internal const double UsualDeviations = 3;

    private readonly double meanNm;
    private readonly double deviationNm;

    private LoadSpectrum(double meanNm, double deviationNm, Basis basis)
    {
        this.meanNm = meanNm;
        this.deviationNm = deviationNm;
        Basis = basis;
    }

    /// <summary>Mean torque.</summary>
    public Torque Mean => Torque.FromNewtonMeters(meanNm);

    /// <summary>Standard deviation of the torque.</summary>
    public Torque StandardDeviation => Torque.FromNewtonMeters(deviationNm);

    /// <summary>Where it comes from.</summary>
    public Basis Basis { get; }

    /// <summary>v = s / T_mean.</summary>
    /// <example>910.79 and 204.54 N·m: 0.2246.</example>
    public double CoefficientOfVariation => deviationNm / meanNm;

    /// <summary>Mean plus 3 standard deviations over the mean, both ends an interval.</summary>
    /// <example>910.79 and 204.54 N·m: 1.674.</example>
    public RatioBand PeakFactor =>
        RatioBand.OfSi(Band.Exactly(Factor(UsualDeviations)), new BandBasis(Basis, Basis, Basis, BandEnd.Interval95, BandEnd.Interval95));

    /// <summary>A measured mean and standard deviation.</summary>
    /// <param name="mean">Mean torque; above 0.</param>
    /// <param name="standardDeviation">Standard deviation; 0 or more.</param>
    /// <param name="basis">Where they come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    public static LoadSpectrum Of(Torque mean, Torque standardDeviation, Basis basis) => new(
        Guard.Positive(Si.NewtonMeters(mean), "Mean torque", "N·m", nameof(mean)),
        Guard.NotNegative(Si.NewtonMeters(standardDeviation), "Standard deviation", "N·m", nameof(standardDeviation)),
        Guard.NotNull(basis, nameof(basis)));

    /// <summary>The peak factor that leaves fewer peaks above it: 1 + z · v.</summary>
    /// <param name="deviations">z, standard deviations above the mean; 0 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">z is not within 0 to 10.</exception>
    public double FactorAt(double deviations) =>
        Factor(Guard.Within(deviations, 0, 10, "Standard deviations", string.Empty, nameof(deviations)));

    internal static double PeakFactorOf<S>(double meanNm, double deviationNm, double deviations, ref S log)
        where S : struct, ISteps
    {
        double factor = 1 + (deviations * deviationNm / meanNm);
        log.Add(LoadsSteps.PeakFactor, factor);
        return factor;
    }

    private double Factor(double deviations)
    {
        NoSteps none = default;
        return PeakFactorOf(meanNm, deviationNm, deviations, ref none);
    }
}
