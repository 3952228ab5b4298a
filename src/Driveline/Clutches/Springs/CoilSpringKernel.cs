using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>Arithmetic of helical compression springs of round wire.</summary>
internal static class CoilSpringKernel
{
    public static double ActiveCoils(double totalCoils, CoilEnds ends) => ends switch
    {
        CoilEnds.Plain => totalCoils,
        CoilEnds.PlainGround => totalCoils - 1,
        CoilEnds.Squared or CoilEnds.SquaredGround or CoilEnds.NotKnown => totalCoils - 2,
        _ => throw new ArgumentOutOfRangeException(nameof(ends), ends, "No rule is held for those spring ends."),
    };

    public static double SolidLengthM(double wireM, double totalCoils, CoilEnds ends) => ends switch
    {
        CoilEnds.PlainGround or CoilEnds.SquaredGround => wireM * totalCoils,
        CoilEnds.Plain or CoilEnds.Squared or CoilEnds.NotKnown => wireM * (totalCoils + 1),
        _ => throw new ArgumentOutOfRangeException(nameof(ends), ends, "No rule is held for those spring ends."),
    };

    public static double RateNPerM<S>(double modulusPa, double wireM, double meanDiameterM, double activeCoils, ref S log)
        where S : struct, ISteps
    {
        double d2 = wireM * wireM;
        double rate = modulusPa * d2 * d2 / (8 * meanDiameterM * meanDiameterM * meanDiameterM * activeCoils);
        log.Add(ClutchSteps.CoilRate, rate);
        return rate;
    }

    /// <summary>Wahl's factor: curvature and direct shear.</summary>
    public static double Wahl(double index) => (((4 * index) - 1) / ((4 * index) - 4)) + (0.615 / index);

    /// <summary>Bergsträsser's factor: nearly the same by a shorter formula.</summary>
    public static double Bergstrasser(double index) => ((4 * index) + 2) / ((4 * index) - 3);

    /// <summary>Direct shear only, for a static load.</summary>
    public static double DirectShear(double index) => 1 + (0.5 / index);

    public static double ShearStressPa<S>(double forceN, double wireM, double meanDiameterM, ref S log)
        where S : struct, ISteps
    {
        double k = Wahl(meanDiameterM / wireM);
        log.Add(ClutchSteps.Wahl, k);
        double tau = k * 8 * forceN * meanDiameterM / (Math.PI * wireM * wireM * wireM);
        log.Add(ClutchSteps.CoilStress, tau);
        return tau;
    }
}
