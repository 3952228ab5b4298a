using Driveline.Loads;

namespace Driveline.Cases.Members;

/// <summary>The rows of implement.</summary>
internal static class ImplementMembers
{
    public static readonly MemberTable Table = new("implement", "The implement.");

    public static readonly ChoiceMember<MachineKind> Kind = Table.Choice<MachineKind>("kind", "What kind of implement it is.");
    public static readonly QuantityMember<UnitsNet.Length> Width = Table.Quantity(
        "width", QuantityTypes.Length, "(0 m; 30 m]", "Working width.");
    public static readonly QuantityMember<UnitsNet.Speed> WorkSpeed = Table.Quantity(
        "workSpeed", QuantityTypes.Speed, "(0 km/h; 60 km/h]", "Travel speed at work.");
    public static readonly QuantityMember<UnitsNet.MassFlow> MassFlow = Table.Quantity(
        "massFlow", QuantityTypes.MassFlow, "(0 kg/s; 300 kg/s]", "Material that passes through it.");
}
