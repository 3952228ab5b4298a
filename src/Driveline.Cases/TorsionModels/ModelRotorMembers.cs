using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of a rotor.</summary>
internal static class ModelRotorMembers
{
    public static readonly MemberTable Table = new(
        "rotor", "A rotor: an inertia, or an end held at a speed. Exactly one of inertia and heldAt is stated.", Across);

    public static readonly TextMember Name = Table.Text("name", 60, "Its name; every name in the model is used once.").Required();
    public static readonly QuantityMember<UnitsNet.MassMomentOfInertia> Inertia = Table.SiQuantity(
        "inertia", QuantityTypes.Inertia, "(0 kg.m2; 1000000000 kg.m2]", "J, mass moment of inertia about its axis.");
    public static readonly QuantityMember<UnitsNet.RotationalSpeed> HeldAt = Table.SiQuantity(
        "heldAt", QuantityTypes.RotationalSpeed, "[-1000000 rad/s; 1000000 rad/s]",
            "Speed at which something far stronger holds it throughout; 0 is a fixed end.");

    private static void Across(CaseObject draft, CaseWalk walk) => MemberChecks.ExactlyOne(draft, walk, Inertia, HeldAt);
}
