using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>What is taken of the air around a clutch when nobody has measured it.</summary>
internal static class ClutchAir
{
    /// <summary>Temperature of the air, and of the clutch before work: 30 °C. Hotter air adds degree for degree.</summary>
    public static Sourced Warm { get; } = new(30, "°C", Basis.CommonPractice("a warm working day, 30 °C"));

    /// <summary>Heat transfer to air that only the clutch itself moves: 20 W/(m²·K).</summary>
    /// <remarks>
    /// A disc turning at 540 rpm in still air gives about 0.33 · k · √(ω/ν) = 16 W/(m²·K), radiation at 150 °C some 10 more; a standing one
    /// about 6 and 10. Remembered, and between the two.
    /// </remarks>
    public static Sourced Cooling { get; } = new(20, "W/(m²·K)", Basis.FromMemory("cooling of a clutch in still air, 20 W/(m²·K)"));

    /// <summary><see cref="Warm"/> as a temperature.</summary>
    public static Temperature Temperature => UnitsNet.Temperature.FromDegreesCelsius(Warm.Value);
}
