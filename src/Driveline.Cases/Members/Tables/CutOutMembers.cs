using Driveline.Clutches;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of cutOut.</summary>
internal static class CutOutMembers
{
    public static readonly MemberTable Table = new("cutOut", "A ratchet, cam or radial-pin clutch that cuts out.", ClutchChecks.CutOut);

    public static readonly TextMember Name = Table.Text("name", 200, "What you call it.");
    public static readonly ChoiceMember<CutOutKind> Kind = Table.Choice<CutOutKind>("kind", "How it lets go.");
    public static readonly BandMember<TorqueBand> Trip = Table.Torques("trip", "(0 N.m; 1000 kN.m]", "Torque at which it lets go.");
    public static readonly BandMember<RatioBand> AfterTrip = Table.Ratios(
        "afterTrip", "[0; 1]", "Share of that torque that it still carries afterwards.");
    public static readonly QuantityMember<UnitsNet.RotationalSpeed> ReengagesBelow = Table.Quantity(
        "reengagesBelow", QuantityTypes.RotationalSpeed, "(0 rpm; 3000 rpm]", "Speed below which it takes hold again.");
    public static readonly DateMember LastTrip = Table.Date("lastTrip", "When it was last seen to let go.");
    public static readonly DateMember LastStorage = Table.Date(
        "lastStorage", "When the machine was last taken out of storage; the date of the case while it stands there.");
}
