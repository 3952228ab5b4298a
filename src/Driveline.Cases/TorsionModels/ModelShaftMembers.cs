using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of a shaft.</summary>
internal static class ModelShaftMembers
{
    public static readonly MemberTable Table = MemberTable.OfDraft(
        "shaft", "A shaft without inertia: a spring and a damper side by side, perhaps with a gear behind and a coupling in line at its from end.", Across);

    public static readonly TextMember Name = Table.Text("name", 60, "Its name.").Required();
    public static readonly TextMember From = Table.Text("from", 60, "The rotor at its driving end.").Required();
    public static readonly TextMember To = Table.Text("to", 60, "The rotor at its driven end.").Required();
    public static readonly QuantityMember Stiffness = Table.SiQuantity(
        "stiffness", Dimension.TorsionalStiffness, "(0 N.m/rad; 1000000000000 N.m/rad]", "k, at the shaft's own speed, which is that of from.").Required();
    public static readonly QuantityMember Damping = Table.SiQuantity(
        "damping", Dimension.TorsionalDamping, "[0 N.m.s/rad; 1000000000 N.m.s/rad]", "c; 0 when left out.");
    public static readonly QuantityMember Ratio = Table.Quantity(
        "ratio", Dimension.Number, "[0.001; 1000]", "i, speed of to over speed of from when the shaft is not twisting; 1 when left out. The gear loses nothing.");
    public static readonly QuantityMember BreaksAt = Table.SiQuantity(
        "breaksAt", Dimension.Torque, "(0 N.m; 1000000000 N.m]", "It breaks for good when its torque, spring and damper together, reaches this in either direction.");
    public static readonly QuantityMember Residual = Table.SiQuantity(
        "residual", Dimension.Torque, "[0 N.m; 1000000000 N.m]", "Dry friction that remains after the break; 0 when left out, at most breaksAt.");
    public static readonly QuantityMember SlipsAt = Table.SiQuantity(
        "slipsAt", Dimension.Torque, "(0 N.m; 1000000000 N.m]", "It slips when its torque reaches this in either direction, and holds again when the slip ends.");
    public static readonly QuantityMember SlidesAt = Table.SiQuantity(
        "slidesAt", Dimension.Torque, "[0 N.m; 1000000000 N.m]", "Torque while it slips; slipsAt when left out, and at most that.");
    public static readonly QuantityMember EngagesAt = Table.SiQuantity(
        "engagesAt", Dimension.Time, "[0 s; 1000000 s]", "Time at which slipsAt and slidesAt begin to rise from nothing; with none it holds from the start.");
    public static readonly QuantityMember EngagesOver = Table.SiQuantity(
        "engagesOver", Dimension.Time, "[0 s; 1000000 s]", "Time in which they rise in proportion to time; 0 when left out.");
    public static readonly FlagMember OneWay = Table.Flag("oneWay", "True when it drives forward only and overruns without torque.");
    public static readonly QuantityMember Backlash = Table.SiQuantity(
        "backlash", Dimension.Angle, "[0 rad; 1000 rad]", "Free play at the from end, taken up at the start; not with a coupling in line.");
    public static readonly QuantityMember JointAngle = Table.SiQuantity(
        "jointAngle", Dimension.Angle, "[0 deg; 60 deg]", "β of one universal joint at its from end.");
    public static readonly QuantityMember JointPhase = Table.SiQuantity(
        "jointPhase", Dimension.Angle, "[-1000 rad; 1000 rad]", "Angle φ of its yoke at the start; 0 when left out, with the driving yoke in the plane of the two shafts.");

    private static void Across(CaseDraft draft, CaseWalk walk)
    {
        PartChecks.AtMostOne(draft, walk, BreaksAt, SlipsAt, OneWay, Backlash);
        PartChecks.Needs(draft, walk, Residual, BreaksAt);
        PartChecks.NotAbove(draft, walk, Residual, BreaksAt, Dimension.Torque);
        PartChecks.Needs(draft, walk, SlidesAt, SlipsAt);
        PartChecks.NotAbove(draft, walk, SlidesAt, SlipsAt, Dimension.Torque);
        PartChecks.Needs(draft, walk, EngagesAt, SlipsAt);
        PartChecks.Needs(draft, walk, EngagesOver, EngagesAt);
        PartChecks.Needs(draft, walk, JointPhase, JointAngle);
    }
}
