using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>Thermal properties of a plate or facing.</summary>
internal sealed class ThermalMaterial
{
    private ThermalMaterial(string name, double conductivity, double density, double heatCapacity, Basis basis)
    {
        Name = name;
        WPerMK = conductivity;
        KgPerM3 = density;
        JPerKgK = heatCapacity;
        Basis = basis;
    }

    /// <summary>Name, e.g. "grey cast iron".</summary>
    public string Name { get; }

    /// <summary>Where the properties come from.</summary>
    public Basis Basis { get; }

    /// <summary>Thermal conductivity k.</summary>
    public ThermalConductivity Conductivity => ThermalConductivity.FromWattsPerMeterKelvin(WPerMK);

    /// <summary>Density ρ.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(KgPerM3);

    /// <summary>Specific heat c.</summary>
    public SpecificEntropy HeatCapacity => SpecificEntropy.FromJoulesPerKilogramKelvin(JPerKgK);

    /// <summary>Thermal effusivity √(k · ρ · c), in W·s^½/(m²·K): decides how two faces share heat.</summary>
    public double Effusivity => Math.Sqrt(WPerMK * KgPerM3 * JPerKgK);

    internal double WPerMK { get; }

    internal double KgPerM3 { get; }

    internal double JPerKgK { get; }

    /// <summary>Thermal diffusivity k / (ρ · c), in m²/s.</summary>
    internal double DiffusivityM2PerS => WPerMK / (KgPerM3 * JPerKgK);

    /// <summary>A material of stated properties; each above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A property is zero, negative or not finite.</exception>
    public static ThermalMaterial Of(
        string name, ThermalConductivity conductivity, Density density, SpecificEntropy heatCapacity, Basis basis) => new(
        Guard.NotBlank(name, "Material name", nameof(name)),
        Guard.Positive(Si.WattsPerMeterKelvin(conductivity), "Thermal conductivity", "W/(m·K)", nameof(conductivity)),
        Guard.Positive(Si.KilogramsPerCubicMeter(density), "Density", "kg/m³", nameof(density)),
        Guard.Positive(Si.JoulesPerKilogramKelvin(heatCapacity), "Specific heat", "J/(kg·K)", nameof(heatCapacity)),
        Guard.NotNull(basis, nameof(basis)));

    /// <inheritdoc/>
    public override string ToString() => Name;

    internal static ThermalMaterial OfSi(string name, double wPerMK, double kgPerM3, double jPerKgK, Basis basis) =>
        new(name, wPerMK, kgPerM3, jPerKgK, basis);
}
