using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>Arithmetic of one slip at constant clutch torque; an inertia of +∞ is a side held at its speed.</summary>
internal static class SlipKernel
{
    /// <summary>Time until the speeds meet; +∞ when they never do. What has no inertia follows at once.</summary>
    public static double TimeS<S>(
        double slipRadPerS, double clutchNm, double driveInertia, double loadInertia, double driveNm, double loadNm, ref S log)
        where S : struct, ISteps
    {
        double gained = double.IsPositiveInfinity(clutchNm) ? double.PositiveInfinity : clutchNm - loadNm;
        double t;
        if (slipRadPerS <= 0 || loadInertia == 0)
        {
            t = 0;
        }
        else if (double.IsPositiveInfinity(gained))
        {
            t = double.IsPositiveInfinity(loadInertia) ? double.PositiveInfinity : 0;
        }
        else
        {
            double rate = (gained / loadInertia) + (double.IsPositiveInfinity(driveInertia) ? 0 : (clutchNm - driveNm) / driveInertia);
            t = rate > 0 ? slipRadPerS / rate : double.PositiveInfinity;
        }

        log.Add(ClutchSteps.SlipTime, t);
        return t;
    }

    /// <summary>
    /// Heat of a slip that ends, free of the clutch torque: the inertias' share, J₁ J₂ Δω²/(2 (J₁ + J₂)), and the load torque over the slip
    /// angle.
    /// </summary>
    public static double SharedJ<S>(
        double driveInertia, double loadInertia, double slipRadPerS, double loadNm, double slipAngleRad, ref S log)
        where S : struct, ISteps
    {
        double common = double.IsPositiveInfinity(driveInertia) ? loadInertia
            : double.IsPositiveInfinity(loadInertia) ? driveInertia
            : driveInertia + loadInertia == 0 ? 0
            : driveInertia / (driveInertia + loadInertia) * loadInertia;
        double joules = Product(common, slipRadPerS * slipRadPerS / 2) + Product(loadNm, slipAngleRad);
        log.Add(ClutchSteps.EngagementHeat, joules);
        return joules;
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

    // 0 × ∞ is 0 here: nothing of something endless is nothing.
    private static double Product(double a, double b) => a == 0 || b == 0 ? 0 : a * b;
}
