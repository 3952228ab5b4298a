using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of ptoClutch.</summary>
internal static class PtoClutchMembers
{
    public static readonly MemberTable Table = new(
        "ptoClutch", "The tractor's PTO clutch, which limits what the engine's stored energy can send.");

    public static readonly ChoiceMember<PtoClutchKind> Kind = Table.Choice<PtoClutchKind>("kind", "How the PTO clutch is worked.");
    public static readonly BandMember<TorqueBand> Capacity = Table.Torques(
        "capacity", "(0 N.m; 1000 kN.m]", "Torque at the PTO at which the PTO clutch itself slips.");
}
