namespace Driveline.Cases.Members;

/// <summary>The rows of clutchSprings.</summary>
internal static class ClutchSpringsMembers
{
    public static readonly MemberTable Table = new(
        "clutchSprings", "The springs of a slip clutch: coil springs or disc springs.", ClutchChecks.Springs);

    public static readonly ObjectMember Coil = Table.Object("coil", () => CoilSpringsMembers.Table, "Coil springs side by side.");
    public static readonly ObjectMember Disc = Table.Object("disc", () => DiscSpringsMembers.Table, "Disc springs.");
}
