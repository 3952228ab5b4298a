using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Pto;

/// <summary>Torque a shaft section carries before it is permanently twisted.</summary>
/// <remarks>
/// τ_y = σ_y / √3 (distortion energy). Low: the surface yields first, T_y = W_p τ_y at the lowest yield strength.
/// Expected: first yield at the expected yield strength. High: the whole section yields, T_pl = W_pl τ_y at the highest
/// yield strength; 4/3 of first yield for a solid bar, no hardening. Splines, keyways and cross-holes notch the section:
/// they lower the fatigue strength, which is not judged here.
/// </remarks>
public sealed class TorsionCapacity
{
    private static readonly Basis DistortionEnergy =
        Basis.Published("NASA TM-106943", "1995", "p. 16, shear yield 0.577 of tensile yield")
            .ReadVia("a public source file that quotes the page");

    private readonly StressBand yield;

    private TorsionCapacity(ShaftSection section, StressBand yield)
    {
        Section = section;
        this.yield = yield;
        NoSteps none = default;
        Torque = TorqueBand.OfSi(Predict(ref none), yield.Basis.With(DistortionEnergy));
    }

    /// <summary>The section.</summary>
    public ShaftSection Section { get; }

    /// <summary>Torque band from first yield to full plastic torque.</summary>
    public TorqueBand Torque { get; }

    /// <summary>Torsion capacity of a round section of a material with the given yield strength.</summary>
    /// <param name="section">A solid, hollow or splined section.</param>
    /// <param name="yield">Tensile yield strength σ_y.</param>
    /// <exception cref="ArgumentException">The section is a profile whose strength must be given as a damage torque.</exception>
    /// <example>Solid 30 mm, σ_y 310 MPa exactly: 948.8 N·m at first yield, 1265 N·m fully plastic.</example>
    public static TorsionCapacity Of(ShaftSection section, StressBand yield)
    {
        Guard.NotNull(section, nameof(section));
        Guard.NotNull(yield, nameof(yield));
        return section.HasModulus
            ? new TorsionCapacity(section, yield)
            : throw new ArgumentException(
                "Section must be a solid, hollow or splined round one; got " + section.Shape
                + ". No torsion formula is held for that profile: give the torque at which it is damaged instead.",
                nameof(section));
    }

    /// <summary>Torsion capacity of a round section of a steel.</summary>
    /// <exception cref="ArgumentException">The section is a profile whose strength must be given as a damage torque.</exception>
    public static TorsionCapacity Of(ShaftSection section, SteelGrade steel) =>
        Of(section, Guard.NotNull(steel, nameof(steel)).Yield);

    /// <summary>The lines of the calculation: the low end, then the expected value, then the high end.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        var steps = StepList.New();
        Predict(ref steps);
        return steps.Lines;
    }

    /// <summary>The torque that the section takes, with its unit.</summary>
    public override string ToString() => Torque.ToString();

    internal static double FirstYieldNm<S>(double outerM, double innerM, double yieldPa, ref S log)
        where S : struct, ISteps
    {
        double nm = ShaftSection.ModulusM3(outerM, innerM, ref log) * ShearYieldPa(yieldPa, ref log);
        log.Add(PtoSteps.FirstYield, nm);
        return nm;
    }

    internal static double FullPlasticNm<S>(double outerM, double innerM, double yieldPa, ref S log)
        where S : struct, ISteps
    {
        double nm = ShaftSection.PlasticModulusM3(outerM, innerM, ref log) * ShearYieldPa(yieldPa, ref log);
        log.Add(PtoSteps.FullPlastic, nm);
        return nm;
    }

    internal static double ShearYieldPa<S>(double yieldPa, ref S log)
        where S : struct, ISteps
    {
        double tau = yieldPa / Math.Sqrt(3);
        log.Add(PtoSteps.ShearYield, tau);
        return tau;
    }

    private Band Predict<S>(ref S log)
        where S : struct, ISteps
    {
        Band stress = yield.SiBand;
        log.Begin(SheetEnd.Lowest);
        double low = FirstYieldNm(Section.OuterM, Section.InnerM, stress.Low, ref log);
        log.Begin(SheetEnd.MostLikely);
        double expected = stress.HasExpected
            ? FirstYieldNm(Section.OuterM, Section.InnerM, stress.Expected, ref log)
            : double.PositiveInfinity;
        log.Begin(SheetEnd.Highest);
        double high = stress.IsBounded
            ? FullPlasticNm(Section.OuterM, Section.InnerM, stress.High, ref log)
            : double.PositiveInfinity;
        return new Band(low, expected, high);
    }
}
