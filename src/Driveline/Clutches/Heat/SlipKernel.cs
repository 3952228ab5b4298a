using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>Arithmetic of one slip at constant clutch torque; an inertia of +∞ is a side held at its speed.</summary>
internal static class SlipKernel
{
    /// <summary>Time until the speeds meet; +∞ when they never do.</summary>
    public static double TimeS<S>(
        double slipRadPerS, double clutchNm, double driveInertia, double loadInertia, double driveNm, double loadNm, ref S log)
        where S : struct, ISteps
    {
        double rate = ((clutchNm - driveNm) / driveInertia) + ((clutchNm - loadNm) / loadInertia);
        double t = slipRadPerS <= 0 ? 0 : rate > 0 ? slipRadPerS / rate : double.PositiveInfinity;
        log.Add(ClutchSteps.SlipTime, t);
        return t;
    }

    public static double EnergyJ<S>(double clutchNm, double angleRad, ref S log)
        where S : struct, ISteps
    {
        double joules = clutchNm * angleRad;
        log.Add(ClutchSteps.SlipEnergy, joules);
        return joules;
    }

    public static double PowerW<S>(double clutchNm, double slipRadPerS, ref S log)
        where S : struct, ISteps
    {
        double watts = clutchNm * slipRadPerS;
        log.Add(ClutchSteps.SlipPower, watts);
        return watts;
    }
}
