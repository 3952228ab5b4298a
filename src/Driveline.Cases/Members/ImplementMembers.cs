using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of implement.</summary>
internal static class ImplementMembers
{
    public static readonly MemberTable Table = new("implement", "The implement.", values => new ImplementFacts(values));

    public static readonly ChoiceMember<MachineKind> Kind = Table.Choice<MachineKind>("kind", "What kind of implement it is.");
    public static readonly QuantityMember Width = Table.Quantity("width", Dimension.Length, "(0 m; 30 m]", "Working width.");
    public static readonly QuantityMember WorkSpeed = Table.Quantity("workSpeed", Dimension.Speed, "(0 km/h; 60 km/h]", "Travel speed at work.");
    public static readonly QuantityMember MassFlow = Table.Quantity(
        "massFlow", Dimension.MassFlow, "(0 kg/s; 300 kg/s]", "Material that passes through it.");
}
