using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>A drive's torque as a straight line over its speed, T = T0 + K·(ω0 − ω), with limits if wanted.</summary>
/// <remarks>Immutable; at the driven rotor's own speed. K ≥ 0: torque falls as speed rises. K = 0 is a constant torque.</remarks>
public sealed class TorqueSpeedLine
{
    private TorqueSpeedLine(double torque, double speed, double slope)
    {
        TorqueNm = torque;
        SpeedRadPerS = speed;
        SlopeNms = slope;
    }

    /// <summary>Torque T0 at speed ω0.</summary>
    public Torque Torque => Torque.FromNewtonMeters(TorqueNm);

    /// <summary>Speed ω0.</summary>
    public RotationalSpeed Speed => RotationalSpeed.FromRadiansPerSecond(SpeedRadPerS);

    /// <summary>Slope K, N·m·s/rad.</summary>
    public double SlopeNms { get; }

    internal double TorqueNm { get; }

    internal double SpeedRadPerS { get; }

    internal double MostNm { get; private set; } = double.PositiveInfinity;

    internal double LeastNm { get; private set; } = double.NegativeInfinity;

    /// <summary>A line through one point with a slope.</summary>
    /// <param name="torque">T0; finite.</param>
    /// <param name="speed">ω0; finite.</param>
    /// <param name="newtonMeterSecondsPerRadian">K, torque lost per rise of speed; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TorqueSpeedLine Of(Torque torque, RotationalSpeed speed, double newtonMeterSecondsPerRadian) => new(
        Finite(Si.NewtonMeters(torque), "Drive torque", "N·m", nameof(torque)),
        Finite(Si.RadiansPerSecond(speed), "Drive speed", "rad/s", nameof(speed)),
        Guard.NotNegative(newtonMeterSecondsPerRadian, "Drive slope", "N·m·s/rad", nameof(newtonMeterSecondsPerRadian)));

    /// <summary>A torque that does not depend on speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The torque is not finite.</exception>
    public static TorqueSpeedLine Constant(Torque torque) => Of(torque, RotationalSpeed.Zero, 0);

    /// <summary>The same line, never outside these torques.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or least is not below most.</exception>
    public TorqueSpeedLine Within(Torque least, Torque most)
    {
        double low = Finite(Si.NewtonMeters(least), "Least drive torque", "N·m", nameof(least));
        double high = Finite(Si.NewtonMeters(most), "Largest drive torque", "N·m", nameof(most));
        return low < high
            ? new TorqueSpeedLine(TorqueNm, SpeedRadPerS, SlopeNms) { LeastNm = low, MostNm = high }
            : throw Guard.OutOfRange(
                "Least drive torque", FormattableString.Invariant($"below the largest, {high:G6} N·m"), low, "N·m", nameof(least));
    }

    /// <summary>A point of the line and its slope.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Torque.NewtonMeters:G4} N·m at {Speed.RevolutionsPerMinute:0.#} 1/min, {SlopeNms:G4} N·m·s/rad");

    private static double Finite(double value, string quantity, string unit, string parameter) =>
        Guard.IsFinite(value) ? value : throw Guard.OutOfRange(quantity, "a finite value", value, unit, parameter);
}
