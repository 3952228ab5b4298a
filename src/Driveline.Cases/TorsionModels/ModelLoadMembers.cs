using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of a load.</summary>
internal static class ModelLoadMembers
{
    public static readonly MemberTable Table = MemberTable.OfDraft(
        "load", "A load on a rotor, at the rotor's own speed. Exactly one of viscous, torque and sticksUpTo is stated.", Across);

    public static readonly TextMember Name = Table.Text("name", 60, "Its name; \"load 1\", \"load 2\" … by its place in the list when left out.");
    public static readonly TextMember Rotor = Table.Text("rotor", 60, "The rotor that it acts on.").Required();
    public static readonly QuantityMember Viscous = Table.SiQuantity(
        "viscous", Dimension.TorsionalDamping, "[0 N.m.s/rad; 1000000000 N.m.s/rad]", "b of a torque −b·ω.");
    public static readonly QuantityMember Torque = Table.SiQuantity(
        "torque", Dimension.Torque, "[-1000000000 N.m; 1000000000 N.m]", "A given torque; positive drives the rotor forward, negative brakes it.");
    public static readonly QuantityMember From = Table.SiQuantity(
        "from", Dimension.Time, "[0 s; 1000000 s]", "Time from which the given torque acts; 0 when left out.");
    public static readonly QuantityMember Over = Table.SiQuantity(
        "over", Dimension.Time, "[0 s; 1000000 s]", "Time in which it rises in proportion to time; 0, a step, when left out.");
    public static readonly QuantityMember SticksUpTo = Table.SiQuantity(
        "sticksUpTo", Dimension.Torque, "(0 N.m; 1000000000 N.m]", "Dry friction to the ground: the rotor stands still until the other torques on it reach this.");
    public static readonly QuantityMember SlidesAt = Table.SiQuantity(
        "slidesAt", Dimension.Torque, "[0 N.m; 1000000000 N.m]", "Friction torque while the rotor turns; sticksUpTo when left out, and at most that.");

    private static void Across(CaseDraft draft, CaseWalk walk)
    {
        PartChecks.ExactlyOne(draft, walk, Viscous, Torque, SticksUpTo);
        PartChecks.Needs(draft, walk, From, Torque);
        PartChecks.Needs(draft, walk, Over, Torque);
        PartChecks.Needs(draft, walk, SlidesAt, SticksUpTo);
        PartChecks.NotAbove(draft, walk, SlidesAt, SticksUpTo, Dimension.Torque);
    }
}
