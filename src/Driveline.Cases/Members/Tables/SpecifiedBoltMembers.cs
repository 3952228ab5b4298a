using Driveline.Fasteners;
using Driveline.ShearBolts;

namespace Driveline.Cases.Members;

/// <summary>The rows of specifiedShearBolt.</summary>
internal static class SpecifiedBoltMembers
{
    public static readonly MemberTable Table = new(
        "specifiedShearBolt", "The shear bolt that the manual or parts list names.", BoltChecks.Specified);

    public static readonly ParsedMember<ScrewThread> Thread = Table.Text<ScrewThread>(
        "thread", 60, ScrewThread.TryParse, "Thread size as it is sold, e.g. \"1/2-13 UNC\" or \"M10\".");
    public static readonly ParsedMember<MaterialName> Grade = Table.Text<MaterialName>(
        "grade", 100, MaterialName.TryParse,
            "Strength class or rod material, e.g. \"SAE 2\", \"8.8\", \"A2-70\"; \"unmarked\" for a bolt without marks.");
    public static readonly ParsedMember<Fasteners.Hardness> Hardness = Table.Text<Fasteners.Hardness>(
        "hardness", 40, Fasteners.Hardness.TryParse, "Measured hardness, e.g. \"HRC 28\" or \"HV 220\".");
    public static readonly QuantityMember<UnitsNet.Length> PinDiameter = Table.Quantity(
        "pinDiameter", QuantityTypes.Length, "[2 mm; 80 mm]", "Diameter of a plain pin or rod without thread.");
    public static readonly ParsedMember<Fasteners.SpringPin> SpringPin = Table.Text<Fasteners.SpringPin>(
        "springPin", 100, Fasteners.SpringPin.TryParse, "Spring pin by standard and size, e.g. \"ISO 8752 10\".");
    public static readonly ChoiceMember<PlaneThrough> PlaneThrough = Table.Choice<PlaneThrough>(
        "planeThrough", "What the shear plane passes through.");
    public static readonly QuantityMember<UnitsNet.Length> NeckDiameter = Table.Quantity(
        "neckDiameter", QuantityTypes.Length, "[1 mm; 80 mm]", "Diameter at the neck, step or taper.");

    public static readonly TextMember PartNumber = Table.Text("partNumber", 60, "The number of the bolt in the manual or parts list.");

    /// <summary>Those that say which bolt it is.</summary>
    public static readonly BoltRows Bolt = new(Thread, Grade, Hardness, PinDiameter, SpringPin, PlaneThrough, NeckDiameter);
}
