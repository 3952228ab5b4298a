using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of an obstacle.</summary>
internal static class ModelObstacleMembers
{
    public static readonly MemberTable Table = new(
        "obstacle", "Something that a rotor meets from a time on, at the angle it has then.", Across);

    public static readonly TextMember Name = Table.Text(
        "name", 60, "Its name; \"obstacle 1\", \"obstacle 2\" … by its place in the list when left out.");
    public static readonly TextMember Rotor = Table.Text("rotor", 60, "The rotor that meets it.").Required();
    public static readonly QuantityMember<UnitsNet.Duration> At = Table.SiQuantity(
        "at", QuantityTypes.Time, "[0 s; 1000000 s]", "Time of contact; 0 when left out.");
    public static readonly ChoiceMember<ObstacleKind> Kind = Table.Choice<ObstacleKind>(
        "kind", "pushes (taken when left out): spring and damper, never pulling; ties: the same, pulling too; stops: no give, forward "
            + "only; jams: no give, both ways.");
    public static readonly QuantityMember<UnitsNet.RotationalStiffness> Stiffness = Table.SiQuantity(
        "stiffness", QuantityTypes.TorsionalStiffness, "(0 N.m/rad; 1000000000000 N.m/rad]", "k_o, needed by pushes and ties.");
    public static readonly QuantityMember<double> Damping = Table.SiQuantity(
        "damping", QuantityTypes.TorsionalDamping, "[0 N.m.s/rad; 1000000000 N.m.s/rad]", "c_o of pushes and ties; 0 when left out.");
    public static readonly QuantityMember<UnitsNet.Torque> YieldsAt = Table.SiQuantity(
        "yieldsAt", QuantityTypes.Torque, "(0 N.m; 1000000000 N.m]",
            "For pushes without damping: it gives way at this torque and stays deformed.");
    public static readonly QuantityMember<UnitsNet.Angle> Through = Table.SiQuantity(
        "through", QuantityTypes.Angle, "(0 rad; 1000 rad]",
            "With yieldsAt: angle that the rotor turns from contact until the obstacle is cut through and gone; never when left out.");
    public static readonly QuantityMember<UnitsNet.Angle> SwingBack = Table.SiQuantity(
        "swingBack", QuantityTypes.Angle, "(0 rad; 1000 rad]",
            "Angle through which the rotor turns first, while its blades swing back; not for ties and jams.");
    public static readonly QuantityMember<UnitsNet.Torque> SwingTorque = Table.SiQuantity(
        "swingTorque", QuantityTypes.Torque, "[0 N.m; 1000000000 N.m]",
            "Torque on the rotor meanwhile; 0 when left out, at most yieldsAt.");

    private static void Across(CaseObject draft, CaseWalk walk)
    {
        ObstacleKind kind = draft.Get(Kind);
        bool gives = kind is ObstacleKind.NotKnown or ObstacleKind.Pushes or ObstacleKind.Ties;
        if (gives && !draft.IsStated(Stiffness))
        {
            walk.Missing(draft, Stiffness);
        }

        foreach (Member member in new Member[] { Stiffness, Damping, YieldsAt })
        {
            MemberChecks.Refuse(draft, walk, member, !gives, "An obstacle without give has none.");
        }

        MemberChecks.Refuse(draft, walk, YieldsAt, kind == ObstacleKind.Ties, "Only pushes yields.");
        MemberChecks.Needs(draft, walk, Through, YieldsAt);
        MemberChecks.Refuse(
            draft, walk, SwingBack, kind is ObstacleKind.Ties or ObstacleKind.Jams, "Blades can swing back only from pushes and stops.");
        MemberChecks.Needs(draft, walk, SwingTorque, SwingBack);
        MemberChecks.NotAbove(draft, walk, SwingTorque, YieldsAt, Dimension.Torque);
        if (draft.Si(Damping) > 0 && draft.IsStated(YieldsAt))
        {
            walk.Contradiction(draft, Damping, "A yielding obstacle has no damping; leave out \"damping\" or \"yieldsAt\".");
        }
    }
}
