using Driveline.Clutches;

namespace Driveline.Cases.Members;

/// <summary>The rows of coilSprings.</summary>
internal static class CoilSpringsMembers
{
    public static readonly MemberTable Table = new(
        "coilSprings", "Equal coil springs side by side: by rate and solid length, or by wire, mean diameter and coils.",
            ClutchChecks.Coil);

    public static readonly WholeMember Count = Table.Whole("count", 1, 48, "Number of springs.");
    public static readonly QuantityMember<UnitsNet.ForcePerLength> Rate = Table.Quantity(
        "rate", QuantityTypes.SpringRate, "[100 N/m; 100 kN/mm]",
            "Force of one spring for its deflection, measured or from its maker; it replaces the calculated one.");
    public static readonly QuantityMember<UnitsNet.Length> FreeLength = Table.Quantity(
        "freeLength", QuantityTypes.Length, "[2 mm; 1 m]", "Length without load.");
    public static readonly QuantityMember<UnitsNet.Length> SolidLength = Table.Quantity(
        "solidLength", QuantityTypes.Length, "[1 mm; 1 m]", "Length with all coils touching.");
    public static readonly QuantityMember<UnitsNet.Length> Wire = Table.Quantity(
        "wire", QuantityTypes.Length, "[0.5 mm; 50 mm]", "Thickness of the wire.");
    public static readonly QuantityMember<UnitsNet.Length> MeanDiameter = Table.Quantity(
        "meanDiameter", QuantityTypes.Length, "[2 mm; 500 mm]", "Mean diameter of the coils: outside diameter less one wire.");
    public static readonly QuantityMember<double> Coils = Table.Quantity(
        "coils", QuantityTypes.Number, "[2.5; 200]", "All coils, those at the ends included.");
    public static readonly ChoiceMember<CoilEnds> Ends = Table.Choice<CoilEnds>("ends", "How the ends are made.");
}
