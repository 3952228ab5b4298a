using Driveline.Cases.Members;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>One element of the driveline. Exactly one member names its kind.</summary>
public sealed partial class DrivelineElement : CaseFacts
{
    internal DrivelineElement(object?[] values)
        : base(values)
    {
    }

    /// <summary>A shear-bolt joint. Null when not known.</summary>
    public ShearBoltFacts? ShearBolt => Reference<ShearBoltFacts>(ElementMembers.ShearBolt);

    /// <summary>A friction-disc slip clutch. Null when not known.</summary>
    public SlipClutchFacts? SlipClutch => Reference<SlipClutchFacts>(ElementMembers.SlipClutch);

    /// <summary>A ratchet, cam or radial-pin clutch that cuts out. Null when not known.</summary>
    public CutOutFacts? CutOut => Reference<CutOutFacts>(ElementMembers.CutOut);

    /// <summary>Output speed over input speed; above 1 is speed up. Permitted: [0.05; 20]. Null when not known.</summary>
    public double? Ratio => Si(ElementMembers.Ratio);

    /// <summary>The same with another <see cref="Ratio"/>.</summary>
    public DrivelineElement WithRatio(double? value) => new(Set(ElementMembers.Ratio, value));

    /// <summary>Output power over input power. Permitted: (0; 1]. Null when not known.</summary>
    public double? Efficiency => Si(ElementMembers.Efficiency);

    /// <summary>The same with another <see cref="Efficiency"/>.</summary>
    public DrivelineElement WithEfficiency(double? value) => new(Set(ElementMembers.Efficiency, value));

    /// <summary>Angle between the two shafts of the joint at work. Permitted: [0 deg; 90 deg). Null when not known.</summary>
    public Angle? Angle => Si(ElementMembers.Angle) is { } si ? UnitsNet.Angle.FromRadians(si) : null;

    /// <summary>The same with another <see cref="Angle"/>.</summary>
    public DrivelineElement WithAngle(Angle? value) => new(Set(ElementMembers.Angle, value is { } v ? Quantities.Si.Radians(v) : null));

    /// <summary>Mass moment of inertia about its own axis. Permitted: (0 kg.m2; 10000 kg.m2]. Null when not known.</summary>
    public MassMomentOfInertia? Inertia => Si(ElementMembers.Inertia) is { } si ? MassMomentOfInertia.FromKilogramSquareMeters(si) : null;

    /// <summary>The same with another <see cref="Inertia"/>.</summary>
    public DrivelineElement WithInertia(MassMomentOfInertia? value) => new(Set(ElementMembers.Inertia, value is { } v ? Quantities.Si.KilogramSquareMeters(v) : null));

    /// <summary>Torque at the part's own input that damages it. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? DamagedAt => Reference<TorqueBand>(ElementMembers.DamagedAt);

    /// <summary>The same with another <see cref="DamagedAt"/>.</summary>
    public DrivelineElement WithDamagedAt(TorqueBand? value) => new(Set(ElementMembers.DamagedAt, value));

    /// <summary>Outer diameter where the part is weakest. Permitted: [3 mm; 500 mm]. Null when not known.</summary>
    public Length? OuterDiameter => Si(ElementMembers.OuterDiameter) is { } si ? UnitsNet.Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="OuterDiameter"/>.</summary>
    public DrivelineElement WithOuterDiameter(Length? value) => new(Set(ElementMembers.OuterDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Bore, when it is hollow. Permitted: [0 mm; 500 mm). Null when not known.</summary>
    public Length? InnerDiameter => Si(ElementMembers.InnerDiameter) is { } si ? UnitsNet.Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="InnerDiameter"/>.</summary>
    public DrivelineElement WithInnerDiameter(Length? value) => new(Set(ElementMembers.InnerDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Diameter at the root of its splines. Permitted: [3 mm; 500 mm]. Null when not known.</summary>
    public Length? SplineRootDiameter => Si(ElementMembers.SplineRootDiameter) is { } si ? UnitsNet.Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="SplineRootDiameter"/>.</summary>
    public DrivelineElement WithSplineRootDiameter(Length? value) => new(Set(ElementMembers.SplineRootDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Yield strength of its material. Permitted: [10 MPa; 3000 MPa]. Null when not known.</summary>
    public StressBand? YieldStrength => Reference<StressBand>(ElementMembers.YieldStrength);

    /// <summary>The same with another <see cref="YieldStrength"/>.</summary>
    public DrivelineElement WithYieldStrength(StressBand? value) => new(Set(ElementMembers.YieldStrength, value));

    /// <summary>Its material by name, when the yield strength is not known. Null when not known.</summary>
    public string? Material => Reference<string>(ElementMembers.Material);

    /// <summary>The same with another <see cref="Material"/>.</summary>
    public DrivelineElement WithMaterial(string? value) => new(Set(ElementMembers.Material, value));

    /// <summary>Torque on its plate or in its catalogue. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public Torque? RatedTorque => Si(ElementMembers.RatedTorque) is { } si ? Torque.FromNewtonMeters(si) : null;

    /// <summary>The same with another <see cref="RatedTorque"/>.</summary>
    public DrivelineElement WithRatedTorque(Torque? value) => new(Set(ElementMembers.RatedTorque, value is { } v ? Quantities.Si.NewtonMeters(v) : null));

    /// <summary>Damaging torque over rated torque. Permitted: [1; 20]. Null when not known.</summary>
    public RatioBand? OverloadFactor => Reference<RatioBand>(ElementMembers.OverloadFactor);

    /// <summary>The same with another <see cref="OverloadFactor"/>.</summary>
    public DrivelineElement WithOverloadFactor(RatioBand? value) => new(Set(ElementMembers.OverloadFactor, value));

    /// <summary>Who states the overload factor, and where; without it the factor counts as unsourced. Null when not known.</summary>
    public string? OverloadSource => Reference<string>(ElementMembers.OverloadSource);

    /// <summary>The same with another <see cref="OverloadSource"/>.</summary>
    public DrivelineElement WithOverloadSource(string? value) => new(Set(ElementMembers.OverloadSource, value));

    /// <summary>Share of the power at this place that the branch takes. Permitted: (0; 1]. Null when not known.</summary>
    public RatioBand? PowerShare => Reference<RatioBand>(ElementMembers.PowerShare);

    /// <summary>The same with another <see cref="PowerShare"/>.</summary>
    public DrivelineElement WithPowerShare(RatioBand? value) => new(Set(ElementMembers.PowerShare, value));

    /// <summary>The elements of the branch, in order from where it leaves.</summary>
    public IReadOnlyList<DrivelineElement> Driveline => Reference<FactList<DrivelineElement>>(ElementMembers.Driveline) ?? FactList<DrivelineElement>.Empty;

    /// <summary>The same with another <see cref="Driveline"/>.</summary>
    public DrivelineElement WithDriveline(IEnumerable<DrivelineElement>? value) => new(Set(ElementMembers.Driveline, FactList<DrivelineElement>.Of(value)));

    /// <summary>Length that twists, taken to have the outer diameter all along; pieces of different size are several shafts. Permitted: [1 mm; 20 m]. Null when not known.</summary>
    public Length? Length => Si(ElementMembers.Length) is { } si ? UnitsNet.Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="Length"/>.</summary>
    public DrivelineElement WithLength(Length? value) => new(Set(ElementMembers.Length, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Torsional stiffness from the part's input to its output. Permitted: [1 N.m/rad; 1000000000 N.m/rad]. Null when not known.</summary>
    public StiffnessBand? Stiffness => Reference<StiffnessBand>(ElementMembers.Stiffness);

    /// <summary>The same with another <see cref="Stiffness"/>.</summary>
    public DrivelineElement WithStiffness(StiffnessBand? value) => new(Set(ElementMembers.Stiffness, value));

    /// <summary>What the manual or parts list specifies in its place. Null when not known.</summary>
    public SpecifiedFacts? Specified => Reference<SpecifiedFacts>(ElementMembers.Specified);

    /// <summary>The same with another <see cref="Specified"/>.</summary>
    public DrivelineElement WithSpecified(SpecifiedFacts? value) => new(Set(ElementMembers.Specified, value is null || value.IsEmpty ? null : value));

    /// <summary>Damping of its twist, N·m·s/rad. Permitted: [0 N.m.s/rad; 1000000 N.m.s/rad]. Null when not known.</summary>
    public double? Damping => Si(ElementMembers.Damping);

    /// <summary>The same with another <see cref="Damping"/>.</summary>
    public DrivelineElement WithDamping(double? value) => new(Set(ElementMembers.Damping, value));

    internal override MemberTable Table => ElementMembers.Table;
}
