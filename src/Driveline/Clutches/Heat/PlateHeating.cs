namespace Driveline.Clutches;

/// <summary>Face temperature of a plate heated evenly on one face and insulated on the other.</summary>
/// <remarks>
/// Rise for a unit constant flux. Early, while the heat has not reached the far face, the semi-infinite
/// body u = 2 · √(t / (π·k·ρ·c)); later the plate u = L/k · [Fo + 1/3 - 2/π² · Σ exp(-n²π²Fo)/n²], Fo = a·t/L².
/// They agree to 1e-9 where one takes over from the other (Fo = 0.05). Carslaw and Jaeger, conduction in a slab.
/// </remarks>
internal static class PlateHeating
{
    private const double Early = 0.05;
    private const int Terms = 12;

    /// <summary>u(t): rise of the face per W/m² of constant flux.</summary>
    public static double RisePerFlux(double timeS, ThermalMaterial material, double thicknessM)
    {
        double fo = Fourier(timeS, material, thicknessM);
        return fo < Early
            ? SemiInfiniteRisePerFlux(timeS, material)
            : thicknessM / material.WPerMK * (fo + (1.0 / 3) - (2 / (Math.PI * Math.PI) * Sum(fo, 2)));
    }

    /// <summary>∫ u dt from 0.</summary>
    public static double RisePerFluxIntegral(double timeS, ThermalMaterial material, double thicknessM)
    {
        double fo = Fourier(timeS, material, thicknessM);
        if (fo < Early)
        {
            return SemiInfiniteRisePerFlux(timeS, material) * timeS * 2 / 3;
        }

        double scale = thicknessM / material.WPerMK * (thicknessM * thicknessM / material.DiffusivityM2PerS);
        return scale * ((fo * fo / 2) + (fo / 3) - (1.0 / 45) + (2 / Math.Pow(Math.PI, 4) * Sum(fo, 4)));
    }

    /// <summary>du/dt.</summary>
    public static double RisePerFluxRate(double timeS, ThermalMaterial material, double thicknessM)
    {
        double fo = Fourier(timeS, material, thicknessM);
        return fo < Early
            ? SemiInfiniteRisePerFlux(timeS, material) / (2 * timeS)
            : material.DiffusivityM2PerS / (thicknessM * material.WPerMK) * (1 + (2 * Sum(fo, 0)));
    }

    public static double SemiInfiniteRisePerFlux(double timeS, ThermalMaterial material) =>
        2 * Math.Sqrt(timeS / Math.PI) / material.Effusivity;

    /// <summary>Rise at a depth of a semi-infinite body under a constant flux.</summary>
    public static double SemiInfiniteRise(double fluxWPerM2, double timeS, double depthM, double wPerMK, double diffusivityM2PerS)
    {
        double root = Math.Sqrt(diffusivityM2PerS * timeS);
        double x = depthM / (2 * root);
        return (2 * fluxWPerM2 * root / (wPerMK * Math.Sqrt(Math.PI)) * Math.Exp(-x * x))
            - (fluxWPerM2 * depthM / wPerMK * MathNet.Numerics.SpecialFunctions.Erfc(x));
    }

    /// <summary>Rise at a depth of a semi-infinite body after a pulse of energy per area.</summary>
    public static double PulseRise(double joulesPerM2, double timeS, double depthM, double rhoC, double diffusivityM2PerS) =>
        joulesPerM2 / (rhoC * Math.Sqrt(Math.PI * diffusivityM2PerS * timeS)) * Math.Exp(
            -depthM * depthM / (4 * diffusivityM2PerS * timeS));

    private static double Fourier(double timeS, ThermalMaterial material, double thicknessM) =>
        material.DiffusivityM2PerS * timeS / (thicknessM * thicknessM);

    private static double Sum(double fo, int power)
    {
        double sum = 0;
        for (int n = Terms; n >= 1; n--)
        {
            sum += Math.Exp(-n * n * Math.PI * Math.PI * fo) / Math.Pow(n, power);
        }

        return sum;
    }
}
