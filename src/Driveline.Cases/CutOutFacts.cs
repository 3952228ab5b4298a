using Driveline.Cases.Members;
using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>A ratchet, cam or radial-pin clutch that cuts out.</summary>
public sealed class CutOutFacts : CaseFacts
{
    internal CutOutFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static CutOutFacts Empty { get; } = new(CutOutMembers.Table.NoValues());

    /// <summary>What you call it. Null when not known.</summary>
    public string? Name => Reference<string>(CutOutMembers.Name);

    /// <summary>The same with another <see cref="Name"/>.</summary>
    public CutOutFacts WithName(string? value) => new(Set(CutOutMembers.Name, value));

    /// <summary>How it lets go.</summary>
    public CutOutKind Kind => Value<CutOutKind>(CutOutMembers.Kind) ?? default;

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    public CutOutFacts WithKind(CutOutKind value) => new(Set(CutOutMembers.Kind, value == default ? null : value));

    /// <summary>Torque at which it lets go. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? Trip => Reference<TorqueBand>(CutOutMembers.Trip);

    /// <summary>The same with another <see cref="Trip"/>.</summary>
    public CutOutFacts WithTrip(TorqueBand? value) => new(Set(CutOutMembers.Trip, value));

    /// <summary>Share of that torque that it still carries afterwards. Permitted: [0; 1]. Null when not known.</summary>
    public RatioBand? AfterTrip => Reference<RatioBand>(CutOutMembers.AfterTrip);

    /// <summary>The same with another <see cref="AfterTrip"/>.</summary>
    public CutOutFacts WithAfterTrip(RatioBand? value) => new(Set(CutOutMembers.AfterTrip, value));

    /// <summary>Speed below which it takes hold again. Permitted: (0 rpm; 3000 rpm]. Null when not known.</summary>
    public RotationalSpeed? ReengagesBelow => Si(CutOutMembers.ReengagesBelow) is { } si ? RotationalSpeed.FromRevolutionsPerMinute(si / Quantities.Si.Rpm) : null;

    /// <summary>The same with another <see cref="ReengagesBelow"/>.</summary>
    public CutOutFacts WithReengagesBelow(RotationalSpeed? value) => new(Set(CutOutMembers.ReengagesBelow, value is { } v ? Quantities.Si.RadiansPerSecond(v) : null));

    /// <summary>When it was last seen to let go. Null when not known.</summary>
    public DateTime? LastTrip => Value<DateTime>(CutOutMembers.LastTrip);

    /// <summary>The same with another <see cref="LastTrip"/>.</summary>
    public CutOutFacts WithLastTrip(DateTime? value) => new(Set(CutOutMembers.LastTrip, value));

    /// <summary>When the machine was last taken out of storage; the date of the case while it stands there. Null when not known.</summary>
    public DateTime? LastStorage => Value<DateTime>(CutOutMembers.LastStorage);

    /// <summary>The same with another <see cref="LastStorage"/>.</summary>
    public CutOutFacts WithLastStorage(DateTime? value) => new(Set(CutOutMembers.LastStorage, value));

    internal override MemberTable Table => CutOutMembers.Table;
}
