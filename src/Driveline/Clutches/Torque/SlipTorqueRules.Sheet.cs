using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <content>The torque again, step by step.</content>
internal static partial class SlipTorqueRules
{
    /// <summary>From the length of the springs to the torque, each end; an end that solid springs leave open is left out.</summary>
    public static void Record<S>(DiscClutch clutch, ClutchCondition condition, Band forceN, ref S log)
        where S : struct, ISteps
    {
        Band set = clutch.SpringLength!.SiBand;
        Band wear = WearM(clutch.Faces, condition);
        Band factor = clutch.Springs.Factor;
        Band mu = clutch.Facing.Friction(condition.Surface).Running.SiBand;
        Band radius = RadiusM(clutch, condition.RunIn);
        if (forceN.Low > 0)
        {
            log.Begin(SheetEnd.Lowest);
            RecordEnd(clutch, set.High, wear.High, factor.Low, forceN.Low, mu.Low, radius.Low, ref log);
        }

        if (forceN.HasExpected)
        {
            log.Begin(SheetEnd.MostLikely);
            RecordEnd(clutch, set.Expected, wear.Expected, factor.Expected, forceN.Expected, mu.Expected, radius.Expected, ref log);
        }

        if (forceN.IsBounded)
        {
            log.Begin(SheetEnd.Highest);
            RecordEnd(clutch, set.Low, wear.Low, factor.High, forceN.High, mu.High, radius.High, ref log);
        }
    }

    /// <summary>The highest torque that starts a slip, after the highest that keeps it going.</summary>
    public static void RecordBreakaway<S>(DiscClutch clutch, ClutchCondition condition, Band forceN, double breakawayNm, ref S log)
        where S : struct, ISteps
    {
        double mu = clutch.Facing.Friction(condition.Surface).Breakaway.SiBand.High;
        log.Add(ClutchInputs.BreakawayFriction, mu);
        double nm = clutch.Faces * mu * forceN.High * RadiusM(clutch, condition.RunIn).High;
        log.Add(Math.Abs(nm - breakawayNm) <= 1e-9 * nm ? ClutchInputs.Breakaway : ClutchInputs.BreakawayStated, breakawayNm);
    }

    /// <summary>From a spring length to a torque, one end.</summary>
    public static void RecordEnd<S>(
        DiscClutch clutch, double lengthM, double wearM, double factor, double forceN, double friction, double radiusM, ref S log)
        where S : struct, ISteps
    {
        SpringPack springs = clutch.Springs;
        log.Add(ClutchInputs.FreeLength, springs.FreeM);
        log.Add(ClutchInputs.SetLength, lengthM);
        log.Add(ClutchInputs.Wear, wearM);
        double deflection = springs.FreeM - lengthM - wearM;
        double held = Math.Min(Math.Max(0, deflection), springs.TravelM);
        log.Add(held.Equals(deflection) ? ClutchInputs.Deflection : ClutchInputs.DeflectionHeld, held);
        double nominal = springs.NominalN(held, ref log);
        log.Add(ClutchInputs.Count, springs.Count);
        log.Add(ClutchInputs.Factor, factor);
        log.Add(Math.Abs((nominal * factor) - forceN) <= 1e-9 * forceN ? springs.ClampStep : ClutchSteps.Clamp, forceN);
        RecordTorque(clutch, friction, forceN, radiusM, ref log);
    }

    /// <summary>Faces, friction and the radius at which it acts.</summary>
    public static void RecordFaces<S>(DiscClutch clutch, double friction, double radiusM, ref S log)
        where S : struct, ISteps
    {
        log.Add(ClutchInputs.Faces, clutch.Faces);
        log.Add(ClutchSteps.Friction, friction);
        log.Add(ClutchInputs.Outer, clutch.OuterM);
        log.Add(ClutchInputs.Inner, clutch.InnerM);
        if (IsOfWear(clutch, radiusM))
        {
            DiscClutchKernel.UniformWearRadiusM(clutch.OuterM, clutch.InnerM, ref log);
        }
        else
        {
            DiscClutchKernel.UniformPressureRadiusM(clutch.OuterM, clutch.InnerM, ref log);
        }
    }

    private static void RecordTorque<S>(DiscClutch clutch, double friction, double forceN, double radiusM, ref S log)
        where S : struct, ISteps
    {
        RecordFaces(clutch, friction, radiusM, ref log);
        if (IsOfWear(clutch, radiusM))
        {
            DiscClutchKernel.PeakPressurePa(forceN, clutch.OuterM, clutch.InnerM, ref log);
        }
        else
        {
            DiscClutchKernel.MeanPressurePa(forceN, clutch.OuterM, clutch.InnerM, ref log);
        }

        DiscClutchKernel.SlipTorqueNm(clutch.Faces, friction, forceN, radiusM, ref log);
    }

    private static bool IsOfWear(DiscClutch clutch, double radiusM)
    {
        NoSteps none = default;
        return radiusM.Equals(DiscClutchKernel.UniformWearRadiusM(clutch.OuterM, clutch.InnerM, ref none));
    }
}
