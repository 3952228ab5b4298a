using Driveline.Cases.Members;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>A shear-bolt joint as fitted.</summary>
public sealed partial class ShearBoltFacts : CaseFacts
{
    internal ShearBoltFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static ShearBoltFacts Empty { get; } = new(ShearBoltMembers.Table.NoValues());

    /// <summary>What you call it. Null when not known.</summary>
    public string? Name => Reference<string>(ShearBoltMembers.Name);

    /// <summary>The same with another <see cref="Name"/>.</summary>
    public ShearBoltFacts WithName(string? value) => new(Set(ShearBoltMembers.Name, value));

    /// <summary>Thread size as it is sold, e.g. "1/2-13 UNC" or "M10". Null when not known.</summary>
    public string? Thread => Reference<string>(ShearBoltMembers.Thread);

    /// <summary>The same with another <see cref="Thread"/>.</summary>
    public ShearBoltFacts WithThread(string? value) => new(Set(ShearBoltMembers.Thread, value));

    /// <summary>Strength class or rod material, e.g. "SAE 2", "8.8", "A2-70"; "unmarked" for a bolt without marks. Null when not known.</summary>
    public string? Grade => Reference<string>(ShearBoltMembers.Grade);

    /// <summary>The same with another <see cref="Grade"/>.</summary>
    public ShearBoltFacts WithGrade(string? value) => new(Set(ShearBoltMembers.Grade, value));

    /// <summary>Marks on the bolt's head, as seen, e.g. "three radial lines", "8.8", "none". Null when not known.</summary>
    public string? HeadMarks => Reference<string>(ShearBoltMembers.HeadMarks);

    /// <summary>The same with another <see cref="HeadMarks"/>.</summary>
    public ShearBoltFacts WithHeadMarks(string? value) => new(Set(ShearBoltMembers.HeadMarks, value));

    /// <summary>Measured hardness, e.g. "HRC 28" or "HV 220". Null when not known.</summary>
    public string? Hardness => Reference<string>(ShearBoltMembers.Hardness);

    /// <summary>The same with another <see cref="Hardness"/>.</summary>
    public ShearBoltFacts WithHardness(string? value) => new(Set(ShearBoltMembers.Hardness, value));

    /// <summary>Diameter of a plain pin or rod without thread. Permitted: [2 mm; 80 mm]. Null when not known.</summary>
    public Length? PinDiameter => Si(ShearBoltMembers.PinDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="PinDiameter"/>.</summary>
    public ShearBoltFacts WithPinDiameter(Length? value) => new(Set(ShearBoltMembers.PinDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Spring pin by standard and size, e.g. "ISO 8752 10". Null when not known.</summary>
    public string? SpringPin => Reference<string>(ShearBoltMembers.SpringPin);

    /// <summary>The same with another <see cref="SpringPin"/>.</summary>
    public ShearBoltFacts WithSpringPin(string? value) => new(Set(ShearBoltMembers.SpringPin, value));

    /// <summary>How the bolt lies.</summary>
    public JointLayout Layout => Value<JointLayout>(ShearBoltMembers.Layout) ?? default;

    /// <summary>The same with another <see cref="Layout"/>.</summary>
    public ShearBoltFacts WithLayout(JointLayout value) => new(Set(ShearBoltMembers.Layout, value == default ? null : value));

    /// <summary>Diameter of the shaft that the bolt passes through. Permitted: [5 mm; 200 mm]. Null when not known.</summary>
    public Length? ShaftDiameter => Si(ShearBoltMembers.ShaftDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="ShaftDiameter"/>.</summary>
    public ShearBoltFacts WithShaftDiameter(Length? value) => new(Set(ShearBoltMembers.ShaftDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Distance from the shaft's axis to the shear plane or the bolt. Permitted: [2 mm; 1 m]. Null when not known.</summary>
    public Length? Radius => Si(ShearBoltMembers.Radius) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="Radius"/>.</summary>
    public ShearBoltFacts WithRadius(Length? value) => new(Set(ShearBoltMembers.Radius, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Diameter of the bolt circle. Permitted: [4 mm; 2 m]. Null when not known.</summary>
    public Length? BoltCircleDiameter => Si(ShearBoltMembers.BoltCircleDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="BoltCircleDiameter"/>.</summary>
    public ShearBoltFacts WithBoltCircleDiameter(Length? value) => new(Set(ShearBoltMembers.BoltCircleDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Number of bolts that must shear. Permitted: [1; 24]. Null when not known.</summary>
    public int? Bolts => Value<int>(ShearBoltMembers.Bolts);

    /// <summary>The same with another <see cref="Bolts"/>.</summary>
    public ShearBoltFacts WithBolts(int? value) => new(Set(ShearBoltMembers.Bolts, value));

    /// <summary>Number of planes in which each bolt shears. Permitted: [1; 2]. Null when not known.</summary>
    public int? Planes => Value<int>(ShearBoltMembers.Planes);

    /// <summary>The same with another <see cref="Planes"/>.</summary>
    public ShearBoltFacts WithPlanes(int? value) => new(Set(ShearBoltMembers.Planes, value));

    /// <summary>What the shear plane passes through.</summary>
    public PlaneThrough PlaneThrough => Value<PlaneThrough>(ShearBoltMembers.PlaneThrough) ?? default;

    /// <summary>The same with another <see cref="PlaneThrough"/>.</summary>
    public ShearBoltFacts WithPlaneThrough(PlaneThrough value) => new(Set(ShearBoltMembers.PlaneThrough, value == default ? null : value));

    /// <summary>Diameter at the neck, step or taper. Permitted: [1 mm; 80 mm]. Null when not known.</summary>
    public Length? NeckDiameter => Si(ShearBoltMembers.NeckDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="NeckDiameter"/>.</summary>
    public ShearBoltFacts WithNeckDiameter(Length? value) => new(Set(ShearBoltMembers.NeckDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Whether hub and shaft turn on each other with the bolt out.</summary>
    public HubState Hub => Value<HubState>(ShearBoltMembers.Hub) ?? default;

    /// <summary>The same with another <see cref="Hub"/>.</summary>
    public ShearBoltFacts WithHub(HubState value) => new(Set(ShearBoltMembers.Hub, value == default ? null : value));

    /// <summary>Torque that turns the hub on the shaft with the bolt out. Permitted: [0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? HubFriction => Reference<TorqueBand>(ShearBoltMembers.HubFriction);

    /// <summary>The same with another <see cref="HubFriction"/>.</summary>
    public ShearBoltFacts WithHubFriction(TorqueBand? value) => new(Set(ShearBoltMembers.HubFriction, value));

    /// <summary>How the bolt fits its holes.</summary>
    public HoleFit HoleFit => Value<HoleFit>(ShearBoltMembers.HoleFit) ?? default;

    /// <summary>The same with another <see cref="HoleFit"/>.</summary>
    public ShearBoltFacts WithHoleFit(HoleFit value) => new(Set(ShearBoltMembers.HoleFit, value == default ? null : value));

    /// <summary>Measured diameter of the bolt's hole: it weakens the shaft it crosses, and a thin bolt is loose in it. Permitted: [2 mm; 100 mm]. Null when not known.</summary>
    public Length? HoleDiameter => Si(ShearBoltMembers.HoleDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="HoleDiameter"/>.</summary>
    public ShearBoltFacts WithHoleDiameter(Length? value) => new(Set(ShearBoltMembers.HoleDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Diameter of another hole, re-drilled or bushed, that the machine's maker permits; only for choosing another bolt. Permitted: [2 mm; 100 mm]. Null when not known.</summary>
    public Length? PermittedHole => Si(ShearBoltMembers.PermittedHole) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="PermittedHole"/>.</summary>
    public ShearBoltFacts WithPermittedHole(Length? value) => new(Set(ShearBoltMembers.PermittedHole, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Gap between the two parts at the shear plane. Permitted: [0 mm; 100 mm]. Null when not known.</summary>
    public Length? StandOff => Si(ShearBoltMembers.StandOff) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="StandOff"/>.</summary>
    public ShearBoltFacts WithStandOff(Length? value) => new(Set(ShearBoltMembers.StandOff, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Length of the bolt under its head. Permitted: [3 mm; 1 m]. Null when not known.</summary>
    public Length? BoltLength => Si(ShearBoltMembers.BoltLength) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="BoltLength"/>.</summary>
    public ShearBoltFacts WithBoltLength(Length? value) => new(Set(ShearBoltMembers.BoltLength, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Thickness of the yoke wall or flange around the hole. Permitted: [0.5 mm; 300 mm]. Null when not known.</summary>
    public Length? YokeThickness => Si(ShearBoltMembers.YokeThickness) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="YokeThickness"/>.</summary>
    public ShearBoltFacts WithYokeThickness(Length? value) => new(Set(ShearBoltMembers.YokeThickness, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Yield strength of the yoke's or flange's material: less than its tensile strength. Permitted: [10 MPa; 3000 MPa]. Null when not known.</summary>
    public StressBand? YokeYieldStrength => Reference<StressBand>(ShearBoltMembers.YokeYieldStrength);

    /// <summary>The same with another <see cref="YokeYieldStrength"/>.</summary>
    public ShearBoltFacts WithYokeYieldStrength(StressBand? value) => new(Set(ShearBoltMembers.YokeYieldStrength, value));

    /// <summary>Yield strength of the shaft that the bolt passes through. Permitted: [10 MPa; 3000 MPa]. Null when not known.</summary>
    public StressBand? ShaftYieldStrength => Reference<StressBand>(ShearBoltMembers.ShaftYieldStrength);

    /// <summary>The same with another <see cref="ShaftYieldStrength"/>.</summary>
    public ShearBoltFacts WithShaftYieldStrength(StressBand? value) => new(Set(ShearBoltMembers.ShaftYieldStrength, value));

    /// <summary>When the bolt last sheared and the hub was seen to turn. Null when not known.</summary>
    public DateTime? LastTrip => Value<DateTime>(ShearBoltMembers.LastTrip);

    /// <summary>The same with another <see cref="LastTrip"/>.</summary>
    public ShearBoltFacts WithLastTrip(DateTime? value) => new(Set(ShearBoltMembers.LastTrip, value));

    internal override MemberTable Table => ShearBoltMembers.Table;
}
