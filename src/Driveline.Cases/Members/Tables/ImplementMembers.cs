using Driveline.Loads;

namespace Driveline.Cases.Members;

/// <summary>The rows of implement.</summary>
internal static class ImplementMembers
{
    public static readonly MemberTable Table = new("implement", "The implement.");

    public static readonly ChoiceMember<MachineKind> Kind = Table.Choice<MachineKind>("kind", "What kind of implement it is.");
    public static readonly QuantityMember<UnitsNet.Length> Width = Table.Quantity(
        "width", QuantityTypes.Length, "(0 m; 30 m]",
            "Working width; with the kind it tells what power it needs where the case states no torque or power of work.");
    public static readonly QuantityMember<UnitsNet.MassFlow> MassFlow = Table.Quantity(
        "massFlow", QuantityTypes.MassFlow, "(0 kg/s; 300 kg/s]",
            "Material that passes through it; it tells the same of a baler, a spreader or a mixer.");
}
