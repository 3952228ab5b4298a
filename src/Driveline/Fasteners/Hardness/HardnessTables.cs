using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>The hardness conversion tables held, and which of them is preferred for a scale.</summary>
internal static class HardnessTables
{
    // Public tables differ by about 5 % between themselves.
    private const double LeastSpread = 0.05;

    // The tables differ by 1 ksi at HRC 44.5: a step down there would make harder steel weaker.
    private static readonly HardnessTable RockwellC =
        HardnessTableData.SteelByBrinell.ContinuedBy(HardnessTableData.A370RockwellC, HardnessScale.RockwellC);

    /// <summary>Every table held.</summary>
    public static IReadOnlyList<HardnessTable> All { get; } =
    [
        HardnessTableData.Din50150,
        HardnessTableData.SteelByBrinell,
        HardnessTableData.A370RockwellB,
        HardnessTableData.A370RockwellC,
        HardnessTableData.OtherBrinell,
    ];

    /// <summary>Tensile strength by the preferred table of the scale: DIN 50150 for HV and HBW, ASTM A370 for HRB, the Brinell-based
    /// steel table for HRC where it reaches (HRC 20.5 to 44.5), else straight from its last line to the nearest line of ASTM A370 and
    /// on.</summary>
    internal static bool TryPreferred(Hardness hardness, out double pascals, [NotNullWhen(true)] out Basis? basis)
    {
        if (Preferred(hardness.Scale).TryTensile(hardness, out Sourced? tensile))
        {
            pascals = Si.Pascals(tensile);
            basis = tensile.Basis;
            return true;
        }

        pascals = double.NaN;
        basis = null;
        return false;
    }

    internal static bool TryTensile(Hardness hardness, [NotNullWhen(true)] out StressBand? tensile)
    {
        tensile = null;
        if (!TryPreferred(hardness, out double expected, out Basis? basis))
        {
            return false;
        }

        double low = expected * (1 - LeastSpread);
        double high = expected * (1 + LeastSpread);
        Basis ends = Basis.Weakest(basis, Basis.CommonPractice("public conversion tables differ by about 5 %"));
        foreach (HardnessTable table in All)
        {
            if (table.TryTensile(hardness, out Sourced? other))
            {
                low = Math.Min(low, Si.Pascals(other));
                high = Math.Max(high, Si.Pascals(other));
            }
        }

        tensile = StressBand.OfSi(
            new Band(low, expected, high),
            new BandBasis(ends, basis, ends, BandEnd.Interval95, BandEnd.Interval95));
        return true;
    }

    internal static ArgumentOutOfRangeException OffTheTables(Hardness hardness, string parameter) =>
        new(parameter, OffTheTablesText(hardness));

    internal static string OffTheTablesText(Hardness hardness)
    {
        _ = Preferred(hardness.Scale).TryRange(hardness.Scale, out double low, out double high);
        string symbol = Hardness.Symbol(hardness.Scale);
        return string.Format(CultureInfo.InvariantCulture, "The conversion tables held reach from {0} {1:0.##} to {0} {2:0.##}; got {3}.",
            symbol, low, high, hardness);
    }

    private static HardnessTable Preferred(HardnessScale scale) => scale switch
    {
        HardnessScale.RockwellB => HardnessTableData.A370RockwellB,
        HardnessScale.RockwellC => RockwellC,
        _ => HardnessTableData.Din50150,
    };
}
