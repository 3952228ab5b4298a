using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>Thermal materials held here.</summary>
internal static class ThermalMaterials
{
    private static readonly Basis HandbookTable = Basis.Published("Tribology Handbook", "2nd ed.", "Table 7.5");

    private static readonly Basis DataBook =
        Basis.CommonPractice("Heat and Mass Transfer Data Book, pp. 1 and 2, metals at 20 °C, edition not shown")
            .ReadVia("a public copy of the pages");

    /// <summary>Moulded resin-based facing: 0.8 W/(m·K), 2800 kg/m³, 1250 J/(kg·K).</summary>
    public static ThermalMaterial MouldedFacing { get; } = ThermalMaterial.OfSi(
        "resin-based facing, moulded", 0.8, 2800, 1250, HandbookTable);

    /// <summary>Woven or wound resin-based facing: 0.8 W/(m·K), 1600 kg/m³, 1250 J/(kg·K).</summary>
    public static ThermalMaterial WovenFacing { get; } = ThermalMaterial.OfSi(
        "resin-based facing, woven or wound", 0.8, 1600, 1250, HandbookTable);

    /// <summary>Sintered metal facing: 16 W/(m·K), 6000 kg/m³, 420 J/(kg·K).</summary>
    public static ThermalMaterial SinteredFacing { get; } = ThermalMaterial.OfSi("sintered metal facing", 16, 6000, 420, HandbookTable);

    /// <summary>
    /// Organic clutch lining, new: 0.652 W/(m·K), 542 J/(kg·K); density 1449 kg/m³ implied by the printed diffusivity 8.3e-7 m²/s.
    /// </summary>
    public static ThermalMaterial OrganicLiningNew { get; } = ThermalMaterial.OfSi(
        "organic clutch lining, new", 0.652, 1449, 542, Basis.Published("Applied Sciences 9, 4287", "2019", "Table A2"));

    /// <summary>
    /// Organic clutch lining, worn: 0.353 W/(m·K), 614 J/(kg·K); density 1250 kg/m³ implied by the printed diffusivity 4.6e-7 m²/s.
    /// </summary>
    public static ThermalMaterial OrganicLiningWorn { get; } = ThermalMaterial.OfSi(
        "organic clutch lining, worn", 0.353, 1250, 614, Basis.Published("Applied Sciences 9, 4287", "2019", "Table A2"));

    /// <summary>Plain carbon steel: 60.5 W/(m·K), 7854 kg/m³, 434 J/(kg·K).</summary>
    public static ThermalMaterial PlainCarbonSteel { get; } = ThermalMaterial.OfSi(
        "plain carbon steel", 60.5, 7854, 434, DataBook);

    /// <summary>Steel with 0.5 % carbon: 53.6 W/(m·K), 7833 kg/m³, 465 J/(kg·K).</summary>
    public static ThermalMaterial MediumCarbonSteel { get; } = ThermalMaterial.OfSi(
        "steel, 0.5 % carbon", 53.6, 7833, 465, DataBook);

    /// <summary>Grey cast iron: 52 W/(m·K), 7200 kg/m³, 447 J/(kg·K).</summary>
    public static ThermalMaterial GreyCastIron { get; } = ThermalMaterial.OfSi(
        "grey cast iron", 52, 7200, 447, Basis.FromMemory("general handbook values"));

    /// <summary>Cast iron with 4 % carbon: 52 W/(m·K), 7272 kg/m³, 420 J/(kg·K).</summary>
    public static ThermalMaterial HighCarbonCastIron { get; } = ThermalMaterial.OfSi(
        "cast iron, 4 % carbon", 52, 7272, 420, DataBook);

    /// <summary>All of them, facings first.</summary>
    public static IReadOnlyList<ThermalMaterial> All { get; } =
    [
        MouldedFacing, WovenFacing, SinteredFacing, OrganicLiningNew, OrganicLiningWorn,
        PlainCarbonSteel, MediumCarbonSteel, GreyCastIron, HighCarbonCastIron,
    ];
}
