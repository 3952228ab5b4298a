using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of a coupling.</summary>
internal static class ModelCouplingMembers
{
    public static readonly MemberTable Table = new(
        "coupling", "A coupling directly between two rotors. Exactly one of breaksAt and slipsAt is stated.", Across);

    public static readonly TextMember Name = Table.Text("name", 60, "Its name.").Required();
    public static readonly TextMember From = Table.Text("from", 60, "The rotor at its driving side.").Required();
    public static readonly TextMember To = Table.Text("to", 60, "The rotor at its driven side.").Required();
    public static readonly QuantityMember<UnitsNet.Torque> BreaksAt = Table.SiQuantity(
        "breaksAt", QuantityTypes.Torque, "(0 N.m; 1000000000 N.m]",
            "It breaks for good when its torque reaches this in either direction.");
    public static readonly QuantityMember<UnitsNet.Torque> Residual = Table.SiQuantity(
        "residual", QuantityTypes.Torque, "[0 N.m; 1000000000 N.m]",
            "Dry friction that remains after the break; 0 when left out, at most breaksAt.");
    public static readonly QuantityMember<UnitsNet.Torque> SlipsAt = Table.SiQuantity(
        "slipsAt", QuantityTypes.Torque, "(0 N.m; 1000000000 N.m]",
            "It slips when its torque reaches this in either direction, and holds again when the speeds meet.");
    public static readonly QuantityMember<UnitsNet.Torque> SlidesAt = Table.SiQuantity(
        "slidesAt", QuantityTypes.Torque, "[0 N.m; 1000000000 N.m]", "Torque while it slips; slipsAt when left out, and at most that.");
    public static readonly QuantityMember<UnitsNet.Duration> EngagesAt = Table.SiQuantity(
        "engagesAt", QuantityTypes.Time, "[0 s; 1000000 s]",
            "Time at which slipsAt and slidesAt begin to rise from nothing; with none it holds from the start.");
    public static readonly QuantityMember<UnitsNet.Duration> EngagesOver = Table.SiQuantity(
        "engagesOver", QuantityTypes.Time, "[0 s; 1000000 s]", "Time in which they rise in proportion to time; 0 when left out.");

    private static void Across(CaseObject draft, CaseWalk walk)
    {
        MemberChecks.ExactlyOne(draft, walk, BreaksAt, SlipsAt);
        MemberChecks.Needs(draft, walk, Residual, BreaksAt);
        MemberChecks.NotAbove(draft, walk, Residual, BreaksAt, Dimension.Torque);
        MemberChecks.Needs(draft, walk, SlidesAt, SlipsAt);
        MemberChecks.NotAbove(draft, walk, SlidesAt, SlipsAt, Dimension.Torque);
        MemberChecks.Needs(draft, walk, EngagesAt, SlipsAt);
        MemberChecks.Needs(draft, walk, EngagesOver, EngagesAt);
    }
}
