using Driveline.Cases.Members;
using Driveline.Clutches;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>Equal coil springs side by side: by rate and solid length, or by wire, mean diameter and coils.</summary>
public sealed class CoilSpringsFacts : CaseFacts
{
    internal CoilSpringsFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static CoilSpringsFacts Empty { get; } = new(CoilSpringsMembers.Table.NoValues());

    /// <summary>Number of springs. Permitted: 1 to 48. Null when not known.</summary>
    public int? Count => Value<int>(CoilSpringsMembers.Count);

    /// <summary>The same with another <see cref="Count"/>.</summary>
    public CoilSpringsFacts WithCount(int? value) => new(Set(CoilSpringsMembers.Count, value));

    /// <summary>Force of one spring for its deflection, measured or from its maker; it replaces the calculated one. Permitted: [100 N/m; 100 kN/mm]. Null when not known.</summary>
    public ForcePerLength? Rate => Si(CoilSpringsMembers.Rate) is { } si ? ForcePerLength.FromNewtonsPerMeter(si) : null;

    /// <summary>The same with another <see cref="Rate"/>.</summary>
    public CoilSpringsFacts WithRate(ForcePerLength? value) => new(Set(CoilSpringsMembers.Rate, value is { } v ? Quantities.Si.NewtonsPerMeter(v) : null));

    /// <summary>Length without load. Permitted: [2 mm; 1 m]. Null when not known.</summary>
    public Length? FreeLength => Si(CoilSpringsMembers.FreeLength) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="FreeLength"/>.</summary>
    public CoilSpringsFacts WithFreeLength(Length? value) => new(Set(CoilSpringsMembers.FreeLength, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Length with all coils touching. Permitted: [1 mm; 1 m]. Null when not known.</summary>
    public Length? SolidLength => Si(CoilSpringsMembers.SolidLength) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="SolidLength"/>.</summary>
    public CoilSpringsFacts WithSolidLength(Length? value) => new(Set(CoilSpringsMembers.SolidLength, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Thickness of the wire. Permitted: [0.5 mm; 50 mm]. Null when not known.</summary>
    public Length? Wire => Si(CoilSpringsMembers.Wire) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="Wire"/>.</summary>
    public CoilSpringsFacts WithWire(Length? value) => new(Set(CoilSpringsMembers.Wire, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Mean diameter of the coils: outside diameter less one wire. Permitted: [2 mm; 500 mm]. Null when not known.</summary>
    public Length? MeanDiameter => Si(CoilSpringsMembers.MeanDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="MeanDiameter"/>.</summary>
    public CoilSpringsFacts WithMeanDiameter(Length? value) => new(Set(CoilSpringsMembers.MeanDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>All coils, those at the ends included. Permitted: [2.5; 200]. Null when not known.</summary>
    public double? Coils => Si(CoilSpringsMembers.Coils);

    /// <summary>The same with another <see cref="Coils"/>.</summary>
    public CoilSpringsFacts WithCoils(double? value) => new(Set(CoilSpringsMembers.Coils, value));

    /// <summary>How the ends are made.</summary>
    public CoilEnds Ends => Value<CoilEnds>(CoilSpringsMembers.Ends) ?? default;

    /// <summary>The same with another <see cref="Ends"/>.</summary>
    public CoilSpringsFacts WithEnds(CoilEnds value) => new(Set(CoilSpringsMembers.Ends, value == default ? null : value));

    internal override MemberTable Table => CoilSpringsMembers.Table;
}
