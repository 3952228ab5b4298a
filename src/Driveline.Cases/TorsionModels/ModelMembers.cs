using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of model.</summary>
internal static class ModelMembers
{
    /// <summary>Most parts of a kind.</summary>
    public const int MostParts = 200;

    public static readonly MemberTable Table = new("model", "A torsional model and how long it runs.", ModelChecks.Across);

    public static readonly TextMember Title = Table.Text("title", 200, "What the model is, in one line.");
    public static readonly TextMember Notes = Table.Text("notes", 20000, "Anything else worth keeping.");
    public static readonly QuantityMember<UnitsNet.Duration> Duration = Table.SiQuantity(
        "duration", QuantityTypes.Time, "(0 s; 1000000 s]", "How long the run lasts; it starts at 0 s.").Required();
    public static readonly ListMember Rotors = Table.Objects(
        "rotors", () => ModelRotorMembers.Table, MostParts, "The rotors, at least two. The first one's speed is what start.speed sets.")
            .Required();
    public static readonly ListMember Shafts = Table.Objects(
        "shafts", () => ModelShaftMembers.Table, MostParts,
            "The shafts. With the couplings they join all rotors to one tree: a chain, with branches where wanted, without rings.");
    public static readonly ListMember Couplings = Table.Objects(
        "couplings", () => ModelCouplingMembers.Table, MostParts,
            "Couplings directly between two rotors, without a spring: while one holds, its rotors turn as one.");
    public static readonly ObjectMember Drive = Table.Object(
        "drive", () => ModelDriveMembers.Table, "The drive, a torque that falls in a straight line as speed rises.");
    public static readonly ListMember Loads = Table.Objects(
        "loads", () => ModelLoadMembers.Table, MostParts, "Loads on rotors: viscous, a given torque, or dry friction.");
    public static readonly ListMember Obstacles = Table.Objects(
        "obstacles", () => ModelObstacleMembers.Table, MostParts, "What rotors meet from a time on.");
    public static readonly ObjectMember Start = Table.Object(
        "start", () => ModelStartMembers.Table,
            "How the model moves at 0 s. Without it all rotors are at rest, held ones at their speeds, and no shaft is wound up.");
}
