using Driveline.Clutches;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of slipClutch.</summary>
internal static class SlipClutchMembers
{
    public static readonly MemberTable Table = new("slipClutch", "A friction-disc slip clutch as fitted.", ClutchChecks.Fitted);

    public static readonly TextMember Name = Table.Text("name", 200, "What you call it.");
    public static readonly QuantityMember<UnitsNet.Length> OuterDiameter = Table.Quantity(
        "outerDiameter", QuantityTypes.Length, "[20 mm; 1 m]", "Outer diameter of the rubbing faces.");
    public static readonly QuantityMember<UnitsNet.Length> InnerDiameter = Table.Quantity(
        "innerDiameter", QuantityTypes.Length, "[5 mm; 1 m)", "Inner diameter of the rubbing faces.");
    public static readonly WholeMember Faces = Table.Whole(
        "faces", 1, 40, "Number of rubbing pairs of faces: two for each plate that is lined on both sides.");
    public static readonly ParsedMember<Facing> Facing = Table.Text<Facing>(
        "facing", 100, ClutchTexts.TryFacing,
            "The linings: by name, e.g. \"moulded organic lining\", or by the two letters of friction on their edge, e.g. \"FE\".");
    public static readonly ObjectMember Springs = Table.Object(
        "springs", () => ClutchSpringsMembers.Table, "The springs that press the plates together.");
    public static readonly BandMember<LengthBand> SpringLength = Table.Lengths(
        "springLength", "[1 mm; 1 m]", "Length of the springs as set, measured; for disc springs that of the whole stack.");
    public static readonly QuantityMember<double> NutTurns = Table.Quantity(
        "nutTurns", QuantityTypes.Number, "[0; 100]",
            "Turns of every nut from finger-tight, in place of springLength; it needs threadPitch.");
    public static readonly QuantityMember<UnitsNet.Length> ThreadPitch = Table.Quantity(
        "threadPitch", QuantityTypes.Length, "[0.2 mm; 10 mm]", "Pitch of the thread of the spring bolts.");
    public static readonly BandMember<LengthBand> Wear = Table.Lengths(
        "wear", "[0 mm; 50 mm]",
            "Wear of all linings together since the springs were set to that length; 0 mm when the length was measured on the date of "
                + "the case.");
    public static readonly ChoiceMember<SurfaceState> Surface = Table.Choice<SurfaceState>(
        "surface", "What the faces are like. Dry ones count as cleanInWork, since work makes them damp and hot.");
    public static readonly ChoiceMember<RunInState> RunIn = Table.Choice<RunInState>(
        "runIn", "Whether the faces are new or have bedded in.");
    public static readonly DateMember LastSlipTest = Table.Date(
        "lastSlipTest", "When it was last seen whether the clutch slips, at the present setting.");
    public static readonly ChoiceMember<SlipTestOutcome> SlipTestResult = Table.Choice<SlipTestOutcome>(
        "slipTestResult", "What that test showed; didNotSlip is also for a clutch found stuck.");
    public static readonly BandMember<TorqueBand> LeverTorque = Table.Torques(
        "leverTorque", "(0 N.m; 1000 kN.m]",
            "Torque measured in that test with a lever: while it slipped, or the highest that it withstood.");
    public static readonly QuantityMember<UnitsNet.Force> LeverForce = Table.Quantity(
        "leverForce", QuantityTypes.Force, "(0 N; 100 kN]",
            "Force at the end of the lever in that test, in place of leverTorque; it needs leverArm.");
    public static readonly QuantityMember<UnitsNet.Length> LeverArm = Table.Quantity(
        "leverArm", QuantityTypes.Length, "[50 mm; 10 m]", "Length of that lever from the middle of the shaft.");
    public static readonly BandMember<TorqueBand> BreakawayTorque = Table.Torques(
        "breakawayTorque", "(0 N.m; 1000 kN.m]", "Torque at the first movement in that test; it needs leverTorque.");
    public static readonly QuantityMember<UnitsNet.Force> BreakawayForce = Table.Quantity(
        "breakawayForce", QuantityTypes.Force, "(0 N; 100 kN]",
            "Force at the end of that lever at the first movement; it needs leverForce.");
    public static readonly BandMember<TorqueBand> StatedTorque = Table.Torques(
        "statedTorque", "(0 N.m; 1000 kN.m]",
            "Slip torque that the machine's documents state for this clutch; used when it cannot be calculated.");
    public static readonly DateMember LastStorage = Table.Date(
        "lastStorage", "When the machine was last taken out of storage; the date of the case while it stands there.");
    public static readonly QuantityMember<double> StoredMonths = Table.Quantity(
        "storedMonths", QuantityTypes.Number, "[0; 1200]", "How many months that storage lasted.");
    public static readonly ChoiceMember<StorageClimate> Climate = Table.Choice<StorageClimate>(
        "climate", "How damp the place of storage is.");
    public static readonly QuantityMember<UnitsNet.Length> PlateThickness = Table.Quantity(
        "plateThickness", QuantityTypes.Length, "[0.5 mm; 100 mm]",
            "Thickness of the thinnest metal plate of the pack, the whole plate. Each of its two faces is given half of it to warm.");
    public static readonly QuantityMember<double> SlipsPerHour = Table.Quantity(
        "slipsPerHour", QuantityTypes.Number, "[0; 3600]", "How often it slips in an hour of work.");
    public static readonly QuantityMember<UnitsNet.Duration> SlipTime = Table.Quantity(
        "slipTime", QuantityTypes.Time, "(0 s; 600 s]", "How long such a slip lasts, until the PTO is disengaged.");
}
