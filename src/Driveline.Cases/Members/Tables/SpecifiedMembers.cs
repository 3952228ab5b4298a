using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of specified.</summary>
internal static class SpecifiedMembers
{
    public static readonly MemberTable Table = new("specified", "What the manual or parts list specifies.");

    public static readonly ObjectMember ShearBolt = Table.Object(
        "shearBolt", () => SpecifiedBoltMembers.Table, "The shear bolt that the manual or parts list names.");
    public static readonly BandMember<TorqueBand> SlipTorque = Table.Torques(
        "slipTorque", "(0 N.m; 1000 kN.m]", "The slip torque, or the torque of a cut-out clutch, that the manual names.");
    public static readonly BandMember<LengthBand> SpringLength = Table.Lengths(
        "springLength", "[1 mm; 1 m]",
            "The length to which the manual has the springs of a slip clutch set; for disc springs that of the whole stack.");
}
