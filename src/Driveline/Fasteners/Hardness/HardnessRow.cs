using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>One line of a hardness conversion table; NaN where the table has no reading on that scale.</summary>
internal sealed class HardnessRow(double vickers, double brinell, double rockwellB, double rockwellC, double tensile, Basis basis)
{
    public double Tensile { get; } = tensile;

    public Basis Basis { get; } = basis;

    public double On(HardnessScale scale) => scale switch
    {
        HardnessScale.Vickers => vickers,
        HardnessScale.Brinell => brinell,
        HardnessScale.RockwellB => rockwellB,
        HardnessScale.RockwellC => rockwellC,
        _ => double.NaN,
    };
}
