using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>The rows of start.</summary>
internal static class ModelStartMembers
{
    public static readonly MemberTable Table = new("start", "How the model moves at 0 s.");

    public static readonly QuantityMember<UnitsNet.RotationalSpeed> Speed = Table.SiQuantity(
        "speed", QuantityTypes.RotationalSpeed, "[-1000000 rad/s; 1000000 rad/s]",
            "Speed of the first rotor; the others turn with it, those behind a gear by its ratio. 0 when left out.");
    public static readonly NamedQuantitiesMember Speeds = Table.NamedQuantities(
        "speeds", Dimension.RotationalSpeed, "[-1000000 rad/s; 1000000 rad/s]", "rotor",
            "Speeds of single rotors, each its own, instead of what speed gives them.");
    public static readonly NamedQuantitiesMember Torques = Table.NamedQuantities(
        "torques", Dimension.Torque, "[-1000000000 N.m; 1000000000 N.m]", "shaft",
            "Torques to which the springs of single shafts are wound up; 0 for the others.");
}
