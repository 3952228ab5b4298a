using Driveline.Provenance;

namespace Driveline.Loads;

/// <summary>Arithmetic of an inertia stopped through a spring, in SI.</summary>
internal static class StrikeKernel
{
    /// <summary>T₀ + ω √(J k): the torque when an inertia that carries T₀ is stopped dead through a spring.</summary>
    public static double ImpactNm<S>(double steadyNm, double radPerS, double kgM2, double nmPerRad, ref S log)
        where S : struct, ISteps
    {
        double product = kgM2 == 0 || nmPerRad == 0 || radPerS == 0 ? 0 : kgM2 * nmPerRad;
        double nm = steadyNm + (product == 0 ? 0 : radPerS * Math.Sqrt(product));
        log.Add(LoadsSteps.ImpactTorque, nm);
        return nm;
    }

    /// <summary>The same behind a clutch that slips: T_c + ω √(J_l k).</summary>
    public static double SlippingNm<S>(double capacityNm, double radPerS, double lineKgM2, double nmPerRad, ref S log)
        where S : struct, ISteps
    {
        NoSteps none = default;
        double nm = ImpactNm(capacityNm, radPerS, lineKgM2, nmPerRad, ref none);
        log.Add(LoadsSteps.SlippingImpact, nm);
        return nm;
    }
}
