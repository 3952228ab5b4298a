using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Cases.Members;

/// <summary>The rows of shearBolt.</summary>
internal static class ShearBoltMembers
{
    public static readonly MemberTable Table = new("shearBolt", "A shear-bolt joint as fitted.", values => new ShearBoltFacts(values), BoltChecks.Fitted);

    public static readonly TextMember Name = Table.Text("name", 200, "What you call it.");
    public static readonly TextMember Thread = Table.Text(
        "thread", 60, BoltTexts.ThreadProblem, "Thread size as it is sold, e.g. \"1/2-13 UNC\" or \"M10\".");
    public static readonly TextMember Grade = Table.Text(
        "grade", 100, BoltTexts.GradeProblem, "Strength class or rod material, e.g. \"SAE 2\", \"8.8\", \"A2-70\"; \"unmarked\" for a bolt without marks.");
    public static readonly TextMember HeadMarks = Table.Text(
        "headMarks", 200, BoltTexts.HeadMarkProblem, "Marks on the bolt's head, as seen, e.g. \"three radial lines\", \"8.8\", \"none\".");
    public static readonly TextMember Hardness = Table.Text(
        "hardness", 40, BoltTexts.HardnessProblem, "Measured hardness, e.g. \"HRC 28\" or \"HV 220\".");
    public static readonly QuantityMember PinDiameter = Table.Quantity(
        "pinDiameter", Dimension.Length, "[2 mm; 80 mm]", "Diameter of a plain pin or rod without thread.");
    public static readonly TextMember SpringPin = Table.Text(
        "springPin", 100, BoltTexts.SpringPinProblem, "Spring pin by standard and size, e.g. \"ISO 8752 10\".");
    public static readonly ChoiceMember<JointLayout> Layout = Table.Choice<JointLayout>("layout", "How the bolt lies.");
    public static readonly QuantityMember ShaftDiameter = Table.Quantity(
        "shaftDiameter", Dimension.Length, "[5 mm; 200 mm]", "Diameter of the shaft that the bolt passes through.");
    public static readonly QuantityMember Radius = Table.Quantity(
        "radius", Dimension.Length, "[2 mm; 1 m]", "Distance from the shaft's axis to the shear plane or the bolt.");
    public static readonly QuantityMember BoltCircleDiameter = Table.Quantity(
        "boltCircleDiameter", Dimension.Length, "[4 mm; 2 m]", "Diameter of the bolt circle.");
    public static readonly WholeMember Bolts = Table.Whole("bolts", 1, 24, "Number of bolts that must shear.");
    public static readonly WholeMember Planes = Table.Whole("planes", 1, 2, "Number of planes in which each bolt shears.");
    public static readonly ChoiceMember<PlaneThrough> PlaneThrough = Table.Choice<PlaneThrough>("planeThrough", "What the shear plane passes through.");
    public static readonly QuantityMember NeckDiameter = Table.Quantity(
        "neckDiameter", Dimension.Length, "[1 mm; 80 mm]", "Diameter at the neck, step or taper.");
    public static readonly ChoiceMember<HubState> Hub = Table.Choice<HubState>(
        "hub", "Whether hub and shaft turn on each other with the bolt out.");
    public static readonly BandMember HubFriction = Table.Torques(
        "hubFriction", "[0 N.m; 1000 kN.m]", "Torque that turns the hub on the shaft with the bolt out.");
    public static readonly ChoiceMember<HoleFit> HoleFit = Table.Choice<HoleFit>("holeFit", "How the bolt fits its holes.");
    public static readonly QuantityMember HoleDiameter = Table.Quantity(
        "holeDiameter", Dimension.Length, "[2 mm; 100 mm]", "Measured diameter of the bolt's hole: it weakens the shaft it crosses, and a thin bolt is loose in it.");
    public static readonly QuantityMember PermittedHole = Table.Quantity(
        "permittedHole", Dimension.Length, "[2 mm; 100 mm]", "Diameter of another hole, re-drilled or bushed, that the machine's maker permits; only for choosing another bolt.");
    public static readonly QuantityMember StandOff = Table.Quantity(
        "standOff", Dimension.Length, "[0 mm; 100 mm]", "Gap between the two parts at the shear plane.");
    public static readonly QuantityMember BoltLength = Table.Quantity(
        "boltLength", Dimension.Length, "[3 mm; 1 m]", "Length of the bolt under its head.");
    public static readonly QuantityMember YokeThickness = Table.Quantity(
        "yokeThickness", Dimension.Length, "[0.5 mm; 300 mm]", "Thickness of the yoke wall or flange around the hole.");
    public static readonly BandMember YokeYieldStrength = Table.Stresses(
        "yokeYieldStrength", "[10 MPa; 3000 MPa]", "Yield strength of the yoke's or flange's material: less than its tensile strength.");
    public static readonly BandMember ShaftYieldStrength = Table.Stresses(
        "shaftYieldStrength", "[10 MPa; 3000 MPa]", "Yield strength of the shaft that the bolt passes through.");
    public static readonly DateMember LastTrip = Table.Date("lastTrip", "When the bolt last sheared and the hub was seen to turn.");
}
