using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Torsional stiffness of the line between two places, shafts in series, as the PTO feels it.</summary>
/// <remarks>
/// k = G · I_p / L with I_p = π (D⁴ − d⁴) / 32; in series 1/k = Σ 1/k; behind a speed ratio k_pto = k · i². Joints, splines,
/// keys and rubber couplings that are left out make the real line softer, so peaks computed with it err high. Immutable.
/// </remarks>
internal sealed class LineStiffness
{
    private static readonly Basis SteelPractice = Basis.CommonPractice("shear modulus of steel, 77.2 to 82 GPa in textbook examples");

    private readonly Band nmPerRad;
    private readonly BandBasis basis;

    private LineStiffness(Band nmPerRad, BandBasis basis)
    {
        this.nmPerRad = nmPerRad;
        this.basis = basis;
    }

    /// <summary>Shear modulus of steel: 77.2 to 82 GPa, expected 79 GPa.</summary>
    public static StressBand SteelShearModulus { get; } =
        StressBand.Between(Pressure.FromGigapascals(77.2), Pressure.FromGigapascals(79), Pressure.FromGigapascals(82), SteelPractice);

    /// <summary>The stiffness.</summary>
    public StiffnessBand Stiffness => StiffnessBand.OfSi(nmPerRad, basis);

    /// <summary>A steel shaft of round section.</summary>
    /// <exception cref="ArgumentException">The section is a profile: state its stiffness instead.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is zero, negative or not finite.</exception>
    public static LineStiffness Of(ShaftSection section, Length length) => Of(section, length, SteelShearModulus);

    /// <summary>A shaft of round section and stated shear modulus.</summary>
    /// <param name="section">A solid, hollow or splined section.</param>
    /// <param name="length">Length that twists; above 0.</param>
    /// <param name="shearModulus">Shear modulus G.</param>
    /// <exception cref="ArgumentException">The section is a profile: state its stiffness instead.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is zero, negative or not finite.</exception>
    /// <example>Solid 20 mm, 250 mm, 79 GPa exactly: 4964 N·m/rad.</example>
    public static LineStiffness Of(ShaftSection section, Length length, StressBand shearModulus)
    {
        Guard.NotNull(section, nameof(section));
        Guard.NotNull(shearModulus, nameof(shearModulus));
        double meters = Guard.Positive(Si.Meters(length), "Shaft length", "m", nameof(length));
        if (!section.HasModulus)
        {
            throw new ArgumentException(
                "Section must be a solid, hollow or splined round one; got " + section.Shape
                    + ". State the stiffness of that profile instead.", nameof(section));
        }

        NoSteps none = default;
        double perPascal = ShaftStiffness.NmPerRad(section.OuterM, section.InnerM, meters, 1, ref none);
        return new LineStiffness(shearModulus.SiBand.Times(perPascal), shearModulus.Basis.With(Basis.Given("shaft sizes as stated")));
    }

    /// <summary>A stated or measured stiffness.</summary>
    public static LineStiffness Stated(StiffnessBand stiffness) =>
        new(Guard.NotNull(stiffness, nameof(stiffness)).SiBand, stiffness.Basis);

    /// <summary>This stiffness and another one in series, both at the same speed.</summary>
    /// <example>4000 and 6000 N·m/rad: 2400 N·m/rad.</example>
    public LineStiffness InSeriesWith(LineStiffness other)
    {
        Guard.NotNull(other, nameof(other));
        NoSteps none = default;
        var band = new Band(
            SeriesNmPerRad(nmPerRad.Low, other.nmPerRad.Low, ref none),
            SeriesNmPerRad(nmPerRad.Expected, other.nmPerRad.Expected, ref none),
            SeriesNmPerRad(nmPerRad.High, other.nmPerRad.High, ref none));
        return new LineStiffness(band, BandBasis.Combine(basis, other.basis));
    }

    /// <summary>The stiffness of a part behind a speed ratio, as the PTO feels it: k_pto = k · i².</summary>
    /// <param name="ratio">Speed of the part over PTO speed; 0.01 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is out of its range.</exception>
    public LineStiffness AtPto(double ratio)
    {
        double i = Guard.Within(ratio, 0.01, 100, "Speed ratio", string.Empty, nameof(ratio));
        return new LineStiffness(nmPerRad.Times(i * i), basis.With(Basis.Given("speed ratio as stated")));
    }

    internal static double SeriesNmPerRad<S>(double first, double second, ref S log)
        where S : struct, ISteps
    {
        double k = first == 0 || second == 0 ? 0
            : double.IsPositiveInfinity(first) ? second
            : double.IsPositiveInfinity(second) ? first
            : 1 / ((1 / first) + (1 / second));
        log.Add(LoadsSteps.SeriesStiffness, k);
        return k;
    }
}
