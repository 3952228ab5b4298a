using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of engagement.</summary>
internal static class EngagementMembers
{
    public static readonly MemberTable Table = new("engagement", "How the PTO is engaged.");

    public static readonly ChoiceMember<EngagementManner> Manner = Table.Choice<EngagementManner>(
        "manner", "How the PTO is usually engaged.");
    public static readonly BandMember<TorqueBand> Peak = Table.Torques(
        "peak", "(0 N.m; 1000 kN.m]", "Highest torque at engagement, when measured.");
    public static readonly BandMember<TimeBand> RampTime = Table.Times(
        "rampTime", "(0 s; 20 s]", "Time in which the PTO clutch is engaged, from no torque to all it can pass.");
    public static readonly QuantityMember<UnitsNet.RotationalSpeed> EngineSpeed = Table.Quantity(
        "engineSpeed", QuantityTypes.RotationalSpeed, "(0 rpm; 5000 rpm]", "Engine speed at which the PTO is engaged.");
    public static readonly BandMember<TorqueBand> Load = Table.Torques(
        "load", "[0 N.m; 1000 kN.m]", "Torque at the PTO that the machine takes while it is run up; 0 N.m when it takes none.");
}
