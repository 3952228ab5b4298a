using Driveline.Provenance;

namespace Driveline.Loads;

/// <summary>
/// Arithmetic of running up a rotor through a slipping clutch, in SI at the PTO. A drive inertia of +∞ is held at its speed.
/// </summary>
internal static class EngagementKernel
{
    /// <summary>Time until the speeds meet at constant clutch torque; +∞ when they never do.</summary>
    public static double SyncSeconds<S>(
        double driveKgM2, double rotorKgM2, double slipRadPerS, double clutchNm, double driveNm, double loadNm, ref S log)
        where S : struct, ISteps
    {
        double gained = double.IsPositiveInfinity(clutchNm) ? double.PositiveInfinity : clutchNm - loadNm;
        double t;
        if (slipRadPerS == 0 || rotorKgM2 == 0)
        {
            t = 0;
        }
        else if (double.IsPositiveInfinity(gained))
        {
            t = double.IsPositiveInfinity(rotorKgM2) ? double.PositiveInfinity : 0;
        }
        else
        {
            double rate = (gained / rotorKgM2) + (double.IsPositiveInfinity(driveKgM2) ? 0 : (clutchNm - driveNm) / driveKgM2);
            t = rate > 0 ? slipRadPerS / rate : double.PositiveInfinity;
        }

        log.Add(LoadsSteps.SynchronisingTime, t);
        return t;
    }

    /// <summary>
    /// Heat of the slip: the inertias' share, plus the load torque over the slip angle. Free of the clutch torque but through that angle.
    /// </summary>
    public static double SlipJoules<S>(
        double driveKgM2, double rotorKgM2, double slipRadPerS, double loadNm, double slipAngleRad, ref S log)
        where S : struct, ISteps
    {
        double common = double.IsPositiveInfinity(driveKgM2) ? rotorKgM2
            : double.IsPositiveInfinity(rotorKgM2) ? driveKgM2
            : driveKgM2 + rotorKgM2 == 0 ? 0
            : driveKgM2 / (driveKgM2 + rotorKgM2) * rotorKgM2;
        double joules = Product(common, slipRadPerS * slipRadPerS / 2) + Product(loadNm, slipAngleRad);
        log.Add(LoadsSteps.SlipHeat, joules);
        return joules;
    }

    /// <summary>Heat while the load stands still and the drive turns on.</summary>
    public static double BlockedJoules<S>(double clutchNm, double radPerS, double seconds, ref S log)
        where S : struct, ISteps
    {
        double joules = clutchNm * radPerS * seconds;
        log.Add(LoadsSteps.BlockedHeat, joules);
        return joules;
    }

    /// <summary>Clutch torque at which the speeds meet when it rises evenly to its capacity; at most the capacity.</summary>
    public static double RampNm<S>(double rotorKgM2, double radPerS, double capacityNm, double riseS, double loadNm, ref S log)
        where S : struct, ISteps
    {
        double ramp = riseS == 0 || double.IsPositiveInfinity(capacityNm) || double.IsPositiveInfinity(rotorKgM2)
            ? double.PositiveInfinity
            : loadNm + Math.Sqrt(2 * rotorKgM2 * radPerS * capacityNm / riseS);
        double nm = Math.Min(ramp, capacityNm);
        log.Add(LoadsSteps.RampTorque, nm);
        return nm;
    }

    /// <summary>Largest response of a spring and inertia to a ramp over its final value; x = ω_n · t_r / 2, 2 for a step.</summary>
    public static double RampFactor<S>(double halfPhaseRad, ref S log)
        where S : struct, ISteps
    {
        double factor = halfPhaseRad < 1e-8 ? 2 : 1 + (Math.Abs(Math.Sin(halfPhaseRad)) / halfPhaseRad);
        log.Add(LoadsSteps.RampFactor, factor);
        return factor;
    }

    public static double PeakNm<S>(double clutchNm, double factor, double loadNm, ref S log)
        where S : struct, ISteps
    {
        double swing = Math.Max(0, clutchNm - loadNm);
        double nm = loadNm + (factor * swing);
        log.Add(LoadsSteps.EngagementPeak, nm);
        return nm;
    }

    /// <summary>0 × ∞ is 0 here: nothing of something endless is nothing.</summary>
    private static double Product(double a, double b) => a == 0 || b == 0 ? 0 : a * b;
}
