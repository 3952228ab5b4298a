using UnitsNet;

namespace Driveline.Monitoring;

/// <summary>One sample of a driveline: when, how fast it turns before and behind the protective device, and its torque.</summary>
/// <remarks>
/// Any numbers are taken: what is not finite, late or out of range is counted by the monitor and left out. Time counts from anywhere
/// and grows. Torque is above zero when the tractor drives.
/// </remarks>
public readonly struct TorqueSample
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
}
