using Driveline.Cases.Members;
using Driveline.Loads;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>The implement.</summary>
public sealed class ImplementFacts : CaseFacts
{
    internal ImplementFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static ImplementFacts Empty { get; } = new(ImplementMembers.Table.NoValues());

    /// <summary>What kind of implement it is.</summary>
    public MachineKind Kind => Value<MachineKind>(ImplementMembers.Kind) ?? default;

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    public ImplementFacts WithKind(MachineKind value) => new(Set(ImplementMembers.Kind, value == default ? null : value));

    /// <summary>Working width. Permitted: (0 m; 30 m]. Null when not known.</summary>
    public Length? Width => Si(ImplementMembers.Width) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="Width"/>.</summary>
    public ImplementFacts WithWidth(Length? value) => new(Set(ImplementMembers.Width, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Travel speed at work. Permitted: (0 km/h; 60 km/h]. Null when not known.</summary>
    public Speed? WorkSpeed => Si(ImplementMembers.WorkSpeed) is { } si ? Speed.FromMetersPerSecond(si) : null;

    /// <summary>The same with another <see cref="WorkSpeed"/>.</summary>
    public ImplementFacts WithWorkSpeed(Speed? value) => new(Set(ImplementMembers.WorkSpeed, value is { } v ? Quantities.Si.MetersPerSecond(v) : null));

    /// <summary>Material that passes through it. Permitted: (0 kg/s; 300 kg/s]. Null when not known.</summary>
    public MassFlow? MassFlow => Si(ImplementMembers.MassFlow) is { } si ? UnitsNet.MassFlow.FromKilogramsPerSecond(si) : null;

    /// <summary>The same with another <see cref="MassFlow"/>.</summary>
    public ImplementFacts WithMassFlow(MassFlow? value) => new(Set(ImplementMembers.MassFlow, value is { } v ? Quantities.Si.KilogramsPerSecond(v) : null));

    internal override MemberTable Table => ImplementMembers.Table;
}
