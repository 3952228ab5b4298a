using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.ShearBolts;

/// <summary>Diameter of a plain pin that parts at a torque: the break torque solved for the pin.</summary>
internal static class ShearPinSize
{
    /// <summary>Diameter of a plain pin, d = √(4 T / (π m τ r)).</summary>
    /// <param name="torque">Torque T at which it shall part; above 0.</param>
    /// <param name="planes">Shear planes m that share the load; 1 or more.</param>
    /// <param name="radius">Radius r of the planes; above 0.</param>
    /// <param name="shearStrength">Shear strength τ; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <example>60 hp at 540 min⁻¹ (791.2 N·m), 2 planes at the surface of a 1.25 in shaft, 26 ksi: 0.5238 in.</example>
    public static Length Diameter(Torque torque, int planes, Length radius, Pressure shearStrength)
    {
        NoSteps none = default;
        return Length.FromMeters(Meters(
            Guard.Positive(Si.NewtonMeters(torque), "Break torque", "N·m", nameof(torque)),
            Guard.Within(planes, 1, 1000, "Shear planes", nameof(planes)),
            Guard.Positive(Si.Meters(radius), "Radius of the shear planes", "m", nameof(radius)),
            Guard.Positive(Si.Pascals(shearStrength), "Shear strength", "Pa", nameof(shearStrength)),
            ref none));
    }

    internal static double Meters<S>(double torqueNm, double planes, double radiusM, double tauPa, ref S log)
        where S : struct, ISteps
    {
        double meters = Math.Sqrt(4 * torqueNm / (Math.PI * planes * tauPa * radiusM));
        log.Add(ShearBoltSteps.Diameter, meters);
        return meters;
    }
}
