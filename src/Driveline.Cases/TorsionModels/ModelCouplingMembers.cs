using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of a coupling.</summary>
internal static class ModelCouplingMembers
{
    public static readonly MemberTable Table = MemberTable.OfDraft(
        "coupling", "A coupling directly between two rotors. Exactly one of breaksAt and slipsAt is stated.", Across);

    public static readonly TextMember Name = Table.Text("name", 60, "Its name.").Required();
    public static readonly TextMember From = Table.Text("from", 60, "The rotor at its driving side.").Required();
    public static readonly TextMember To = Table.Text("to", 60, "The rotor at its driven side.").Required();
    public static readonly QuantityMember BreaksAt = Table.SiQuantity(
        "breaksAt", Dimension.Torque, "(0 N.m; 1000000000 N.m]", "It breaks for good when its torque reaches this in either direction.");
    public static readonly QuantityMember Residual = Table.SiQuantity(
        "residual", Dimension.Torque, "[0 N.m; 1000000000 N.m]", "Dry friction that remains after the break; 0 when left out, at most breaksAt.");
    public static readonly QuantityMember SlipsAt = Table.SiQuantity(
        "slipsAt", Dimension.Torque, "(0 N.m; 1000000000 N.m]", "It slips when its torque reaches this in either direction, and holds again when the speeds meet.");
    public static readonly QuantityMember SlidesAt = Table.SiQuantity(
        "slidesAt", Dimension.Torque, "[0 N.m; 1000000000 N.m]", "Torque while it slips; slipsAt when left out, and at most that.");
    public static readonly QuantityMember EngagesAt = Table.SiQuantity(
        "engagesAt", Dimension.Time, "[0 s; 1000000 s]", "Time at which slipsAt and slidesAt begin to rise from nothing; with none it holds from the start.");
    public static readonly QuantityMember EngagesOver = Table.SiQuantity(
        "engagesOver", Dimension.Time, "[0 s; 1000000 s]", "Time in which they rise in proportion to time; 0 when left out.");

    private static void Across(CaseDraft draft, CaseWalk walk)
    {
        PartChecks.ExactlyOne(draft, walk, BreaksAt, SlipsAt);
        PartChecks.Needs(draft, walk, Residual, BreaksAt);
        PartChecks.NotAbove(draft, walk, Residual, BreaksAt, Dimension.Torque);
        PartChecks.Needs(draft, walk, SlidesAt, SlipsAt);
        PartChecks.NotAbove(draft, walk, SlidesAt, SlipsAt, Dimension.Torque);
        PartChecks.Needs(draft, walk, EngagesAt, SlipsAt);
        PartChecks.Needs(draft, walk, EngagesOver, EngagesAt);
    }
}
