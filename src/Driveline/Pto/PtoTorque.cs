using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>Torque from power and speed, and back.</summary>
/// <remarks>
/// T = P / ω, with P power [W], ω angular speed [rad/s]; in trade units T = 9549 · kW / min⁻¹ and lbf·ft = 5252 · hp / min⁻¹.
/// </remarks>
internal static class PtoTorque
{
    /// <summary>Mean torque that carries a power at a speed, T = P / ω, in N·m.</summary>
    /// <param name="power">Power; 0 or more.</param>
    /// <param name="speed">Speed; above 0. A stopped shaft carries no power, so its torque does not follow from one.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The power is negative, the speed is zero or negative, or a value is not finite.
    /// </exception>
    /// <example>60 mechanical hp at 540 min⁻¹: 791.2 N·m.</example>
    public static Torque FromPower(Power power, RotationalSpeed speed)
    {
        NoSteps none = default;
        return Torque.FromNewtonMeters(FromPower(power, speed, ref none));
    }

    /// <summary>The lines of <see cref="FromPower(Power, RotationalSpeed)"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The power is negative, the speed is zero or negative, or a value is not finite.
    /// </exception>
    public static IReadOnlyList<CalculationLine> Sheet(Power power, RotationalSpeed speed)
    {
        var steps = StepList.New();
        FromPower(power, speed, ref steps);
        return steps.Lines;
    }

    /// <summary>A power band turned into a torque band at one speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is zero, negative or not finite.</exception>
    public static TorqueBand FromPower(PowerBand power, RotationalSpeed speed)
    {
        Guard.NotNull(power, nameof(power));
        double omega = Omega(speed);
        return TorqueBand.OfSi(power.SiBand.Times(1 / omega), power.Basis);
    }

    /// <summary>Power carried by a torque at a speed, P = T · ω, in W.</summary>
    /// <param name="torque">Torque; 0 or more.</param>
    /// <param name="speed">Speed; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative or not finite.</exception>
    /// <example>990 N·m at 540 min⁻¹: 56.0 kW.</example>
    public static Power ToPower(Torque torque, RotationalSpeed speed)
    {
        double nm = Guard.NotNegative(Si.NewtonMeters(torque), "Torque", "N·m", nameof(torque));
        double omega = Guard.NotNegative(Si.RadiansPerSecond(speed), "Speed", "rad/s", nameof(speed));
        NoSteps none = default;
        return Power.FromWatts(Watts(nm, omega, ref none));
    }

    internal static double NewtonMeters<S>(double powerW, double speedRadPerS, ref S log)
        where S : struct, ISteps
    {
        double nm = powerW / speedRadPerS;
        log.Add(PtoSteps.Torque, nm);
        return nm;
    }

    internal static double Watts<S>(double torqueNm, double speedRadPerS, ref S log)
        where S : struct, ISteps
    {
        double watts = torqueNm * speedRadPerS;
        log.Add(PtoSteps.Power, watts);
        return watts;
    }

    private static double FromPower<S>(Power power, RotationalSpeed speed, ref S log)
        where S : struct, ISteps =>
        NewtonMeters(Guard.NotNegative(Si.Watts(power), "Power", "W", nameof(power)), Omega(speed), ref log);

    private static double Omega(RotationalSpeed speed) =>
        Guard.Positive(Si.RadiansPerSecond(speed), "PTO speed", "rad/s", nameof(speed));
}
