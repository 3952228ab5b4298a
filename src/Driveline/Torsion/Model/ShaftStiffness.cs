using Driveline.Provenance;

namespace Driveline.Torsion;

/// <summary>Torsional stiffness of a round shaft, k = G·J/L.</summary>
internal static class ShaftStiffness
{
    public static double NmPerRad<S>(double outerM, double innerM, double lengthM, double shearModulusPa, ref S log)
        where S : struct, ISteps
    {
        double outer2 = outerM * outerM;
        double inner2 = innerM * innerM;
        double polar = Math.PI / 32 * ((outer2 * outer2) - (inner2 * inner2));
        log.Add(TorsionSteps.PolarMoment, polar);
        double stiffness = shearModulusPa * polar / lengthM;
        log.Add(TorsionSteps.ShaftStiffness, stiffness);
        return stiffness;
    }
}
