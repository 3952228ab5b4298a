using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>Where the heat of a slip goes: faces, the metal plate behind each face, the facing, and the air.</summary>
/// <remarks>
/// The plate and facing share the heat as their effusivities (equal face temperature): share of the plate e1/(e1 + e2).
/// A plate rubbed on both sides counts with half its thickness for each face. The far side of that thickness is taken as insulated.
/// </remarks>
internal sealed class HeatPath
{
    private HeatPath(double areaM2, int faces, ThermalMaterial plate, double thicknessM, ThermalMaterial facing, double lossWPerK,
        Basis? cooling)
    {
        AreaM2 = areaM2;
        Faces = faces;
        Plate = plate;
        ThicknessM = thicknessM;
        Facing = facing;
        LossWPerK = lossWPerK;
        Basis = Basis.Weakest(Basis.Weakest(plate.Basis, facing.Basis), cooling ?? plate.Basis);
    }

    /// <summary>Face pairs that share the heat.</summary>
    public int Faces { get; }

    /// <summary>Metal of the plates.</summary>
    public ThermalMaterial Plate { get; }

    /// <summary>Facing material.</summary>
    public ThermalMaterial Facing { get; }

    /// <summary>The weakest basis of its materials and its cooling.</summary>
    public Basis Basis { get; }

    /// <summary>Area of one face.</summary>
    public Area FaceArea => Area.FromSquareMeters(AreaM2);

    /// <summary>Plate thickness that belongs to one face.</summary>
    public Length ThicknessPerFace => Length.FromMeters(ThicknessM);

    /// <summary>Share of the heat that goes into the plates.</summary>
    public double PlateShare => Plate.Effusivity / (Plate.Effusivity + Facing.Effusivity);

    internal double AreaM2 { get; }

    internal double ThicknessM { get; }

    /// <summary>Heat lost to the air per kelvin; NaN when not known.</summary>
    internal double LossWPerK { get; }

    /// <summary>Heat capacity of the plates together, J/K.</summary>
    internal double CapacityJPerK => Faces * AreaM2 * ThicknessM * Plate.KgPerM3 * Plate.JPerKgK;

    /// <summary>The heat path of a clutch whose facing has known thermal properties.</summary>
    /// <param name="clutch">The clutch.</param>
    /// <param name="plate">Metal of the plates.</param>
    /// <param name="thicknessPerFace">Plate thickness that belongs to one face: half of a plate rubbed on both sides; above 0.</param>
    /// <exception cref="ArgumentException">
    /// The facing's thermal properties are not known; give them with <see cref="Facing.WithThermal"/>.
    /// </exception>
    public static HeatPath Of(DiscClutch clutch, ThermalMaterial plate, Length thicknessPerFace)
    {
        Guard.NotNull(clutch, nameof(clutch));
        ThermalMaterial facing = clutch.Facing.Thermal
            ?? throw new ArgumentException(
                "The thermal properties of facing \"" + clutch.Facing.Name + "\" must be known; none are held.", nameof(clutch));
        return Of(clutch.FaceArea, clutch.Faces, plate, thicknessPerFace, facing);
    }

    /// <summary>A heat path from its parts.</summary>
    /// <param name="faceArea">Area of one face; above 0.</param>
    /// <param name="faces">Face pairs; 1 to 40.</param>
    /// <param name="plate">Metal of the plates.</param>
    /// <param name="thicknessPerFace">Plate thickness that belongs to one face; above 0.</param>
    /// <param name="facing">Facing material.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
    public static HeatPath Of(Area faceArea, int faces, ThermalMaterial plate, Length thicknessPerFace, ThermalMaterial facing) => new(
        Guard.Positive(Si.SquareMeters(faceArea), "Face area", "m²", nameof(faceArea)),
        Guard.Within(faces, 1, 40, "Number of friction faces", nameof(faces)),
        Guard.NotNull(plate, nameof(plate)),
        Guard.Positive(Si.Meters(thicknessPerFace), "Plate thickness per face", "m", nameof(thicknessPerFace)),
        Guard.NotNull(facing, nameof(facing)),
        double.NaN,
        null);

    /// <summary>The same path with cooling by air.</summary>
    /// <param name="coefficient">Heat transfer coefficient h; above 0.</param>
    /// <param name="cooledArea">Area the air reaches; above 0.</param>
    public HeatPath WithCooling(HeatTransferCoefficient coefficient, Area cooledArea) =>
        WithCooling(coefficient, cooledArea, Basis.Given("cooling of the clutch as stated"));

    /// <summary>The same path with cooling by air.</summary>
    /// <param name="coefficient">Heat transfer coefficient h; above 0.</param>
    /// <param name="cooledArea">Area the air reaches; above 0.</param>
    /// <param name="basis">Where the coefficient comes from.</param>
    public HeatPath WithCooling(HeatTransferCoefficient coefficient, Area cooledArea, Basis basis) => new(
        AreaM2,
        Faces,
        Plate,
        ThicknessM,
        Facing,
        Guard.Positive(Si.WattsPerSquareMeterKelvin(coefficient), "Heat transfer coefficient", "W/(m²·K)", nameof(coefficient))
            * Guard.Positive(Si.SquareMeters(cooledArea), "Cooled area", "m²", nameof(cooledArea)),
        Guard.NotNull(basis, nameof(basis)));
}
