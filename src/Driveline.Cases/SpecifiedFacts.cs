using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases;

/// <summary>What the manual or parts list specifies.</summary>
public sealed class SpecifiedFacts : CaseFacts
{
    internal SpecifiedFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static SpecifiedFacts Empty { get; } = new(SpecifiedMembers.Table.NoValues());

    /// <summary>The shear bolt that the manual or parts list names. Null when not known.</summary>
    public SpecifiedBoltFacts? ShearBolt => Reference<SpecifiedBoltFacts>(SpecifiedMembers.ShearBolt);

    /// <summary>The same with another <see cref="ShearBolt"/>.</summary>
    public SpecifiedFacts WithShearBolt(SpecifiedBoltFacts? value) => new(Set(SpecifiedMembers.ShearBolt, value is null || value.IsEmpty ? null : value));

    /// <summary>The slip torque, or the torque of a cut-out clutch, that the manual names. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? SlipTorque => Reference<TorqueBand>(SpecifiedMembers.SlipTorque);

    /// <summary>The same with another <see cref="SlipTorque"/>.</summary>
    public SpecifiedFacts WithSlipTorque(TorqueBand? value) => new(Set(SpecifiedMembers.SlipTorque, value));

    internal override MemberTable Table => SpecifiedMembers.Table;
}
