using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of a shaft.</summary>
internal static class ModelShaftMembers
{
    public static readonly MemberTable Table = new(
        "shaft", "A shaft without inertia: a spring and a damper side by side, perhaps with a gear behind and a coupling in line at its "
            + "from end.", Across);

    public static readonly TextMember Name = Table.Text("name", 60, "Its name.").Required();
    public static readonly TextMember From = Table.Text("from", 60, "The rotor at its driving end.").Required();
    public static readonly TextMember To = Table.Text("to", 60, "The rotor at its driven end.").Required();
    public static readonly QuantityMember<UnitsNet.RotationalStiffness> Stiffness = Table.SiQuantity(
        "stiffness", QuantityTypes.TorsionalStiffness, "(0 N.m/rad; 1000000000000 N.m/rad]",
            "k, at the shaft's own speed, which is that of from.").Required();
    public static readonly QuantityMember<double> Damping = Table.SiQuantity(
        "damping", QuantityTypes.TorsionalDamping, "[0 N.m.s/rad; 1000000000 N.m.s/rad]", "c; 0 when left out.");
    public static readonly QuantityMember<double> Ratio = Table.Quantity(
        "ratio", QuantityTypes.Number, "[0.001; 1000]",
            "i, speed of to over speed of from when the shaft is not twisting; 1 when left out. The gear loses nothing.");
    public static readonly QuantityMember<UnitsNet.Torque> BreaksAt = Table.SiQuantity(
        "breaksAt", QuantityTypes.Torque, "(0 N.m; 1000000000 N.m]",
            "It breaks for good when its torque, spring and damper together, reaches this in either direction.");
    public static readonly QuantityMember<UnitsNet.Torque> Residual = Table.SiQuantity(
        "residual", QuantityTypes.Torque, "[0 N.m; 1000000000 N.m]",
            "Dry friction that remains after the break; 0 when left out, at most breaksAt.");
    public static readonly QuantityMember<UnitsNet.Torque> SlipsAt = Table.SiQuantity(
        "slipsAt", QuantityTypes.Torque, "(0 N.m; 1000000000 N.m]",
            "It slips when its torque reaches this in either direction, and holds again when the slip ends.");
    public static readonly QuantityMember<UnitsNet.Torque> SlidesAt = Table.SiQuantity(
        "slidesAt", QuantityTypes.Torque, "[0 N.m; 1000000000 N.m]", "Torque while it slips; slipsAt when left out, and at most that.");
    public static readonly QuantityMember<UnitsNet.Duration> EngagesAt = Table.SiQuantity(
        "engagesAt", QuantityTypes.Time, "[0 s; 1000000 s]",
            "Time at which slipsAt and slidesAt begin to rise from nothing; with none it holds from the start.");
    public static readonly QuantityMember<UnitsNet.Duration> EngagesOver = Table.SiQuantity(
        "engagesOver", QuantityTypes.Time, "[0 s; 1000000 s]", "Time in which they rise in proportion to time; 0 when left out.");
    public static readonly FlagMember OneWay = Table.Flag("oneWay", "True when it drives forward only and overruns without torque.");
    public static readonly QuantityMember<UnitsNet.Angle> Backlash = Table.SiQuantity(
        "backlash", QuantityTypes.Angle, "[0 rad; 1000 rad]",
            "Free play at the from end, taken up at the start; not with a coupling in line.");
    public static readonly QuantityMember<UnitsNet.Angle> JointAngle = Table.SiQuantity(
        "jointAngle", QuantityTypes.Angle, "[0 deg; 60 deg]", "β of one universal joint at its from end.");
    public static readonly QuantityMember<UnitsNet.Angle> JointPhase = Table.SiQuantity(
        "jointPhase", QuantityTypes.Angle, "[-1000 rad; 1000 rad]",
            "Angle φ of its yoke at the start; 0 when left out, with the driving yoke in the plane of the two shafts.");

    private static void Across(CaseObject draft, CaseWalk walk)
    {
        MemberChecks.AtMostOne(draft, walk, BreaksAt, SlipsAt, OneWay, Backlash);
        MemberChecks.Needs(draft, walk, Residual, BreaksAt);
        MemberChecks.NotAbove(draft, walk, Residual, BreaksAt, Dimension.Torque);
        MemberChecks.Needs(draft, walk, SlidesAt, SlipsAt);
        MemberChecks.NotAbove(draft, walk, SlidesAt, SlipsAt, Dimension.Torque);
        MemberChecks.Needs(draft, walk, EngagesAt, SlipsAt);
        MemberChecks.Needs(draft, walk, EngagesOver, EngagesAt);
        MemberChecks.Needs(draft, walk, JointPhase, JointAngle);
    }
}
