using Driveline.Provenance;

namespace Driveline.Loads;

/// <summary>
/// Arithmetic of the torques of running up a rotor through a clutch, in SI at the PTO. Time and heat of its slip are those of any slip, in
/// Clutches.
/// </summary>
internal static class EngagementKernel
{
    /// <summary>Clutch torque at which the speeds meet when it rises evenly to its capacity; at most the capacity.</summary>
    public static double RampNm<S>(double rotorKgM2, double radPerS, double capacityNm, double riseS, double loadNm, ref S log)
        where S : struct, ISteps
    {
        double ramp = riseS == 0 || double.IsPositiveInfinity(capacityNm) || double.IsPositiveInfinity(rotorKgM2)
            ? double.PositiveInfinity
            : loadNm + Math.Sqrt(2 * rotorKgM2 * radPerS * capacityNm / riseS);
        double nm = Math.Min(ramp, capacityNm);
        log.Add(ramp <= capacityNm ? LoadsSteps.RampTorque : LoadsSteps.FullTorque, nm);
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
}
