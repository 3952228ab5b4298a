namespace Driveline.Clutches;

/// <summary>What the disc-spring arithmetic needs, in SI.</summary>
internal readonly struct DiscSpringShape
{
    public DiscSpringShape(
        double outerM, double innerM, double thicknessM, double reducedM, double freeHeightM, double modulusPa, double poisson)
    {
        Ratio = outerM / innerM;
        ThicknessM = reducedM;
        ConeM = freeHeightM - reducedM;
        K4 = DiscSpringKernel.K4(thicknessM, reducedM, freeHeightM);
        StiffnessPaPerM2 = DiscSpringKernel.Stiffness(modulusPa, poisson, outerM, innerM);
    }

    /// <summary>Outer over inner diameter.</summary>
    public double Ratio { get; }

    /// <summary>Working thickness: reduced when there are contact flats.</summary>
    public double ThicknessM { get; }

    /// <summary>Free cone height above the working thickness: the travel to flat.</summary>
    public double ConeM { get; }

    public double K4 { get; }

    public double StiffnessPaPerM2 { get; }
}
