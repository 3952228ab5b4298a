using Driveline.Cases.Members;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>Stacks of equal disc springs: by series and outer diameter, or by their measures.</summary>
public sealed class DiscSpringsFacts : CaseFacts
{
    internal DiscSpringsFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static DiscSpringsFacts Empty { get; } = new(DiscSpringsMembers.Table.NoValues());

    /// <summary>Series of DIN 2093: "A", "B" or "C"; with outerDiameter it gives all other measures. Null when not known.</summary>
    public string? Series => Reference<string>(DiscSpringsMembers.Series);

    /// <summary>The same with another <see cref="Series"/>.</summary>
    public DiscSpringsFacts WithSeries(string? value) => new(Set(DiscSpringsMembers.Series, value));

    /// <summary>Outer diameter of one disc. Permitted: [5 mm; 1 m]. Null when not known.</summary>
    public Length? OuterDiameter => Si(DiscSpringsMembers.OuterDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="OuterDiameter"/>.</summary>
    public DiscSpringsFacts WithOuterDiameter(Length? value) => new(Set(DiscSpringsMembers.OuterDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Inner diameter of one disc. Permitted: [2 mm; 1 m). Null when not known.</summary>
    public Length? InnerDiameter => Si(DiscSpringsMembers.InnerDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="InnerDiameter"/>.</summary>
    public DiscSpringsFacts WithInnerDiameter(Length? value) => new(Set(DiscSpringsMembers.InnerDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Thickness of one disc. Permitted: [0.1 mm; 50 mm]. Null when not known.</summary>
    public Length? Thickness => Si(DiscSpringsMembers.Thickness) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="Thickness"/>.</summary>
    public DiscSpringsFacts WithThickness(Length? value) => new(Set(DiscSpringsMembers.Thickness, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Thickness of a disc that was thinned for its contact flats. Permitted: [0.1 mm; 50 mm]. Null when not known.</summary>
    public Length? ReducedThickness => Si(DiscSpringsMembers.ReducedThickness) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="ReducedThickness"/>.</summary>
    public DiscSpringsFacts WithReducedThickness(Length? value) => new(Set(DiscSpringsMembers.ReducedThickness, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Height of one disc without load. Permitted: [0.2 mm; 100 mm]. Null when not known.</summary>
    public Length? FreeHeight => Si(DiscSpringsMembers.FreeHeight) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="FreeHeight"/>.</summary>
    public DiscSpringsFacts WithFreeHeight(Length? value) => new(Set(DiscSpringsMembers.FreeHeight, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Discs nested the same way round in one set. Permitted: 1 to 5. Null when not known.</summary>
    public int? Parallel => Value<int>(DiscSpringsMembers.Parallel);

    /// <summary>The same with another <see cref="Parallel"/>.</summary>
    public DiscSpringsFacts WithParallel(int? value) => new(Set(DiscSpringsMembers.Parallel, value));

    /// <summary>Sets on top of each other, each the other way round. Permitted: 1 to 50. Null when not known.</summary>
    public int? Sets => Value<int>(DiscSpringsMembers.Sets);

    /// <summary>The same with another <see cref="Sets"/>.</summary>
    public DiscSpringsFacts WithSets(int? value) => new(Set(DiscSpringsMembers.Sets, value));

    /// <summary>Stacks side by side; 1 for discs around the hub. Permitted: 1 to 48. Null when not known.</summary>
    public int? Stacks => Value<int>(DiscSpringsMembers.Stacks);

    /// <summary>The same with another <see cref="Stacks"/>.</summary>
    public DiscSpringsFacts WithStacks(int? value) => new(Set(DiscSpringsMembers.Stacks, value));

    internal override MemberTable Table => DiscSpringsMembers.Table;
}
