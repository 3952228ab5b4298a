using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>Speed of a point on the rim of something that turns: the surface of a shaft, the tip of a blade.</summary>
/// <remarks>v = ω · d / 2, with ω angular speed [rad/s], d diameter [m].</remarks>
internal static class RimSpeed
{
    /// <summary>Speed at the rim, v = ω · d / 2, in m/s.</summary>
    /// <param name="speed">Speed of rotation; 0 or more.</param>
    /// <param name="diameter">Diameter of the circle; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative or not finite.</exception>
    /// <example>60 in cutting circle at 793.8 min⁻¹ (540 behind a ratio of 1.47): 63.34 m/s.</example>
    public static Speed Of(RotationalSpeed speed, Length diameter) => Speed.FromMetersPerSecond(
        Guard.NotNegative(Si.RadiansPerSecond(speed), "Speed", "rad/s", nameof(speed))
        * Guard.NotNegative(Si.Meters(diameter), "Diameter", "m", nameof(diameter)) / 2);

    /// <summary>Diameter of the circle whose rim has a speed, d = 2 v / ω, in m.</summary>
    /// <param name="rim">Speed at the rim; 0 or more.</param>
    /// <param name="speed">Speed of rotation; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The rim speed is negative, the rotation is zero or negative, or a value is not finite.
    /// </exception>
    /// <example>7.1 ft/s at 540 min⁻¹: 76.5 mm.</example>
    public static Length Diameter(Speed rim, RotationalSpeed speed) => Length.FromMeters(
        2 * Guard.NotNegative(Si.MetersPerSecond(rim), "Rim speed", "m/s", nameof(rim))
        / Guard.Positive(Si.RadiansPerSecond(speed), "Speed", "rad/s", nameof(speed)));
}
