using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>The highest torque of normal steady work, at the PTO.</summary>
public sealed class WorkPeak
{
    private readonly WorkPeakSum? sum;

    private WorkPeak(TorqueBand torque, bool isAssumed, WorkPeakSum? sum)
    {
        Torque = torque;
        IsAssumed = isAssumed;
        this.sum = sum;
    }

    /// <summary>The peaks of normal work at the PTO: the lowest, usual and highest of them.</summary>
    public TorqueBand Torque { get; }

    /// <summary>True when it rests on a default factor nobody stated: it gives at most a Maybe.</summary>
    public bool IsAssumed { get; }

    /// <summary>Measured or stated peaks at the PTO.</summary>
    public static WorkPeak Stated(TorqueBand peaks) => new(Guard.NotNull(peaks, nameof(peaks)), false, null);

    /// <summary>Peaks from a mean torque at the PTO and a stated factor: T = T_mean · f.</summary>
    /// <param name="mean">Mean torque at the PTO.</param>
    /// <param name="factor">Peak over mean; 1 or more.</param>
    /// <exception cref="ArgumentException">A band is missing, or the factor is below 1.</exception>
    public static WorkPeak FromMean(TorqueBand mean, RatioBand factor) =>
        FromMean(mean, factor, isAssumed: false, new WorkPeakSum(null, 0, mean, null, factor));

    /// <summary>Peaks from a mean torque at the PTO and the default factor of the machine: gives at most a Maybe.</summary>
    /// <exception cref="ArgumentException">A band is missing, or the factor is below 1.</exception>
    public static WorkPeak FromMean(TorqueBand mean, MachineKind machine) => FromMean(
        mean, PeakFactor.For(machine), isAssumed: true, new WorkPeakSum(null, 0, mean, null, PeakFactor.For(machine)));

    /// <summary>Peaks from mean power, PTO speed and a stated factor: T = P / ω · f.</summary>
    /// <param name="mean">Mean power at the PTO.</param>
    /// <param name="speed">PTO speed; above 0.</param>
    /// <param name="factor">Peak over mean; 1 or more.</param>
    /// <exception cref="ArgumentException">A band is missing, the speed is not above 0, or the factor is below 1.</exception>
    public static WorkPeak FromPower(PowerBand mean, RotationalSpeed speed, RatioBand factor) =>
        FromMean(MeanTorque(mean, speed), factor, isAssumed: false, OfPower(mean, speed, null, factor));

    /// <summary>Peaks from mean power, PTO speed and the default factor of the machine: gives at most a Maybe.</summary>
    /// <exception cref="ArgumentException">A band is missing, the speed is not above 0, or the factor is below 1.</exception>
    public static WorkPeak FromPower(PowerBand mean, RotationalSpeed speed, MachineKind machine) =>
        FromMean(MeanTorque(mean, speed), PeakFactor.For(machine), isAssumed: true, OfPower(mean, speed, null, PeakFactor.For(machine)));

    /// <summary>Peaks from what a machine of its kind needs, by its width or feed rate: gives at most a Maybe.</summary>
    /// <remarks>
    /// No mean torque above what stalls the engine counts; single peaks may be higher, from what turns. T = min(P / ω, T_stall) · f.
    /// </remarks>
    /// <param name="need">The need.</param>
    /// <param name="speed">PTO speed; above 0.</param>
    /// <param name="factor">Peak over mean; 1 or more.</param>
    /// <param name="engine">The engine; null when its power is not known. Without its torque reserve it caps nothing.</param>
    internal static WorkPeak FromNeed(PowerNeed need, RotationalSpeed speed, RatioBand factor, EngineSide? engine)
    {
        TorqueBand mean = MeanTorque(Guard.NotNull(need, nameof(need)).Power, speed);
        WorkPeakSum sum = OfPower(need.Power, speed, engine?.StallTorque is { IsBounded: true } stalls ? stalls : null, factor);
        if (engine?.StallTorque is { IsBounded: true } most)
        {
            Band all = mean.SiBand;
            double cap = most.SiBand.High;
            mean = TorqueBand.OfSi(
                new Band(Math.Min(all.Low, cap), Math.Min(all.Expected, cap), Math.Min(all.High, cap)),
                all.High > cap ? BandBasis.Combine(mean.Basis, most.Basis) : mean.Basis);
        }

        return FromMean(mean, factor, isAssumed: true, sum);
    }

    /// <summary>Mean torque at the PTO from mean power and speed: T = P / ω.</summary>
    /// <example>26 kW at 540 min⁻¹: 459.8 N·m.</example>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public static TorqueBand MeanTorque(PowerBand mean, RotationalSpeed speed)
    {
        Guard.NotNull(mean, nameof(mean));
        double radPerS = Guard.Positive(Si.RadiansPerSecond(speed), "PTO speed", "rad/s", nameof(speed));
        return TorqueBand.OfSi(mean.SiBand.Times(1 / radPerS), mean.Basis.With(Basis.Given("PTO speed as stated")));
    }

    /// <summary>The peaks of the work, with their unit.</summary>
    public override string ToString() => Torque.ToString();

    /// <summary>The sum from mean power, speed and factor, or from mean torque and factor, line by line; empty for stated peaks.</summary>
    public IReadOnlyList<CalculationLine> Sheet() => sum?.Lines() ?? [];

    /// <summary>Where the numbers that the sheet begins with come from, by the code of their step.</summary>
    public IReadOnlyDictionary<string, BandBasis> SheetBases() => sum?.Bases() ?? new Dictionary<string, BandBasis>();

    private static WorkPeakSum OfPower(PowerBand power, RotationalSpeed speed, TorqueBand? stall, RatioBand factor) =>
        new(power, Si.RadiansPerSecond(speed), null, stall, factor);

    private static WorkPeak FromMean(TorqueBand mean, RatioBand factor, bool isAssumed, WorkPeakSum sum)
    {
        Guard.NotNull(mean, nameof(mean));
        Guard.NotNull(factor, nameof(factor));
        return factor.Low >= 1
            ? new WorkPeak(TorqueBand.OfSi(mean.SiBand.Times(factor.SiBand), BandBasis.Combine(mean.Basis, factor.Basis)), isAssumed, sum)
            : throw Guard.OutOfRange("Peak factor", "1 or more", factor.Low, string.Empty, nameof(factor));
    }
}
