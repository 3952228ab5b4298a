using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>Arithmetic of one conical disc spring, after Almen and László as in EN 16984.</summary>
/// <remarks>With contact flats the reduced thickness t' stands for t, and h0' = l0 - t' for h0.</remarks>
internal static class DiscSpringKernel
{
    public static double K1(double ratio)
    {
        double inner = (ratio - 1) / ratio;
        return inner * inner / (Math.PI * (((ratio + 1) / (ratio - 1)) - (2 / Math.Log(ratio))));
    }

    public static double K2(double ratio)
    {
        double log = Math.Log(ratio);
        return 6 / Math.PI * (((ratio - 1) / log) - 1) / log;
    }

    public static double K3(double ratio) => 3 / Math.PI * (ratio - 1) / Math.Log(ratio);

    /// <summary>1 without flats; above 1 for a reduced thickness.</summary>
    public static double K4(double thicknessM, double reducedM, double freeHeightM)
    {
        if (reducedM.Equals(thicknessM))
        {
            return 1;
        }

        double r = reducedM / thicknessM;
        double l = freeHeightM / thicknessM;
        double c1 = r * r / (((0.25 * l) - r + 0.75) * ((0.625 * l) - r + 0.375));
        double c2 = c1 / (r * r * r) * ((5.0 / 32 * (l - 1) * (l - 1)) + 1);
        return Math.Sqrt((-c1 / 2) + Math.Sqrt((c1 * c1 / 4) + c2));
    }

    /// <summary>4 · E / (1 - ν²) / (K1 · De²), in Pa/m²: common to force, rate and stresses.</summary>
    public static double Stiffness(double modulusPa, double poisson, double outerM, double innerM) =>
        4 * modulusPa / ((1 - (poisson * poisson)) * K1(outerM / innerM) * outerM * outerM);

    public static double ForceN<S>(in DiscSpringShape shape, double deflectionM, ref S log)
        where S : struct, ISteps
    {
        double t = shape.ThicknessM;
        double h = shape.ConeM / t;
        double x = deflectionM / t;
        double k42 = shape.K4 * shape.K4;
        double force = shape.StiffnessPaPerM2 * t * t * t * t * k42 * x * ((k42 * (h - x) * (h - (x / 2))) + 1);
        log.Add(ClutchSteps.DiscDeflection, deflectionM);
        log.Add(ClutchSteps.DiscForce, force);
        return force;
    }

    public static double RateNPerM(in DiscSpringShape shape, double deflectionM)
    {
        double t = shape.ThicknessM;
        double h = shape.ConeM / t;
        double x = deflectionM / t;
        double k42 = shape.K4 * shape.K4;
        return shape.StiffnessPaPerM2 * t * t * t * k42 * ((k42 * ((h * h) - (3 * h * x) + (1.5 * x * x))) + 1);
    }

    /// <summary>Deflection of the first force maximum; +∞ for a spring whose force always rises.</summary>
    public static double PeakM(in DiscSpringShape shape)
    {
        double h = shape.ConeM / shape.ThicknessM;
        double under = (h * h / 3) - (2 / (3 * shape.K4 * shape.K4));
        return under <= 0 ? double.PositiveInfinity : shape.ThicknessM * (h - Math.Sqrt(under));
    }

    /// <summary>Stress at the upper edge's middle, σOM; compression negative.</summary>
    public static double SigmaOmPa(in DiscSpringShape shape, double deflectionM) =>
        -shape.StiffnessPaPerM2 * shape.ThicknessM * deflectionM * shape.K4 * 3 / Math.PI;

    /// <summary>Stress at the upper inner edge, σI; compression negative.</summary>
    public static double SigmaIPa(in DiscSpringShape shape, double deflectionM) =>
        Edge(shape, deflectionM, 1, K2(shape.Ratio), K3(shape.Ratio));

    /// <summary>Stress at the lower inner edge, σII; tension positive.</summary>
    public static double SigmaIiPa(in DiscSpringShape shape, double deflectionM) =>
        Edge(shape, deflectionM, 1, K2(shape.Ratio), -K3(shape.Ratio));

    /// <summary>Stress at the lower outer edge, σIII; tension positive.</summary>
    public static double SigmaIiiPa(in DiscSpringShape shape, double deflectionM) =>
        Edge(shape, deflectionM, 1 / shape.Ratio, K2(shape.Ratio) - (2 * K3(shape.Ratio)), -K3(shape.Ratio));

    /// <summary>Stress at the upper outer edge, σIV.</summary>
    public static double SigmaIvPa(in DiscSpringShape shape, double deflectionM) =>
        Edge(shape, deflectionM, 1 / shape.Ratio, K2(shape.Ratio) - (2 * K3(shape.Ratio)), K3(shape.Ratio));

    private static double Edge(in DiscSpringShape shape, double deflectionM, double scale, double slope, double offset)
    {
        double t = shape.ThicknessM;
        double x = deflectionM / t;
        return -shape.StiffnessPaPerM2 * t * t * shape.K4 * x * scale * ((shape.K4 * slope * ((shape.ConeM / t) - (x / 2))) + offset);
    }
}
