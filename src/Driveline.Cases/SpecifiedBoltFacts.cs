using Driveline.Cases.Members;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>The shear bolt that the manual or parts list names.</summary>
public sealed partial class SpecifiedBoltFacts : CaseFacts
{
    internal SpecifiedBoltFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static SpecifiedBoltFacts Empty { get; } = new(SpecifiedBoltMembers.Table.NoValues());

    /// <summary>Thread size as it is sold, e.g. "1/2-13 UNC" or "M10". Null when not known.</summary>
    public string? Thread => Reference<string>(SpecifiedBoltMembers.Thread);

    /// <summary>The same with another <see cref="Thread"/>.</summary>
    public SpecifiedBoltFacts WithThread(string? value) => new(Set(SpecifiedBoltMembers.Thread, value));

    /// <summary>Strength class or rod material, e.g. "SAE 2", "8.8", "A2-70"; "unmarked" for a bolt without marks. Null when not known.</summary>
    public string? Grade => Reference<string>(SpecifiedBoltMembers.Grade);

    /// <summary>The same with another <see cref="Grade"/>.</summary>
    public SpecifiedBoltFacts WithGrade(string? value) => new(Set(SpecifiedBoltMembers.Grade, value));

    /// <summary>Measured hardness, e.g. "HRC 28" or "HV 220". Null when not known.</summary>
    public string? Hardness => Reference<string>(SpecifiedBoltMembers.Hardness);

    /// <summary>The same with another <see cref="Hardness"/>.</summary>
    public SpecifiedBoltFacts WithHardness(string? value) => new(Set(SpecifiedBoltMembers.Hardness, value));

    /// <summary>Diameter of a plain pin or rod without thread. Permitted: [2 mm; 80 mm]. Null when not known.</summary>
    public Length? PinDiameter => Si(SpecifiedBoltMembers.PinDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="PinDiameter"/>.</summary>
    public SpecifiedBoltFacts WithPinDiameter(Length? value) => new(Set(SpecifiedBoltMembers.PinDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Spring pin by standard and size, e.g. "ISO 8752 10". Null when not known.</summary>
    public string? SpringPin => Reference<string>(SpecifiedBoltMembers.SpringPin);

    /// <summary>The same with another <see cref="SpringPin"/>.</summary>
    public SpecifiedBoltFacts WithSpringPin(string? value) => new(Set(SpecifiedBoltMembers.SpringPin, value));

    /// <summary>What the shear plane passes through.</summary>
    public PlaneThrough PlaneThrough => Value<PlaneThrough>(SpecifiedBoltMembers.PlaneThrough) ?? default;

    /// <summary>The same with another <see cref="PlaneThrough"/>.</summary>
    public SpecifiedBoltFacts WithPlaneThrough(PlaneThrough value) => new(Set(SpecifiedBoltMembers.PlaneThrough, value == default ? null : value));

    /// <summary>Diameter at the neck, step or taper. Permitted: [1 mm; 80 mm]. Null when not known.</summary>
    public Length? NeckDiameter => Si(SpecifiedBoltMembers.NeckDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="NeckDiameter"/>.</summary>
    public SpecifiedBoltFacts WithNeckDiameter(Length? value) => new(Set(SpecifiedBoltMembers.NeckDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    internal override MemberTable Table => SpecifiedBoltMembers.Table;
}
