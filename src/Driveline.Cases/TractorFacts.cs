using Driveline.Cases.Members;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>The tractor and its PTO.</summary>
public sealed class TractorFacts : CaseFacts
{
    internal TractorFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static TractorFacts Empty { get; } = new(TractorMembers.Table.NoValues());

    /// <summary>Power at the PTO. Permitted: (0 kW; 1000 kW]. Null when not known.</summary>
    public Power? PtoPower => Si(TractorMembers.PtoPower) is { } si ? Power.FromWatts(si) : null;

    /// <summary>The same with another <see cref="PtoPower"/>.</summary>
    public TractorFacts WithPtoPower(Power? value) => new(Set(TractorMembers.PtoPower, value is { } v ? Quantities.Si.Watts(v) : null));

    /// <summary>Rated engine power. Permitted: (0 kW; 1500 kW]. Null when not known.</summary>
    public Power? EnginePower => Si(TractorMembers.EnginePower) is { } si ? Power.FromWatts(si) : null;

    /// <summary>The same with another <see cref="EnginePower"/>.</summary>
    public TractorFacts WithEnginePower(Power? value) => new(Set(TractorMembers.EnginePower, value is { } v ? Quantities.Si.Watts(v) : null));

    /// <summary>Engine speed at that PTO speed. Permitted: (0 rpm; 5000 rpm]. Null when not known.</summary>
    public RotationalSpeed? EngineSpeed => Si(TractorMembers.EngineSpeed) is { } si ? RotationalSpeed.FromRadiansPerSecond(si) : null;

    /// <summary>The same with another <see cref="EngineSpeed"/>.</summary>
    public TractorFacts WithEngineSpeed(RotationalSpeed? value) => new(Set(TractorMembers.EngineSpeed, value is { } v ? Quantities.Si.RadiansPerSecond(v) : null));

    /// <summary>Type of the PTO stub shaft: 1, 2, 3 or 4. Permitted: [1; 4]. Null when not known.</summary>
    public int? PtoType => Value<int>(TractorMembers.PtoType);

    /// <summary>The same with another <see cref="PtoType"/>.</summary>
    public TractorFacts WithPtoType(int? value) => new(Set(TractorMembers.PtoType, value));

    /// <summary>PTO speed at work. Permitted: (0 rpm; 3000 rpm]. Null when not known.</summary>
    public RotationalSpeed? PtoSpeed => Si(TractorMembers.PtoSpeed) is { } si ? RotationalSpeed.FromRadiansPerSecond(si) : null;

    /// <summary>The same with another <see cref="PtoSpeed"/>.</summary>
    public TractorFacts WithPtoSpeed(RotationalSpeed? value) => new(Set(TractorMembers.PtoSpeed, value is { } v ? Quantities.Si.RadiansPerSecond(v) : null));

    /// <summary>Torque that damages the stub shaft or its splines. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? StubDamagedAt => Reference<TorqueBand>(TractorMembers.StubDamagedAt);

    /// <summary>The same with another <see cref="StubDamagedAt"/>.</summary>
    public TractorFacts WithStubDamagedAt(TorqueBand? value) => new(Set(TractorMembers.StubDamagedAt, value));

    /// <summary>Yield strength of the stub shaft's steel. Permitted: [10 MPa; 3000 MPa]. Null when not known.</summary>
    public StressBand? StubYieldStrength => Reference<StressBand>(TractorMembers.StubYieldStrength);

    /// <summary>The same with another <see cref="StubYieldStrength"/>.</summary>
    public TractorFacts WithStubYieldStrength(StressBand? value) => new(Set(TractorMembers.StubYieldStrength, value));

    /// <summary>The tractor's PTO clutch. Null when not known.</summary>
    public PtoClutchFacts? PtoClutch => Reference<PtoClutchFacts>(TractorMembers.PtoClutch);

    /// <summary>The same with another <see cref="PtoClutch"/>.</summary>
    public TractorFacts WithPtoClutch(PtoClutchFacts? value) => new(Set(TractorMembers.PtoClutch, value is null || value.IsEmpty ? null : value));

    /// <summary>Inertia of engine and flywheel at the engine's own speed. Permitted: (0 kg.m2; 1000 kg.m2]. Null when not known.</summary>
    public MassMomentOfInertia? FlywheelInertia => Si(TractorMembers.FlywheelInertia) is { } si ? UnitsNet.MassMomentOfInertia.FromKilogramSquareMeters(si) : null;

    /// <summary>The same with another <see cref="FlywheelInertia"/>.</summary>
    public TractorFacts WithFlywheelInertia(MassMomentOfInertia? value) => new(Set(TractorMembers.FlywheelInertia, value is { } v ? Quantities.Si.KilogramSquareMeters(v) : null));

    /// <summary>Torque of the engine over the speed of the PTO. Null when not known.</summary>
    public EngineTorqueLineFacts? EngineTorqueLine => Reference<EngineTorqueLineFacts>(TractorMembers.EngineTorqueLine);

    /// <summary>The same with another <see cref="EngineTorqueLine"/>.</summary>
    public TractorFacts WithEngineTorqueLine(EngineTorqueLineFacts? value) => new(Set(TractorMembers.EngineTorqueLine, value is null || value.IsEmpty ? null : value));

    /// <summary>Share by which the engine can exceed the torque of its rated PTO power before it stalls. Permitted: [0; 2]. Null when not known.</summary>
    public double? TorqueReserve => Si(TractorMembers.TorqueReserve);

    /// <summary>The same with another <see cref="TorqueReserve"/>.</summary>
    public TractorFacts WithTorqueReserve(double? value) => new(Set(TractorMembers.TorqueReserve, value));

    internal override MemberTable Table => TractorMembers.Table;
}
