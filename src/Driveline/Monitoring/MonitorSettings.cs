using System.Buffers.Binary;
using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>
/// Levels and times by which a monitor tells one thing from another. Immutable; the monitor of a saved state needs the same
/// ones.
/// </summary>
/// <remarks>
/// Where nothing is stated: an overload ends below 0.9 of its level; peaks count as work peaks from 0.6 of it; torques are
/// classed up to 4 times of it; a PTO turns from 10 rad/s on and has been engaged 5 s later; slip begins at 2 rad/s and ends
/// below 1; a trip is half the speed lost while the torque falls to 0.3 of the highest of the last second; peaks less than 2 s
/// apart are one. These are ours, chosen for PTO drivelines of 540 to 1000 min⁻¹, and no standard's.
/// </remarks>
public sealed class MonitorSettings
{
    private MonitorSettings()
    {
    }

    internal double OverloadFromNm { get; private set; }

    internal double OverloadUntilNm { get; private set; }

    internal double PeaksFromNm { get; private set; }

    internal double ScaleNm { get; private set; }

    internal double PeriodS { get; private set; }

    internal double LongestStepS { get; private set; }

    internal double TurnsFromRadPerS { get; private set; } = 10;

    internal double EngagementS { get; private set; } = 5;

    internal double SpeedRatio { get; private set; } = 1;

    internal double SlipFromRadPerS { get; private set; } = 2;

    internal double SlipUntilRadPerS { get; private set; } = 1;

    internal double TripSpeedShare { get; private set; } = 0.5;

    internal double TripTorqueShare { get; private set; } = 0.3;

    internal double TripWithinS { get; private set; } = 1;

    internal double PeaksApartS { get; private set; } = 2;

    internal double AirK { get; private set; } = 303.15;

    internal double HottestK { get; private set; } = double.NaN;

    internal HeatPath? Path { get; private set; }

    internal bool IsUpperBound { get; private set; }

    /// <summary>Settings for an overload level and a period of samples.</summary>
    /// <param name="overload">Torque from which on it is an overload; above 0 to 10⁶ N·m.</param>
    /// <param name="samplePeriod">Time from sample to sample; 10 µs to 1 h.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static MonitorSettings Of(Torque overload, Duration samplePeriod)
    {
        double nm = Level(overload, "Overload level", nameof(overload));
        double periodS = Guard.Within(Si.Seconds(samplePeriod), 1e-5, 3600, "Period of samples", "s", nameof(samplePeriod));
        return new MonitorSettings
        {
            OverloadFromNm = nm,
            OverloadUntilNm = 0.9 * nm,
            PeaksFromNm = 0.6 * nm,
            ScaleNm = 4 * nm,
            PeriodS = periodS,
            LongestStepS = Math.Max(1, 5 * periodS),
        };
    }

    /// <summary>The torque below which an overload has ended.</summary>
    /// <param name="until">Above 0, up to the overload level.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not above 0, or above the overload level.</exception>
    public MonitorSettings WithOverloadUntil(Torque until)
    {
        double nm = Si.NewtonMeters(until);
        return nm > 0 && nm <= OverloadFromNm
            ? With(s => s.OverloadUntilNm = nm)
            : throw Guard.OutOfRange("End of an overload",
                FormattableString.Invariant($"above 0, up to {OverloadFromNm:G6} N·m"), nm, "N·m", nameof(until));
    }

    /// <summary>
    /// The torque from which on a peak counts for the learned work peak: high enough that only the upper tail lies above.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The torque is not a finite value above 0.</exception>
    public MonitorSettings WithPeaksFrom(Torque threshold)
    {
        double nm = Level(threshold, "Threshold of peaks", nameof(threshold));
        return With(s => s.PeaksFromNm = nm);
    }

    /// <summary>The highest torque that is classed; 256 classes reach up to it and 256 down to its negative.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The torque is not a finite value above 0.</exception>
    public MonitorSettings WithScale(Torque fullScale)
    {
        double nm = Level(fullScale, "Full scale", nameof(fullScale));
        return With(s => s.ScaleNm = nm);
    }

    /// <summary>The longest time between two samples across which a thing goes on; after a longer one it has ended.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is below the period of the samples, or above 100 000 s.</exception>
    public MonitorSettings WithLongestStep(Duration longest)
    {
        double seconds = Guard.Within(Si.Seconds(longest), PeriodS, 1e5, "Longest step", "s", nameof(longest));
        return With(s => s.LongestStepS = seconds);
    }

    /// <summary>The speed from which on the PTO turns, and how long an engagement takes from there.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The speed is not from 0.01 to 1000 rad/s, or the time not from 0 to 3600 s.
    /// </exception>
    public MonitorSettings WithEngagement(RotationalSpeed turnsFrom, Duration lasts)
    {
        double speed = Guard.Within(Si.RadiansPerSecond(turnsFrom), 0.01, 1000, "Speed from which the PTO turns", "rad/s",
            nameof(turnsFrom));
        double seconds = Guard.Within(Si.Seconds(lasts), 0, 3600, "Time of an engagement", "s", nameof(lasts));
        return With(s =>
        {
            s.TurnsFromRadPerS = speed;
            s.EngagementS = seconds;
        });
    }

    /// <summary>Speed behind over speed before the device while it holds; 1 when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is not from 0.01 to 100.</exception>
    public MonitorSettings WithSpeedRatio(double ratio)
    {
        Guard.Within(ratio, 0.01, 100, "Speed ratio", string.Empty, nameof(ratio));
        return With(s => s.SpeedRatio = ratio);
    }

    /// <summary>The slip speeds at which a slip begins and below which it has ended.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The first speed is not from 0.001 to 1000 rad/s, or the second not from 0 to the first.
    /// </exception>
    public MonitorSettings WithSlip(RotationalSpeed from, RotationalSpeed until)
    {
        double begin = Guard.Within(Si.RadiansPerSecond(from), 0.001, 1000, "Slip speed", "rad/s", nameof(from));
        double end = Guard.Within(Si.RadiansPerSecond(until), 0, begin, "Slip speed at the end", "rad/s", nameof(until));
        return With(s =>
        {
            s.SlipFromRadPerS = begin;
            s.SlipUntilRadPerS = end;
        });
    }

    /// <summary>
    /// When a device has let go: the share of speed lost, the share of torque left, and the time within which both happen.
    /// </summary>
    /// <param name="speedLost">Slip speed over speed before the device; 0.05 to 1.</param>
    /// <param name="torqueLeft">Torque over the highest before; 0 to 0.95.</param>
    /// <param name="within">0.001 to 60 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share or the time is outside its range.</exception>
    public MonitorSettings WithTrip(double speedLost, double torqueLeft, Duration within)
    {
        Guard.Within(speedLost, 0.05, 1, "Share of speed lost", string.Empty, nameof(speedLost));
        Guard.Within(torqueLeft, 0, 0.95, "Share of torque left", string.Empty, nameof(torqueLeft));
        double seconds = Guard.Within(Si.Seconds(within), 0.001, 60, "Time of a trip", "s", nameof(within));
        return With(s =>
        {
            s.TripSpeedShare = speedLost;
            s.TripTorqueShare = torqueLeft;
            s.TripWithinS = seconds;
        });
    }

    /// <summary>The time below the threshold after which the next peak is another one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is not from 0 to 3600 s.</exception>
    public MonitorSettings WithPeaksApart(Duration apart)
    {
        double seconds = Guard.Within(Si.Seconds(apart), 0, 3600, "Time between peaks", "s", nameof(apart));
        return With(s => s.PeaksApartS = seconds);
    }

    /// <summary>
    /// Where the heat of a slip goes, what the facing endures, and the temperature of the air; the clutch starts as warm as the
    /// air.
    /// </summary>
    /// <param name="path">Faces and plates; without cooling the plates never cool, which is safe and too hot.</param>
    /// <param name="facing">
    /// The facing: its maximum temperature, else its continuous one, is the limit; without either none is watched.
    /// </param>
    /// <param name="air">-60 to 100 °C.</param>
    internal MonitorSettings WithClutch(HeatPath path, Facing facing, Temperature air)
    {
        Guard.NotNull(path, nameof(path));
        FacingLimits limits = Guard.NotNull(facing, nameof(facing)).Limits;
        double airK = Guard.Within(Si.Kelvins(air), 213.15, 373.15, "Temperature of the air", "K", nameof(air));
        return With(s =>
        {
            s.Path = path;
            s.HottestK = double.IsNaN(limits.MaximumK) ? limits.ContinuousK : limits.MaximumK;
            s.AirK = airK;
        });
    }

    /// <summary>
    /// Says that the torques are upper bounds, such as those of <see cref="EngineTorqueDecoder"/>: no work peak is learned.
    /// </summary>
    public MonitorSettings WithUpperBoundTorque() => With(s => s.IsUpperBound = true);

    /// <summary>A checksum of all that steers the stream, by which a snapshot knows its settings.</summary>
    internal uint Fingerprint()
    {
        double[] values =
        [
            OverloadFromNm, OverloadUntilNm, PeaksFromNm, ScaleNm, PeriodS, LongestStepS, TurnsFromRadPerS, EngagementS,
                SpeedRatio, SlipFromRadPerS,
            SlipUntilRadPerS, TripSpeedShare, TripTorqueShare, TripWithinS, PeaksApartS, AirK, HottestK,
            Path?.AreaM2 ?? 0, Path?.Faces ?? 0, Path?.ThicknessM ?? 0, Path?.PlateShare ?? 0, Path?.LossWPerK ?? 0,
            Path?.Plate.WPerMK ?? 0, Path?.Plate.KgPerM3 ?? 0, Path?.Plate.JPerKgK ?? 0,
            IsUpperBound ? 1 : 0,
        ];
        byte[] bytes = new byte[values.Length * sizeof(long)];
        for (int k = 0; k < values.Length; k++)
        {
            BinaryPrimitives.WriteInt64LittleEndian(bytes.AsSpan(k * sizeof(long)), BitConverter.DoubleToInt64Bits(values[k]));
        }

        return Crc32.Of(bytes);
    }

    private static double Level(Torque torque, string quantity, string parameter)
    {
        double nm = Guard.Positive(Si.NewtonMeters(torque), quantity, "N·m", parameter);
        return nm <= 1e6 ? nm : throw Guard.OutOfRange(quantity, "up to 1e+06 N·m", nm, "N·m", parameter);
    }

    private MonitorSettings With(Action<MonitorSettings> change)
    {
        var copy = (MonitorSettings)MemberwiseClone();
        change(copy);
        return copy;
    }
}
