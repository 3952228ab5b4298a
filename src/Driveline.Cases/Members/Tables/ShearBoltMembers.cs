using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Cases.Members;

/// <summary>The rows of shearBolt.</summary>
internal static class ShearBoltMembers
{
    public static readonly MemberTable Table = new("shearBolt", "A shear-bolt joint as fitted.", BoltChecks.Fitted);

    public static readonly TextMember Name = Table.Text("name", 200, "What you call it.");
    public static readonly ParsedMember<ScrewThread> Thread = Table.Text<ScrewThread>(
        "thread", 60, ScrewThread.TryParse, "Thread size as it is sold, e.g. \"1/2-13 UNC\" or \"M10\".");
    public static readonly ParsedMember<MaterialName> Grade = Table.Text<MaterialName>(
        "grade", 100, MaterialName.TryParse,
            "Strength class or rod material, e.g. \"SAE 2\", \"8.8\", \"A2-70\"; \"unmarked\" for a bolt without marks.");
    public static readonly ParsedMember<HeadMark> HeadMarks = Table.Text<HeadMark>(
        "headMarks", 200, HeadMark.TryParse, "Marks on the bolt's head, as seen, e.g. \"three radial lines\", \"8.8\", \"none\".");
    public static readonly ParsedMember<Fasteners.Hardness> Hardness = Table.Text<Fasteners.Hardness>(
        "hardness", 40, Fasteners.Hardness.TryParse, "Measured hardness, e.g. \"HRC 28\" or \"HV 220\".");
    public static readonly QuantityMember<UnitsNet.Length> PinDiameter = Table.Quantity(
        "pinDiameter", QuantityTypes.Length, "[2 mm; 80 mm]", "Diameter of a plain pin or rod without thread.");
    public static readonly ParsedMember<Fasteners.SpringPin> SpringPin = Table.Text<Fasteners.SpringPin>(
        "springPin", 100, Fasteners.SpringPin.TryParse, "Spring pin by standard and size, e.g. \"ISO 8752 10\".");
    public static readonly ChoiceMember<JointLayout> Layout = Table.Choice<JointLayout>("layout", "How the bolt lies.");
    public static readonly QuantityMember<UnitsNet.Length> ShaftDiameter = Table.Quantity(
        "shaftDiameter", QuantityTypes.Length, "[5 mm; 200 mm]", "Diameter of the shaft that the bolt passes through.");
    public static readonly QuantityMember<UnitsNet.Length> Radius = Table.Quantity(
        "radius", QuantityTypes.Length, "[2 mm; 1 m]", "Distance from the shaft's axis to the shear plane or the bolt.");
    public static readonly QuantityMember<UnitsNet.Length> BoltCircleDiameter = Table.Quantity(
        "boltCircleDiameter", QuantityTypes.Length, "[4 mm; 2 m]", "Diameter of the bolt circle.");
    public static readonly WholeMember Bolts = Table.Whole("bolts", 1, 24, "Number of bolts that must shear.");
    public static readonly WholeMember Planes = Table.Whole("planes", 1, 2, "Number of planes in which each bolt shears.");
    public static readonly ChoiceMember<PlaneThrough> PlaneThrough = Table.Choice<PlaneThrough>(
        "planeThrough", "What the shear plane passes through.");
    public static readonly QuantityMember<UnitsNet.Length> NeckDiameter = Table.Quantity(
        "neckDiameter", QuantityTypes.Length, "[1 mm; 80 mm]", "Diameter at the neck, step or taper.");
    public static readonly ChoiceMember<HubState> Hub = Table.Choice<HubState>(
        "hub", "Whether hub and shaft turn on each other with the bolt out.");
    public static readonly BandMember<TorqueBand> HubFriction = Table.Torques(
        "hubFriction", "[0 N.m; 1000 kN.m]", "Torque that turns the hub on the shaft with the bolt out.");
    public static readonly ChoiceMember<HoleFit> HoleFit = Table.Choice<HoleFit>("holeFit", "How the bolt fits its holes.");
    public static readonly QuantityMember<UnitsNet.Length> HoleDiameter = Table.Quantity(
        "holeDiameter", QuantityTypes.Length, "[2 mm; 100 mm]",
            "Measured diameter of the bolt's hole: it weakens the shaft it crosses, and a thin bolt is loose in it.");
    public static readonly QuantityMember<UnitsNet.Length> PermittedHole = Table.Quantity(
        "permittedHole", QuantityTypes.Length, "[2 mm; 100 mm]",
            "Diameter of another hole, re-drilled or bushed, that the machine's maker permits; only for choosing another bolt.");
    public static readonly QuantityMember<UnitsNet.Length> StandOff = Table.Quantity(
        "standOff", QuantityTypes.Length, "[0 mm; 100 mm]", "Gap between the two parts at the shear plane.");
    public static readonly QuantityMember<UnitsNet.Length> BoltLength = Table.Quantity(
        "boltLength", QuantityTypes.Length, "[3 mm; 1 m]", "Length of the bolt under its head.");
    public static readonly QuantityMember<UnitsNet.Length> ThreadLength = Table.Quantity(
        "threadLength", QuantityTypes.Length, "[1 mm; 1 m]",
            "Length of the bolt's thread, run-out included; with boltLength and gripLength or hubDiameter it tells what the shear plane "
                + "cuts.");
    public static readonly QuantityMember<UnitsNet.Length> GripLength = Table.Quantity(
        "gripLength", QuantityTypes.Length, "[1 mm; 1 m]",
            "Thickness of all that the bolt holds together, from under its head to its nut.");
    public static readonly QuantityMember<UnitsNet.Length> ShankDiameter = Table.Quantity(
        "shankDiameter", QuantityTypes.Length, "[1 mm; 80 mm]", "Measured diameter of the bolt's plain shank.");
    public static readonly ChoiceMember<BodyStyle> BodyStyle = Table.Choice<BodyStyle>(
        "bodyStyle", "Style of the bolt, which decides how thick its shank may be.");
    public static readonly TextMember PartNumber = Table.Text(
        "partNumber", 60, "The machine maker's number on the bolt's bag; the same as the manual's, it is the manual's bolt.");
    public static readonly QuantityMember<UnitsNet.Length> YokeThickness = Table.Quantity(
        "yokeThickness", QuantityTypes.Length, "[0.5 mm; 300 mm]", "Thickness of the yoke wall or flange around the hole.");
    public static readonly BandMember<StressBand> YokeYieldStrength = Table.Stresses(
        "yokeYieldStrength", "[10 MPa; 3000 MPa]", "Yield strength of the yoke's or flange's material: less than its tensile strength.");
    public static readonly BandMember<StressBand> ShaftYieldStrength = Table.Stresses(
        "shaftYieldStrength", "[10 MPa; 3000 MPa]", "Yield strength of the shaft that the bolt passes through.");
    public static readonly BandMember<StressBand> YokeTensileStrength = Table.Stresses(
        "yokeTensileStrength", "[10 MPa; 3000 MPa]",
            "Tensile strength of the yoke's or flange's material, at which the bolt tears out of it.");
    public static readonly QuantityMember<UnitsNet.Length> YokeEdge = Table.Quantity(
        "yokeEdge", QuantityTypes.Length, "[2 mm; 500 mm]",
            "Distance from the middle of the bolt's hole to the nearest edge of the yoke or flange.");
    public static readonly QuantityMember<UnitsNet.Length> HubDiameter = Table.Quantity(
        "hubDiameter", QuantityTypes.Length, "[5 mm; 500 mm]",
            "Outer diameter of the hub that a bolt through the shaft passes through; with boltLength it tells how far the bolt "
                + "stands out.");
    public static readonly DateMember HubSeen = Table.Date(
        "hubSeen", "When the hub was last tried; after 12 months it may have rusted fast. Without it, hub holds for the date of the case.");
    public static readonly DateMember LastTrip = Table.Date("lastTrip", "When the bolt last sheared and the hub was seen to turn.");

    /// <summary>Those that say which bolt it is.</summary>
    public static readonly BoltRows Bolt = new(Thread, Grade, Hardness, PinDiameter, SpringPin, PlaneThrough, NeckDiameter);
}
