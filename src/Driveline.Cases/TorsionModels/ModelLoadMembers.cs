using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of a load.</summary>
internal static class ModelLoadMembers
{
    public static readonly MemberTable Table = new(
        "load", "A load on a rotor, at the rotor's own speed. Exactly one of viscous, torque and sticksUpTo is stated.", Across);

    public static readonly TextMember Name = Table.Text(
        "name", 60, "Its name; \"load 1\", \"load 2\" … by its place in the list when left out.");
    public static readonly TextMember Rotor = Table.Text("rotor", 60, "The rotor that it acts on.").Required();
    public static readonly QuantityMember<double> Viscous = Table.SiQuantity(
        "viscous", QuantityTypes.TorsionalDamping, "[0 N.m.s/rad; 1000000000 N.m.s/rad]", "b of a torque −b·ω.");
    public static readonly QuantityMember<UnitsNet.Torque> Torque = Table.SiQuantity(
        "torque", QuantityTypes.Torque, "[-1000000000 N.m; 1000000000 N.m]",
            "A given torque; positive drives the rotor forward, negative brakes it.");
    public static readonly QuantityMember<UnitsNet.Duration> From = Table.SiQuantity(
        "from", QuantityTypes.Time, "[0 s; 1000000 s]", "Time from which the given torque acts; 0 when left out.");
    public static readonly QuantityMember<UnitsNet.Duration> Over = Table.SiQuantity(
        "over", QuantityTypes.Time, "[0 s; 1000000 s]", "Time in which it rises in proportion to time; 0, a step, when left out.");
    public static readonly QuantityMember<UnitsNet.Torque> SticksUpTo = Table.SiQuantity(
        "sticksUpTo", QuantityTypes.Torque, "(0 N.m; 1000000000 N.m]",
            "Dry friction to the ground: the rotor stands still until the other torques on it reach this.");
    public static readonly QuantityMember<UnitsNet.Torque> SlidesAt = Table.SiQuantity(
        "slidesAt", QuantityTypes.Torque, "[0 N.m; 1000000000 N.m]",
            "Friction torque while the rotor turns; sticksUpTo when left out, and at most that.");

    private static void Across(CaseObject draft, CaseWalk walk)
    {
        MemberChecks.ExactlyOne(draft, walk, Viscous, Torque, SticksUpTo);
        MemberChecks.Needs(draft, walk, From, Torque);
        MemberChecks.Needs(draft, walk, Over, Torque);
        MemberChecks.Needs(draft, walk, SlidesAt, SticksUpTo);
        MemberChecks.NotAbove(draft, walk, SlidesAt, SticksUpTo, Dimension.Torque);
    }
}
