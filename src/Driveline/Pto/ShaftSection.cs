using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>Cross-section of a shaft under torsion.</summary>
/// <remarks>
/// Round sections have an elastic modulus W_p = π (D⁴ − d⁴) / (16 D) and a full plastic modulus W_pl = π (D³ − d³) / 12.
/// A splined stub is taken as a plain bar of its root circle, without a notch factor. Profiled tubes and square bars have
/// no closed formula held here: give the torque at which they are damaged instead.
/// </remarks>
public sealed class ShaftSection
{
    private ShaftSection(SectionShape shape, double outerM, double innerM)
    {
        Shape = shape;
        OuterM = outerM;
        InnerM = innerM;
    }

    /// <summary>Shape of the section.</summary>
    internal SectionShape Shape { get; }

    /// <summary>True for round sections, whose torsion modulus is known.</summary>
    public bool HasModulus => OuterM > 0;

    /// <summary>Outer diameter, or root-circle diameter of a splined stub; null for a profile.</summary>
    public Length? OuterDiameter => HasModulus ? Length.FromMeters(OuterM) : null;

    /// <summary>Inner diameter of a tube, 0 for a bar; null for a profile.</summary>
    public Length? InnerDiameter => HasModulus ? Length.FromMeters(InnerM) : null;

    /// <summary>Elastic torsion modulus W_p, in m³; null for a profile.</summary>
    /// <example>Root circle 29.69 mm: 5.139e-6 m³, so that 300 MPa gives 1542 N·m.</example>
    public Volume? SectionModulus => HasModulus ? Volume.FromCubicMeters(Elastic()) : null;

    /// <summary>Full plastic torsion modulus W_pl, in m³; null for a profile. For a solid bar W_pl = 4/3 W_p.</summary>
    public Volume? PlasticModulus => HasModulus ? Volume.FromCubicMeters(Plastic()) : null;

    internal double OuterM { get; }

    internal double InnerM { get; }

    /// <summary>A solid round bar.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is zero, negative or not finite.</exception>
    public static ShaftSection Solid(Length diameter) =>
        new(SectionShape.SolidRound, Guard.Positive(Si.Meters(diameter), "Shaft diameter", "m", nameof(diameter)), 0);

    /// <summary>A round tube.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is not above 0, or the inner one is not below the outer one.</exception>
    public static ShaftSection Hollow(Length outerDiameter, Length innerDiameter)
    {
        double outer = Guard.Positive(Si.Meters(outerDiameter), "Outer diameter", "m", nameof(outerDiameter));
        double inner = Guard.Positive(Si.Meters(innerDiameter), "Inner diameter", "m", nameof(innerDiameter));
        return inner < outer
            ? new ShaftSection(SectionShape.RoundTube, outer, inner)
            : throw Guard.OutOfRange(
                "Inner diameter", FormattableString.Invariant($"below the outer diameter {outer:G6} m"), inner, "m", nameof(innerDiameter));
    }

    /// <summary>A splined stub, by the diameter of the circle at the bottom of its splines.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is zero, negative or not finite.</exception>
    public static ShaftSection Splined(Length rootDiameter) =>
        new(SectionShape.SplinedRoot, Guard.Positive(Si.Meters(rootDiameter), "Spline root diameter", "m", nameof(rootDiameter)), 0);

    /// <summary>Its outer diameter and section modulus.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{OuterDiameter?.Millimeters ?? double.NaN:0.##} mm, ")
        + FormattableString.Invariant($"{SectionModulus?.CubicMillimeters ?? double.NaN:G5} mm³");

    /// <summary>A square, rectangular, lemon or star profile: it can be named, but its strength must be given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The shape is a round one: use its own factory with its diameters.</exception>
    internal static ShaftSection Profile(SectionShape shape) =>
        shape is SectionShape.Square or SectionShape.Rectangular or SectionShape.LemonTube or SectionShape.StarTube
            ? new ShaftSection(shape, 0, 0)
            : throw new ArgumentOutOfRangeException(
                nameof(shape), "Profile must be Square, Rectangular, LemonTube or StarTube; got " + shape + ".");

    internal static double ModulusM3<S>(double outerM, double innerM, ref S log)
        where S : struct, ISteps
    {
        double outer2 = outerM * outerM, inner2 = innerM * innerM;
        double modulus = Math.PI * ((outer2 * outer2) - (inner2 * inner2)) / (16 * outerM);
        log.Add(PtoSteps.SectionModulus, modulus);
        return modulus;
    }

    internal static double PlasticModulusM3<S>(double outerM, double innerM, ref S log)
        where S : struct, ISteps
    {
        double modulus = Math.PI * ((outerM * outerM * outerM) - (innerM * innerM * innerM)) / 12;
        log.Add(PtoSteps.PlasticModulus, modulus);
        return modulus;
    }

    private double Elastic()
    {
        NoSteps none = default;
        return ModulusM3(OuterM, InnerM, ref none);
    }

    private double Plastic()
    {
        NoSteps none = default;
        return PlasticModulusM3(OuterM, InnerM, ref none);
    }
}
