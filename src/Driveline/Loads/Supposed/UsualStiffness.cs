using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>Torsional stiffness of usual shafts, as wide bands. Nobody has published a measured one.</summary>
/// <remarks>
/// A PTO shaft by the series of its joints: two joints of 15 to 150 kN·m/rad each with yokes and splines, and two profile tubes of 0.7
/// to 1.3 m between the joints with a third of overlap, k = G · I_t / L, in series. Expected is the geometric mean of the ends. Ends and
/// rows stand in shared/reference/pto/usual-lines.csv.
/// </remarks>
internal static class UsualStiffness
{
    private static readonly Basis Tubes = Basis.FromMemory(
        "stiffness of PTO shafts by joint series, from remembered sizes of tubes and assumed joints; none measured");

    private static readonly Basis Couplings = Basis.FromMemory("stiffness of a coupling on splines, taken as that of a joint");

    private static readonly Basis Solid = Basis.FromMemory("stiffness of steel shafts of 30 to 60 mm and 0.2 to 0.6 m length");

    /// <summary>A PTO shaft with two joints, tubes and splines.</summary>
    /// <param name="joint">Series of its joints; null when not known: the whole range of them all.</param>
    /// <example>Not known: 1500 to 32 000 N·m/rad, expected 6930.</example>
    public static StiffnessBand OfPtoShaft(JointSeries? joint) => joint?.Number switch
    {
        1 => Between(1500, 4500, Tubes),
        2 => Between(2000, 6800, Tubes),
        3 => Between(2000, 12500, Tubes),
        4 => Between(3200, 12500, Tubes),
        5 or 6 => Between(4400, 25000, Tubes),
        7 => Between(4400, 32000, Tubes),
        8 => Between(5600, 32000, Tubes),
        _ => Between(1500, 32000, Tubes),
    };

    /// <summary>A short solid shaft behind a gearbox: 10 500 N·m/rad (30 mm, 0.6 m) to 500 000 N·m/rad (60 mm, 0.2 m).</summary>
    public static StiffnessBand OfInnerShaft() => Between(10500, 500000, Solid);

    /// <summary>An overrun clutch on its splines, 15 to 150 kN·m/rad, as a joint with its yoke.</summary>
    public static StiffnessBand OfOverrunClutch() => Between(15000, 150000, Couplings);

    private static StiffnessBand Between(double low, double high, Basis basis) =>
        StiffnessBand.OfSi(new Band(low, Math.Sqrt(low * high), high), BandBasis.Of(basis));
}
