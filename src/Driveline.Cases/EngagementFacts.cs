using Driveline.Cases.Members;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Cases;

/// <summary>How the PTO is engaged.</summary>
public sealed class EngagementFacts : CaseFacts
{
    internal EngagementFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static EngagementFacts Empty { get; } = new(EngagementMembers.Table.NoValues());

    /// <summary>How the PTO is usually engaged.</summary>
    public EngagementManner Manner => Value<EngagementManner>(EngagementMembers.Manner) ?? default;

    /// <summary>The same with another <see cref="Manner"/>.</summary>
    public EngagementFacts WithManner(EngagementManner value) => new(Set(EngagementMembers.Manner, value == default ? null : value));

    /// <summary>Highest torque at engagement, when measured. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? Peak => Reference<TorqueBand>(EngagementMembers.Peak);

    /// <summary>The same with another <see cref="Peak"/>.</summary>
    public EngagementFacts WithPeak(TorqueBand? value) => new(Set(EngagementMembers.Peak, value));

    internal override MemberTable Table => EngagementMembers.Table;
}
