using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Cases.Members;

/// <summary>The rows of specifiedShearBolt.</summary>
internal static class SpecifiedBoltMembers
{
    public static readonly MemberTable Table = new("specifiedShearBolt", "The shear bolt that the manual or parts list names.", values => new SpecifiedBoltFacts(values), BoltChecks.Specified);

    public static readonly TextMember Thread = Table.Text(
        "thread", 60, BoltTexts.ThreadProblem, "Thread size as it is sold, e.g. \"1/2-13 UNC\" or \"M10\".");
    public static readonly TextMember Grade = Table.Text(
        "grade", 100, BoltTexts.GradeProblem, "Strength class or rod material, e.g. \"SAE 2\", \"8.8\", \"A2-70\"; \"unmarked\" for a bolt without marks.");
    public static readonly TextMember Hardness = Table.Text(
        "hardness", 40, BoltTexts.HardnessProblem, "Measured hardness, e.g. \"HRC 28\" or \"HV 220\".");
    public static readonly QuantityMember PinDiameter = Table.Quantity(
        "pinDiameter", Dimension.Length, "[2 mm; 80 mm]", "Diameter of a plain pin or rod without thread.");
    public static readonly TextMember SpringPin = Table.Text(
        "springPin", 100, BoltTexts.SpringPinProblem, "Spring pin by standard and size, e.g. \"ISO 8752 10\".");
    public static readonly ChoiceMember<PlaneThrough> PlaneThrough = Table.Choice<PlaneThrough>("planeThrough", "What the shear plane passes through.");
    public static readonly QuantityMember NeckDiameter = Table.Quantity(
        "neckDiameter", Dimension.Length, "[1 mm; 80 mm]", "Diameter at the neck, step or taper.");
}
