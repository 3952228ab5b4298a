using Driveline.Cases.Members;
using Driveline.Loads;
using Driveline.Quantities;
using UnitsNet;

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

    /// <summary>Time in which the PTO clutch is let in, from no torque to all it can pass. Permitted: (0 s; 20 s]. Null when not known.</summary>
    public TimeBand? RampTime => Reference<TimeBand>(EngagementMembers.RampTime);

    /// <summary>The same with another <see cref="RampTime"/>.</summary>
    public EngagementFacts WithRampTime(TimeBand? value) => new(Set(EngagementMembers.RampTime, value));

    /// <summary>Engine speed at which the PTO is engaged. Permitted: (0 rpm; 5000 rpm]. Null when not known.</summary>
    public RotationalSpeed? EngineSpeed => Si(EngagementMembers.EngineSpeed) is { } si ? UnitsNet.RotationalSpeed.FromRadiansPerSecond(si) : null;

    /// <summary>The same with another <see cref="EngineSpeed"/>.</summary>
    public EngagementFacts WithEngineSpeed(RotationalSpeed? value) => new(Set(EngagementMembers.EngineSpeed, value is { } v ? Quantities.Si.RadiansPerSecond(v) : null));

    /// <summary>Torque at the PTO that the machine takes while it is run up; 0 N.m when it takes none. Permitted: [0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? Load => Reference<TorqueBand>(EngagementMembers.Load);

    /// <summary>The same with another <see cref="Load"/>.</summary>
    public EngagementFacts WithLoad(TorqueBand? value) => new(Set(EngagementMembers.Load, value));

    internal override MemberTable Table => EngagementMembers.Table;
}
