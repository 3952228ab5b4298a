using Driveline.Loads;
namespace Driveline.Cases.Members;

/// <summary>The rows of engagement.</summary>
internal static class EngagementMembers
{
    public static readonly MemberTable Table = new("engagement", "How the PTO is engaged.", values => new EngagementFacts(values));

    public static readonly ChoiceMember<EngagementManner> Manner = Table.Choice<EngagementManner>("manner", "How the PTO is usually engaged.");
    public static readonly BandMember Peak = Table.Torques("peak", "(0 N.m; 1000 kN.m]", "Highest torque at engagement, when measured.");
}
