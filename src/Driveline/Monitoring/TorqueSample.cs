using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>One sample of a driveline: when, how fast it turns before and behind the protective device, and its torque.</summary>
/// <remarks>
/// Any numbers are taken: what is not finite, late or out of range is counted by the monitor and left out. Time counts from anywhere
/// and grows. Torque is above zero when the tractor drives.
/// </remarks>
public readonly struct TorqueSample : IEquatable<TorqueSample>
{
    /// <summary>A sample without a speed behind the device.</summary>
    /// <param name="timeS">Time, s.</param>
    /// <param name="speedInRadPerS">Speed before the device, rad/s.</param>
    /// <param name="torqueNm">Torque, N·m.</param>
    public TorqueSample(double timeS, double speedInRadPerS, double torqueNm)
        : this(timeS, speedInRadPerS, double.NaN, torqueNm)
    {
    }

    /// <summary>A sample with both speeds.</summary>
    /// <param name="timeS">Time, s.</param>
    /// <param name="speedInRadPerS">Speed before the device, rad/s.</param>
    /// <param name="speedOutRadPerS">Speed behind the device, rad/s; NaN when it was not measured.</param>
    /// <param name="torqueNm">Torque, N·m.</param>
    public TorqueSample(double timeS, double speedInRadPerS, double speedOutRadPerS, double torqueNm)
    {
        TimeS = timeS;
        SpeedInRadPerS = speedInRadPerS;
        SpeedOutRadPerS = speedOutRadPerS;
        TorqueNm = torqueNm;
    }

    /// <summary>Time, s.</summary>
    public double TimeS { get; }

    /// <summary>Speed before the device, rad/s.</summary>
    public double SpeedInRadPerS { get; }

    /// <summary>Speed behind the device, rad/s; NaN when it was not measured.</summary>
    public double SpeedOutRadPerS { get; }

    /// <summary>Torque, N·m.</summary>
    public double TorqueNm { get; }

    /// <summary>A sample from quantities.</summary>
    public static TorqueSample Of(Duration time, RotationalSpeed speedIn, Torque torque) =>
        new(Quantities.Si.Seconds(time), Quantities.Si.RadiansPerSecond(speedIn), Quantities.Si.NewtonMeters(torque));

    /// <summary>A sample from quantities, with the speed behind the device.</summary>
    public static TorqueSample Of(Duration time, RotationalSpeed speedIn, RotationalSpeed speedOut, Torque torque) => new(
        Quantities.Si.Seconds(time), Quantities.Si.RadiansPerSecond(speedIn), Quantities.Si.RadiansPerSecond(speedOut),
            Quantities.Si.NewtonMeters(torque));

    /// <summary>Whether two samples are the same.</summary>
    public static bool operator ==(TorqueSample left, TorqueSample right) => left.Equals(right);

    /// <summary>Whether two samples differ.</summary>
    public static bool operator !=(TorqueSample left, TorqueSample right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(TorqueSample other) => TimeS.Equals(other.TimeS) && SpeedInRadPerS.Equals(other.SpeedInRadPerS)
        && SpeedOutRadPerS.Equals(other.SpeedOutRadPerS) && TorqueNm.Equals(other.TorqueNm);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TorqueSample other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (TimeS.GetHashCode() * 397) ^ TorqueNm.GetHashCode();

    /// <summary>The sample in one line of English with its units, invariant culture.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{TorqueNm} N·m at {TimeS} s, {SpeedInRadPerS} rad/s before the device, {SpeedOutRadPerS} rad/s behind it");
}
