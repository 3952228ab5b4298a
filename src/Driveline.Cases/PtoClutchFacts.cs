using Driveline.Cases.Members;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Cases;

/// <summary>The tractor's PTO clutch, which limits what the engine's stored energy can send.</summary>
public sealed class PtoClutchFacts : CaseFacts
{
    internal PtoClutchFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static PtoClutchFacts Empty { get; } = new(PtoClutchMembers.Table.NoValues());

    /// <summary>How the PTO clutch is worked.</summary>
    public PtoClutchKind Kind => Value<PtoClutchKind>(PtoClutchMembers.Kind) ?? default;

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    public PtoClutchFacts WithKind(PtoClutchKind value) => new(Set(PtoClutchMembers.Kind, value == default ? null : value));

    /// <summary>Torque at the PTO at which the PTO clutch itself slips. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? Capacity => Reference<TorqueBand>(PtoClutchMembers.Capacity);

    /// <summary>The same with another <see cref="Capacity"/>.</summary>
    public PtoClutchFacts WithCapacity(TorqueBand? value) => new(Set(PtoClutchMembers.Capacity, value));

    internal override MemberTable Table => PtoClutchMembers.Table;
}
