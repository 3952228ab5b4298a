using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of deck.</summary>
internal static class DeckMembers
{
    public static readonly MemberTable Table = new(
        "deck", "How a cutter's deck stands, measured on level ground with the PTO off, the key out and everything at rest.",
            DeckChecks.Across);

    public static readonly QuantityMember<UnitsNet.Length> FrontTip = Table.Quantity(
        "frontTip", QuantityTypes.Length, "[0 m; 1 m]", "Height of the blade tip that points forward.");
    public static readonly QuantityMember<UnitsNet.Length> RearTip = Table.Quantity(
        "rearTip", QuantityTypes.Length, "[0 m; 1 m]", "Height of the blade tip that points rearward.");
    public static readonly QuantityMember<UnitsNet.Length> BladeSpan = Table.Quantity(
        "bladeSpan", QuantityTypes.Length, "[0.3 m; 5 m]", "Diameter of the circle the blade tips run on.");
    public static readonly QuantityMember<UnitsNet.Length> HitchHeight = Table.Quantity(
        "hitchHeight", QuantityTypes.Length, "[0 m; 2 m]",
            "Height of the deck at the lower hitch pins; used where no tip heights are stated.");
    public static readonly QuantityMember<UnitsNet.Length> TailHeight = Table.Quantity(
        "tailHeight", QuantityTypes.Length, "[0 m; 2 m]", "Height of the deck at the tail wheel.");
    public static readonly QuantityMember<UnitsNet.Length> HitchToTail = Table.Quantity(
        "hitchToTail", QuantityTypes.Length, "(0 m; 10 m]", "Distance along the deck from the lower hitch pins to the tail wheel.");
    public static readonly QuantityMember<UnitsNet.Length> HitchToRotor = Table.Quantity(
        "hitchToRotor", QuantityTypes.Length, "(0 m; 10 m]", "Distance along the deck from the lower hitch pins to the rotor's axis.");
    public static readonly QuantityMember<UnitsNet.Length> BladesBelow = Table.Quantity(
        "bladesBelow", QuantityTypes.Length, "[0 m; 2 m]", "How far the blades lie below the line through those two points.");
    public static readonly BandMember<LengthBand> Bumps = Table.Lengths(
        "bumps", "[0 m; 1 m]", "How high bumps of the ground rise above the line its wheels follow.");
    public static readonly QuantityMember<UnitsNet.Length> ManualFrontBelowRear = Table.Quantity(
        "manualFrontBelowRear", QuantityTypes.Length, "[-300 mm; 300 mm]",
            "How much lower than the rear tip the manual wants the front one; negative for a higher front.");
    public static readonly QuantityMember<UnitsNet.Length> MastHeight = Table.Quantity(
        "mastHeight", QuantityTypes.Length, "[0.2 m; 1.5 m]", "The implement's upper pin above its lower hitch pins.");
    public static readonly QuantityMember<UnitsNet.Length> TopLinkLength = Table.Quantity(
        "topLinkLength", QuantityTypes.Length, "[0.2 m; 2 m]", "Length of the top link between its pins now.");
    public static readonly QuantityMember<UnitsNet.Length> TopLinkPinHeight = Table.Quantity(
        "topLinkPinHeight", QuantityTypes.Length, "[-500 mm; 1.5 m]", "The tractor's top-link pin above the lower hitch pins.");
}
