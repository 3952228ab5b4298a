using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Highest PTO speed one tractor shows for a setting: stored energy grows with the square of it.</summary>
internal sealed class PtoOverSpeed
{
    private readonly double ratedPerMinute;
    private readonly double highestPerMinute;

    private PtoOverSpeed(double ratedPerMinute, bool isEconomy, double highestPerMinute)
    {
        this.ratedPerMinute = ratedPerMinute;
        this.highestPerMinute = highestPerMinute;
        IsEconomy = isEconomy;
    }

    /// <summary>The settings held: 540, 540 economy and 1000 min⁻¹ of one row-crop tractor.</summary>
    public static IReadOnlyList<PtoOverSpeed> All { get; } = Array.AsReadOnly<PtoOverSpeed>(
        [new(540, false, 630), new(540, true, 687), new(1000, false, 1170)]);

    /// <summary>Where they come from.</summary>
    public static Basis Basis { get; } = Basis.Published("operator manual, row-crop tractor", "undated", "PTO speeds");

    /// <summary>Rated speed of the setting.</summary>
    public RotationalSpeed Rated => RotationalSpeed.FromRevolutionsPerMinute(ratedPerMinute);

    /// <summary>Highest speed shown.</summary>
    public RotationalSpeed Highest => RotationalSpeed.FromRevolutionsPerMinute(highestPerMinute);

    /// <summary>True for an economy setting.</summary>
    public bool IsEconomy { get; }

    /// <summary>Highest over rated speed.</summary>
    /// <example>540 economy: 1.272.</example>
    public double Ratio => highestPerMinute / ratedPerMinute;
}
