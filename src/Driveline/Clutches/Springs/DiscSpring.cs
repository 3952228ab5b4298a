using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>A conical disc spring of steel (E = 206 GPa, ν = 0.3), after EN 16984 (formerly DIN 2092).</summary>
/// <remarks>
/// F = 4E/(1-ν²) · t⁴/(K1·De²) · K4² · (s/t) · [K4² · (h0/t - s/t) · (h0/t - s/(2t)) + 1], h0 = l0 - t.
/// Springs thicker than 6 mm have contact flats and a reduced thickness t', which then stands for t.
/// Tolerance of the force (from memory of DIN 2093): t &lt; 1.25 mm +25/-7.5 %, to 3 mm +15/-7.5 %, to 6 mm +10/-5 %, above ±5 %.
/// </remarks>
public sealed class DiscSpring
{
    private const double SteelModulusPa = 206e9;
    private const double SteelPoisson = 0.3;

    private static readonly Basis Formula = Basis.CommonPractice("EN 16984 disc-spring formula, read in secondary copies");
    private static readonly Basis ToleranceBasis =
        Basis.CommonPractice("DIN 2093 (now EN 16983), tolerance of the disc-spring force, edition not stated")
            .ReadVia("pages of three spring makers that agree");

    private DiscSpring(double outerM, double innerM, double thicknessM, double reducedM, double freeHeightM)
    {
        OuterM = outerM;
        InnerM = innerM;
        ThicknessM = thicknessM;
        ReducedM = reducedM;
        FreeHeightM = freeHeightM;
        Shape = new DiscSpringShape(outerM, innerM, thicknessM, reducedM, freeHeightM, SteelModulusPa, SteelPoisson);
    }

    /// <summary>Outer diameter De.</summary>
    public Length OuterDiameter => Length.FromMeters(OuterM);

    /// <summary>Inner diameter Di.</summary>
    public Length InnerDiameter => Length.FromMeters(InnerM);

    /// <summary>Nominal thickness t.</summary>
    public Length Thickness => Length.FromMeters(ThicknessM);

    /// <summary>Reduced thickness t'; equal to t without contact flats.</summary>
    public Length ReducedThickness => Length.FromMeters(ReducedM);

    /// <summary>Free height l0 of one disc.</summary>
    public Length FreeHeight => Length.FromMeters(FreeHeightM);

    /// <summary>Deflection at which the disc is flat: l0 less its working thickness.</summary>
    public Length TravelToFlat => Length.FromMeters(Shape.ConeM);

    /// <summary>True when the force falls again before the disc is flat (h0/t above √2 without flats).</summary>
    public bool ForceFallsBeforeFlat => DiscSpringKernel.PeakM(Shape) < Shape.ConeM;

    internal double OuterM { get; }

    internal double InnerM { get; }

    internal double ThicknessM { get; }

    internal double ReducedM { get; }

    internal double FreeHeightM { get; }

    internal DiscSpringShape Shape { get; }

    internal Band ForceTolerance => ThicknessM < 1.25e-3 ? new Band(0.925, 1, 1.25)
        : ThicknessM <= 3e-3 ? new Band(0.925, 1, 1.15)
        : ThicknessM <= 6e-3 ? new Band(0.95, 1, 1.10)
        : new Band(0.95, 1, 1.05);

    /// <summary>A disc spring without contact flats.</summary>
    /// <param name="outerDiameter">Outer diameter De; above Di.</param>
    /// <param name="innerDiameter">Inner diameter Di; above 0.</param>
    /// <param name="thickness">Thickness t; above 0 and below (De - Di)/2.</param>
    /// <param name="freeHeight">Free height l0; above t, at most 4 t.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is out of its range.</exception>
    public static DiscSpring Of(Length outerDiameter, Length innerDiameter, Length thickness, Length freeHeight)
    {
        double inner = Guard.Positive(Si.Meters(innerDiameter), "Inner diameter", "m", nameof(innerDiameter));
        double outer = Si.Meters(outerDiameter);
        if (!(outer > inner && Guard.IsFinite(outer)))
        {
            throw Guard.OutOfRange("Outer diameter", FormattableString.Invariant($"above the inner diameter of {inner:G6} m"), outer, "m",
                nameof(outerDiameter));
        }

        double t = Guard.Positive(Si.Meters(thickness), "Thickness", "m", nameof(thickness));
        Guard.Within(t, 0, (outer - inner) / 2, "Thickness", "m", nameof(thickness));
        double height = Si.Meters(freeHeight);
        if (!(height > t && height <= 4 * t))
        {
            throw Guard.OutOfRange(
                "Free height", FormattableString.Invariant($"above {t:G6} m and at most {4 * t:G6} m"), height, "m", nameof(freeHeight));
        }

        return new DiscSpring(outer, inner, t, t, height);
    }

    /// <summary>The same spring with contact flats and a reduced thickness t'.</summary>
    /// <param name="reduced">Reduced thickness t'; from 0.9 t to t.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of that range.</exception>
    public DiscSpring WithReducedThickness(Length reduced) => new(
        OuterM,
        InnerM,
        ThicknessM,
        Guard.Within(Si.Meters(reduced), 0.9 * ThicknessM, ThicknessM, "Reduced thickness", "m", nameof(reduced)),
        FreeHeightM);

    /// <summary>Force at a deflection, with the tolerance of the force.</summary>
    /// <param name="deflection">Deflection s; from 0 to flat.</param>
    /// <exception cref="ArgumentOutOfRangeException">Beyond flat or negative.</exception>
    public ForceBand Force(Length deflection)
    {
        var log = default(NoSteps);
        double force = DiscSpringKernel.ForceN(Shape, Deflection(deflection), ref log);
        return ForceBand.OfSi(ForceTolerance.Times(force), ForceBasis);
    }

    /// <summary>The stresses at a deflection.</summary>
    /// <param name="deflection">Deflection s; from 0 to flat.</param>
    /// <exception cref="ArgumentOutOfRangeException">Beyond flat or negative.</exception>
    internal DiscSpringStresses Stresses(Length deflection)
    {
        double s = Deflection(deflection);
        return new DiscSpringStresses(
            DiscSpringKernel.SigmaOmPa(Shape, s),
            DiscSpringKernel.SigmaIPa(Shape, s),
            DiscSpringKernel.SigmaIiPa(Shape, s),
            DiscSpringKernel.SigmaIiiPa(Shape, s),
            DiscSpringKernel.SigmaIvPa(Shape, s));
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant(
        $"disc spring {OuterM * 1000:G4} × {InnerM * 1000:G4} × {ThicknessM * 1000:G4} mm, {FreeHeightM * 1000:G4} mm high");

    internal static BandBasis ForceBasis => new(
        Basis.Weakest(Formula, ToleranceBasis), Formula, Basis.Weakest(Formula, ToleranceBasis), BandEnd.Limit, BandEnd.Limit);

    private double Deflection(Length deflection) =>
        Guard.Within(Si.Meters(deflection), 0, Shape.ConeM, "Deflection", "m", nameof(deflection));
}
