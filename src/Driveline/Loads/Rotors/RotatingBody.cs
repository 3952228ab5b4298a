using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>One body of a rotor by its mass and shape, with its inertia about the rotor's axis.</summary>
/// <remarks>
/// Formulas of rigid bodies: ∫ r² dm over the shape. Shapes are idealised (a blade as a thin bar, a dished pan as an even
/// disc); say how far the real one may lie off with <see cref="WithTolerance"/>, or weigh and swing it and use
/// <see cref="OfGyration"/>. Immutable.
/// </remarks>
internal sealed class RotatingBody
{
    private static readonly Basis Sizes = Basis.Given("mass and sizes as stated");

    private RotatingBody(InertiaBand inertia, InertiaBand shock, bool isSwinging, IReadOnlyList<CalculationLine> lines)
    {
        Inertia = inertia;
        Shock = shock;
        IsSwinging = isSwinging;
        Lines = lines;
    }

    /// <summary>The lines of the calculation, before any tolerance.</summary>
    public IReadOnlyList<CalculationLine> Lines { get; }

    /// <summary>Inertia about the rotor's axis; of a swinging blade when flung out radially.</summary>
    public InertiaBand Inertia { get; }

    /// <summary>Inertia the rotor's axis feels in the first moment of a shock: less for a blade free to swing.</summary>
    /// <remarks>
    /// A thin bar hung on a frictionless pin resists a sudden sideways push at the pin with a quarter of its mass:
    /// J = m / 4 · r_p². Any other body resists with all of its inertia.
    /// </remarks>
    public InertiaBand Shock { get; }

    /// <summary>True for a blade that is free to swing about its pin.</summary>
    public bool IsSwinging { get; }

    /// <summary>A blade free to swing, flung out radially: J = m · (l² / 12 + (r_p + l / 2)²).</summary>
    /// <param name="mass">Mass m; above 0.</param>
    /// <param name="length">Length l from the pin to the tip; above 0.</param>
    /// <param name="pivotRadius">Radius r_p of the pin; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    /// <example>6 kg, 0.45 m, pin at 0.3 m: 1.755 kg·m² flung out, 0.135 kg·m² in a shock.</example>
    public static RotatingBody SwingingBlade(Mass mass, Length length, Length pivotRadius)
    {
        double m = Kilograms(mass), l = Above0(length, "Blade length", nameof(length)), r = Radius(pivotRadius, nameof(pivotRadius));
        var log = StepList.New();
        return new RotatingBody(Of(RotorKernel.BladeKgM2(m, l, r, ref log)), Of(RotorKernel.ShockKgM2(m, r, ref log)), true, log.Lines);
    }

    /// <summary>A blade bolted fast: J = m · (l² / 12 + (r_i + l / 2)²).</summary>
    /// <param name="mass">Mass m; above 0.</param>
    /// <param name="length">Length l; above 0.</param>
    /// <param name="innerRadius">Radius r_i of its inner end; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    public static RotatingBody FixedBlade(Mass mass, Length length, Length innerRadius)
    {
        var log = StepList.New();
        double kgM2 = RotorKernel.BladeKgM2(
            Kilograms(mass), Above0(length, "Blade length", nameof(length)), Radius(innerRadius, nameof(innerRadius)), ref log);
        return Rigid(kgM2, log);
    }

    /// <summary>A straight carrier bar turning about its middle: J = m · L² / 12.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 or not finite.</exception>
    /// <example>20 kg, 0.9 m: 1.35 kg·m².</example>
    public static RotatingBody Bar(Mass mass, Length length)
    {
        var log = StepList.New();
        return Rigid(RotorKernel.BarKgM2(Kilograms(mass), Above0(length, "Bar length", nameof(length)), 0, ref log), log);
    }

    /// <summary>A carrier bar of some width turning about its middle: J = m · (L² + B²) / 12.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 or not finite.</exception>
    public static RotatingBody Bar(Mass mass, Length length, Length width)
    {
        var log = StepList.New();
        double kgM2 = RotorKernel.BarKgM2(
            Kilograms(mass), Above0(length, "Bar length", nameof(length)), Above0(width, "Bar width", nameof(width)), ref log);
        return Rigid(kgM2, log);
    }

    /// <summary>An even disc or flywheel: J = m · R² / 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 or not finite.</exception>
    /// <example>30 kg, radius 0.4 m: 2.4 kg·m².</example>
    public static RotatingBody Disc(Mass mass, Length radius)
    {
        var log = StepList.New();
        return Rigid(RotorKernel.RingKgM2(Kilograms(mass), Above0(radius, "Disc radius", nameof(radius)), 0, ref log), log);
    }

    /// <summary>A round dished pan (stump jumper) taken as an even disc: J = m · R² / 2.</summary>
    /// <remarks>
    /// Dishing and a rim move mass outwards: high end m · R², all of it at the rim. Swing the pan and use
    /// <see cref="OfGyration"/> for a better value.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 or not finite.</exception>
    public static RotatingBody Pan(Mass mass, Length radius)
    {
        var log = StepList.New();
        double m = Kilograms(mass), r = Above0(radius, "Pan radius", nameof(radius));
        double disc = RotorKernel.RingKgM2(m, r, 0, ref log);
        var basis = BandBasis.Of(Basis.CommonPractice("a dished pan taken as an even disc, at most as a rim"));
        InertiaBand inertia = InertiaBand.OfSi(new Band(disc, disc, RotorKernel.RingKgM2(m, r, r, ref log)), basis);
        return new RotatingBody(inertia, inertia, false, log.Lines);
    }

    /// <summary>A ring, rim or tube (drum, roller): J = m · (R² + r²) / 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or the inner radius is above the outer one.</exception>
    /// <example>25 kg, radii 0.3 and 0.25 m: 1.90625 kg·m².</example>
    public static RotatingBody Ring(Mass mass, Length outerRadius, Length innerRadius)
    {
        double outer = Above0(outerRadius, "Outer radius", nameof(outerRadius)), inner = Radius(innerRadius, nameof(innerRadius));
        var log = StepList.New();
        return inner <= outer
            ? Rigid(RotorKernel.RingKgM2(Kilograms(mass), outer, inner, ref log), log)
            : throw Guard.OutOfRange(
                "Inner radius", FormattableString.Invariant($"at most the outer radius {outer:G6} m"), inner, "m", nameof(innerRadius));
    }

    /// <summary>A flail or hammer hung on a pin, taken with all its mass at one radius: J = m · r².</summary>
    /// <param name="mass">Mass; above 0.</param>
    /// <param name="massRadius">Radius of its mass centre when flung out; at least the pivot radius.</param>
    /// <param name="pivotRadius">Radius of its pin; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range or not finite.</exception>
    public static RotatingBody Flail(Mass mass, Length massRadius, Length pivotRadius)
    {
        double m = Kilograms(mass), r = Above0(massRadius, "Radius of the mass centre", nameof(massRadius)),
            pivot = Radius(pivotRadius, nameof(pivotRadius));
        var log = StepList.New();
        return r >= pivot
            ? new RotatingBody(Of(RotorKernel.GyrationKgM2(m, r, ref log)), Of(RotorKernel.ShockKgM2(m, pivot, ref log)), true, log.Lines)
            : throw Guard.OutOfRange("Radius of the mass centre", FormattableString.Invariant($"at least the pivot radius {pivot:G6} m"), r,
                "m", nameof(massRadius));
    }

    /// <summary>A body of measured mass and radius of gyration: J = m · k².</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0 or not finite.</exception>
    public static RotatingBody OfGyration(Mass mass, Length radiusOfGyration)
    {
        var log = StepList.New();
        return Rigid(
            RotorKernel.GyrationKgM2(Kilograms(mass), Above0(radiusOfGyration, "Radius of gyration", nameof(radiusOfGyration)), ref log),
            log);
    }

    /// <summary>A body of stated inertia about the rotor's axis.</summary>
    public static RotatingBody Stated(InertiaBand inertia) => new(Guard.NotNull(inertia, nameof(inertia)), inertia, false, []);

    /// <summary>The same body, whose real inertia may lie off by a share to each side.</summary>
    /// <param name="share">0 up to but not including 1; e.g. 0.15.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is out of its range.</exception>
    public RotatingBody WithTolerance(double share)
    {
        if (!(share >= 0 && share < 1))
        {
            throw Guard.OutOfRange("Tolerance", "from 0 up to but not including 1", share, string.Empty, nameof(share));
        }

        return new RotatingBody(Widen(Inertia, share), Widen(Shock, share), IsSwinging, Lines);
    }

    private static InertiaBand Widen(InertiaBand inertia, double share) => InertiaBand.OfSi(
        new Band(inertia.SiBand.Low * (1 - share), inertia.SiBand.Expected, inertia.SiBand.High * (1 + share)),
        inertia.Basis.With(Basis.Given("tolerance as stated")));

    private static RotatingBody Rigid(double kgM2, StepList log) => new(Of(kgM2), Of(kgM2), false, log.Lines);

    private static InertiaBand Of(double kgM2) => Guard.IsFinite(kgM2)
        ? InertiaBand.OfSi(Band.Exactly(kgM2), BandBasis.Of(Sizes))
        : throw new ArgumentOutOfRangeException(nameof(kgM2), "Mass and sizes must give a finite inertia; got "
            + kgM2.ToString(System.Globalization.CultureInfo.InvariantCulture) + " kg·m².");

    private static double Kilograms(Mass mass) => Guard.Positive(Si.Kilograms(mass), "Mass", "kg", nameof(mass));

    private static double Above0(Length length, string quantity, string parameter) =>
        Guard.Positive(Si.Meters(length), quantity, "m", parameter);

    private static double Radius(Length radius, string parameter) => Guard.NotNegative(Si.Meters(radius), "Radius", "m", parameter);
}
