using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>The springs of a slip clutch: coil springs or disc springs.</summary>
public sealed class ClutchSpringsFacts : CaseFacts
{
    internal ClutchSpringsFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static ClutchSpringsFacts Empty { get; } = new(ClutchSpringsMembers.Table.NoValues());

    /// <summary>Coil springs side by side. Null when not known.</summary>
    public CoilSpringsFacts? Coil => Reference<CoilSpringsFacts>(ClutchSpringsMembers.Coil);

    /// <summary>The same with another <see cref="Coil"/>.</summary>
    public ClutchSpringsFacts WithCoil(CoilSpringsFacts? value) => new(Set(ClutchSpringsMembers.Coil, value is null || value.IsEmpty ? null : value));

    /// <summary>Disc springs. Null when not known.</summary>
    public DiscSpringsFacts? Disc => Reference<DiscSpringsFacts>(ClutchSpringsMembers.Disc);

    /// <summary>The same with another <see cref="Disc"/>.</summary>
    public ClutchSpringsFacts WithDisc(DiscSpringsFacts? value) => new(Set(ClutchSpringsMembers.Disc, value is null || value.IsEmpty ? null : value));

    internal override MemberTable Table => ClutchSpringsMembers.Table;
}
