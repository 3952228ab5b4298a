namespace Driveline.Cases.Members;

/// <summary>The rows of discSprings.</summary>
internal static class DiscSpringsMembers
{
    public static readonly MemberTable Table = new(
        "discSprings", "Stacks of equal disc springs: by series and outer diameter, or by their measures.", ClutchChecks.Disc);

    public static readonly ParsedMember<string> Series = Table.Text<string>(
        "series", 1, ClutchTexts.TrySeries, "Series of DIN 2093: \"A\", \"B\" or \"C\"; with outerDiameter it gives all other measures.");
    public static readonly QuantityMember<UnitsNet.Length> OuterDiameter = Table.Quantity(
        "outerDiameter", QuantityTypes.Length, "[5 mm; 1 m]", "Outer diameter of one disc.");
    public static readonly QuantityMember<UnitsNet.Length> InnerDiameter = Table.Quantity(
        "innerDiameter", QuantityTypes.Length, "[2 mm; 1 m)", "Inner diameter of one disc.");
    public static readonly QuantityMember<UnitsNet.Length> Thickness = Table.Quantity(
        "thickness", QuantityTypes.Length, "[0.1 mm; 50 mm]", "Thickness of one disc.");
    public static readonly QuantityMember<UnitsNet.Length> ReducedThickness = Table.Quantity(
        "reducedThickness", QuantityTypes.Length, "[0.1 mm; 50 mm]", "Thickness of a disc that was thinned for its contact flats.");
    public static readonly QuantityMember<UnitsNet.Length> FreeHeight = Table.Quantity(
        "freeHeight", QuantityTypes.Length, "[0.2 mm; 100 mm]", "Height of one disc without load.");
    public static readonly WholeMember Parallel = Table.Whole("parallel", 1, 5, "Discs nested the same way round in one set.");
    public static readonly WholeMember Sets = Table.Whole("sets", 1, 50, "Sets on top of each other, each the other way round.");
    public static readonly WholeMember Stacks = Table.Whole("stacks", 1, 48, "Stacks side by side; 1 for discs around the hub.");
}
