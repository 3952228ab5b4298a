using Driveline.Provenance;

namespace Driveline.Loads;

/// <summary>Arithmetic of rotating masses, in SI.</summary>
internal static class RotorKernel
{
    public static double BladeKgM2<S>(double massKg, double lengthM, double innerRadiusM, ref S log)
        where S : struct, ISteps
    {
        double centre = innerRadiusM + (lengthM / 2);
        return Record(LoadsSteps.BladeInertia, massKg * ((lengthM * lengthM / 12) + (centre * centre)), ref log);
    }

    public static double ShockKgM2<S>(double massKg, double pivotRadiusM, ref S log)
        where S : struct, ISteps => Record(LoadsSteps.ShockInertia, massKg / 4 * pivotRadiusM * pivotRadiusM, ref log);

    public static double BarKgM2<S>(double massKg, double lengthM, double widthM, ref S log)
        where S : struct, ISteps => Record(LoadsSteps.BarInertia, massKg * ((lengthM * lengthM) + (widthM * widthM)) / 12, ref log);

    public static double RingKgM2<S>(double massKg, double outerRadiusM, double innerRadiusM, ref S log)
        where S : struct, ISteps =>
        Record(LoadsSteps.RingInertia, massKg * ((outerRadiusM * outerRadiusM) + (innerRadiusM * innerRadiusM)) / 2, ref log);

    public static double GyrationKgM2<S>(double massKg, double radiusM, ref S log)
        where S : struct, ISteps => Record(LoadsSteps.GyrationInertia, massKg * radiusM * radiusM, ref log);

    /// <summary>An inertia behind a speed ratio, seen at the PTO.</summary>
    public static double AtPtoKgM2<S>(double kgM2, double ratio, ref S log)
        where S : struct, ISteps => Record(LoadsSteps.ReferredInertia, kgM2 * ratio * ratio, ref log);

    public static double Joules<S>(double kgM2, double radPerS, ref S log)
        where S : struct, ISteps => Record(LoadsSteps.StoredEnergy, kgM2 * radPerS * radPerS / 2, ref log);

    public static double DipJoules<S>(double kgM2, double beforeRadPerS, double afterRadPerS, ref S log)
        where S : struct, ISteps =>
        Record(LoadsSteps.DipEnergy, kgM2 * (beforeRadPerS - afterRadPerS) * (beforeRadPerS + afterRadPerS) / 2, ref log);

    public static double TipMetersPerSecond<S>(double radiusM, double ptoRadPerS, double ratio, ref S log)
        where S : struct, ISteps => Record(LoadsSteps.TipSpeed, radiusM * ptoRadPerS * ratio, ref log);

    private static double Record<S>(CalculationStep step, double value, ref S log)
        where S : struct, ISteps
    {
        log.Add(step, value);
        return value;
    }
}
