using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>Arithmetic of a disc clutch.</summary>
internal static class DiscClutchKernel
{
    public static double UniformWearRadiusM<S>(double outerM, double innerM, ref S log)
        where S : struct, ISteps
    {
        double r = (outerM + innerM) / 2;
        log.Add(ClutchSteps.UniformWearRadius, r);
        return r;
    }

    // (Ro³ - Ri³)/(Ro² - Ri²) divided out, so that a narrow face loses no digits.
    public static double UniformPressureRadiusM<S>(double outerM, double innerM, ref S log)
        where S : struct, ISteps
    {
        double r = 2 * ((outerM * outerM) + (outerM * innerM) + (innerM * innerM)) / (3 * (outerM + innerM));
        log.Add(ClutchSteps.UniformPressureRadius, r);
        return r;
    }

    public static double SlipTorqueNm<S>(int faces, double friction, double clampN, double radiusM, ref S log)
        where S : struct, ISteps
    {
        double nm = faces * friction * clampN * radiusM;
        log.Add(ClutchSteps.Torque, nm);
        return nm;
    }

    public static double AreaM2(double outerM, double innerM) => Math.PI * (outerM - innerM) * (outerM + innerM);

    public static double MeanPressurePa<S>(double clampN, double outerM, double innerM, ref S log)
        where S : struct, ISteps
    {
        double p = clampN / AreaM2(outerM, innerM);
        log.Add(ClutchSteps.MeanPressure, p);
        return p;
    }

    /// <summary>Uniform wear: pressure at the inner radius.</summary>
    public static double PeakPressurePa<S>(double clampN, double outerM, double innerM, ref S log)
        where S : struct, ISteps
    {
        double p = clampN / (2 * Math.PI * innerM * (outerM - innerM));
        log.Add(ClutchSteps.PeakPressure, p);
        return p;
    }

    /// <summary>Uniform wear: clamp force that gives a pressure at the inner radius.</summary>
    public static double ClampForPeakN(double peakPa, double outerM, double innerM) => 2 * Math.PI * peakPa * innerM * (outerM - innerM);
}
